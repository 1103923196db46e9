package gripwright.statistics;

import java.util.stream.IntStream;

/**
 * Points of which both coordinates are there.
 *
 * @param x first coordinates
 * @param y second coordinates
 */
record CompletePairs(double[] x, double[] y) {

    static CompletePairs of(double[] x, double[] y) {
        if (x.length != y.length) {
            throw new IllegalArgumentException("Coordinates differ in number: " + x.length + " and " + y.length);
        }
        int[] complete = IntStream.range(0, x.length).filter(i -> !Double.isNaN(x[i]) && !Double.isNaN(y[i])).toArray();
        return new CompletePairs(IntStream.of(complete).mapToDouble(i -> x[i]).toArray(),
            IntStream.of(complete).mapToDouble(i -> y[i]).toArray());
    }
}
