package gripwright.statistics;

/**
 * Turns standard normal scores into simultaneous draws from a grid posterior.
 *
 * <p>Score 0 picks the node through Phi, score 1 the residual standard deviation through the chi-squared quantile of the
 * same probability, score 2 goes with the drift and score 3 + g with group g. A symmetric root of the covariance is used
 * wherever there is a choice, so that a group's score moves mainly that group's mean, upwards.
 */
final class PosteriorSampler {

    private static final int FIRST_GROUP = 3;

    private final GridNodes nodes;
    private final BlockedData data;
    private final ChiScores chi;
    private final double[] cumulative;
    private final int[] scoreOfColumn;

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
        double[] scores = new double[nodes.p];
        for (int i = 0; i < normals.length; i++) {
            int node = nodeAt(StandardNormal.cumulative(normals[i][0]));
            double sigma = Math.sqrt(nodes.squares[node]) * chi.inverseChi(normals[i][1]);
            for (int c = 0; c < nodes.p; c++) {
                scores[c] = normals[i][scoreOfColumn[c]];
            }
            nodes.draw(node, sigma, scores, coefficients);
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
}
