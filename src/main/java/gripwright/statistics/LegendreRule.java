package gripwright.statistics;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * The nodes and weights of a Gauss-Legendre rule on [-1, 1], kept as arrays so that composite rules can loop over them.
 */
record LegendreRule(double[] nodes, double[] weights) {

    /** The rule that is exact for polynomials up to degree {@code 2 * order - 1}. */
    static LegendreRule ofOrder(int order) {
        GaussIntegrator rule = new GaussIntegratorFactory().legendre(order);
        double[] nodes = new double[order];
        double[] weights = new double[order];
        for (int i = 0; i < order; i++) {
            nodes[i] = rule.getPoint(i);
            weights[i] = rule.getWeight(i);
        }
        return new LegendreRule(nodes, weights);
    }

    /** The same rule repeated on equal panels that cover [from, to]. */
    LegendreRule repeated(double from, double to, int panels) {
        int order = nodes.length;
        double[] allNodes = new double[order * panels];
        double[] allWeights = new double[order * panels];
        double half = (to - from) / panels / 2;
        for (int panel = 0; panel < panels; panel++) {
            double middle = from + (2 * panel + 1) * half;
            for (int i = 0; i < order; i++) {
                allNodes[panel * order + i] = middle + half * nodes[i];
                allWeights[panel * order + i] = half * weights[i];
            }
        }
        return new LegendreRule(allNodes, allWeights);
    }

    int size() {
        return nodes.length;
    }
}
