package gripwright.statistics;

/**
 * The probability of each group to have the best mean, by quadrature over a grid posterior in which the means are
 * independent once common factors are known.
 *
 * <p>With blocks nested in groups the scale matrix of the means is diag(D_k^2) + V V', V having one column for the drift
 * and, under the exchangeable prior, one for the common mean, which moves groups with little data more. Given the node, sigma and the factor x, P_k = int phi(u) prod_(l != k) Phi((loc_k + s D_k u -
 * loc_l)/(s D_l)) du. Quadrature: trapezoidal in u and x (exponentially accurate for normal integrands), and in the
 * logarithm of s/S between quantiles of chi-squared. Slow and exact to about 1e-6; the screen uses draws, of which this
 * is the check.
 */
final class BestProbability {

    private static final int HALF_NODES = 20;
    private static final double REACH = 6.5;
    private static final double STEP = REACH / HALF_NODES;
    private static final double NEGLIGIBLE_NODE = 1e-9;
    private static final double NEGLIGIBLE = 1e-12;

    private final NestedNodes nodes;
    private final int groups;
    private final double sign;
    private final boolean common;
    private final double[] shifted;
    private final double[] width;

    BestProbability(NestedNodes nodes, boolean largerIsBetter) {
        this.nodes = nodes;
        this.groups = nodes.groups;
        this.sign = largerIsBetter ? 1 : -1;
        this.common = Double.isFinite(nodes.omega[0]);
        this.shifted = new double[groups];
        this.width = new double[groups];
    }

    /** One probability per present group, sum 1. */
    double[] compute() {
        double[] result = new double[groups];
        ScaleNodes scales = new ScaleNodes(nodes.nu);
        for (int i = 0; i < nodes.size(); i++) {
            for (int s = 0; s < scales.scale.length && nodes.weight[i] > NEGLIGIBLE_NODE; s++) {
                addFactors(i, Math.sqrt(nodes.squares[i]) * scales.scale[s], nodes.weight[i] * scales.weight[s], result);
            }
        }
        double sum = 0;
        for (double value : result) {
            sum += value;
        }
        for (int k = 0; k < groups; k++) {
            result[k] /= sum;
        }
        return result;
    }

    /** Runs over the drift and the common mean, each standardised, where they are in the posterior. */
    private void addFactors(int node, double sigma, double mass, double[] result) {
        int driftReach = nodes.hasDrift() ? HALF_NODES : 0;
        int commonReach = common ? HALF_NODES : 0;
        for (int k = 0; k < groups; k++) {
            width[k] = sigma * nodes.ownRoot[node * groups + k];
        }
        for (int x = -driftReach; x <= driftReach; x++) {
            double drift = nodes.slope[node] + sigma * nodes.slopeError[node] * x * STEP;
            double driftMass = driftReach > 0 ? STEP * StandardNormal.density(x * STEP) : 1;
            for (int m = -commonReach; m <= commonReach; m++) {
                double commonMass = commonReach > 0 ? STEP * StandardNormal.density(m * STEP) : 1;
                for (int k = 0; k < groups; k++) {
                    int at = node * groups + k;
                    shifted[k] = sign * (nodes.level[at] - nodes.lean[at] * drift
                        + sigma * nodes.share[at] * m * STEP);
                }
                addIndependent(mass * driftMass * commonMass, result);
            }
        }
    }

    private void addIndependent(double mass, double[] result) {
        if (mass < NEGLIGIBLE) {
            return;
        }
        for (int k = 0; k < groups; k++) {
            double sum = 0;
            for (int i = -HALF_NODES; i <= HALF_NODES; i++) {
                double value = shifted[k] + width[k] * i * STEP;
                double product = StandardNormal.density(i * STEP) * STEP;
                for (int l = 0; l < groups && product > NEGLIGIBLE; l++) {
                    if (l != k) {
                        product *= StandardNormal.cumulative((value - shifted[l]) / width[l]);
                    }
                }
                sum += product;
            }
            result[k] += mass * sum;
        }
    }

    /** Nodes and weights for sqrt(1/chi-squared): trapezoidal in its logarithm, which is smooth and fades both ways. */
    private static final class ScaleNodes {
        final double[] scale;
        final double[] weight;

        ScaleNodes(double nu) {
            double deviation = 1 / Math.sqrt(2 * nu);
            double from = -8 * deviation;
            double to = 8 * deviation + 40 / (nu * (1 + nu / 20));
            int count = (int) Math.ceil((to - from) / (0.6 * deviation)) + 1;
            scale = new double[count];
            weight = new double[count];
            double sum = 0;
            for (int i = 0; i < count; i++) {
                double t = from + (to - from) * i / (count - 1);
                // chi^2 = nu exp(-2t): density of t proportional to chi^nu exp(-chi^2/2)
                scale[i] = Math.exp(t) / Math.sqrt(nu);
                weight[i] = Math.exp(-nu * t - nu / 2 * Math.expm1(-2 * t));
                sum += weight[i];
            }
            for (int i = 0; i < count; i++) {
                weight[i] /= sum;
            }
        }
    }
}
