package gripwright.statistics;

import java.util.function.DoubleUnaryOperator;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.special.Gamma;

/**
 * The posterior of a standard deviation or of a ratio of two. Immutable.
 *
 * <p>Its {@link #estimate() estimate} is the posterior mean; quantiles come from the distribution function by Brent's
 * search. All NaN where the fit is not available.
 */
public final class ScalePosterior {

    private static final double ACCURACY = 1e-10;
    private static final double NEGLIGIBLE = 1e-14;
    private static final LegendreRule FINE = LegendreRule.ofOrder(16);
    private static final int FINE_PANELS = 32;

    private final double mean;
    private final double unit;
    private final Supplier<DoubleUnaryOperator> cumulative;

    /**
     * @param mean       the posterior mean
     * @param unit       a size to begin the search at
     * @param cumulative makes the distribution function, on (0, infinity), only when it is asked for
     */
    private ScalePosterior(double mean, double unit, Supplier<DoubleUnaryOperator> cumulative) {
        this.mean = mean;
        this.unit = unit;
        this.cumulative = cumulative;
    }

    static ScalePosterior undefined() {
        return new ScalePosterior(Double.NaN, Double.NaN, null);
    }

    /** The ratio tau, whose density is a polynomial in u = tau/(tau + scale). */
    static ScalePosterior ofRatio(GridNodes nodes, double scale) {
        double mean = 0;
        for (int i = 0; i < nodes.size(); i++) {
            mean += nodes.weight[i] * nodes.tau[nodes.base[i]];
        }
        return new ScalePosterior(mean, mean, () -> {
            LegendreSeries series = new LegendreSeries(nodes.rule, nodes.tauMass);
            return tau -> series.cumulative(2 * tau / (tau + scale) - 1);
        });
    }

    /** The residual standard deviation: given a node S/sigma^2 is chi-squared with nu degrees of freedom. */
    static ScalePosterior ofResidual(GridNodes nodes, double unit) {
        double mean = 0;
        for (int i = 0; i < nodes.size(); i++) {
            mean += nodes.weight[i] * Math.sqrt(nodes.squares[i]);
        }
        mean *= meanInverseChi(nodes.nu) * unit;
        return new ScalePosterior(mean, Math.sqrt(nodes.squares[0] / nodes.nu) * unit, () -> x -> {
            double sum = 0;
            for (int i = 0; i < nodes.size(); i++) {
                sum += nodes.weight[i] * notAbove(x / unit, nodes.squares[i], nodes.nu);
            }
            return sum;
        });
    }

    /**
     * The standard deviation between blocks, tau sigma. Given tau it is narrower than the nodes of tau are apart, so
     * that the density of tau is first carried over to a finer rule.
     */
    static ScalePosterior ofBlocks(GridNodes nodes, double scale, double unit) {
        double mean = 0;
        for (int i = 0; i < nodes.size(); i++) {
            mean += nodes.weight[i] * nodes.tau[nodes.base[i]] * Math.sqrt(nodes.squares[i]);
        }
        double estimate = mean * meanInverseChi(nodes.nu) * unit;
        double start = mean / Math.sqrt(nodes.nu) * unit;
        return new ScalePosterior(estimate, start, () -> blockDistribution(nodes, scale, unit));
    }

    private static DoubleUnaryOperator blockDistribution(GridNodes nodes, double scale, double unit) {
        LegendreSeries series = new LegendreSeries(nodes.rule, nodes.tauMass);
        LegendreRule fine = FINE.repeated(-1, 1, FINE_PANELS);
        double[] weight = new double[fine.size()];
        double[] squares = new double[fine.size()];
        UnivariateFunction squaresAt = squaresByTau(nodes);
        double total = 0;
        for (int i = 0; i < weight.length; i++) {
            double u = (1 + fine.nodes()[i]) / 2;
            double tau = scale * u / (1 - u);
            weight[i] = Math.max(0, fine.weights()[i] * series.density(fine.nodes()[i]));
            total += weight[i];
            squares[i] = tau * tau * squaresAt.value(tau);
        }
        double sum = total;
        return x -> {
            double inside = 0;
            for (int i = 0; i < weight.length; i++) {
                if (weight[i] > NEGLIGIBLE) {
                    inside += weight[i] / sum * notAbove(x / unit, squares[i], nodes.nu);
                }
            }
            return inside;
        };
    }

    /** The posterior mean of S for every tau that has nodes; equal to S itself under the flat prior. */
    private static UnivariateFunction squaresByTau(GridNodes nodes) {
        double[] mass = new double[nodes.tau.length];
        double[] sum = new double[nodes.tau.length];
        for (int i = 0; i < nodes.size(); i++) {
            mass[nodes.base[i]] += nodes.weight[i];
            sum[nodes.base[i]] += nodes.weight[i] * nodes.squares[i];
        }
        int[] used = IntStream.range(0, mass.length).filter(b -> mass[b] > 0).toArray();
        return tau -> {
            int after = 0;
            while (after < used.length && nodes.tau[used[after]] < tau) {
                after++;
            }
            int high = used[Math.min(after, used.length - 1)];
            int low = used[Math.max(0, Math.min(after, used.length) - 1)];
            double gap = nodes.tau[high] - nodes.tau[low];
            double share = gap > 0 ? Math.min(1, (tau - nodes.tau[low]) / gap) : 0;
            return (1 - share) * sum[low] / mass[low] + share * sum[high] / mass[high];
        };
    }

    /** E sqrt(1/chi^2), infinite with one degree of freedom. */
    private static double meanInverseChi(double nu) {
        return nu <= 1 ? Double.POSITIVE_INFINITY
            : Math.sqrt(0.5) * Math.exp(Gamma.logGamma((nu - 1) / 2) - Gamma.logGamma(nu / 2));
    }

    private static double notAbove(double x, double squares, double nu) {
        double half = squares / (2 * x * x);
        // Far out the continued fraction has nothing left to say and would only run long.
        return half > 40 * nu + 800 ? 0 : Gamma.regularizedGammaQ(nu / 2, half);
    }

    /** The posterior mean; infinite for standard deviations with one degree of freedom. */
    public double estimate() {
        return mean;
    }

    /** The posterior median. */
    public double median() {
        return quantile(0.5);
    }

    /**
     * The value that is not exceeded with the given probability.
     *
     * @throws IllegalArgumentException unless the probability lies between 0 and 1
     */
    public double quantile(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("A probability between 0 and 1 is wanted, not " + probability);
        }
        if (cumulative == null) {
            return Double.NaN;
        }
        DoubleUnaryOperator distribution = cumulative.get();
        double start = unit;
        double low = start;
        double high = start;
        while (low > start * 1e-12 && distribution.applyAsDouble(low) >= probability) {
            low /= 2;
        }
        while (high < start * 1e12 && distribution.applyAsDouble(high) <= probability) {
            high *= 2;
        }
        double excess = distribution.applyAsDouble(low) - probability;
        if (excess >= 0) {
            return low;
        }
        return new BrentSolver(ACCURACY, ACCURACY * start)
            .solve(500, x -> distribution.applyAsDouble(x) - probability, low, high);
    }

    /**
     * The interval that leaves equal probability on either side.
     *
     * @param level the probability inside, between 0 and 1
     * @return the interval of the two quantiles; see {@link #quantile} for where there is none
     */
    public Interval interval(double level) {
        return new Interval(quantile((1 - level) / 2), quantile((1 + level) / 2));
    }
}
