package gripwright.statistics;

import java.util.Arrays;

/**
 * The values of one group without the missing ones, with mean and sum of squares that keep their digits.
 *
 * <p>The mean is held as an origin, one of the values, and an offset from it: where all values are large and alike the
 * offset keeps digits that the mean as one double would lose, and differences of means are formed from the parts.
 * Offset by two passes, avg(x - origin) and then avg(x - origin - offset) added; sum of squares
 * sum d^2 - (sum d)^2 / n over the deviations d (Chan, Golub and LeVeque, The American Statistician 37 (1983) 242-247,
 * the corrected two-pass algorithm).
 *
 * @param values       the values, none missing; not copied, not changed
 * @param origin       what deviations are taken from first, 0 where there are no values
 * @param offset       mean less origin, 0 where there are no values
 * @param sumOfSquares of deviations from the mean, exactly 0 where all are equal
 */
record Sample(double[] values, double origin, double offset, double sumOfSquares) {

    /**
     * Takes the values that are not NaN.
     *
     * @throws IllegalArgumentException if a value is infinite
     */
    static Sample of(double[] values) {
        double[] present = Arrays.stream(values).filter(x -> !Double.isNaN(x)).toArray();
        for (double x : present) {
            if (Double.isInfinite(x)) {
                throw new IllegalArgumentException("A value is infinite; missing values are NaN, all others finite");
            }
        }
        int n = present.length;
        if (n == 0) {
            return new Sample(present, 0, 0, 0);
        }
        double origin = present[0];
        double offset = averageDeviation(present, origin, 0);
        offset += averageDeviation(present, origin, offset);
        double squares = 0;
        double rest = 0;
        for (double x : present) {
            double deviation = x - origin - offset;
            squares += deviation * deviation;
            rest += deviation;
        }
        boolean allEqual = Arrays.stream(present).allMatch(x -> x == origin);
        return new Sample(present, origin, offset, allEqual ? 0 : Math.max(0, squares - rest * rest / n));
    }

    static Sample[] ofEach(double[][] groups) {
        return Arrays.stream(groups).map(Sample::of).toArray(Sample[]::new);
    }

    private static double averageDeviation(double[] values, double origin, double offset) {
        double sum = 0;
        for (double x : values) {
            sum += x - origin - offset;
        }
        return sum / values.length;
    }

    int count() {
        return values.length;
    }

    /** The mean, 0 where there are no values. */
    double mean() {
        return origin + offset;
    }

    /** The mean less a number, with the digits of the offset. */
    double meanLess(double number) {
        return origin - number + offset;
    }

    /** The mean of this sample less the mean of another. */
    double meanLess(Sample other) {
        return origin - other.origin + (offset - other.offset);
    }

    /** The variance on n - 1 degrees of freedom; only for two values or more. */
    double variance() {
        return sumOfSquares / (count() - 1);
    }

    /** The squared standard error of the mean; only for two values or more. */
    double meanVariance() {
        return variance() / count();
    }

    /** The median, the middle of the two middle values for an even number; only for one value or more. */
    double median() {
        return median(values);
    }

    static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : sorted[middle - 1] + (sorted[middle] - sorted[middle - 1]) / 2;
    }
}
