package gripwright.statistics;

/**
 * Points in the plane as a pattern: centre, covariance, and ellipses that hold future points, all points, or the centre.
 *
 * <p>T. W. Anderson, An Introduction to Multivariate Statistical Analysis, chapters 3 and 5; V. Chew, Journal of the
 * American Statistical Association 61 (1966) 605-617 for the three kinds of ellipse. All suppose a bivariate normal
 * distribution and independent points.
 *
 * @param count      how many points have both coordinates
 * @param centre     the mean; from one point on
 * @param covariance on n - 1 degrees of freedom; from two points on
 */
public record BivariatePattern(int count, Figure<PlanePoint> centre, Figure<PlaneCovariance> covariance) {

    /**
     * Describes points.
     *
     * @param x first coordinates, NaN missing
     * @param y second coordinates, NaN missing; a point with one coordinate missing is left out
     * @return the pattern
     * @throws IllegalArgumentException if lengths differ or a coordinate is infinite
     */
    public static BivariatePattern of(double[] x, double[] y) {
        CompletePairs pairs = CompletePairs.of(x, y);
        Sample sx = Sample.of(pairs.x());
        Sample sy = Sample.of(pairs.y());
        int n = sx.count();
        Figure<PlanePoint> centre = n == 0 ? Figure.none(Shortfall.TOO_FEW_VALUES)
            : Figure.of(new PlanePoint(sx.mean(), sy.mean()));
        if (n < 2) {
            return new BivariatePattern(n, centre, Figure.none(Shortfall.TOO_FEW_VALUES));
        }
        double products = 0;
        for (int i = 0; i < n; i++) {
            products += (sx.values()[i] - sx.origin() - sx.offset()) * (sy.values()[i] - sy.origin() - sy.offset());
        }
        return new BivariatePattern(n, centre,
            Figure.of(new PlaneCovariance(sx.variance(), products / (n - 1), sy.variance())));
    }

    /** Whether all points lie on a line; two points always do, and so does one. */
    public boolean isCollinear() {
        return !covariance.isAvailable() || covariance.get().isFlat();
    }

    /**
     * An ellipse around the centre.
     *
     * @param kind        what it shall hold
     * @param probability of the claim, between 0 and 1
     * @return the ellipse, of area 0 where the points lie on a line; too few values below two points for coverage and
     *     below three for the others
     * @throws IllegalArgumentException if the probability is out of range
     */
    public Figure<Ellipse> ellipse(EllipseKind kind, double probability) {
        Distributions.requireConfidence(probability);
        if (count < kind.fewestPoints()) {
            return Figure.none(Shortfall.TOO_FEW_VALUES);
        }
        PlaneCovariance shape = covariance.get();
        double squaredRadius = kind.squaredRadius(probability, count);
        return Figure.of(new Ellipse(kind, probability, squaredRadius, centre.get(),
            Math.sqrt(squaredRadius * shape.majorVariance()), Math.sqrt(squaredRadius * shape.minorVariance()),
            shape.angleDegrees()));
    }
}
