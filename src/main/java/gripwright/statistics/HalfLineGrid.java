package gripwright.statistics;

/**
 * A quadrature rule on the half line for a parameter of the given scale: x = scale u/(1 - u) with Gauss-Legendre nodes u
 * on (0, 1), the Jacobian scale/(1 - u)^2 within the weights.
 *
 * @param nodes      the points, ascending
 * @param logWeights logarithms of the weights
 */
record HalfLineGrid(double[] nodes, double[] logWeights) {

    private static final int USUAL_ORDER = 64;
    private static final int SPREAD_ORDER = 32;
    private static final int MOST_BLOCKS_FOR_USUAL = 60;
    private static final int MOST_BLOCKS_FOR_DOUBLE = 240;

    private static final LegendreRule USUAL = LegendreRule.ofOrder(USUAL_ORDER);
    private static final LegendreRule DOUBLE = LegendreRule.ofOrder(2 * USUAL_ORDER);
    /** For posteriors that the other rules would be too coarse for. */
    static final LegendreRule FINEST = LegendreRule.ofOrder(4 * USUAL_ORDER);
    private static final LegendreRule SPREAD = LegendreRule.ofOrder(SPREAD_ORDER);

    /**
     * The rule for the ratio tau. The likelihood narrows as blocks become more: 64 nodes keep ten digits up to some 60
     * blocks, then twice and four times as many are taken.
     */
    static LegendreRule ruleForBlocks(int blocks) {
        return blocks <= MOST_BLOCKS_FOR_USUAL ? USUAL : blocks <= MOST_BLOCKS_FOR_DOUBLE ? DOUBLE : FINEST;
    }

    /** The grid for the spread of the group means, whose likelihood is never narrow: groups are few. */
    static HalfLineGrid forGroupSpread(double scale) {
        return of(SPREAD, scale);
    }

    static HalfLineGrid of(LegendreRule rule, double scale) {
        double[] nodes = new double[rule.size()];
        double[] logWeights = new double[rule.size()];
        for (int i = 0; i < nodes.length; i++) {
            double u = (1 + rule.nodes()[i]) / 2;
            nodes[i] = scale * u / (1 - u);
            logWeights[i] = Math.log(rule.weights()[i] / 2 * scale / ((1 - u) * (1 - u)));
        }
        return new HalfLineGrid(nodes, logWeights);
    }

    int size() {
        return nodes.length;
    }
}
