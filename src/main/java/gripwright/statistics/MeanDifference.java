package gripwright.statistics;

/**
 * The difference of two means by Student's t, with equal variances or without.
 *
 * @param difference       mean of the first group less mean of the second
 * @param standardError    of the difference
 * @param degreesOfFreedom of the standard error, not whole for Welch's
 * @param statistic        difference / standard error
 * @param pValue           two-sided
 * @param interval         of the difference
 * @param confidence       of the interval
 */
public record MeanDifference(double difference, double standardError, double degreesOfFreedom, double statistic,
                             double pValue, Interval interval, double confidence) {

    /**
     * Welch's t: se^2 = v1/n1 + v2/n2, degrees of freedom se^4 / ((v1/n1)^2/(n1 - 1) + (v2/n2)^2/(n2 - 1)).
     *
     * <p>B. L. Welch, Biometrika 34 (1947) 28-35; Satterthwaite's degrees of freedom as in most software.
     *
     * @param first      values, NaN missing
     * @param second     values, NaN missing
     * @param confidence of the interval, between 0 and 1
     * @return the difference; too few values where a group has fewer than two; no variation where neither varies
     * @throws IllegalArgumentException if a value is infinite or the confidence out of range
     */
    public static Figure<MeanDifference> welch(double[] first, double[] second, double confidence) {
        Distributions.requireConfidence(confidence);
        Sample a = Sample.of(first);
        Sample b = Sample.of(second);
        if (a.count() < 2 || b.count() < 2) {
            return Figure.none(Shortfall.TOO_FEW_VALUES);
        }
        double variance = a.meanVariance() + b.meanVariance();
        return variance == 0 ? Figure.none(Shortfall.NO_VARIATION)
            : Figure.of(of(a.meanLess(b), Math.sqrt(variance), welchDegreesOfFreedom(a, b), confidence));
    }

    /**
     * Student's t with one pooled variance on n1 + n2 - 2 degrees of freedom.
     *
     * @param first      values, NaN missing
     * @param second     values, NaN missing
     * @param confidence of the interval, between 0 and 1
     * @return the difference; too few values where a group has none or both have one; no variation where neither varies
     * @throws IllegalArgumentException if a value is infinite or the confidence out of range
     */
    public static Figure<MeanDifference> pooled(double[] first, double[] second, double confidence) {
        Distributions.requireConfidence(confidence);
        Sample a = Sample.of(first);
        Sample b = Sample.of(second);
        int freedom = a.count() + b.count() - 2;
        if (a.count() < 1 || b.count() < 1 || freedom < 1) {
            return Figure.none(Shortfall.TOO_FEW_VALUES);
        }
        double variance = (a.sumOfSquares() + b.sumOfSquares()) / freedom;
        return variance == 0 ? Figure.none(Shortfall.NO_VARIATION)
            : Figure.of(of(a.meanLess(b), Math.sqrt(variance * (1.0 / a.count() + 1.0 / b.count())), freedom,
                confidence));
    }

    /** Satterthwaite's degrees of freedom, formed with shares so that tiny variances don't underflow. */
    static double welchDegreesOfFreedom(Sample a, Sample b) {
        double total = a.meanVariance() + b.meanVariance();
        double shareA = a.meanVariance() / total;
        double shareB = b.meanVariance() / total;
        return 1 / (shareA * shareA / (a.count() - 1) + shareB * shareB / (b.count() - 1));
    }

    private static MeanDifference of(double difference, double standardError, double freedom, double confidence) {
        double t = difference / standardError;
        double reach = Distributions.tCentral(confidence, freedom) * standardError;
        return new MeanDifference(difference, standardError, freedom, t, Distributions.tTwoSided(t, freedom),
            new Interval(difference - reach, difference + reach), confidence);
    }
}
