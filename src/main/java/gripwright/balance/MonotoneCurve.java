package gripwright.balance;

import java.util.Arrays;

/**
 * A smooth curve through points that rises and falls only where the points do, held beyond its ends.
 *
 * <p>Cubic Hermite pieces with the slopes of F. N. Fritsch and R. E. Carlson, Monotone piecewise cubic interpolation,
 * SIAM J. Numer. Anal. 17 (1980) 238-246. With secants d_k: m_k = (d_{k-1} + d_k)/2 inside, the secant at an end, 0 where
 * the secants differ in sign or one is 0; then with α = m_k/d_k, β = m_{k+1}/d_k, where α² + β² > 9 both slopes of the
 * piece are scaled by 3/√(α² + β²). Commons Math has no such interpolation.
 */
public final class MonotoneCurve {

    private static final double CIRCLE = 3;

    private final double[] x;
    private final double[] y;
    private final double[] slope;

    private MonotoneCurve(double[] x, double[] y, double[] slope) {
        this.x = x;
        this.y = y;
        this.slope = slope;
    }

    /**
     * The curve through these points; one point gives a constant, two a straight line.
     *
     * @param x strictly increasing, finite
     * @param y finite, as many
     * @throws IllegalArgumentException when there is none, counts differ, a number is not finite or x does not increase
     */
    public static MonotoneCurve through(double[] x, double[] y) {
        if (x.length == 0 || x.length != y.length) {
            throw new IllegalArgumentException("A curve needs at least one point, and as many values as places, not "
                    + x.length + " and " + y.length + ".");
        }
        for (int k = 0; k < x.length; k++) {
            if (!Double.isFinite(x[k]) || !Double.isFinite(y[k]) || k > 0 && !(x[k] > x[k - 1])) {
                throw new IllegalArgumentException("The places of a curve must be numbers that increase; look at "
                        + x[k] + ".");
            }
        }
        return new MonotoneCurve(x.clone(), y.clone(), slopes(x, y));
    }

    private static double[] slopes(double[] x, double[] y) {
        int points = x.length;
        double[] slope = new double[points];
        if (points == 1) {
            return slope;
        }
        double[] secant = new double[points - 1];
        for (int k = 0; k < points - 1; k++) {
            secant[k] = (y[k + 1] - y[k]) / (x[k + 1] - x[k]);
        }
        slope[0] = secant[0];
        slope[points - 1] = secant[points - 2];
        for (int k = 1; k < points - 1; k++) {
            slope[k] = secant[k - 1] * secant[k] > 0 ? (secant[k - 1] + secant[k]) / 2 : 0;
        }
        for (int k = 0; k < points - 1; k++) {
            limit(slope, secant, k);
        }
        return slope;
    }

    private static void limit(double[] slope, double[] secant, int k) {
        if (secant[k] == 0) {
            slope[k] = 0;
            slope[k + 1] = 0;
            return;
        }
        double radius = Math.hypot(slope[k] / secant[k], slope[k + 1] / secant[k]);
        if (radius > CIRCLE) {
            slope[k] *= CIRCLE / radius;
            slope[k + 1] *= CIRCLE / radius;
        }
    }

    /** The value at a place; before the first and after the last point theirs. NaN gives NaN. */
    public double at(double place) {
        if (Double.isNaN(place)) {
            return Double.NaN;
        }
        if (place <= x[0]) {
            return y[0];
        }
        int last = x.length - 1;
        if (place >= x[last]) {
            return y[last];
        }
        int found = Arrays.binarySearch(x, place);
        if (found >= 0) {
            return y[found];
        }
        int k = -found - 2;
        double width = x[k + 1] - x[k];
        double t = (place - x[k]) / width;
        double s = 1 - t;
        return y[k] * s * s * (1 + 2 * t) + y[k + 1] * t * t * (1 + 2 * s)
                + width * (slope[k] * t * s * s - slope[k + 1] * t * t * s);
    }

    /** The first place. */
    public double from() {
        return x[0];
    }

    /** The last place. */
    public double to() {
        return x[x.length - 1];
    }
}
