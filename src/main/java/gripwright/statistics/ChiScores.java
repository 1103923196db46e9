package gripwright.statistics;

import org.apache.commons.math3.distribution.GammaDistribution;
import org.apache.commons.math3.special.Gamma;

/**
 * Turns a standard normal score into sqrt(1/chi-squared) of the same probability, for draws of a standard deviation.
 *
 * <p>With x the chi-squared value at probability Phi(-z) and y = log x, dy/dz = -phi(z)/(x f(x)); the equation is
 * followed from the median with the classical Runge-Kutta rule, each node polished by a Newton step on the distribution
 * function, and tabulated with its slopes (cubic Hermite between).
 * Relative error below 1e-6; for scores beyond 6 the logarithm is continued as a straight line.
 */
final class ChiScores {

    private static final double REACH = 6;
    private static final int PER_UNIT = 8;
    private static final int NODES = (int) (2 * REACH * PER_UNIT) + 1;
    private static final int STEPS_PER_NODE = 2;

    private final double half;
    private final double logConstant;
    private final double[] value = new double[NODES];
    private final double[] slope = new double[NODES];

    ChiScores(double degreesOfFreedom) {
        half = degreesOfFreedom / 2;
        logConstant = -half * Math.log(2) - Gamma.logGamma(half);
        int middle = NODES / 2;
        double median = new GammaDistribution(null, degreesOfFreedom / 2, 2, 1e-13).inverseCumulativeProbability(0.5);
        fill(middle, Math.log(median));
        for (int direction = -1; direction <= 1; direction += 2) {
            double y = value[middle];
            for (int i = middle; i + direction >= 0 && i + direction < NODES; i += direction) {
                y = polish(z(i + direction), follow(z(i), y, direction / (double) (PER_UNIT * STEPS_PER_NODE)));
                fill(i + direction, y);
            }
        }
    }

    private static double z(int node) {
        return (double) node / PER_UNIT - REACH;
    }

    private void fill(int node, double y) {
        value[node] = y;
        slope[node] = change(z(node), y);
    }

    private double follow(double from, double start, double step) {
        double y = start;
        double z = from;
        for (int i = 0; i < STEPS_PER_NODE; i++) {
            double k1 = change(z, y);
            double k2 = change(z + step / 2, y + step / 2 * k1);
            double k3 = change(z + step / 2, y + step / 2 * k2);
            double k4 = change(z + step, y + step * k3);
            y += step / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
            z += step;
        }
        return y;
    }

    /** One Newton step on the logarithm of the smaller tail, so that errors of the path do not add up. */
    private double polish(double z, double y) {
        double x = Math.exp(y) / 2;
        double tail = z > 0 ? Gamma.regularizedGammaP(half, x) : Gamma.regularizedGammaQ(half, x);
        double wanted = StandardNormal.cumulative(-Math.abs(z));
        double density = Math.exp(logConstant + half * y - x); // of y
        double step = (Math.log(tail) - Math.log(wanted)) * tail / density;
        return z > 0 ? y - step : y + step;
    }

    /** dy/dz = -exp(log phi(z) - log(x f(x))), with x f(x) = c x^(nu/2) exp(-x/2). */
    private double change(double z, double y) {
        double logDensity = logConstant + half * y - Math.exp(y) / 2;
        return -Math.exp(-0.5 * z * z - StandardNormal.LOG_SQRT_TWO_PI - logDensity);
    }

    /** sqrt(1/chi-squared), rising with the score. */
    double inverseChi(double score) {
        return Math.exp(-0.5 * logChiSquared(score));
    }

    private double logChiSquared(double score) {
        double place = (score + REACH) * PER_UNIT;
        if (place <= 0) {
            return value[0] + slope[0] * place / PER_UNIT;
        }
        int node = (int) place;
        if (node >= NODES - 1) {
            return value[NODES - 1] + slope[NODES - 1] * (score - REACH);
        }
        double u = place - node;
        double rise = value[node + 1] - value[node];
        double first = slope[node] / PER_UNIT;
        double second = slope[node + 1] / PER_UNIT;
        return value[node] + u * (first + u * (3 * rise - 2 * first - second + u * (first + second - 2 * rise)));
    }
}
