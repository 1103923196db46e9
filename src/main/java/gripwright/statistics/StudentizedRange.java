package gripwright.statistics;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.special.Gamma;

/**
 * The distribution of the studentized range, on which the comparison of all pairs of several means rests.
 *
 * <p>With k independent normal values of equal variance and an independent estimate s of their standard deviation on
 * nu degrees of freedom, Q = range / s and
 * P(Q &gt; q) = int f_nu(s) P(R_k &gt; q s) ds, f_nu the density of sqrt(chi2_nu / nu) and R_k the range of k standard
 * normal values. Both integrals are taken by composite Gauss-Legendre quadrature, the outer one over t = log s, where the
 * integrand is log-concave, with panels of 2.5 standard deviations of t outwards until nothing is added. Absolute error
 * is below 1e-10 and relative error below 1e-8 for 2 to 100 groups and any nu of 1 or more. For two groups
 * P(Q &gt; q) = 2 P(t_nu &gt; q / sqrt 2), which the tests hold the quadrature to.
 *
 * <p>Sources: H. L. Harter, Annals of Mathematical Statistics 31 (1960) 1122-1147, for the double integral;
 * M. D. Copenhaver and B. Holland, Journal of Statistical Computation and Simulation 30 (1988) 1-15, for its use.
 */
public final class StudentizedRange {

    private static final int ORDER = 16;
    private static final double PANEL_DEVIATIONS = 2.5;
    private static final double WIDEST_FIRST_PANEL = 0.4;
    private static final double GROWTH = 1.3;
    private static final double NEGLIGIBLE = 1e-18;
    private static final double NO_PROBABILITY = -700; // its exponential is the end of the doubles
    private static final int MOST_GROUPS = 100;

    private StudentizedRange() {
    }

    /**
     * The probability that the studentized range exceeds q.
     *
     * @param q                any value; 0 or less gives 1, positive infinity gives 0, NaN gives NaN
     * @param groups           the number of means, 2 to 100
     * @param degreesOfFreedom those of the standard deviation: positive, need not be whole, may be infinite
     * @return the upper tail probability
     * @throws IllegalArgumentException if groups or degrees of freedom are out of range
     */
    public static double upperTail(double q, int groups, double degreesOfFreedom) {
        requireValid(groups, degreesOfFreedom);
        return upperTail(q, new NormalRange(groups, false)::upperTail, degreesOfFreedom);
    }

    /**
     * The probability that the studentized range is at most q: 1 - {@link #upperTail}.
     *
     * @param q                as for {@link #upperTail}
     * @param groups           as for {@link #upperTail}
     * @param degreesOfFreedom as for {@link #upperTail}
     * @return the lower tail probability, to an absolute error of 1e-10
     */
    public static double cumulative(double q, int groups, double degreesOfFreedom) {
        return 1 - upperTail(q, groups, degreesOfFreedom);
    }

    /**
     * The value that the studentized range stays below with the given probability, to ten digits.
     *
     * @param probability      0 to below 1; 0 gives 0
     * @param groups           as for {@link #upperTail}
     * @param degreesOfFreedom as for {@link #upperTail}
     * @return the quantile
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static double quantile(double probability, int groups, double degreesOfFreedom) {
        requireValid(groups, degreesOfFreedom);
        if (!(probability >= 0 && probability < 1)) {
            throw new IllegalArgumentException("The probability must be at least 0 and below 1, but is " + probability);
        }
        if (probability == 0) {
            return 0;
        }
        NormalRange range = new NormalRange(groups, false);
        return quantileOf(q -> upperTail(q, range::upperTail, degreesOfFreedom), 1 - probability);
    }

    /**
     * The same distribution, tabulated once for thousands of quick calls. The caller keeps it; nothing is cached here.
     *
     * @param groups           as for {@link #upperTail}
     * @param degreesOfFreedom 1 or more, may be infinite
     * @return the interpolant
     */
    public static StudentizedRangeInterpolant interpolated(int groups, double degreesOfFreedom) {
        return new StudentizedRangeFamily(groups).interpolated(degreesOfFreedom);
    }

    static void requireValid(int groups, double degreesOfFreedom) {
        if (groups < 2 || groups > MOST_GROUPS) {
            throw new IllegalArgumentException("A studentized range needs 2 to " + MOST_GROUPS + " groups, not " + groups);
        }
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("The degrees of freedom must be positive, not " + degreesOfFreedom);
        }
    }

    /** A function of one number without boxing. */
    @FunctionalInterface
    interface Tail {
        double at(double x);
    }

    static double upperTail(double q, Tail rangeTail, double degreesOfFreedom) {
        if (Double.isNaN(q)) {
            return Double.NaN;
        }
        if (q <= 0) {
            return 1;
        }
        if (q == Double.POSITIVE_INFINITY) {
            return 0;
        }
        if (degreesOfFreedom == Double.POSITIVE_INFINITY) {
            return rangeTail.at(q);
        }
        double[] moments = new double[1];
        new ScaleIntegral(degreesOfFreedom).integrate(q, rangeTail, moments);
        return Math.min(1, moments[0]);
    }

    static double quantileOf(Tail tail, double upperProbability) {
        double low = 0;
        double high = 4;
        while (tail.at(high) > upperProbability) {
            low = high;
            high *= 2;
            if (high > 1e300) {
                return Double.POSITIVE_INFINITY;
            }
        }
        double target = Math.log(upperProbability);
        // The logarithm of the tail is nearly straight, which Brent's search likes.
        return new BrentSolver(1e-13, 1e-13).solve(500, q -> Math.log(tail.at(q)) - target, low, high);
    }

    /** The outer integral, over the logarithm t of the estimated scale. */
    static final class ScaleIntegral {

        private static final LegendreRule RULE = LegendreRule.ofOrder(ORDER);

        private final double degreesOfFreedom;
        private final double half;
        private final double logConstant;
        private final double firstPanel;

        ScaleIntegral(double degreesOfFreedom) {
            this.degreesOfFreedom = degreesOfFreedom;
            this.half = degreesOfFreedom / 2;
            this.logConstant = Math.log(2) + logNormalisation(half);
            this.firstPanel = Math.min(WIDEST_FIRST_PANEL, PANEL_DEVIATIONS / Math.sqrt(2 * degreesOfFreedom));
        }

        /** a log a - a - log Gamma(a), by Stirling's series where the difference would lose digits. */
        static double logNormalisation(double a) {
            if (a < 20) {
                return a * Math.log(a) - a - Gamma.logGamma(a);
            }
            double inverseSquare = 1 / (a * a);
            return 0.5 * Math.log(a) - StandardNormal.LOG_SQRT_TWO_PI
                - (1.0 / 12 - inverseSquare * (1.0 / 360 - inverseSquare * (1.0 / 1260 - inverseSquare / 1680))) / a;
        }

        /**
         * Adds to moments[0] the tail at q and, where there is room, to moments[1] and [2] its first and second
         * derivative by log q. As q s depends on log q + t alone, the derivatives move by parts onto the density of t:
         * f' = f nu (1 - s^2), f'' = f [nu^2 (1 - s^2)^2 - 2 nu s^2], the first with a minus sign.
         */
        void integrate(double q, Tail rangeTail, double[] moments) {
            // With exp(-w^2/4) in the place of the range's tail the integrand would peak at t = mode.
            double mode = -0.5 * Math.log1p(q * q / (2 * degreesOfFreedom));
            if (logDensity(mode) - q * q * Math.exp(2 * mode) / 4 < NO_PROBABILITY) {
                return;
            }
            int panels = (int) Math.ceil(-mode / firstPanel);
            double width = panels == 0 ? 0 : -mode / panels;
            for (int panel = 0; panel < panels; panel++) {
                addPanel(mode + panel * width, width, q, rangeTail, moments);
            }
            march(0, firstPanel, q, rangeTail, moments);
            march(mode, -firstPanel, q, rangeTail, moments);
        }

        private void march(double from, double firstWidth, double q, Tail rangeTail, double[] moments) {
            double place = from;
            double width = firstWidth;
            double widest = Math.max(Math.abs(firstWidth), 3 / degreesOfFreedom);
            while (addPanel(width > 0 ? place : place + width, Math.abs(width), q, rangeTail, moments)
                > NEGLIGIBLE * moments[0]) {
                place += width;
                if (width < 0 && -width * GROWTH <= widest) {
                    width *= GROWTH; // to the left the integrand fades like s^nu, smoothly
                }
            }
        }

        private double addPanel(double from, double width, double q, Tail rangeTail, double[] moments) {
            double sum = 0;
            double first = 0;
            double second = 0;
            for (int i = 0; i < ORDER; i++) {
                double t = from + width * (1 + RULE.nodes()[i]) / 2;
                double mass = RULE.weights()[i] * Math.exp(logDensity(t)) * rangeTail.at(q * Math.exp(t));
                double pull = -degreesOfFreedom * Math.expm1(2 * t);
                sum += mass;
                first -= mass * pull;
                second += mass * (pull * pull + 2 * (pull - degreesOfFreedom));
            }
            moments[0] += sum * width / 2;
            if (moments.length == 3) {
                moments[1] += first * width / 2;
                moments[2] += second * width / 2;
            }
            return sum * width / 2;
        }

        private double logDensity(double t) {
            return logConstant - half * (Math.expm1(2 * t) - 2 * t);
        }
    }
}
