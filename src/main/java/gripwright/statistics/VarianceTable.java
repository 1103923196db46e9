package gripwright.statistics;

/**
 * The table of a one-way analysis of variance.
 *
 * @param sumOfSquaresBetween of the group means about the grand mean, weighted by counts
 * @param sumOfSquaresWithin  of the values about their group means
 * @param meanSquareBetween   sum between / (groups - 1)
 * @param meanSquareWithin    sum within / (values - groups), the pooled variance
 * @param test                F = between / within with its degrees of freedom and p-value
 */
public record VarianceTable(double sumOfSquaresBetween, double sumOfSquaresWithin, double meanSquareBetween,
                            double meanSquareWithin, FTest test) {
}
