package gripwright.statistics;

import java.util.Arrays;

/**
 * Grid nodes without any assumption on blocks and groups.
 *
 * <p>b = F D g, C = F D F': F is the inverse triangle R^-1 (turned by the orthogonal U under the exchangeable prior), g
 * the right-hand side (turned alike) and D the shrinkage 1/(1 + lambda/omega^2), 1 under the flat prior. The exchangeable
 * prior adds the precision P/omega^2, P the centring of the group coefficients (their common mean integrated out), and
 * U' (R^-T P R^-1) U = diag(lambda) makes every omega a matter of p numbers: S = r^2 + sum g^2 (1 - D), determinant
 * |R|^2 prod(1 + lambda/omega^2).
 *
 * <table>
 * <caption>Symbols and shapes beyond those of {@link GridNodes}</caption>
 * <tr><th>symbol</th><th>shape</th><th>meaning</th></tr>
 * <tr><td>factor</td><td>B x p p</td><td>F, by row</td></tr>
 * <tr><td>right</td><td>B x p</td><td>g</td></tr>
 * <tr><td>turn</td><td>B x p p</td><td>U, by row; null under the flat prior</td></tr>
 * <tr><td>shrink</td><td>N p</td><td>D</td></tr>
 * </table>
 */
final class DenseNodes extends GridNodes {

    private final double[][] factor;
    private final double[][] right;
    private final double[][] turn;
    private final double[] shrink;

    DenseNodes(FlatGrid grid) {
        super(grid);
        factor = new double[size()][];
        right = new double[size()][];
        for (int i = 0; i < size(); i++) {
            LeastSquares.Solution solution = grid.solutions[grid.kept[i]];
            factor[i] = invertTriangle(solution.triangle(), p);
            right[i] = solution.right();
        }
        turn = null;
        shrink = new double[size() * p];
        Arrays.fill(shrink, 1);
    }

    private DenseNodes(DenseNodes flat, Spreads grid) {
        super(flat, grid);
        factor = grid.factor;
        right = grid.right;
        turn = grid.turn;
        shrink = new double[size() * p];
        for (int i = 0; i < size(); i++) {
            for (int l = 0; l < p; l++) {
                shrink[i * p + l] = 1 / (1 + grid.lambda[base[i]][l] / (omega[i] * omega[i]));
            }
        }
    }

    @Override
    GridNodes exchangeable(GroupPrior prior) {
        return new DenseNodes(this, new Spreads(this, prior));
    }

    /** Turns the coefficients of each tau so that all omega are alike. */
    private static final class Spreads extends SpreadGrid {
        private final DenseNodes flat;
        private final int p;
        private final double[][] factor;
        private final double[][] right;
        private final double[][] turn;
        private final double[][] lambda;

        Spreads(DenseNodes flat, GroupPrior prior) {
            super(flat, prior);
            this.flat = flat;
            this.p = flat.p;
            this.factor = new double[flat.size()][];
            this.right = new double[flat.size()][];
            this.turn = new double[flat.size()][];
            this.lambda = new double[flat.size()][];
            fill(flat, prior);
        }

        @Override
        void prepare(int b) {
            double[] inverse = flat.factor[b];
            SymmetricEigen eigen = SymmetricEigen.ofCrossProduct(centred(inverse), flat.groups, p);
            double[] u = eigen.vectors();
            turn[b] = u;
            lambda[b] = eigen.values();
            factor[b] = SquareMatrices.product(inverse, u, p);
            right[b] = new double[p];
            for (int l = 0; l < p; l++) {
                for (int c = 0; c < p; c++) {
                    right[b][l] += u[c * p + l] * flat.right[b][c];
                }
            }
        }

        /** The rows of the groups less their mean. */
        private double[] centred(double[] inverse) {
            double[] result = new double[flat.groups * p];
            for (int c = 0; c < p; c++) {
                double mean = 0;
                for (int k = 0; k < flat.groups; k++) {
                    mean += inverse[k * p + c] / flat.groups;
                }
                for (int k = 0; k < flat.groups; k++) {
                    result[k * p + c] = inverse[k * p + c] - mean;
                }
            }
            return result;
        }

        @Override
        double weigh(int b, double spread, int node) {
            double variance = spread * spread;
            double sum = flat.squares[b];
            double determinant = 1;
            for (int l = 0; l < p; l++) {
                double inflation = variance + lambda[b][l];
                sum += right[b][l] * right[b][l] * lambda[b][l] / inflation;
                determinant *= inflation / variance;
            }
            squares[node] = sum;
            return -0.5 * Math.log(determinant) - (flat.groups - 1) * Math.log(spread);
        }
    }

    /** The inverse of an upper triangle, by row. */
    static double[] invertTriangle(double[] triangle, int p) {
        double[] inverse = new double[p * p];
        for (int c = 0; c < p; c++) {
            inverse[c * p + c] = 1 / triangle[c * p + c];
            for (int r = c - 1; r >= 0; r--) {
                double sum = 0;
                for (int m = r + 1; m <= c; m++) {
                    sum += triangle[r * p + m] * inverse[m * p + c];
                }
                inverse[r * p + c] = -sum / triangle[r * p + r];
            }
        }
        return inverse;
    }

    @Override
    void contrast(double[] c, double unit, double[] location, double[] spread) {
        double[] projected = new double[p];
        int lastBase = -1;
        for (int i = 0; i < size(); i++) {
            if (base[i] != lastBase) {
                lastBase = base[i];
                project(factor[lastBase], c, projected);
            }
            double middle = 0;
            double variance = 0;
            double[] g = right[lastBase];
            for (int l = 0; l < p; l++) {
                double shrunk = projected[l] * shrink[i * p + l];
                middle += shrunk * g[l];
                variance += shrunk * projected[l];
            }
            location[i] = unit * middle;
            spread[i] = unit * Math.sqrt(variance * squares[i] / nu);
        }
    }

    private void project(double[] matrix, double[] c, double[] result) {
        Arrays.fill(result, 0);
        for (int r = 0; r < p; r++) {
            for (int l = 0; l < p && c[r] != 0; l++) {
                result[l] += c[r] * matrix[r * p + l];
            }
        }
    }

    /** F (D g + sigma D^(1/2) y), y the scores, turned under the exchangeable prior so that the root is symmetric. */
    @Override
    void draw(int node, double sigma, double[] scores, double[] coefficients) {
        double[] y = new double[p];
        for (int l = 0; l < p; l++) {
            if (turn == null) {
                y[l] = scores[l];
            } else {
                for (int c = 0; c < p; c++) {
                    y[l] += turn[base[node]][c * p + l] * scores[c];
                }
            }
            double d = shrink[node * p + l];
            y[l] = d * right[base[node]][l] + sigma * Math.sqrt(d) * y[l];
        }
        double[] result = SquareMatrices.times(factor[base[node]], y);
        System.arraycopy(result, 0, coefficients, 0, p);
    }

    @Override
    double[] coefficients(int node) {
        double[] result = new double[p];
        draw(node, 0, new double[p], result);
        return result;
    }

    @Override
    double[][] unscaledCovariance(int node) {
        double[][] result = new double[p][p];
        double[] f = factor[base[node]];
        for (int r = 0; r < p; r++) {
            for (int c = 0; c < p; c++) {
                for (int l = 0; l < p; l++) {
                    result[r][c] += f[r * p + l] * f[c * p + l] * shrink[node * p + l];
                }
            }
        }
        return result;
    }
}
