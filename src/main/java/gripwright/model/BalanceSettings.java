package gripwright.model;

import java.util.List;

/**
 * What the balance of a club rests on where sources differ or are from memory, so that a shop can set it.
 *
 * @param fulcrumMm where the swingweight scale carries the club, mm from the butt end with the cap
 * @param pointInchOunces one point of swingweight, in·oz
 * @param zeroInchOunces the moment that is called A0, in·oz; only names a letter, differences don't depend on it
 * @param gripBalanceSdMm how far a grip's balance point may lie from the usual one (one SD), mm
 * @param headCentreOffsetMm how far a head's centre of mass lies butt-ward of the club's end, where it was not measured
 * @param buttWeightMm where a counterweight's centre sits, mm from the shaft's butt end
 * @param sizePositionMm where a grip's size is named, mm from the cap's edge
 * @param matchingTaper how much a shaft narrows per mm, for which grips show their marked diameters; 0 for parallel
 * @param sizes names of sizes at that position
 */
public record BalanceSettings(double fulcrumMm, double pointInchOunces, double zeroInchOunces, double gripBalanceSdMm,
        double headCentreOffsetMm, double buttWeightMm, double sizePositionMm, double matchingTaper,
        List<GripSize> sizes) {

    private static final double INCH = 25.4;

    /** The 14-inch scale and the men's standard of 0.900 in with the steps of the trade. */
    public static BalanceSettings usual() {
        return new BalanceSettings(14 * INCH, 1.75, 161, INCH / 4, INCH / 2, INCH / 2, 2 * INCH, 0, List.of(
                inches("ladies' standard", 0.850), inches("\u22121/32", 0.870), inches("\u22121/64", 0.885),
                inches("standard", 0.900), inches("+1/64", 0.915), inches("+1/32", 0.930), inches("+3/64", 0.945),
                inches("midsize, +1/16", 0.960), inches("jumbo, +1/8", 1.025)));
    }

    private static GripSize inches(String name, double inches) {
        return new GripSize(name, inches * INCH);
    }

    public BalanceSettings {
        Check.positive(fulcrumMm, "fulcrum of the swingweight scale");
        Check.positive(pointInchOunces, "point of the swingweight scale");
        Check.finite(zeroInchOunces, "zero of the swingweight scale");
        Check.positive(gripBalanceSdMm, "doubt of a grip's balance point");
        Check.notNegative(headCentreOffsetMm, "offset of a head's centre");
        Check.notNegative(buttWeightMm, "place of a butt weight");
        Check.notNegative(sizePositionMm, "position at which a size is named");
        Check.notNegative(matchingTaper, "taper of a matching shaft");
        sizes = Check.list(sizes);
    }

    public BalanceSettings withFulcrumMm(double fulcrumMm) {
        return new BalanceSettings(fulcrumMm, pointInchOunces, zeroInchOunces, gripBalanceSdMm, headCentreOffsetMm,
                buttWeightMm, sizePositionMm, matchingTaper, sizes);
    }

    public BalanceSettings withPointInchOunces(double pointInchOunces) {
        return new BalanceSettings(fulcrumMm, pointInchOunces, zeroInchOunces, gripBalanceSdMm, headCentreOffsetMm,
                buttWeightMm, sizePositionMm, matchingTaper, sizes);
    }

    public BalanceSettings withZeroInchOunces(double zeroInchOunces) {
        return new BalanceSettings(fulcrumMm, pointInchOunces, zeroInchOunces, gripBalanceSdMm, headCentreOffsetMm,
                buttWeightMm, sizePositionMm, matchingTaper, sizes);
    }

    public BalanceSettings withGripBalanceSdMm(double gripBalanceSdMm) {
        return new BalanceSettings(fulcrumMm, pointInchOunces, zeroInchOunces, gripBalanceSdMm, headCentreOffsetMm,
                buttWeightMm, sizePositionMm, matchingTaper, sizes);
    }

    public BalanceSettings withHeadCentreOffsetMm(double headCentreOffsetMm) {
        return new BalanceSettings(fulcrumMm, pointInchOunces, zeroInchOunces, gripBalanceSdMm, headCentreOffsetMm,
                buttWeightMm, sizePositionMm, matchingTaper, sizes);
    }

    public BalanceSettings withButtWeightMm(double buttWeightMm) {
        return new BalanceSettings(fulcrumMm, pointInchOunces, zeroInchOunces, gripBalanceSdMm, headCentreOffsetMm,
                buttWeightMm, sizePositionMm, matchingTaper, sizes);
    }

    public BalanceSettings withSizePositionMm(double sizePositionMm) {
        return new BalanceSettings(fulcrumMm, pointInchOunces, zeroInchOunces, gripBalanceSdMm, headCentreOffsetMm,
                buttWeightMm, sizePositionMm, matchingTaper, sizes);
    }

    public BalanceSettings withMatchingTaper(double matchingTaper) {
        return new BalanceSettings(fulcrumMm, pointInchOunces, zeroInchOunces, gripBalanceSdMm, headCentreOffsetMm,
                buttWeightMm, sizePositionMm, matchingTaper, sizes);
    }

    public BalanceSettings withSizes(List<GripSize> sizes) {
        return new BalanceSettings(fulcrumMm, pointInchOunces, zeroInchOunces, gripBalanceSdMm, headCentreOffsetMm,
                buttWeightMm, sizePositionMm, matchingTaper, sizes);
    }
}
