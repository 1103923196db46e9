package gripwright.statistics;

/**
 * The difference of the means of one pair of groups, with a p-value and interval that hold for all pairs together.
 *
 * @param first            index of the first group among those given
 * @param second           index of the second group
 * @param difference       mean of the first less mean of the second
 * @param standardError    of the difference
 * @param rangeStatistic   sqrt 2 |difference| / standard error, on the scale of the studentized range
 * @param degreesOfFreedom of the standard error
 * @param pValue           family-adjusted, two-sided
 * @param interval         simultaneous
 * @param confidence       of all intervals together
 */
public record PairComparison(int first, int second, double difference, double standardError, double rangeStatistic,
                             double degreesOfFreedom, double pValue, Interval interval, double confidence) {
}
