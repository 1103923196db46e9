package gripwright.statistics;

/**
 * Turns standard normal scores into simultaneous draws from a grid posterior.
 *
 * <p>Score 0 picks the node through Phi, score 1 the residual standard deviation through the chi-squared quantile of the
 * same probability, score 2 goes with the drift and score 3 + g with group g. Given node and sigma the coefficients are
 * F (D g + sigma D^(1/2) y) with y = scores under the flat prior and U' scores under the exchangeable one, so that a
 * group's score moves mainly that group's mean, upwards.
 */
final class PosteriorSampler {

    private static final int FIRST_GROUP = 3;

    private final GridNodes nodes;
    private final BlockedData data;
    private final ChiScores chi;
    private final double[] cumulative;
    private final int[] scoreOfColumn;
    private final double[] scores;
    private final double[] turned;

    PosteriorSampler(GridNodes nodes, BlockedData data, ChiScores chi) {
        this.nodes = nodes;
        this.data = data;
        this.chi = chi;
        this.cumulative = new double[nodes.size()];
        double sum = 0;
        for (int i = 0; i < cumulative.length; i++) {
            sum += nodes.weight[i];
            cumulative[i] = sum;
        }
        this.scoreOfColumn = new int[nodes.p];
        for (int c = 0; c < nodes.p; c++) {
            scoreOfColumn[c] = c < data.present.length ? FIRST_GROUP + data.present[c] : 2;
        }
        this.scores = new double[nodes.p];
        this.turned = new double[nodes.p];
    }

    /** How many scores one draw takes. */
    static int scoresPerDraw(int groups) {
        return FIRST_GROUP + groups;
    }

    PosteriorDraws draw(double[][] normals) {
        int groups = data.groups;
        double[] means = new double[normals.length * groups];
        double[] drift = new double[normals.length];
        double[] residual = new double[normals.length];
        double[] tau = new double[normals.length];
        java.util.Arrays.fill(means, Double.NaN);
        double[] coefficients = new double[nodes.p];
        for (int i = 0; i < normals.length; i++) {
            int node = nodeAt(StandardNormal.cumulative(normals[i][0]));
            double sigma = Math.sqrt(nodes.squares[node]) * chi.inverseChi(normals[i][1]);
            fillCoefficients(node, sigma, normals[i], coefficients);
            for (int k = 0; k < data.present.length; k++) {
                means[i * groups + data.present[k]] = data.offset + data.scale * coefficients[k];
            }
            drift[i] = nodes.p > data.present.length ? data.scale * coefficients[nodes.p - 1] : 0;
            residual[i] = data.scale * sigma;
            tau[i] = nodes.tau[nodes.base[node]];
        }
        return new PosteriorDraws(groups, means, drift, residual, tau);
    }

    private int nodeAt(double probability) {
        int low = 0;
        int high = cumulative.length - 1;
        double target = probability * cumulative[high];
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (cumulative[middle] > target) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    private void fillCoefficients(int node, double sigma, double[] normals, double[] coefficients) {
        int p = nodes.p;
        int base = nodes.base[node];
        double[] right = nodes.right[base];
        for (int c = 0; c < p; c++) {
            scores[c] = normals[scoreOfColumn[c]];
        }
        if (nodes.turn == null) {
            for (int l = 0; l < p; l++) {
                turned[l] = right[l] + sigma * scores[l];
            }
        } else {
            double[] turn = nodes.turn[base];
            java.util.Arrays.fill(turned, 0);
            for (int c = 0; c < p; c++) {
                for (int l = 0; l < p; l++) {
                    turned[l] += turn[c * p + l] * scores[c];
                }
            }
            for (int l = 0; l < p; l++) {
                double shrink = nodes.shrink[node * p + l];
                turned[l] = shrink * right[l] + sigma * Math.sqrt(shrink) * turned[l];
            }
        }
        double[] factor = nodes.factor[base];
        for (int r = 0; r < p; r++) {
            double sum = 0;
            for (int l = nodes.turn == null ? r : 0; l < p; l++) {
                sum += factor[r * p + l] * turned[l];
            }
            coefficients[r] = sum;
        }
    }
}
