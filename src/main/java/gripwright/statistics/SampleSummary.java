package gripwright.statistics;

import java.util.Arrays;

/**
 * The ordinary figures of one group of values: how many, mean, median, standard deviation and interval of the mean.
 *
 * @param count             how many values are not missing
 * @param mean              the mean; from one value on
 * @param median            the median; from one value on
 * @param range             least and largest value; from one value on
 * @param standardDeviation on n - 1 degrees of freedom; from two values on, 0 where all are equal
 * @param meanInterval      mean -/+ t s / sqrt n on n - 1 degrees of freedom; from two values on
 * @param confidence        of the interval
 */
public record SampleSummary(int count, Figure<Double> mean, Figure<Double> median, Figure<Interval> range,
                            Figure<Double> standardDeviation, Figure<Interval> meanInterval, double confidence) {

    /**
     * Summarises values.
     *
     * @param values     any number, none included; NaN is missing and left out
     * @param confidence of the interval of the mean, between 0 and 1
     * @return the summary
     * @throws IllegalArgumentException if a value is infinite or the confidence out of range
     */
    public static SampleSummary of(double[] values, double confidence) {
        Distributions.requireConfidence(confidence);
        Sample sample = Sample.of(values);
        int n = sample.count();
        if (n == 0) {
            return new SampleSummary(0, tooFew(), tooFew(), tooFew(), tooFew(), tooFew(), confidence);
        }
        Figure<Interval> range = Figure.of(new Interval(Arrays.stream(sample.values()).min().getAsDouble(),
            Arrays.stream(sample.values()).max().getAsDouble()));
        Figure<Double> mean = Figure.of(sample.mean());
        Figure<Double> median = Figure.of(sample.median());
        if (n == 1) {
            return new SampleSummary(1, mean, median, range, tooFew(), tooFew(), confidence);
        }
        double reach = Distributions.tCentral(confidence, n - 1) * Math.sqrt(sample.meanVariance());
        return new SampleSummary(n, mean, median, range, Figure.of(Math.sqrt(sample.variance())),
            Figure.of(new Interval(sample.mean() - reach, sample.mean() + reach)), confidence);
    }

    private static <T> Figure<T> tooFew() {
        return Figure.none(Shortfall.TOO_FEW_VALUES);
    }
}
