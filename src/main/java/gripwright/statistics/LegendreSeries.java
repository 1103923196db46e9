package gripwright.statistics;

/**
 * A density on [-1, 1] from its masses at the nodes of a Gauss-Legendre rule, as a series of Legendre polynomials: the
 * polynomial through the nodes, with its integral in closed form.
 */
final class LegendreSeries {

    private final double[] coefficient;

    /**
     * @param rule the rule
     * @param mass weight times density at each node
     */
    LegendreSeries(LegendreRule rule, double[] mass) {
        int order = rule.size();
        coefficient = new double[order];
        for (int i = 0; i < order; i++) {
            double before = 0;
            double now = 1;
            double x = rule.nodes()[i];
            for (int l = 0; l < order; l++) {
                coefficient[l] += (2 * l + 1) / 2.0 * mass[i] * now;
                double next = ((2 * l + 1) * x * now - l * before) / (l + 1);
                before = now;
                now = next;
            }
        }
    }

    /** The density at x. */
    double density(double x) {
        double before = 0;
        double now = 1;
        double sum = 0;
        for (int l = 0; l < coefficient.length; l++) {
            sum += coefficient[l] * now;
            double next = ((2 * l + 1) * x * now - l * before) / (l + 1);
            before = now;
            now = next;
        }
        return sum;
    }

    /** The mass from -1 to x: the integral of P_l is (P_(l+1) - P_(l-1))/(2l + 1). */
    double cumulative(double x) {
        double before = 0;
        double now = 1;
        double sum = coefficient[0] * (x + 1);
        for (int l = 0; l < coefficient.length; l++) {
            double next = ((2 * l + 1) * x * now - l * before) / (l + 1);
            if (l > 0) {
                sum += coefficient[l] * (next - before) / (2 * l + 1);
            }
            before = now;
            now = next;
        }
        return sum;
    }
}
