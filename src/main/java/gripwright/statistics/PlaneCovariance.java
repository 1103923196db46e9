package gripwright.statistics;

/**
 * The covariance matrix of points in the plane, with its axes.
 *
 * @param xx variance along x
 * @param xy covariance
 * @param yy variance along y
 */
public record PlaneCovariance(double xx, double xy, double yy) {

    /** Relative to the product of the variances, below this the determinant is rounding. */
    private static final double NO_AREA = 1e-12;

    /** Whether the points lie on a line, or in a point, to rounding. */
    public boolean isFlat() {
        return !(determinant() > NO_AREA * xx * yy);
    }

    /** xx yy - xy^2. */
    public double determinant() {
        return xx * yy - xy * xy;
    }

    /** The variance along the longer axis: the larger eigenvalue. */
    public double majorVariance() {
        return (xx + yy + Math.hypot(xx - yy, 2 * xy)) / 2;
    }

    /** The variance along the shorter axis, 0 where flat: the determinant over the larger eigenvalue. */
    public double minorVariance() {
        return isFlat() ? 0 : determinant() / majorVariance();
    }

    /** The direction of the longer axis from x towards y in degrees, above -90 to 90; 0 for a circle. */
    public double angleDegrees() {
        double degrees = Math.toDegrees(Math.atan2(2 * xy, xx - yy)) / 2;
        return degrees == -90 ? 90 : degrees;
    }

    /** d' S^-1 d; only where not flat. */
    double squaredDistance(double dx, double dy) {
        return (yy * dx * dx - 2 * xy * dx * dy + xx * dy * dy) / determinant();
    }

    PlaneCovariance scaled(double factor) {
        return new PlaneCovariance(factor * xx, factor * xy, factor * yy);
    }

    PlaneCovariance plus(PlaneCovariance other) {
        return new PlaneCovariance(xx + other.xx, xy + other.xy, yy + other.yy);
    }
}
