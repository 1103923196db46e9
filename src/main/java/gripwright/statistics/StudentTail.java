package gripwright.statistics;

import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.special.Gamma;

/**
 * Student's t distribution with given degrees of freedom, tabulated for quick calls.
 *
 * <p>A quintic in s = x/(1 + x) through 129 exact values with their first two derivatives, which covers every x of 0 or
 * more; within 1e-10 of the exact upper tail for one degree of freedom and more.
 */
final class StudentTail {

    private static final int PIECES = 128;
    /** Of an interval at 95 %, which nearly all are: worked out once. */
    private static final double USUAL_TAIL = (1 - 0.95) / 2;

    private final double degreesOfFreedom;
    private final double logConstant;
    private final TDistribution exact;
    private final MonotoneQuintic table;
    private final double usualQuantile;

    /** @param degreesOfFreedom 1 or more */
    StudentTail(double degreesOfFreedom) {
        this.degreesOfFreedom = degreesOfFreedom;
        this.logConstant = Gamma.logGamma((degreesOfFreedom + 1) / 2) - Gamma.logGamma(degreesOfFreedom / 2)
            - 0.5 * Math.log(Math.PI * degreesOfFreedom);
        this.exact = new TDistribution(null, degreesOfFreedom);
        this.usualQuantile = -exact.inverseCumulativeProbability(USUAL_TAIL);
        double[][] columns = new double[3][PIECES + 1];
        for (int i = 0; i < PIECES; i++) {
            tabulate((double) i / PIECES, columns, i);
        }
        columns[1][PIECES] = degreesOfFreedom == 1 ? -1 / Math.PI : 0;
        columns[2][PIECES] = degreesOfFreedom == 1 ? 2 / Math.PI : degreesOfFreedom == 2 ? 1 : 0;
        this.table = new MonotoneQuintic(0, 1.0 / PIECES, columns[0], columns[1], columns[2]);
    }

    private void tabulate(double s, double[][] columns, int row) {
        double x = s / (1 - s);
        double stretch = (1 + x) * (1 + x);
        double density = density(x);
        double densitySlope = -density * (degreesOfFreedom + 1) * x / (degreesOfFreedom + x * x);
        columns[0][row] = exactUpper(x);
        columns[1][row] = -density * stretch;
        columns[2][row] = -densitySlope * stretch * stretch - density * 2 * stretch * (1 + x);
    }

    double degreesOfFreedom() {
        return degreesOfFreedom;
    }

    /** The density. */
    double density(double x) {
        return Math.exp(logConstant - (degreesOfFreedom + 1) / 2 * Math.log1p(x * x / degreesOfFreedom));
    }

    /** The probability above x from the table, within 1e-10. */
    double upper(double x) {
        return x >= 0 ? table.value(x / (1 + x)) : 1 - table.value(x / (x - 1));
    }

    /** The density from the slope of the table, good enough to steer a search. */
    double quickDensity(double x) {
        double reach = 1 + Math.abs(x);
        return -table.slope(1 - 1 / reach) / (reach * reach);
    }

    /** The probability above x with full relative precision. */
    double exactUpper(double x) {
        return exact.cumulativeProbability(-x);
    }

    /** The value that is exceeded with the given probability of at most one half. */
    double upperQuantile(double probability) {
        return probability == USUAL_TAIL ? usualQuantile : -exact.inverseCumulativeProbability(probability);
    }
}
