package gripwright.balance;

import gripwright.units.Swingweight;

/**
 * One swingweight off the shop's scale, with what was on the club when it was read.
 *
 * @param source where it was written down, in words
 * @param configurationId the configuration on the club; null for another grip or the bare club
 * @param read the reading
 * @param load what was on the bare club
 */
public record ScaleReading(String source, String configurationId, Swingweight read, Load load) {

    /**
     * What stands on the bare club, split by whether its place is known.
     *
     * @param gripGrams mass that balances at the grips' effective balance point, g; 0 where the place is known
     * @param knownMomentGramMm moment about the fulcrum of everything whose place is known, g·mm
     * @param capMm thickness of the cap, by which the bare club stands further from the butt end, mm
     * @param pointsSd doubt of the masses and measured places, in points
     */
    public record Load(double gripGrams, double knownMomentGramMm, double capMm, double pointsSd) {

        /** Nothing: the bare club with the layer that holds grips where that is one of its parts. */
        public static Load bare() {
            return new Load(0, 0, 0, 0);
        }
    }
}
