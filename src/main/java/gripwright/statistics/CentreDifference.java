package gripwright.statistics;

/**
 * Hotelling's test of whether two patterns have the same centre, with one covariance or with two.
 *
 * @param dx           first centre less second along x
 * @param dy           the same along y
 * @param tSquared     Hotelling's T2
 * @param test         F from T2 with its degrees of freedom and p-value
 * @param mahalanobis  distance of the centres in units of the covariance: pooled, or the mean of the two
 */
public record CentreDifference(double dx, double dy, double tSquared, FTest test, double mahalanobis) {

    private static final int DIMENSIONS = 2;

    /**
     * T2 with the pooled covariance S: T2 = n1 n2/(n1 + n2) d' S^-1 d, F = T2 (N - 3)/(2 (N - 2)) on 2 and N - 3 degrees
     * of freedom, N = n1 + n2 (H. Hotelling, Annals of Mathematical Statistics 2 (1931) 360-378).
     *
     * @param first  one pattern
     * @param second another
     * @return the test; too few values where a pattern is empty or N is below 4; collinear where the pooled covariance
     *     has no area
     */
    public static Figure<CentreDifference> pooled(BivariatePattern first, BivariatePattern second) {
        int n1 = first.count();
        int n2 = second.count();
        int denominator = n1 + n2 - DIMENSIONS - 1;
        if (n1 < 1 || n2 < 1 || denominator < 1) {
            return Figure.none(Shortfall.TOO_FEW_VALUES);
        }
        PlaneCovariance pooled = squares(first).plus(squares(second)).scaled(1.0 / (n1 + n2 - 2));
        if (pooled.isFlat()) {
            return Figure.none(Shortfall.COLLINEAR);
        }
        double dx = first.centre().get().x() - second.centre().get().x();
        double dy = first.centre().get().y() - second.centre().get().y();
        double distance = pooled.squaredDistance(dx, dy);
        double tSquared = (double) n1 * n2 / (n1 + n2) * distance;
        double f = tSquared * denominator / (DIMENSIONS * (n1 + n2 - 2.0));
        return Figure.of(new CentreDifference(dx, dy, tSquared, FTest.of(f, DIMENSIONS, denominator),
            Math.sqrt(distance)));
    }

    /**
     * T2 with a covariance for each pattern: T2 = d' (S1/n1 + S2/n2)^-1 d, F = T2 (nu - 1)/(2 nu) on 2 and nu - 1 degrees
     * of freedom, nu = 6 / sum [tr(A^2) + tr(A)^2]/(n - 1) with A = (S/n)(S1/n1 + S2/n2)^-1 (K. Krishnamoorthy and J. Yu,
     * Statistics and Probability Letters 66 (2004) 161-169).
     *
     * @param first  one pattern
     * @param second another
     * @return the test; too few values where a pattern has fewer than two points or nu is 1 or less; collinear where
     *     both patterns lie on parallel lines
     */
    public static Figure<CentreDifference> unequal(BivariatePattern first, BivariatePattern second) {
        if (first.count() < 2 || second.count() < 2) {
            return Figure.none(Shortfall.TOO_FEW_VALUES);
        }
        PlaneCovariance a = first.covariance().get().scaled(1.0 / first.count());
        PlaneCovariance b = second.covariance().get().scaled(1.0 / second.count());
        PlaneCovariance sum = a.plus(b);
        if (sum.isFlat()) {
            return Figure.none(Shortfall.COLLINEAR);
        }
        double nu = (DIMENSIONS + DIMENSIONS * DIMENSIONS)
            / (share(a, sum) / (first.count() - 1) + share(b, sum) / (second.count() - 1));
        if (nu <= 1) {
            return Figure.none(Shortfall.TOO_FEW_VALUES);
        }
        double dx = first.centre().get().x() - second.centre().get().x();
        double dy = first.centre().get().y() - second.centre().get().y();
        double tSquared = sum.squaredDistance(dx, dy);
        PlaneCovariance mean = first.covariance().get().plus(second.covariance().get()).scaled(0.5);
        return Figure.of(new CentreDifference(dx, dy, tSquared,
            FTest.of(tSquared * (nu - 1) / (DIMENSIONS * nu), DIMENSIONS, nu - 1),
            Math.sqrt(mean.squaredDistance(dx, dy))));
    }

    private static PlaneCovariance squares(BivariatePattern pattern) {
        return pattern.count() < 2 ? new PlaneCovariance(0, 0, 0)
            : pattern.covariance().get().scaled(pattern.count() - 1);
    }

    /** tr(A A) + tr(A)^2 for A = part sum^-1. */
    private static double share(PlaneCovariance part, PlaneCovariance sum) {
        double det = sum.determinant();
        double a11 = (part.xx() * sum.yy() - part.xy() * sum.xy()) / det;
        double a12 = (part.xy() * sum.xx() - part.xx() * sum.xy()) / det;
        double a21 = (part.xy() * sum.yy() - part.yy() * sum.xy()) / det;
        double a22 = (part.yy() * sum.xx() - part.xy() * sum.xy()) / det;
        return a11 * a11 + 2 * a12 * a21 + a22 * a22 + (a11 + a22) * (a11 + a22);
    }
}
