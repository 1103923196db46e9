package gripwright.statistics;

import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * The same posterior by brute force, for tests: n x n covariance matrices, drift and exchangeable means integrated into
 * them, and a plain midpoint rule over tau (and omega). Shares no code and no algebra with the engine.
 */
final class DenseCovarianceQuadrature {

    private static final double SYMMETRY = 1e-9;

    private final double[] y;
    private final int[] group;
    private final int[] block;
    private final double[] t;
    private final int groups;
    private final double blockScale;
    private final double driftDeviation;
    private final double spreadScale;

    /** Probability, mean and variance of a difference, summed over the grid. */
    record Result(double probabilityAbove, double mean, double deviation, double tauMean) {
    }

    /**
     * @param driftDeviation prior deviation of the drift in sigma, 0 for none
     * @param spreadScale    scale of the prior on omega; infinite for a flat prior on the means
     */
    DenseCovarianceQuadrature(double[] y, int[] group, double[] t, int[] block, int groups, double blockScale,
            double driftDeviation, double spreadScale) {
        this.y = y;
        this.group = group;
        this.block = block;
        this.t = t;
        this.groups = groups;
        this.blockScale = blockScale;
        this.driftDeviation = driftDeviation;
        this.spreadScale = spreadScale;
    }

    /** The posterior of mean(first) - mean(second). */
    Result difference(int first, int second, double limit, int points) {
        boolean flat = Double.isInfinite(spreadScale);
        int spreads = flat ? 1 : points;
        int cells = points * spreads;
        double[] logWeight = new double[cells];
        double[] location = new double[cells];
        double[] scale = new double[cells];
        double[] taus = new double[cells];
        int nu = flat ? y.length - groups : y.length - 1;
        for (int i = 0; i < points; i++) {
            double u = (i + 0.5) / points;
            double tau = blockScale * u / (1 - u);
            for (int j = 0; j < spreads; j++) {
                double v = (j + 0.5) / spreads;
                double omega = flat ? 0 : spreadScale * v / (1 - v);
                int cell = i * spreads + j;
                taus[cell] = tau;
                logWeight[cell] = cell(tau, omega, flat, first, second, nu, location, scale, cell)
                    - 0.5 * Math.pow(tau / blockScale, 2) - 2 * Math.log(1 - u)
                    + (flat ? 0 : -0.5 * Math.pow(omega / spreadScale, 2) - 2 * Math.log(1 - v));
            }
        }
        return sum(logWeight, location, scale, taus, nu, limit);
    }

    /** Generalised least squares with the whole covariance; returns the restricted log likelihood. */
    private double cell(double tau, double omega, boolean flat, int first, int second, int nu, double[] location,
            double[] scale, int cell) {
        int n = y.length;
        RealMatrix v = new Array2DRowRealMatrix(n, n);
        RealMatrix x = new Array2DRowRealMatrix(n, flat ? groups : 1);
        RealMatrix cross = new Array2DRowRealMatrix(n, 1); // covariance of the data with the difference, omega part
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                v.setEntry(i, j, (i == j ? 1 : 0) + (block[i] == block[j] ? tau * tau : 0)
                    + driftDeviation * driftDeviation * t[i] * t[j]
                    + (!flat && group[i] == group[j] ? omega * omega : 0));
            }
            x.setEntry(i, flat ? group[i] : 0, 1);
            cross.setEntry(i, 0, omega * omega * ((group[i] == first ? 1 : 0) - (group[i] == second ? 1 : 0)));
        }
        CholeskyDecomposition chol = new CholeskyDecomposition(v, SYMMETRY, 1e-300);
        RealMatrix inverse = chol.getSolver().getInverse();
        RealVector data = MatrixUtils.createRealVector(y);
        RealMatrix product = x.transpose().multiply(inverse).multiply(x);
        RealMatrix information = product.add(product.transpose()).scalarMultiply(0.5); // free of rounding's asymmetry
        RealMatrix covariance = new CholeskyDecomposition(information, SYMMETRY, 1e-300).getSolver().getInverse();
        RealVector b = covariance.operate(x.transpose().operate(inverse.operate(data)));
        RealVector rest = data.subtract(x.operate(b));
        double squares = rest.dotProduct(inverse.operate(rest));
        double variance;
        if (flat) {
            location[cell] = b.getEntry(first) - b.getEntry(second);
            variance = covariance.getEntry(first, first) + covariance.getEntry(second, second)
                - 2 * covariance.getEntry(first, second);
        } else {
            // Best linear prediction: prior covariance less what the data explain, plus the price of estimating m.
            RealVector c = cross.getColumnVector(0);
            RealVector solved = inverse.operate(c);
            location[cell] = solved.dotProduct(rest);
            double price = solved.dotProduct(x.getColumnVector(0));
            variance = 2 * omega * omega - c.dotProduct(solved) + price * price * covariance.getEntry(0, 0);
        }
        scale[cell] = Math.sqrt(variance * squares / nu);
        return -0.5 * Math.log(chol.getDeterminant())
            - 0.5 * Math.log(new CholeskyDecomposition(information, SYMMETRY, 1e-300).getDeterminant())
            - nu / 2.0 * Math.log(squares);
    }

    private static Result sum(double[] logWeight, double[] location, double[] scale, double[] taus, int nu,
            double limit) {
        double greatest = java.util.Arrays.stream(logWeight).max().orElseThrow();
        TDistribution student = new TDistribution(null, nu);
        double total = 0;
        double probability = 0;
        double mean = 0;
        double square = 0;
        double tau = 0;
        for (int i = 0; i < logWeight.length; i++) {
            double weight = Math.exp(logWeight[i] - greatest);
            total += weight;
            if (weight > 1e-14) {
                probability += weight * student.cumulativeProbability((location[i] - limit) / scale[i]);
            }
            mean += weight * location[i];
            square += weight * (location[i] * location[i] + scale[i] * scale[i] * nu / (nu - 2.0));
            tau += weight * taus[i];
        }
        mean /= total;
        return new Result(probability / total, mean, Math.sqrt(square / total - mean * mean), tau / total);
    }
}
