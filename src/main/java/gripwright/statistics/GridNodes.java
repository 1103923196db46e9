package gripwright.statistics;

import java.util.Arrays;

/**
 * The posterior of all coefficients and variances on a grid: over tau, and over omega too under the exchangeable prior.
 *
 * <p>Given a node the coefficients are multivariate t: location F D g, scale matrix S/nu F D F', where F is the inverse
 * triangle R^-1 (turned by the orthogonal U under the exchangeable prior), g the right-hand side (turned alike) and D
 * the shrinkage 1/(1 + lambda/omega^2), 1 under the flat prior. The exchangeable prior adds the precision P/omega^2, P
 * the centring of the K group coefficients (m integrated out), and U' (R^-T P R^-1) U = diag(lambda) makes every omega
 * a matter of p numbers: S = r^2 + sum g^2 (1 - D), determinant |R|^2 prod(1 + lambda/omega^2).
 *
 * <table>
 * <caption>Symbols and shapes (B values of tau, N nodes, p coefficients; standardised units)</caption>
 * <tr><th>symbol</th><th>shape</th><th>meaning</th></tr>
 * <tr><td>tau</td><td>B</td><td>ratio of block to residual standard deviation</td></tr>
 * <tr><td>tauMass</td><td>grid</td><td>posterior weights of all values of tau on the grid, whatever omega</td></tr>
 * <tr><td>factor</td><td>B x p p</td><td>F, by row</td></tr>
 * <tr><td>right</td><td>B x p</td><td>g</td></tr>
 * <tr><td>turn</td><td>B x p p</td><td>U, by row; null under the flat prior</td></tr>
 * <tr><td>base</td><td>N</td><td>index of the node's tau</td></tr>
 * <tr><td>weight</td><td>N</td><td>posterior weights, sum 1</td></tr>
 * <tr><td>omega</td><td>N</td><td>spread of the means over sigma, infinite under the flat prior</td></tr>
 * <tr><td>shrink</td><td>N p</td><td>D; null under the flat prior</td></tr>
 * <tr><td>squares</td><td>N</td><td>S</td></tr>
 * </table>
 */
final class GridNodes {

    /** Nodes below this part of the heaviest carry nothing, not even in tails of 1e-10. */
    static final double NEGLIGIBLE = 1e-26;
    /** For choosing no far tails are wanted. */
    private static final double NEGLIGIBLE_FOR_CHOICE = 1e-12;

    final int p;
    final int nu;
    final double[] tau;
    final double[] tauMass;
    private final int[] gridIndex;
    final double[][] factor;
    final double[][] right;
    final double[][] turn;
    final int[] base;
    final double[] weight;
    final double[] omega;
    final double[] shrink;
    final double[] squares;

    /** Under the flat prior: one node per tau. */
    GridNodes(LeastSquares system, BlockPrior prior) {
        HalfLineGrid grid = HalfLineGrid.forBlocks(system.data.blocks(), prior.scale());
        LeastSquares.Solution[] solutions = new LeastSquares.Solution[grid.size()];
        double[] logWeight = new double[grid.size()];
        for (int i = 0; i < grid.size(); i++) {
            double ratio = grid.nodes()[i];
            solutions[i] = system.solve(ratio * ratio);
            logWeight[i] = solutions[i].logLikelihood(system.nu) + prior.logDensity(ratio) + grid.logWeights()[i];
        }
        int[] kept = normalise(logWeight, NEGLIGIBLE);
        this.p = system.p;
        this.nu = system.nu;
        this.tauMass = logWeight;
        this.tau = new double[kept.length];
        this.weight = new double[kept.length];
        this.squares = new double[kept.length];
        this.omega = new double[kept.length];
        this.factor = new double[kept.length][];
        this.right = new double[kept.length][];
        this.base = new int[kept.length];
        this.gridIndex = new int[kept.length];
        Arrays.fill(omega, Double.POSITIVE_INFINITY);
        for (int i = 0; i < kept.length; i++) {
            LeastSquares.Solution solution = solutions[kept[i]];
            base[i] = i;
            gridIndex[i] = kept[i];
            tau[i] = grid.nodes()[kept[i]];
            weight[i] = logWeight[kept[i]];
            factor[i] = invertTriangle(solution.triangle(), p);
            right[i] = solution.right();
            squares[i] = solution.residualSquares();
        }
        this.turn = null;
        this.shrink = null;
    }

    /** Under the exchangeable prior, from the nodes under the flat prior. */
    GridNodes(GridNodes flat, int groups, GroupPrior prior) {
        HalfLineGrid grid = HalfLineGrid.forGroupSpread(prior.scale());
        this.p = flat.p;
        this.nu = flat.nu + groups - 1;
        this.tau = flat.tau;
        int bases = tau.length;
        this.factor = new double[bases][];
        this.right = new double[bases][];
        this.turn = new double[bases][];
        double[] logWeight = new double[bases * grid.size()];
        double[] allSquares = new double[logWeight.length];
        double[][] lambda = new double[bases][];
        Arrays.fill(logWeight, Double.NEGATIVE_INFINITY);
        double heaviest = Arrays.stream(flat.weight).max().orElse(1);
        for (int b = 0; b < bases; b++) {
            if (flat.weight[b] >= NEGLIGIBLE_FOR_CHOICE * heaviest) {
                lambda[b] = turnBase(flat, b, groups);
                double flatPart = Math.log(flat.weight[b]) + flat.nu / 2.0 * Math.log(flat.squares[b]);
                weighSpreads(b, lambda[b], groups, flatPart, flat.squares[b], grid, prior, logWeight, allSquares);
            }
        }
        int[] kept = normalise(logWeight, NEGLIGIBLE_FOR_CHOICE);
        this.base = new int[kept.length];
        this.weight = new double[kept.length];
        this.omega = new double[kept.length];
        this.squares = new double[kept.length];
        this.shrink = new double[kept.length * p];
        for (int i = 0; i < kept.length; i++) {
            base[i] = kept[i] / grid.size();
            weight[i] = logWeight[kept[i]];
            omega[i] = grid.nodes()[kept[i] % grid.size()];
            squares[i] = allSquares[kept[i]];
            for (int l = 0; l < p; l++) {
                shrink[i * p + l] = 1 / (1 + lambda[base[i]][l] / (omega[i] * omega[i]));
            }
        }
        this.tauMass = new double[flat.tauMass.length];
        this.gridIndex = flat.gridIndex;
        for (int i = 0; i < kept.length; i++) {
            tauMass[gridIndex[base[i]]] += weight[i];
        }
    }

    /** F = R^-1 U, g = U' q; returns lambda. */
    private double[] turnBase(GridNodes flat, int b, int groups) {
        double[] inverse = flat.factor[b];
        double[] centred = new double[groups * p];
        for (int c = 0; c < p; c++) {
            double mean = 0;
            for (int k = 0; k < groups; k++) {
                mean += inverse[k * p + c] / groups;
            }
            for (int k = 0; k < groups; k++) {
                centred[k * p + c] = inverse[k * p + c] - mean;
            }
        }
        SymmetricEigen eigen = SymmetricEigen.ofCrossProduct(centred, groups, p);
        double[] u = eigen.vectors();
        turn[b] = u;
        factor[b] = new double[p * p];
        right[b] = new double[p];
        for (int l = 0; l < p; l++) {
            for (int c = 0; c < p; c++) {
                right[b][l] += u[c * p + l] * flat.right[b][c];
            }
        }
        for (int r = 0; r < p; r++) {
            for (int c = r; c < p; c++) {
                double entry = inverse[r * p + c];
                for (int l = 0; l < p && entry != 0; l++) {
                    factor[b][r * p + l] += entry * u[c * p + l];
                }
            }
        }
        return eigen.values();
    }

    private void weighSpreads(int b, double[] lambda, int groups, double flatPart, double flatSquares, HalfLineGrid grid,
            GroupPrior prior, double[] logWeight, double[] allSquares) {
        for (int j = 0; j < grid.size(); j++) {
            double spread = grid.nodes()[j];
            double variance = spread * spread;
            double sum = flatSquares;
            double determinant = 1;
            for (int l = 0; l < p; l++) {
                double inflation = variance + lambda[l];
                sum += right[b][l] * right[b][l] * lambda[l] / inflation;
                determinant *= inflation / variance;
            }
            double standardised = spread / prior.scale();
            int node = b * grid.size() + j;
            allSquares[node] = sum;
            logWeight[node] = flatPart - 0.5 * Math.log(determinant) - (groups - 1) * Math.log(spread)
                - nu / 2.0 * Math.log(sum) - 0.5 * standardised * standardised + grid.logWeights()[j];
        }
    }

    /** Turns logarithms into weights that sum to 1 and returns the indices of those that count. */
    private static int[] normalise(double[] logWeight, double negligible) {
        double greatest = Double.NEGATIVE_INFINITY;
        for (double value : logWeight) {
            greatest = Math.max(greatest, value);
        }
        double sum = 0;
        for (int i = 0; i < logWeight.length; i++) {
            logWeight[i] = Math.exp(logWeight[i] - greatest);
            sum += logWeight[i];
        }
        int[] kept = new int[logWeight.length];
        int count = 0;
        for (int i = 0; i < logWeight.length; i++) {
            if (logWeight[i] >= negligible) {
                kept[count++] = i;
            }
            logWeight[i] /= sum;
        }
        return Arrays.copyOf(kept, count);
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

    int size() {
        return weight.length;
    }

    /** Location and scale of the contrast c at every node, for a residual standard deviation in units of scale. */
    void contrast(double[] c, double unit, double[] location, double[] spread) {
        double[] turned = new double[p];
        int lastBase = -1;
        for (int i = 0; i < weight.length; i++) {
            if (base[i] != lastBase) {
                lastBase = base[i];
                project(factor[lastBase], c, turned);
            }
            double middle = 0;
            double variance = 0;
            double[] g = right[lastBase];
            for (int l = 0; l < p; l++) {
                double shrunk = shrink == null ? turned[l] : turned[l] * shrink[i * p + l];
                middle += shrunk * g[l];
                variance += shrunk * turned[l];
            }
            location[i] = unit * middle;
            spread[i] = unit * Math.sqrt(variance * squares[i] / nu);
        }
    }

    private void project(double[] matrix, double[] c, double[] result) {
        Arrays.fill(result, 0);
        for (int r = 0; r < p; r++) {
            if (c[r] != 0) {
                for (int l = 0; l < p; l++) {
                    result[l] += c[r] * matrix[r * p + l];
                }
            }
        }
    }

    /** F D g at one node. */
    double[] coefficients(int node) {
        double[] result = new double[p];
        double[] f = factor[base[node]];
        double[] g = right[base[node]];
        for (int r = 0; r < p; r++) {
            for (int l = 0; l < p; l++) {
                result[r] += f[r * p + l] * g[l] * (shrink == null ? 1 : shrink[node * p + l]);
            }
        }
        return result;
    }

    /** F D F' at one node. */
    double[][] unscaledCovariance(int node) {
        double[][] result = new double[p][p];
        double[] f = factor[base[node]];
        for (int r = 0; r < p; r++) {
            for (int c = 0; c < p; c++) {
                for (int l = 0; l < p; l++) {
                    result[r][c] += f[r * p + l] * f[c * p + l] * (shrink == null ? 1 : shrink[node * p + l]);
                }
            }
        }
        return result;
    }
}
