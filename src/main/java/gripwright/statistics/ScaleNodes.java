package gripwright.statistics;

/**
 * Nodes and weights for averages over the estimated scale s = sqrt(chi2_nu / nu): composite Gauss-Legendre over log s.
 *
 * @param scales  values of s
 * @param weights their probabilities, 1 together to 1e-12
 */
record ScaleNodes(double[] scales, double[] weights) {

    private static final LegendreRule RULE = LegendreRule.ofOrder(12);
    private static final double NEGLIGIBLE_LOG = -36;

    static ScaleNodes of(double degreesOfFreedom) {
        double half = degreesOfFreedom / 2;
        double step = Math.min(0.3, 1.5 / Math.sqrt(2 * degreesOfFreedom));
        double from = edge(half, -step);
        double to = edge(half, step);
        LegendreRule rule = RULE.repeated(from, to, (int) Math.ceil((to - from) / (2 * step)));
        double logConstant = Math.log(2) + StudentizedRange.ScaleIntegral.logNormalisation(half);
        double[] scales = new double[rule.size()];
        double[] weights = new double[rule.size()];
        for (int i = 0; i < rule.size(); i++) {
            double t = rule.nodes()[i];
            scales[i] = Math.exp(t);
            weights[i] = rule.weights()[i] * Math.exp(logConstant + logShape(half, t));
        }
        return new ScaleNodes(scales, weights);
    }

    private static double edge(double half, double step) {
        double t = step;
        while (logShape(half, t) > NEGLIGIBLE_LOG) {
            t += step;
        }
        return t;
    }

    private static double logShape(double half, double t) {
        return -half * (Math.expm1(2 * t) - 2 * t);
    }
}
