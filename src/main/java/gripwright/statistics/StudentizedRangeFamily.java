package gripwright.statistics;

import org.apache.commons.math3.special.Gamma;

/**
 * The studentized ranges of one number of groups: holds the table of the normal range that they share, so that
 * interpolants for several degrees of freedom cost one table.
 */
public final class StudentizedRangeFamily {

    private static final int PIECES = 160;
    private static final double FADED = 1e-13;
    private static final double FARTHEST = 10_000; // from there on the tail is a power of q to 1e-7 of itself

    private final int groups;
    private final NormalRange range;

    /**
     * @param groups the number of means, 2 to 100
     * @throws IllegalArgumentException if groups is out of range
     */
    public StudentizedRangeFamily(int groups) {
        StudentizedRange.requireValid(groups, 1);
        this.groups = groups;
        this.range = new NormalRange(groups, true);
    }

    /**
     * Tabulates the distribution for these degrees of freedom.
     *
     * @param degreesOfFreedom 1 or more, may be infinite
     * @return the interpolant, with an absolute error below 1e-8 (see there)
     * @throws IllegalArgumentException if the degrees of freedom are below 1 or NaN
     */
    public StudentizedRangeInterpolant interpolated(double degreesOfFreedom) {
        if (!(degreesOfFreedom >= 1)) {
            throw new IllegalArgumentException("The interpolant needs at least one degree of freedom, not "
                + degreesOfFreedom + "; use the quadrature");
        }
        if (degreesOfFreedom == Double.POSITIVE_INFINITY) {
            return new StudentizedRangeInterpolant(groups, range);
        }
        StudentizedRange.ScaleIntegral integral = new StudentizedRange.ScaleIntegral(degreesOfFreedom);
        double end = asinh(lastUseful(integral));
        double step = end / PIECES;
        double[][] columns = new double[3][PIECES + 1];
        columns[0][0] = 1;
        derivativesAtZero(degreesOfFreedom, columns);
        for (int node = 1; node <= PIECES; node++) {
            tabulateNode(node * step, integral, columns, node);
        }
        return new StudentizedRangeInterpolant(groups, degreesOfFreedom, Math.sinh(end),
            new MonotoneQuintic(0, step, columns[0], columns[1], columns[2]));
    }

    /**
     * The probability that the studentized range exceeds q, by the outer quadrature over the shared table: some
     * hundred times quicker than {@link StudentizedRange#upperTail}, within 1e-10 of it.
     *
     * @param q                any value; 0 or less gives 1, positive infinity gives 0, NaN gives NaN
     * @param degreesOfFreedom positive, may be infinite
     * @return the upper tail probability
     * @throws IllegalArgumentException if the degrees of freedom are out of range
     */
    public double upperTail(double q, double degreesOfFreedom) {
        StudentizedRange.requireValid(groups, degreesOfFreedom);
        return StudentizedRange.upperTail(q, range::interpolatedUpperTail, degreesOfFreedom);
    }

    /**
     * The value that the studentized range stays below with the given probability, from the shared table.
     *
     * @param probability      0 to 0.9999; 0 gives 0
     * @param degreesOfFreedom positive, may be infinite
     * @return the quantile, to seven digits or better
     * @throws IllegalArgumentException if an argument is out of range
     */
    public double quantile(double probability, double degreesOfFreedom) {
        StudentizedRange.requireValid(groups, degreesOfFreedom);
        if (!(probability >= 0 && probability <= 0.9999)) {
            throw new IllegalArgumentException("The probability must be from 0 to 0.9999, but is " + probability);
        }
        return probability == 0 ? 0
            : StudentizedRange.quantileOf(q -> upperTail(q, degreesOfFreedom), 1 - probability);
    }

    /** The number of groups. */
    public int groups() {
        return groups;
    }

    /** Derivatives by x = asinh q from those by log q: dx = q / sqrt(1 + q^2) dlog q. */
    private void tabulateNode(double x, StudentizedRange.ScaleIntegral integral, double[][] columns, int node) {
        double q = Math.sinh(x);
        double[] moments = new double[3];
        integral.integrate(q, range::interpolatedUpperTail, moments);
        double ratio = Math.cosh(x) / q;
        columns[0][node] = Math.min(moments[0], columns[0][node - 1]);
        columns[1][node] = moments[1] * ratio;
        columns[2][node] = moments[2] * ratio * ratio - moments[1] / (q * q);
    }

    /** Only two and three groups have a slope or curvature at 0: the density of the range starts as w^(k-2). */
    private void derivativesAtZero(double degreesOfFreedom, double[][] columns) {
        if (groups == 2) {
            double logMeanScale = 0.5 * Math.log(2 / degreesOfFreedom)
                + Gamma.logGamma((degreesOfFreedom + 1) / 2)
                - Gamma.logGamma(degreesOfFreedom / 2);
            columns[1][0] = -Math.exp(logMeanScale) / Math.sqrt(Math.PI);
        } else if (groups == 3) {
            columns[2][0] = -Math.sqrt(3) / Math.PI;
        }
    }

    private double lastUseful(StudentizedRange.ScaleIntegral integral) {
        double q = 8;
        double[] moments = new double[1];
        do {
            q *= 1.25;
            moments[0] = 0;
            integral.integrate(q, range::interpolatedUpperTail, moments);
        } while (moments[0] > FADED && q < FARTHEST);
        return q;
    }

    private static double asinh(double q) {
        return Math.log(q + Math.sqrt(1 + q * q));
    }
}
