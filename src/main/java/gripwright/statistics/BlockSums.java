package gripwright.statistics;

import java.util.function.IntToDoubleFunction;

/**
 * The sums over blocks from which the derivatives of the restricted likelihood are built, at one ratio rho.
 *
 * <table>
 * <caption>Symbols and shapes (J blocks, p coefficients; standardised units)</caption>
 * <tr><th>symbol</th><th>shape</th><th>meaning</th></tr>
 * <tr><td>d</td><td>J</td><td>1/(1 + n_j rho)</td></tr>
 * <tr><td>T</td><td>J x p</td><td>block sums of the model's columns</td></tr>
 * <tr><td>R</td><td>J</td><td>block sums of the residuals z - X b</td></tr>
 * <tr><td>A^-1</td><td>p x p</td><td>inverse of X' V^-1 X, V in units of sigma^2</td></tr>
 * <tr><td>G</td><td>p x p</td><td>sum d^2 T T' = -dA/drho</td></tr>
 * <tr><td>S</td><td></td><td>residual sum of squares in the metric of V</td></tr>
 * </table>
 */
final class BlockSums {

    final LeastSquares system;
    final double rho;
    final LeastSquares.Solution solution;
    final double[] inverse;
    final double[] coefficients;
    final double[] d;
    final double[] residual;

    BlockSums(LeastSquares system, double rho) {
        this.system = system;
        this.rho = rho;
        this.solution = system.solve(rho);
        int p = system.p;
        double[] root = DenseNodes.invertTriangle(solution.triangle(), p);
        this.inverse = SquareMatrices.timesTranspose(root, p);
        this.coefficients = SquareMatrices.times(root, solution.right());
        int blocks = system.data.blocks();
        this.d = new double[blocks];
        this.residual = new double[blocks];
        for (int j = 0; j < blocks; j++) {
            double[] mean = system.data.mean[j];
            d[j] = 1 / (1 + system.data.size[j] * rho);
            double rest = mean[mean.length - 1];
            for (int c = 0; c < p; c++) {
                rest -= mean[c] * coefficients[c];
            }
            residual[j] = system.data.size[j] * rest;
        }
    }

    double size(int j) {
        return system.data.size[j];
    }

    /** The sum over blocks of a weight. */
    double sum(IntToDoubleFunction weight) {
        double sum = 0;
        for (int j = 0; j < d.length; j++) {
            sum += weight.applyAsDouble(j);
        }
        return sum;
    }

    /** The sum over blocks of a weight times T T'. */
    double[] products(IntToDoubleFunction weight) {
        int p = system.p;
        double[] result = new double[p * p];
        for (int j = 0; j < d.length; j++) {
            double[] mean = system.data.mean[j];
            double factor = weight.applyAsDouble(j) * size(j) * size(j);
            for (int r = 0; r < p; r++) {
                double entry = factor * mean[r];
                for (int c = 0; c < p && entry != 0; c++) {
                    result[r * p + c] += entry * mean[c];
                }
            }
        }
        return result;
    }

    /** The sum over blocks of a weight times T. */
    double[] totals(IntToDoubleFunction weight) {
        double[] result = new double[system.p];
        for (int j = 0; j < d.length; j++) {
            for (int c = 0; c < result.length; c++) {
                result[c] += weight.applyAsDouble(j) * size(j) * system.data.mean[j][c];
            }
        }
        return result;
    }

    /** Cross products of the deviations of the model's columns from their block means. */
    double[] withinProducts() {
        int p = system.p;
        double[] result = new double[p * p];
        for (double[] row : system.data.within) {
            for (int r = 0; r < p; r++) {
                for (int c = 0; c < p; c++) {
                    result[r * p + c] += row[r] * row[c];
                }
            }
        }
        return result;
    }

    /** Derivative of the restricted log likelihood by rho: 1/2 [tr(A^-1 G) - sum n d + nu sum d^2 R^2/S]. */
    double score() {
        double trace = SquareMatrices.traceOfProduct(inverse, products(j -> d[j] * d[j]), system.p);
        double squares = sum(j -> d[j] * d[j] * residual[j] * residual[j]);
        return 0.5 * (trace - sum(j -> size(j) * d[j]) + system.nu * squares / solution.residualSquares());
    }
}
