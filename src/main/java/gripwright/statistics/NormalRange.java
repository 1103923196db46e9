package gripwright.statistics;

/**
 * The distribution of the range (largest minus least) of several independent standard normal values.
 *
 * <p>With k values, m = k - 1 and z the largest of them,
 * P(range &gt; w) = k int phi(z) [Phi(z)^m - (Phi(z) - Phi(z - w))^m] dz, which keeps its relative precision far into the
 * tail because the difference of powers is formed with log1p and expm1. The integral is taken by composite
 * Gauss-Legendre quadrature.
 */
final class NormalRange {

    private static final int ORDER = 12;
    private static final LegendreRule RULE = LegendreRule.ofOrder(ORDER);
    private static final double REACH = 9; // phi(9) is 1e-18: beyond it nothing is left of the integral
    /** At this range the tail is below 1e-27 times the number of pairs. */
    static final double TABLE_END = 16;
    private static final int TABLE_PIECES = 256;

    private final int groups;
    private final double panelWidth;
    private final MonotoneQuintic table;

    /**
     * @param groups how many normal values, at least 2
     * @param tabulated whether many calls of {@link #interpolatedUpperTail} will follow
     */
    NormalRange(int groups, boolean tabulated) {
        this.groups = groups;
        // The largest of many values lies in a narrow place, which needs narrower panels for the same twelve digits.
        this.panelWidth = groups <= 3 ? 2 : groups <= 30 ? 1.2 : 0.7;
        this.table = tabulated ? tabulate() : null;
    }

    /** The probability of a range above w by quadrature; 1 for w of 0 or less. */
    double upperTail(double w) {
        if (w <= 0) {
            return 1;
        }
        if (groups == 2) {
            return 2 * StandardNormal.upperTail(w / Math.sqrt(2));
        }
        double from = Math.max(-REACH, w / 2 - REACH);
        double to = w / 2 + REACH;
        int panels = (int) Math.ceil((to - from) / panelWidth);
        double half = (to - from) / panels / 2;
        double sum = 0;
        for (int panel = 0; panel < panels; panel++) {
            double middle = from + (2 * panel + 1) * half;
            for (int i = 0; i < ORDER; i++) {
                double z = middle + half * RULE.nodes()[i];
                sum += RULE.weights()[i] * StandardNormal.density(z)
                    * spreadMass(StandardNormal.cumulative(z), StandardNormal.cumulative(z - w));
            }
        }
        return Math.min(1, groups * half * sum);
    }

    /** The same from the table, with an absolute error below 1e-11; 0 beyond {@link #TABLE_END}. */
    double interpolatedUpperTail(double w) {
        return w >= TABLE_END ? 0 : table.value(w);
    }

    /** The probability that not all others lie within w below the largest: below^m - (below - farBelow)^m. */
    private double spreadMass(double below, double farBelow) {
        int others = groups - 1;
        return -power(below, others) * Math.expm1(others * Math.log1p(-Math.min(1, farBelow / below)));
    }

    private MonotoneQuintic tabulate() {
        LegendreRule fixed = RULE.repeated(-REACH, TABLE_END / 2 + REACH,
            (int) Math.ceil((TABLE_END / 2 + 2 * REACH) / panelWidth));
        double[] below = new double[fixed.size()];
        double[] weight = new double[fixed.size()];
        for (int i = 0; i < fixed.size(); i++) {
            below[i] = StandardNormal.cumulative(fixed.nodes()[i]);
            weight[i] = fixed.weights()[i] * StandardNormal.density(fixed.nodes()[i]);
        }
        double step = TABLE_END / TABLE_PIECES;
        double[][] columns = new double[3][TABLE_PIECES + 1];
        for (int row = 0; row <= TABLE_PIECES; row++) {
            tabulateRow(row * step, fixed.nodes(), weight, below, columns, row);
        }
        return new MonotoneQuintic(0, step, columns[0], columns[1], columns[2]);
    }

    /**
     * Tail, slope and curvature at w. With d = Phi(z) - Phi(z - w) the density of the range is
     * k m int phi(z) phi(z - w) d^(m-1) dz, and its derivative follows under the integral.
     */
    private void tabulateRow(double w, double[] z, double[] weight, double[] below, double[][] columns, int row) {
        int others = groups - 1;
        double inside = 0;
        double slope = 0;
        double curvature = 0;
        for (int i = 0; i < z.length; i++) {
            double farBelow = StandardNormal.cumulative(z[i] - w);
            double farDensity = StandardNormal.density(z[i] - w);
            double between = Math.max(0, below[i] - farBelow);
            double lower = others >= 2 ? power(between, others - 2) : 0;
            double middle = others >= 2 ? lower * between : 1;
            inside += weight[i] * (others >= 2 ? middle * between : between);
            slope += weight[i] * farDensity * middle;
            curvature += weight[i] * farDensity * ((z[i] - w) * middle + (others - 1) * farDensity * lower);
        }
        columns[0][row] = Math.max(0, 1 - groups * inside); // rounding may leave a trace below 0
        columns[1][row] = -groups * others * slope;
        columns[2][row] = -groups * others * curvature;
    }

    private static double power(double base, int exponent) {
        double result = 1;
        double square = base;
        for (int rest = exponent; rest > 0; rest >>= 1) {
            if ((rest & 1) == 1) {
                result *= square;
            }
            square *= square;
        }
        return result;
    }
}
