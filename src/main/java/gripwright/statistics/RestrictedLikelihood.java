package gripwright.statistics;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The maximum of the restricted likelihood over the ratio rho of block to residual variance: a scan of 0 and 200 values
 * on a logarithmic scale, then the root of the analytic derivative by Brent's method around each local maximum.
 *
 * <p>H. D. Patterson and R. Thompson, Biometrika 58 (1971); profiled over sigma as in D. Bates and others, Journal of
 * Statistical Software 67(1) (2015).
 */
final class RestrictedLikelihood {

    private static final int POINTS = 200;
    private static final double LEAST_EXPONENT = -6;
    private static final double GREATEST_EXPONENT = 6;
    private static final double FARTHEST = 1e16;

    private final LeastSquares system;
    private double best;
    private double bestLikelihood;
    private int interiorMaxima;

    RestrictedLikelihood(LeastSquares system) {
        this.system = system;
        search();
    }

    /** The maximising ratio; exactly 0 where the boundary is the maximum. */
    double rho() {
        return best;
    }

    /** How many local maxima lie above 0. */
    int interiorMaxima() {
        return interiorMaxima;
    }

    private void search() {
        double[] grid = new double[POINTS];
        double[] likelihood = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            grid[i] = Math.pow(10, LEAST_EXPONENT + (GREATEST_EXPONENT - LEAST_EXPONENT) * i / (POINTS - 1));
            likelihood[i] = likelihood(grid[i]);
        }
        best = 0;
        bestLikelihood = likelihood(0);
        for (int i = 0; i < POINTS; i++) {
            double before = i == 0 ? bestLikelihood : likelihood[i - 1];
            boolean last = i == POINTS - 1;
            if (likelihood[i] >= before && (last || likelihood[i] >= likelihood[i + 1])) {
                refine(i == 0 ? grid[0] / 1000 : grid[i - 1], last ? beyond(grid[i]) : grid[i + 1]);
            }
        }
    }

    private double beyond(double from) {
        double to = from;
        while (to < FARTHEST && score(to) > 0) {
            to *= 10;
        }
        return to;
    }

    private void refine(double low, double high) {
        if (!(score(low) > 0 && score(high) <= 0)) {
            return; // rounding on a flat stretch, no maximum
        }
        double rho = Math.exp(new BrentSolver(1e-15, 1e-15)
            .solve(500, x -> Math.exp(x) * score(Math.exp(x)), Math.log(low), Math.log(high)));
        interiorMaxima++;
        double value = likelihood(rho);
        if (value > bestLikelihood) {
            best = rho;
            bestLikelihood = value;
        }
    }

    private double likelihood(double rho) {
        return system.solve(rho).logLikelihood(system.nu);
    }

    private double score(double rho) {
        return new BlockSums(system, rho).score();
    }
}
