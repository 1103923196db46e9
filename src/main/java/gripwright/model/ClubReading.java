package gripwright.model;

import gripwright.units.Swingweight;

/**
 * One reading of the test club off the shop's scale with a weighed grip on it.
 *
 * @param swingweight as read
 * @param gripMassGrams the mass of the grip with all its tape, the layer that holds it too, that was on it, g; 0 for the
 *     stripped club
 * @param totalMassGrams the mass of the whole club, g; null where not weighed
 * @param balancePointMm the balance point of the whole club from the butt end, cap included, mm; null where not measured
 * @param configurationId the configuration that was on it; null where it was another grip
 * @param note free text
 */
public record ClubReading(Swingweight swingweight, double gripMassGrams, Double totalMassGrams, Double balancePointMm,
        String configurationId, String note) {

    public ClubReading {
        Check.present(swingweight, "swingweight of a reading");
        Check.notNegative(gripMassGrams, "mass of the grip on a reading");
        Check.optionalPositive(totalMassGrams, "total mass on a reading");
        Check.optionalPositive(balancePointMm, "balance point on a reading");
        note = Check.orEmpty(note);
    }

    public ClubReading withSwingweight(Swingweight swingweight) {
        return new ClubReading(swingweight, gripMassGrams, totalMassGrams, balancePointMm, configurationId, note);
    }

    public ClubReading withGripMassGrams(double gripMassGrams) {
        return new ClubReading(swingweight, gripMassGrams, totalMassGrams, balancePointMm, configurationId, note);
    }

    public ClubReading withTotalMassGrams(Double totalMassGrams) {
        return new ClubReading(swingweight, gripMassGrams, totalMassGrams, balancePointMm, configurationId, note);
    }

    public ClubReading withBalancePointMm(Double balancePointMm) {
        return new ClubReading(swingweight, gripMassGrams, totalMassGrams, balancePointMm, configurationId, note);
    }

    public ClubReading withConfigurationId(String configurationId) {
        return new ClubReading(swingweight, gripMassGrams, totalMassGrams, balancePointMm, configurationId, note);
    }

    public ClubReading withNote(String note) {
        return new ClubReading(swingweight, gripMassGrams, totalMassGrams, balancePointMm, configurationId, note);
    }
}
