package gripwright.statistics;

import java.util.function.DoubleUnaryOperator;

/**
 * The standard deviation of one group over that of another, with the probabilities that follow from their posteriors.
 *
 * <p>With posterior scales s1, s2 on f1, f2 degrees of freedom, (sigma1/sigma2)^2 is distributed as (s1/s2)^2 times F on
 * f2 and f1 degrees of freedom.
 *
 * @param first                   index of the group above the line
 * @param second                  index of the group below the line
 * @param ratio                   s1 / s2, shrunk
 * @param interval                of the ratio, for this pair alone
 * @param confidence              of the interval
 * @param firstDegreesOfFreedom   f1
 * @param secondDegreesOfFreedom  f2
 * @param family                  how many groups are compared with each other, at least 2
 */
public record SpreadRatio(int first, int second, double ratio, Interval interval, double confidence,
                          double firstDegreesOfFreedom, double secondDegreesOfFreedom, int family) {

    static SpreadRatio of(GroupSpread first, GroupSpread second, double confidence, int family) {
        return of(first, second, confidence, family, Distributions::fQuantile);
    }

    /** @param quantiles of F at (probability, numerator, denominator), perhaps remembered from other pairs */
    static SpreadRatio of(GroupSpread first, GroupSpread second, double confidence, int family,
                          FQuantiles quantiles) {
        double ratio = first.shrunkStandardDeviation().get() / second.shrunkStandardDeviation().get();
        double f1 = first.posteriorDegreesOfFreedom();
        double f2 = second.posteriorDegreesOfFreedom();
        double tail = (1 - confidence) / 2;
        Interval interval = new Interval(ratio * Math.sqrt(quantiles.at(tail, f2, f1)),
            ratio / Math.sqrt(quantiles.at(tail, f1, f2)));
        return new SpreadRatio(first.group(), second.group(), ratio, interval, confidence, f1, f2, family);
    }

    /**
     * The posterior probability that the first standard deviation is less than a multiple of the second.
     *
     * @param factor the multiple, positive: 1 asks for 'steadier', 0.8 for 'steadier by a fifth'
     * @return the probability for this pair alone
     * @throws IllegalArgumentException if the factor is not positive
     */
    public double probabilityBelow(double factor) {
        return Distributions.fUpper(cut(factor), firstDegreesOfFreedom, secondDegreesOfFreedom);
    }

    /**
     * The same claim adjusted for all pairs of the family: the probability, put on the scale z of a normal variable, is
     * judged by the studentized range, 1 - Q(sqrt2 z)/2 for z above 0 and Q(sqrt2 |z|)/2 below, Q its upper tail for
     * the family at infinite degrees of freedom. Exact for two groups, where it changes nothing; otherwise as careful
     * as Tukey and Kramer's method for means.
     *
     * @param factor the multiple, positive
     * @return the adjusted probability
     * @throws IllegalArgumentException if the factor is not positive
     */
    public double adjustedProbabilityBelow(double factor) {
        return adjusted(factor, q -> StudentizedRange.upperTail(q, family, Double.POSITIVE_INFINITY));
    }

    /**
     * The same from a table that the caller keeps, for many pairs.
     *
     * @param factor the multiple, positive
     * @param table  of as many groups as the family has, at infinite degrees of freedom
     * @return the adjusted probability
     * @throws IllegalArgumentException if the factor is not positive or the table is another family's
     */
    public double adjustedProbabilityBelow(double factor, StudentizedRangeInterpolant table) {
        if (table.groups() != family || table.degreesOfFreedom() != Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException("The table is of " + table.groups() + " groups at "
                + table.degreesOfFreedom() + " degrees of freedom, not of " + family + " at infinity");
        }
        return adjusted(factor, table::upperTail);
    }

    private double adjusted(double factor, DoubleUnaryOperator range) {
        double below = probabilityBelow(factor);
        double above = Distributions.fUpper(1 / cut(factor), secondDegreesOfFreedom, firstDegreesOfFreedom);
        double z = Math.abs(StandardNormal.quantile(Math.min(below, above)));
        double halfTail = range.applyAsDouble(Math.sqrt(2) * z) / 2;
        return below > above ? 1 - halfTail : halfTail;
    }

    /** Quantiles of F. */
    @FunctionalInterface
    interface FQuantiles {
        double at(double probability, double numerator, double denominator);
    }

    /** sigma1 &lt; c sigma2 when F on f1, f2 exceeds (ratio / c)^2. */
    private double cut(double factor) {
        if (!(factor > 0)) {
            throw new IllegalArgumentException("The factor must be positive, not " + factor);
        }
        return ratio / factor * (ratio / factor);
    }
}
