package gripwright.statistics;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;

/**
 * Tests of whether several groups have the same spread: analysis of variance on absolute deviations from the group's
 * median (Brown and Forsythe) or mean (Levene).
 *
 * <p>H. Levene in Contributions to Probability and Statistics (1960) 278-292; M. B. Brown and A. B. Forsythe, Journal of
 * the American Statistical Association 69 (1974) 364-367. NaN is missing, groups without a value are left out, infinite
 * values are refused with an IllegalArgumentException.
 */
public final class EqualVariancesTest {

    private EqualVariancesTest() {
    }

    /**
     * Deviations from the median, which stands long tails.
     *
     * @param groups the values of each group
     * @return the test; too few groups below two; too few values where every group has one; no variation where the
     *     deviations of each group are all equal, as in groups of two
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
        double[][] deviations = Arrays.stream(EqualMeansTest.nonEmpty(groups))
            .map(s -> deviations(s.values(), centre.applyAsDouble(s))).toArray(double[][]::new);
        return EqualMeansTest.oneWay(deviations).map(VarianceTable::test);
    }

    private static double[] deviations(double[] values, double centre) {
        return Arrays.stream(values).map(x -> Math.abs(x - centre)).toArray();
    }
}
