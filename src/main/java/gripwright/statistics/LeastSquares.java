package gripwright.statistics;

/**
 * Generalised least squares of the standardised response on group columns and drift for a given ratio rho of block
 * variance to residual variance, through the block structure; never an n x n matrix.
 *
 * <p>With d_j = 1/(1 + n_j rho) the rows sqrt(n_j d_j) [block means] are stacked under the factor of the deviations
 * within blocks (and the row of the drift prior), and the stack is reduced to [R q; 0 r]. Then the estimate is R^-1 q,
 * its covariance over sigma^2 is R^-1 R^-T and the residual sum of squares is r^2. S. R. Searle, G. Casella and C. E.
 * McCulloch, Variance Components (1992), chapter 6, for the likelihood; the reduction is plain least squares.
 *
 * <table>
 * <caption>Symbols and shapes</caption>
 * <tr><th>symbol</th><th>shape</th><th>meaning</th></tr>
 * <tr><td>p</td><td></td><td>coefficients: K present groups, then the drift where it is in the model</td></tr>
 * <tr><td>R</td><td>p x p</td><td>upper triangle, by row</td></tr>
 * <tr><td>q</td><td>p</td><td>right-hand side</td></tr>
 * <tr><td>nu</td><td></td><td>n - p, one more with a proper drift prior</td></tr>
 * </table>
 */
final class LeastSquares {

    /**
     * The reduced system at one rho.
     *
     * @param triangle        R, by row
     * @param right           q
     * @param residualSquares r^2
     * @param logDeterminant  sum of log |R_ii|
     * @param logBlocks       sum of log(1 + n_j rho)
     */
    record Solution(double[] triangle, double[] right, double residualSquares, double logDeterminant, double logBlocks) {

        /** Restricted log likelihood without constants: -1/2 logBlocks - logDeterminant - nu/2 log r^2. */
        double logLikelihood(double nu) {
            return -0.5 * logBlocks - logDeterminant - nu / 2 * Math.log(residualSquares);
        }
    }

    final BlockedData data;
    final boolean drift;
    final int p;
    final int nu;
    private final double driftPrecisionRoot;

    LeastSquares(BlockedData data, DriftPrior prior) {
        this.data = data;
        this.drift = !prior.isNone() && data.covariateVaries;
        this.p = data.present.length + (drift ? 1 : 0);
        this.driftPrecisionRoot = drift && prior.isProper() ? 1 / prior.standardDeviation() : 0;
        this.nu = data.n - p + (driftPrecisionRoot > 0 ? 1 : 0);
    }

    /** Whether the model explains every value within blocks exactly, so that no noise is left to estimate. */
    boolean noNoise() {
        boolean freeDrift = drift && driftPrecisionRoot == 0;
        double rest = data.freeWithin(freeDrift) > 0
            ? data.residualWithin(drift, driftPrecisionRoot) : solve(0).residualSquares();
        return rest <= data.rounding();
    }

    /** Solves for one ratio of variances. */
    Solution solve(double rho) {
        double logBlocks = 0;
        double product = 1;
        double[] weight = new double[data.blocks()];
        for (int j = 0; j < weight.length; j++) {
            double inflation = 1 + data.size[j] * rho;
            weight[j] = data.size[j] / inflation;
            product *= inflation;
            if (product > 1e250) { // one logarithm for many factors
                logBlocks += Math.log(product);
                product = 1;
            }
        }
        logBlocks += Math.log(product);
        return data.isNested() ? solveNested(weight, logBlocks) : solveCrossed(weight, logBlocks);
    }

    /** The general case: the stack is reduced as it stands. */
    private Solution solveCrossed(double[] weight, double logBlocks) {
        int groups = data.present.length;
        int innerRows = data.within.length;
        int rows = innerRows + weight.length + 1;
        double[] stack = new double[rows * (p + 1)];
        for (int c = 0; c <= p; c++) {
            int source = c < p ? c : groups + 1;
            for (int r = 0; r < innerRows; r++) {
                stack[c * rows + r] = data.within[r][source];
            }
            for (int j = 0; j < weight.length; j++) {
                stack[c * rows + innerRows + j] = Math.sqrt(weight[j]) * data.mean[j][source];
            }
        }
        if (drift) {
            stack[groups * rows + rows - 1] = driftPrecisionRoot;
        }
        Householder.reduce(stack, rows, p + 1, 0);
        double[] triangle = new double[p * p];
        double[] right = new double[p];
        double logDeterminant = 0;
        for (int r = 0; r < p; r++) {
            double sign = Math.signum(stack[r * rows + r]); // a positive diagonal, as in the nested case
            for (int c = r; c < p; c++) {
                triangle[r * p + c] = sign * stack[c * rows + r];
            }
            right[r] = sign * stack[p * rows + r];
            logDeterminant += Math.log(Math.abs(triangle[r * p + r]));
        }
        double rest = p < rows ? stack[p * rows + p] : 0;
        return new Solution(triangle, right, rest * rest, logDeterminant, logBlocks);
    }

    /**
     * Each block in one group: the group columns are orthogonal to each other and absent within blocks, so that the
     * reflections reduce to weighted means per group, and two columns (t, z) are left to reduce.
     */
    private Solution solveNested(double[] weight, double logBlocks) {
        int groups = data.present.length;
        double[] mass = new double[groups];
        double[] t = new double[groups];
        double[] z = new double[groups];
        for (int j = 0; j < weight.length; j++) {
            int k = data.groupOfBlock[j];
            mass[k] += weight[j];
            t[k] += weight[j] * data.mean[j][groups];
            z[k] += weight[j] * data.mean[j][groups + 1];
        }
        double[] triangle = new double[p * p];
        double[] right = new double[p];
        double logDeterminant = 0;
        for (int k = 0; k < groups; k++) {
            t[k] /= mass[k];
            z[k] /= mass[k];
            double root = Math.sqrt(mass[k]);
            triangle[k * p + k] = root;
            right[k] = root * z[k];
            logDeterminant += 0.5 * Math.log(mass[k]);
            if (drift) {
                triangle[k * p + groups] = root * t[k];
            }
        }
        double slope = 0;
        if (drift) {
            double[] products = driftProducts(weight, t, z);
            double root = Math.sqrt(products[0]);
            slope = products[1] / products[0];
            triangle[p * p - 1] = root;
            right[groups] = products[1] / root;
            logDeterminant += 0.5 * Math.log(products[0]);
        }
        return new Solution(triangle, right, restSquares(weight, t, z, slope), logDeterminant, logBlocks);
    }

    /** Sum of squares of t and of products of t and z, about the group means. */
    private double[] driftProducts(double[] weight, double[] t, double[] z) {
        int groups = data.present.length;
        double squares = driftPrecisionRoot * driftPrecisionRoot;
        double products = 0;
        for (double[] row : data.within) {
            squares += row[groups] * row[groups];
            products += row[groups] * row[groups + 1];
        }
        for (int j = 0; j < weight.length; j++) {
            int k = data.groupOfBlock[j];
            double deviation = data.mean[j][groups] - t[k];
            squares += weight[j] * deviation * deviation;
            products += weight[j] * deviation * (data.mean[j][groups + 1] - z[k]);
        }
        return new double[] {squares, products};
    }

    private double restSquares(double[] weight, double[] t, double[] z, double slope) {
        int groups = data.present.length;
        double rest = driftPrecisionRoot * slope * driftPrecisionRoot * slope;
        for (double[] row : data.within) {
            double deviation = row[groups + 1] - slope * row[groups];
            rest += deviation * deviation;
        }
        for (int j = 0; j < weight.length; j++) {
            int k = data.groupOfBlock[j];
            double deviation = data.mean[j][groups + 1] - z[k] - slope * (data.mean[j][groups] - t[k]);
            rest += weight[j] * deviation * deviation;
        }
        return rest;
    }
}
