package gripwright.statistics;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;

/**
 * Tests of whether several groups have the same spread: analysis of variance on absolute deviations from the group's
 * median (Brown and Forsythe) or mean (Levene).
 *
 * <p>H. Levene in Contributions to Probability and Statistics (1960) 278-292; M. B. Brown and A. B. Forsythe, Journal of
 * the American Statistical Association 69 (1974) 364-367. With d = |x - centre of its group|:
 * F = [sum n (mean d - grand mean d)^2 / (k - 1)] / [sum (d - mean d)^2 / (N - k)] on k - 1 and N - k degrees of freedom,
 * over the k groups of three values or more and their N values. Groups of one or two are left out: their deviations are
 * equal by construction, which is no sign of a steady spread, and with them the test claims too much. NaN is missing,
 * infinite values are refused with an IllegalArgumentException.
 */
public final class EqualVariancesTest {

    private static final int FEWEST_VALUES = 3;
    /** Deviations that differ by less than this share of themselves differ by rounding alone. */
    private static final double ROUNDING = 1e-12;

    private EqualVariancesTest() {
    }

    /**
     * Deviations from the median, which stands long tails.
     *
     * @param groups the values of each group
     * @return the test; too few values where fewer than two groups have three; no variation where the deviations of
     *     each group are all equal
     */
    public static Figure<FTest> brownForsythe(double[][] groups) {
        return onDeviations(groups, Sample::median);
    }

    /**
     * Deviations from the mean, Levene's original.
     *
     * @param groups the values of each group
     * @return as for {@link #brownForsythe}
     */
    public static Figure<FTest> levene(double[][] groups) {
        return onDeviations(groups, Sample::mean);
    }

    private static Figure<FTest> onDeviations(double[][] groups, ToDoubleFunction<Sample> centre) {
        double[][] deviations = Arrays.stream(groups).map(Sample::of).filter(s -> s.count() >= FEWEST_VALUES)
            .map(s -> deviations(s.values(), centre.applyAsDouble(s))).toArray(double[][]::new);
        if (deviations.length < 2) {
            return Figure.none(Shortfall.TOO_FEW_VALUES);
        }
        Figure<VarianceTable> table = EqualMeansTest.oneWay(deviations);
        return table.isAvailable() && isRounding(table.get(), deviations) ? Figure.none(Shortfall.NO_VARIATION)
            : table.map(VarianceTable::test);
    }

    private static boolean isRounding(VarianceTable table, double[][] deviations) {
        double squares = Arrays.stream(deviations).flatMapToDouble(Arrays::stream).map(d -> d * d).sum();
        return table.sumOfSquaresWithin() <= ROUNDING * ROUNDING * squares;
    }

    private static double[] deviations(double[] values, double centre) {
        return Arrays.stream(values).map(x -> Math.abs(x - centre)).toArray();
    }
}
