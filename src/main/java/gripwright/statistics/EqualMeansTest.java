package gripwright.statistics;

import java.util.Arrays;

/**
 * Tests of whether several groups have the same mean: one-way analysis of variance, Welch's, and Brown and Forsythe's
 * F*. The last shares its authors with a test of equal variances, which is in {@link EqualVariancesTest}.
 *
 * <p>In all: NaN is missing, groups without a value are left out, infinite values are refused with an
 * IllegalArgumentException.
 */
public final class EqualMeansTest {

    private EqualMeansTest() {
    }

    /**
     * One-way analysis of variance, one variance for all groups.
     *
     * <p>Sums of squares are formed from deviations, so that a large common level costs no digits beyond those that
     * the values themselves lack.
     *
     * @param groups the values of each group
     * @return the table; too few groups below two; too few values where every group has one; no variation where none
     *     varies within
     */
    public static Figure<VarianceTable> oneWay(double[][] groups) {
        Sample[] samples = nonEmpty(groups);
        int values = Arrays.stream(samples).mapToInt(Sample::count).sum();
        int between = samples.length - 1;
        int within = values - samples.length;
        if (between < 1) {
            return Figure.none(Shortfall.TOO_FEW_GROUPS);
        }
        if (within < 1) {
            return Figure.none(Shortfall.TOO_FEW_VALUES);
        }
        double sumWithin = Arrays.stream(samples).mapToDouble(Sample::sumOfSquares).sum();
        if (sumWithin == 0) {
            return Figure.none(Shortfall.NO_VARIATION);
        }
        double sumBetween = sumBetween(samples, values);
        double meanBetween = sumBetween / between;
        double meanWithin = sumWithin / within;
        return Figure.of(new VarianceTable(sumBetween, sumWithin, meanBetween, meanWithin,
            FTest.of(meanBetween / meanWithin, between, within)));
    }

    /**
     * Welch's analysis of variance, which lets every group have its own variance.
     *
     * <p>With w = n/v, W = sum w, m the mean weighted by w and L = sum (1 - w/W)^2/(n - 1):
     * F = [sum w (mean - m)^2 / (k - 1)] / [1 + 2 (k - 2) L / (k^2 - 1)] on k - 1 and (k^2 - 1)/(3 L) degrees of freedom.
     * B. L. Welch, Biometrika 38 (1951) 330-336.
     *
     * @param groups the values of each group
     * @return the test; too few groups below two; too few values where a group has one; no variation where a group
     *     does not vary, as its weight would be infinite
     */
    public static Figure<FTest> welch(double[][] groups) {
        Sample[] samples = nonEmpty(groups);
        Shortfall shortfall = shortfallOfSeparateVariances(samples);
        if (shortfall != null) {
            return Figure.none(shortfall);
        }
        int k = samples.length;
        double[] weights = Arrays.stream(samples).mapToDouble(s -> 1 / s.meanVariance()).toArray();
        double total = Arrays.stream(weights).sum();
        double origin = samples[0].origin();
        double shift = 0;
        for (int i = 0; i < k; i++) {
            shift += weights[i] / total * samples[i].meanLess(origin);
        }
        double between = 0;
        double lambda = 0;
        for (int i = 0; i < k; i++) {
            double deviation = samples[i].meanLess(origin) - shift;
            between += weights[i] * deviation * deviation;
            double rest = 1 - weights[i] / total;
            lambda += rest * rest / (samples[i].count() - 1);
        }
        double square = k * k - 1.0;
        double statistic = between / (k - 1) / (1 + 2 * (k - 2) * lambda / square);
        return Figure.of(FTest.of(statistic, k - 1, square / (3 * lambda)));
    }

    /**
     * Brown and Forsythe's F* for equal means with unequal variances:
     * F* = sum n (mean - grand mean)^2 / sum (1 - n/N) v, on k - 1 and 1 / sum (c^2/(n - 1)) degrees of freedom, c the
     * share of each term in the denominator.
     *
     * <p>M. B. Brown and A. B. Forsythe, Technometrics 16 (1974) 129-132.
     *
     * @param groups the values of each group
     * @return the test; too few groups below two; too few values where a group has one; no variation where none varies
     */
    public static Figure<FTest> brownForsythe(double[][] groups) {
        Sample[] samples = nonEmpty(groups);
        Shortfall shortfall = shortfallOfSeparateVariances(samples);
        if (shortfall != null && (shortfall != Shortfall.NO_VARIATION
            || Arrays.stream(samples).allMatch(s -> s.sumOfSquares() == 0))) {
            return Figure.none(shortfall);
        }
        int values = Arrays.stream(samples).mapToInt(Sample::count).sum();
        double denominator = 0;
        for (Sample s : samples) {
            denominator += (1 - (double) s.count() / values) * s.variance();
        }
        double inverseFreedom = 0;
        for (Sample s : samples) {
            double share = (1 - (double) s.count() / values) * s.variance() / denominator;
            inverseFreedom += share * share / (s.count() - 1);
        }
        return Figure.of(FTest.of(sumBetween(samples, values) / denominator, samples.length - 1, 1 / inverseFreedom));
    }

    static Sample[] nonEmpty(double[][] groups) {
        return Arrays.stream(groups).map(Sample::of).filter(s -> s.count() > 0).toArray(Sample[]::new);
    }

    static double sumBetween(Sample[] samples, int values) {
        double origin = samples[0].origin();
        double shift = 0;
        for (Sample s : samples) {
            shift += s.count() * s.meanLess(origin) / values;
        }
        double sum = 0;
        for (Sample s : samples) {
            double deviation = s.meanLess(origin) - shift;
            sum += s.count() * deviation * deviation;
        }
        return sum;
    }

    private static Shortfall shortfallOfSeparateVariances(Sample[] samples) {
        if (samples.length < 2) {
            return Shortfall.TOO_FEW_GROUPS;
        }
        if (Arrays.stream(samples).anyMatch(s -> s.count() < 2)) {
            return Shortfall.TOO_FEW_VALUES;
        }
        return Arrays.stream(samples).anyMatch(s -> s.sumOfSquares() == 0) ? Shortfall.NO_VARIATION : null;
    }
}
