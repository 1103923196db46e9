package gripwright.statistics;

import java.util.Arrays;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * How likely a normal variable is to fall beyond a limit on one side: for the next value, and in the long run with an
 * interval.
 *
 * <p>Next value: (mean - limit)/(s sqrt(1 + 1/n)) is Student's t on n - 1 degrees of freedom (the prediction
 * distribution). Long run: the share is Phi(delta), delta = (mu - limit)/sigma (signs turned for the lower side). With
 * k = (mean - limit)/s the pivot delta = k chi/sqrt(nu) + Z/sqrt(n) gives
 * P(delta &lt; d) = E Phi(sqrt(n) (d - k chi/sqrt(nu))), which is the posterior under the prior 1/sigma and, exactly, the
 * confidence distribution from the noncentral t (D. B. Owen, Technometrics 10 (1968) 445-478): the interval covers with
 * its stated probability at every n. The expectation over chi is taken by Gauss-Legendre quadrature.
 *
 * @param count         how many values
 * @param observedShare of the values beyond the limit; from one value on
 * @param nextValue     probability that the next value lies beyond; from two values on
 * @param longRunShare  interval of the share in the long run; from two values on
 * @param confidence    of the interval
 */
public record ExceedanceProbability(int count, Figure<Double> observedShare, Figure<Double> nextValue,
                                    Figure<Interval> longRunShare, double confidence) {

    /** On which side of the limit. */
    public enum Side {
        /** Less than the limit. */
        BELOW,
        /** More than the limit. */
        ABOVE
    }

    /**
     * Estimates the probability of a value beyond a limit.
     *
     * @param values     NaN missing
     * @param limit      the limit
     * @param side       which side counts
     * @param confidence of the interval, between 0 and 1
     * @return the probability; too few values below two; no variation where all are equal
     * @throws IllegalArgumentException if a value or the limit is not finite or the confidence out of range
     */
    public static ExceedanceProbability of(double[] values, double limit, Side side, double confidence) {
        Distributions.requireConfidence(confidence);
        if (Double.isNaN(limit) || Double.isInfinite(limit)) {
            throw new IllegalArgumentException("The limit must be finite, not " + limit);
        }
        Sample sample = Sample.of(values);
        int n = sample.count();
        double sign = side == Side.ABOVE ? 1 : -1;
        Figure<Double> observed = n == 0 ? Figure.none(Shortfall.TOO_FEW_VALUES)
            : Figure.of(Arrays.stream(sample.values()).filter(x -> sign * (x - limit) > 0).count() / (double) n);
        if (n < 2 || sample.sumOfSquares() == 0) {
            Shortfall why = n < 2 ? Shortfall.TOO_FEW_VALUES : Shortfall.NO_VARIATION;
            return new ExceedanceProbability(n, observed, Figure.none(why), Figure.none(why), confidence);
        }
        double k = sign * sample.meanLess(limit) / Math.sqrt(sample.variance());
        double next = Distributions.tUpper(-k / Math.sqrt(1 + 1.0 / n), n - 1);
        return new ExceedanceProbability(n, observed, Figure.of(next), Figure.of(longRun(k, n, confidence)), confidence);
    }

    private static Interval longRun(double k, int n, double confidence) {
        ScaleNodes nodes = ScaleNodes.of(n - 1);
        double tail = (1 - confidence) / 2;
        return new Interval(StandardNormal.cumulative(quantile(k, n, nodes, tail)),
            StandardNormal.cumulative(quantile(k, n, nodes, 1 - tail)));
    }

    private static double quantile(double k, int n, ScaleNodes nodes, double probability) {
        double reach = 3 * Math.abs(k) + 9 / Math.sqrt(n);
        double root = Math.sqrt(n);
        return new BrentSolver(1e-13, 1e-13).solve(500, d -> {
            double sum = -probability;
            for (int i = 0; i < nodes.scales().length; i++) {
                sum += nodes.weights()[i] * StandardNormal.cumulative(root * (d - k * nodes.scales()[i]));
            }
            return sum;
        }, -reach, reach);
    }
}
