package gripwright.comparison;

/**
 * The figures that a verdict rests on, for one pair; NaN stands where nothing can be said.
 *
 * @param estimate difference, internal units
 * @param interval its interval; null where unknown
 * @param gain gain with its interval; null where there is none
 * @param higher P(difference > 0)
 * @param positive P(gain > 0)
 * @param matters P(gain > d)
 * @param mattersAdjusted the same for the family
 * @param harms P(gain < −d)
 * @param harmsAdjusted the same for the family
 * @param same P(|gain| < d)
 * @param up P(difference > d), family-adjusted
 * @param down P(difference < −d), family-adjusted
 * @param level P(|difference| < d)
 */
record PairFigures(double estimate, Interval interval, Estimate gain, double higher, double positive, double matters,
        double mattersAdjusted, double harms, double harmsAdjusted, double same, double up, double down,
        double level) {

    /** Only the plain difference of means is known, or not even that. */
    static PairFigures plain(double difference) {
        double none = Double.NaN;
        return new PairFigures(difference, null, null, none, none, none, none, none, none, none, none, none, none);
    }

    boolean isKnown() {
        return !Double.isNaN(positive);
    }
}
