package gripwright.statistics;

/**
 * Grid nodes where each block lies in one group: given the drift and, under the exchangeable prior, the common mean m,
 * the group means are independent, and everything costs K operations instead of K^2.
 *
 * <p>For one tau let group k have the precision w_k, the mean response y_k and the mean covariate t_k (weighted over its
 * blocks), and let r(beta - beta_0) be what is known of the drift within groups. Flat prior: mu_k given beta is y_k - t_k
 * beta with variance sigma^2/w_k. Exchangeable prior: y_k - t_k beta is m with variance sigma^2/h_k, h_k = w_k/(1 +
 * omega^2 w_k), a regression of y_k on (1, t_k) with weights h_k. With s_k = 1/(1 + omega^2 w_k), H = sum h_k and bars for
 * means weighted by h, mu_k given beta is A_k - B_k beta with A_k = y_k + s_k (ybar - y_k), B_k alike from t; its
 * variance over sigma^2 is D_k = (1 - s_k)/w_k for itself plus (s_k^2)/H for m. The drift has the precision
 * Stt = r^2 + sum h (t - tbar)^2, and S grows by the residuals of that regression. Determinant: prod(1 + omega^2 w_k) H
 * Stt in the place of r^2. All sums are of squares about weighted means: nothing cancels.
 *
 * <table>
 * <caption>Symbols and shapes beyond those of {@link GridNodes}</caption>
 * <tr><th>symbol</th><th>shape</th><th>meaning</th></tr>
 * <tr><td>precision, y, t</td><td>B K</td><td>w_k, y_k, t_k for each tau</td></tr>
 * <tr><td>slopeRoot, slopeRight</td><td>B</td><td>r and r beta_0</td></tr>
 * <tr><td>level, lean</td><td>N K</td><td>A_k, B_k</td></tr>
 * <tr><td>ownRoot</td><td>N K</td><td>sqrt(D_k)</td></tr>
 * <tr><td>share</td><td>N K</td><td>s_k/sqrt(H), the part of m's deviation; all 0 under the flat prior</td></tr>
 * <tr><td>tilt, tiltFactor</td><td>N K, N</td><td>u = share/ownRoot and 1/(1 + sqrt(1 + u'u)), for draws</td></tr>
 * <tr><td>slope, slopeError</td><td>N</td><td>drift and its root variance over sigma; 0 without drift</td></tr>
 * </table>
 */
final class NestedNodes extends GridNodes {

    private final double[] precision;
    private final double[] y;
    private final double[] t;
    private final double[] slopeRoot;
    private final double[] slopeRight;
    final double[] level;
    final double[] lean;
    final double[] ownRoot;
    final double[] share;
    final double[] slope;
    final double[] slopeError;
    private final double[] tilt;
    private final double[] tiltFactor;

    NestedNodes(FlatGrid grid) {
        super(grid);
        int bases = size();
        precision = new double[bases * groups];
        y = new double[bases * groups];
        t = new double[bases * groups];
        slopeRoot = new double[bases];
        slopeRight = new double[bases];
        ownRoot = new double[bases * groups];
        share = new double[bases * groups];
        tilt = share;
        tiltFactor = new double[bases];
        slope = new double[bases];
        slopeError = new double[bases];
        for (int b = 0; b < bases; b++) {
            LeastSquares.Solution solution = grid.solutions[grid.kept[b]];
            for (int k = 0; k < groups; k++) {
                double root = solution.triangle()[k * p + k];
                precision[b * groups + k] = root * root;
                ownRoot[b * groups + k] = 1 / root;
                y[b * groups + k] = solution.right()[k] / root;
                t[b * groups + k] = hasDrift() ? solution.triangle()[k * p + p - 1] / root : 0;
            }
            if (hasDrift()) {
                slopeRoot[b] = solution.triangle()[p * p - 1];
                slopeRight[b] = solution.right()[p - 1];
                slope[b] = slopeRight[b] / slopeRoot[b];
                slopeError[b] = 1 / slopeRoot[b];
            }
        }
        level = y;
        lean = t;
    }

    private NestedNodes(NestedNodes flat, GroupPrior prior) {
        super(flat, new Spreads(flat, prior));
        precision = flat.precision;
        y = flat.y;
        t = flat.t;
        slopeRoot = flat.slopeRoot;
        slopeRight = flat.slopeRight;
        level = new double[size() * groups];
        lean = new double[size() * groups];
        ownRoot = new double[size() * groups];
        share = new double[size() * groups];
        tilt = new double[size() * groups];
        tiltFactor = new double[size()];
        slope = new double[size()];
        slopeError = new double[size()];
        Pooling pooling = new Pooling(flat);
        for (int i = 0; i < size(); i++) {
            pooling.solve(base[i], omega[i]);
            slope[i] = pooling.slope;
            slopeError[i] = hasDrift() ? 1 / Math.sqrt(pooling.slopeSquares) : 0;
            double rootTotal = Math.sqrt(pooling.total);
            double length = 0;
            for (int k = 0; k < groups; k++) {
                int from = base[i] * groups + k;
                int to = i * groups + k;
                double shrink = pooling.shrink[k];
                level[to] = y[from] + shrink * (pooling.meanY - y[from]);
                lean[to] = t[from] + shrink * (pooling.meanT - t[from]);
                ownRoot[to] = Math.sqrt((1 - shrink) / precision[from]);
                share[to] = shrink / rootTotal;
                tilt[to] = share[to] / ownRoot[to];
                length += tilt[to] * tilt[to];
            }
            tiltFactor[i] = 1 / (1 + Math.sqrt(1 + length));
        }
    }

    @Override
    GridNodes exchangeable(GroupPrior prior) {
        return new NestedNodes(this, prior);
    }

    /** The regression of the groups on their common mean and the drift, for one tau and omega. */
    private static final class Pooling {
        private final NestedNodes flat;
        private final double[] weight;
        private final double[] shrink;
        private double total;
        private double meanY;
        private double meanT;
        private double slope;
        private double slopeSquares;
        private double growth;
        private double determinant;

        Pooling(NestedNodes flat) {
            this.flat = flat;
            this.weight = new double[flat.groups];
            this.shrink = new double[flat.groups];
        }

        void solve(int b, double spread) {
            int from = b * flat.groups;
            double variance = spread * spread;
            total = 0;
            meanY = 0;
            meanT = 0;
            determinant = 1;
            for (int k = 0; k < weight.length; k++) {
                double inflation = 1 + variance * flat.precision[from + k];
                shrink[k] = 1 / inflation;
                weight[k] = flat.precision[from + k] * shrink[k];
                total += weight[k];
                meanY += weight[k] * flat.y[from + k];
                meanT += weight[k] * flat.t[from + k];
                determinant *= inflation;
            }
            meanY /= total;
            meanT /= total;
            determinant *= total;
            regress(b, from);
        }

        private void regress(int b, int from) {
            slope = 0;
            slopeSquares = 0;
            growth = 0;
            if (flat.hasDrift()) {
                double root = flat.slopeRoot[b];
                slopeSquares = root * root;
                double products = root * flat.slopeRight[b];
                for (int k = 0; k < weight.length; k++) {
                    double deviation = flat.t[from + k] - meanT;
                    slopeSquares += weight[k] * deviation * deviation;
                    products += weight[k] * deviation * (flat.y[from + k] - meanY);
                }
                slope = products / slopeSquares;
                determinant *= slopeSquares / (root * root);
                growth = (root * slope - flat.slopeRight[b]) * (root * slope - flat.slopeRight[b]);
            }
            for (int k = 0; k < weight.length; k++) {
                double rest = flat.y[from + k] - meanY - slope * (flat.t[from + k] - meanT);
                growth += weight[k] * rest * rest;
            }
        }
    }

    /** Weighs every tau and omega; relative to the flat prior prod w_k is in the determinant, a constant per tau. */
    private static final class Spreads extends SpreadGrid {
        private final NestedNodes flat;
        private final Pooling pooling;
        private double logPrecisions;

        Spreads(NestedNodes flat, GroupPrior prior) {
            super(flat, prior);
            this.flat = flat;
            this.pooling = new Pooling(flat);
            fill(flat, prior);
        }

        @Override
        void prepare(int b) {
            double product = 1;
            for (int k = 0; k < flat.groups; k++) {
                product *= flat.precision[b * flat.groups + k];
            }
            logPrecisions = 0.5 * Math.log(product);
        }

        @Override
        double weigh(int b, double spread, int node) {
            pooling.solve(b, spread);
            squares[node] = flat.squares[b] + pooling.growth;
            return logPrecisions - 0.5 * Math.log(pooling.determinant);
        }
    }

    @Override
    void contrast(double[] c, double unit, double[] location, double[] spread) {
        double driftWeight = hasDrift() ? c[p - 1] : 0;
        for (int i = 0; i < size(); i++) {
            double middle = 0;
            double along = driftWeight;
            double variance = 0;
            double shared = 0;
            for (int k = 0; k < groups; k++) {
                double factor = c[k];
                if (factor != 0) {
                    int at = i * groups + k;
                    middle += factor * level[at];
                    along -= factor * lean[at];
                    variance += factor * factor * ownRoot[at] * ownRoot[at];
                    shared += factor * share[at];
                }
            }
            double error = along * slopeError[i];
            variance += shared * shared + error * error;
            location[i] = unit * (middle + along * slope[i]);
            spread[i] = unit * Math.sqrt(variance * squares[i] / nu);
        }
    }

    /**
     * Given the drift the means have the covariance D + v v', v = share; its root D^(1/2) (I + gamma u u'), u = D^(-1/2) v,
     * gamma = 1/(1 + sqrt(1 + u'u)), needs no score for m.
     */
    @Override
    void draw(int node, double sigma, double[] scores, double[] coefficients) {
        int at = node * groups;
        double drift = slope[node] + (hasDrift() ? sigma * slopeError[node] * scores[groups] : 0);
        double along = 0;
        for (int k = 0; k < groups; k++) {
            along += tilt[at + k] * scores[k];
        }
        along *= tiltFactor[node];
        for (int k = 0; k < groups; k++) {
            coefficients[k] = level[at + k] - lean[at + k] * drift
                + sigma * (ownRoot[at + k] * scores[k] + share[at + k] * along);
        }
        if (hasDrift()) {
            coefficients[groups] = drift;
        }
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
        double[] leaning = new double[p];
        for (int k = 0; k < p; k++) {
            leaning[k] = (k < groups ? -lean[node * groups + k] : 1) * slopeError[node];
        }
        for (int r = 0; r < p; r++) {
            for (int c = 0; c < p; c++) {
                result[r][c] = leaning[r] * leaning[c];
                if (r < groups && c < groups) {
                    result[r][c] += share[node * groups + r] * share[node * groups + c];
                }
            }
            if (r < groups) {
                result[r][r] += ownRoot[node * groups + r] * ownRoot[node * groups + r];
            }
        }
        return result;
    }
}
