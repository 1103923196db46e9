package gripwright.statistics;

/**
 * A falling function on equally spaced nodes, interpolated from its values and first two derivatives.
 *
 * <p>Between two nodes it is the quintic Hermite polynomial, whose error is about h^6/46080 times the sixth derivative.
 * The polynomial is held in Bernstein form while its coefficients are limited to a falling sequence between the two end
 * values; by the variation-diminishing property of Bernstein polynomials the piece then falls as well. The limit bites
 * only where the function is flat to rounding. (G. Farin, Curves and Surfaces for CAGD, chapters on Bezier curves.)
 */
final class MonotoneQuintic {

    private static final int COEFFICIENTS = 6;

    private final double start;
    private final double inverseStep;
    private final int pieces;
    private final double[] coefficients; // ascending powers of the place within the piece, six to a piece
    private final double last;

    /**
     * @param start       the first node
     * @param step        the distance of the nodes
     * @param values      function values at the nodes, falling
     * @param slopes      first derivatives there
     * @param curvatures  second derivatives there
     */
    MonotoneQuintic(double start, double step, double[] values, double[] slopes, double[] curvatures) {
        this.start = start;
        this.inverseStep = 1 / step;
        this.pieces = values.length - 1;
        this.coefficients = new double[COEFFICIENTS * pieces];
        this.last = values[pieces];
        for (int i = 0; i < pieces; i++) {
            double high = values[i];
            double low = Math.min(values[i + 1], high);
            double[] bernstein = {high,
                high + step * slopes[i] / 5,
                high + 2 * step * slopes[i] / 5 + step * step * curvatures[i] / 20,
                low - 2 * step * slopes[i + 1] / 5 + step * step * curvatures[i + 1] / 20,
                low - step * slopes[i + 1] / 5,
                low};
            limitToFalling(bernstein);
            toPowers(bernstein, i * COEFFICIENTS);
        }
    }

    private static void limitToFalling(double[] bernstein) {
        double low = bernstein[COEFFICIENTS - 1];
        for (int j = 1; j < COEFFICIENTS - 1; j++) {
            bernstein[j] = Math.max(low, Math.min(bernstein[j], bernstein[j - 1]));
        }
    }

    private void toPowers(double[] b, int offset) {
        double[] binomial = {1, 5, 10, 10, 5, 1};
        double[] differences = b.clone();
        for (int power = 0; power < COEFFICIENTS; power++) {
            coefficients[offset + power] = binomial[power] * differences[0];
            for (int j = 0; j < COEFFICIENTS - 1 - power; j++) {
                differences[j] = differences[j + 1] - differences[j];
            }
        }
    }

    /** The interpolated value; outside the nodes the value at the nearest end. */
    double value(double x) {
        double place = (x - start) * inverseStep;
        if (place <= 0) {
            return coefficients[0];
        }
        int piece = (int) place;
        if (piece >= pieces) {
            return last;
        }
        double u = place - piece;
        int i = piece * COEFFICIENTS;
        return coefficients[i] + u * (coefficients[i + 1] + u * (coefficients[i + 2]
            + u * (coefficients[i + 3] + u * (coefficients[i + 4] + u * coefficients[i + 5]))));
    }

    /** The slope of the interpolated function; 0 outside the nodes. */
    double slope(double x) {
        double place = (x - start) * inverseStep;
        int piece = (int) place;
        if (place <= 0 || piece >= pieces) {
            return 0;
        }
        double u = place - piece;
        int i = piece * COEFFICIENTS;
        return inverseStep * (coefficients[i + 1] + u * (2 * coefficients[i + 2] + u * (3 * coefficients[i + 3]
            + u * (4 * coefficients[i + 4] + u * 5 * coefficients[i + 5]))));
    }
}
