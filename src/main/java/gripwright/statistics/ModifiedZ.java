package gripwright.statistics;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Modified z-scores: how far a value lies from the median in units of a spread that outliers can't inflate.
 *
 * <p>z = 0.6745 (x - median)/MAD, MAD the median absolute deviation from the median; where MAD = 0,
 * z = (x - median)/(1.253314 mean absolute deviation); where that is 0 too, 0. B. Iglewicz and D. C. Hoaglin, How to
 * Detect and Handle Outliers (1993), who flag beyond 3.5.
 */
public final class ModifiedZ {

    /** Iglewicz and Hoaglin's limit. */
    public static final double USUAL_LIMIT = 3.5;

    private static final double NORMAL_MAD = 0.6745; // MAD of a normal variable over its standard deviation
    private static final double NORMAL_MEAN_DEVIATION = 1.253314; // standard deviation over mean absolute deviation
    private static final int FEWEST_RESIDUALS = 4;

    private ModifiedZ() {
    }

    /**
     * The scores of one group.
     *
     * @param values NaN missing
     * @return a score for each value, NaN where it is missing
     * @throws IllegalArgumentException if a value is infinite
     */
    public static double[] of(double[] values) {
        Sample sample = Sample.of(values);
        if (sample.count() == 0) {
            return values.clone();
        }
        double median = sample.median();
        double[] deviations = Arrays.stream(sample.values()).map(x -> Math.abs(x - median)).toArray();
        double unit = unit(deviations);
        return Arrays.stream(values).map(x -> unit == 0 && !Double.isNaN(x) ? 0 : (x - median) / unit).toArray();
    }

    /**
     * The scores of several groups on one spread pooled over them: deviations from each group's median, with the median
     * absolute deviation over all.
     *
     * <p>In a group of odd size one deviation is 0 whatever the spread; one such zero for each odd group is left out of
     * the spread. Otherwise eight groups of three would flag 10 % of good values instead of 0.6 %.
     *
     * @param values NaN missing
     * @param group  the group of each value, any numbers
     * @return a score for each value, NaN where it is missing; too few values where fewer than four deviations tell the
     *     spread
     * @throws IllegalArgumentException if lengths differ or a value is infinite
     */
    public static Figure<double[]> pooled(double[] values, int[] group) {
        if (values.length != group.length) {
            throw new IllegalArgumentException("Values and groups differ in length: " + values.length + " and "
                + group.length);
        }
        double[] residuals = new double[values.length];
        double[] telling = new double[0];
        for (int g : Arrays.stream(group).distinct().toArray()) {
            int[] rows = IntStream.range(0, group.length).filter(i -> group[i] == g).toArray();
            Sample sample = Sample.of(Arrays.stream(rows).mapToDouble(i -> values[i]).toArray());
            double median = sample.count() == 0 ? 0 : sample.median();
            for (int i : rows) {
                residuals[i] = values[i] - median;
            }
            telling = append(telling, sample, median);
        }
        if (telling.length < FEWEST_RESIDUALS) {
            return Figure.none(Shortfall.TOO_FEW_VALUES);
        }
        double unit = unit(telling);
        return Figure.of(Arrays.stream(residuals).map(r -> unit == 0 && !Double.isNaN(r) ? 0 : r / unit).toArray());
    }

    private static double[] append(double[] telling, Sample sample, double median) {
        double[] deviations = Arrays.stream(sample.values()).map(x -> Math.abs(x - median)).sorted().toArray();
        int first = sample.count() % 2; // the middle value of an odd group
        double[] all = Arrays.copyOf(telling, telling.length + deviations.length - first);
        System.arraycopy(deviations, first, all, telling.length, deviations.length - first);
        return all;
    }

    /** The standard deviation of a normal variable with these absolute deviations, in a robust reading. */
    static double unit(double[] absoluteDeviations) {
        double mad = Sample.median(absoluteDeviations);
        return mad > 0 ? mad / NORMAL_MAD
            : NORMAL_MEAN_DEVIATION * Arrays.stream(absoluteDeviations).average().orElse(0);
    }
}
