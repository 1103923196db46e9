package gripwright.statistics;

/**
 * The probability of each group to have the best mean, by quadrature over a grid posterior in which the means are
 * independent once common factors are known.
 *
 * <p>With blocks nested in groups the scale matrix of the means is diag(D_k^2) + V V', V having one column for the drift
 * (C_kb/sqrt(C_bb)). Given the node, sigma and the factor x, P_k = int phi(u) prod_(l != k) Phi((loc_k + s D_k u -
 * loc_l)/(s D_l)) du. Quadrature: trapezoidal in u and x (exponentially accurate for normal integrands), and in the
 * logarithm of s/S between quantiles of chi-squared. Slow and exact to about 1e-6; the screen uses draws, of which this
 * is the check.
 */
final class BestProbability {

    private static final int HALF_NODES = 30;
    private static final double REACH = 7.5;
    private static final double NEGLIGIBLE = 1e-10;

    private final GridNodes nodes;
    private final int groups;
    private final double sign;

    BestProbability(GridNodes nodes, int groups, boolean largerIsBetter) {
        this.nodes = nodes;
        this.groups = groups;
        this.sign = largerIsBetter ? 1 : -1;
    }

    /** One probability per present group, sum 1. */
    double[] compute() {
        double[] result = new double[groups];
        ScaleNodes scales = new ScaleNodes(nodes.nu);
        for (int i = 0; i < nodes.size(); i++) {
            if (nodes.weight[i] > NEGLIGIBLE) {
                addNode(i, scales, result);
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

    private void addNode(int node, ScaleNodes scales, double[] result) {
        int p = nodes.p;
        double[] location = new double[groups];
        double[] own = new double[groups];
        double[] common = new double[groups];
        double[] f = nodes.factor[nodes.base[node]];
        double[] g = nodes.right[nodes.base[node]];
        boolean drift = p > groups;
        for (int k = 0; k < groups; k++) {
            for (int l = k; l < p; l++) {
                location[k] += sign * f[k * p + l] * g[l];
            }
            own[k] = Math.abs(f[k * p + k]);
            common[k] = drift ? sign * f[k * p + p - 1] : 0;
        }
        double step = REACH / HALF_NODES;
        double[] shifted = new double[groups];
        double[] width = new double[groups];
        for (int s = 0; s < scales.scale.length; s++) {
            double sigma = Math.sqrt(nodes.squares[node]) * scales.scale[s];
            for (int k = 0; k < groups; k++) {
                width[k] = sigma * own[k];
            }
            for (int x = drift ? -HALF_NODES : 0; x <= (drift ? HALF_NODES : 0); x++) {
                double factor = drift ? step * StandardNormal.density(x * step) : 1;
                for (int k = 0; k < groups; k++) {
                    shifted[k] = location[k] + sigma * common[k] * x * step;
                }
                addIndependent(nodes.weight[node] * scales.weight[s] * factor, shifted, width, result);
            }
        }
    }

    private void addIndependent(double mass, double[] location, double[] width, double[] result) {
        if (mass < NEGLIGIBLE * NEGLIGIBLE) {
            return;
        }
        double step = REACH / HALF_NODES;
        for (int k = 0; k < groups; k++) {
            double sum = 0;
            for (int i = -HALF_NODES; i <= HALF_NODES; i++) {
                double value = location[k] + width[k] * i * step;
                double product = StandardNormal.density(i * step) * step;
                for (int l = 0; l < groups && product > 1e-16; l++) {
                    if (l != k) {
                        product *= StandardNormal.cumulative((value - location[l]) / width[l]);
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
