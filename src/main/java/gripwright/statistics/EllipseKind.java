package gripwright.statistics;

/**
 * What an ellipse around a centre claims to hold; the three are often confused.
 */
public enum EllipseKind {
    /**
     * A share of all points if centre and covariance were known exactly: squared radius chi2_2(p) = -2 log(1 - p). Too
     * small for few points.
     */
    COVERAGE("chi squared on 2 degrees of freedom, centre and covariance taken as known", 2),
    /**
     * The next point with probability p, averaged over samples: squared radius
     * 2 (n - 1)(n + 1)/(n (n - 2)) F_2,n-2(p).
     */
    PREDICTION("the next point, 2(n-1)(n+1)/(n(n-2)) times F on 2 and n-2 degrees of freedom", 3),
    /** The true centre with confidence p: squared radius 2 (n - 1)/(n (n - 2)) F_2,n-2(p). */
    CONFIDENCE_OF_CENTRE("the true centre, 2(n-1)/(n(n-2)) times F on 2 and n-2 degrees of freedom", 3);

    private final String distribution;
    private final int fewestPoints;

    EllipseKind(String distribution, int fewestPoints) {
        this.distribution = distribution;
        this.fewestPoints = fewestPoints;
    }

    /** The distribution that the radius comes from, in words. */
    public String distribution() {
        return distribution;
    }

    /** How many points it takes. */
    public int fewestPoints() {
        return fewestPoints;
    }

    /** The squared radius in units of the covariance. */
    double squaredRadius(double probability, int n) {
        double spread = n > 2 ? 2.0 * (n - 1) / ((double) n * (n - 2)) : 0;
        return switch (this) {
            case COVERAGE -> -2 * Math.log1p(-probability);
            case PREDICTION -> spread * (n + 1) * Distributions.fQuantileTwo(probability, n - 2);
            case CONFIDENCE_OF_CENTRE -> spread * Distributions.fQuantileTwo(probability, n - 2);
        };
    }
}
