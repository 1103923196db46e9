package gripwright.statistics;

import org.apache.commons.math3.special.Beta;

/**
 * The difference of two shares.
 *
 * <p>Interval by Newcombe's hybrid of two Wilson score intervals (R. G. Newcombe, Statistics in Medicine 17 (1998)
 * 873-890, method 10); the probability that the first share is the smaller from two independent posteriors under
 * Jeffreys' prior, by quadrature. The two come from different schools and agree closely without being one another's
 * inversion.
 *
 * @param difference              first share less second
 * @param interval                of the difference
 * @param probabilityFirstSmaller that the first share is below the second
 * @param confidence              of the interval
 */
public record ProportionComparison(double difference, Interval interval, double probabilityFirstSmaller,
                                   double confidence) {

    private static final LegendreRule RULE = LegendreRule.ofOrder(16);
    private static final int PANELS = 12;
    private static final double REACH = 9; // standard deviations: 1e-19 is left outside

    /**
     * Compares two shares.
     *
     * @param first  the first
     * @param second the second, of the same confidence
     * @return the comparison; too few values where one has no trials
     * @throws IllegalArgumentException if their confidence differs
     */
    public static Figure<ProportionComparison> of(ProportionEstimate first, ProportionEstimate second) {
        if (first.confidence() != second.confidence()) {
            throw new IllegalArgumentException("Shares of different confidence can't be compared");
        }
        if (first.trials() == 0 || second.trials() == 0) {
            return Figure.none(Shortfall.TOO_FEW_VALUES);
        }
        double confidence = first.confidence();
        double p1 = first.proportion().get();
        double p2 = second.proportion().get();
        Interval w1 = ProportionEstimate.wilson(first.successes(), first.trials(), confidence);
        Interval w2 = ProportionEstimate.wilson(second.successes(), second.trials(), confidence);
        double difference = p1 - p2;
        Interval interval = new Interval(difference - Math.hypot(p1 - w1.lower(), w2.upper() - p2),
            difference + Math.hypot(w1.upper() - p1, p2 - w2.lower()));
        return Figure.of(new ProportionComparison(difference, interval, probabilitySmaller(first, second), confidence));
    }

    /**
     * P(p1 &lt; p2) = int f1(p) P(p2 &gt; p) dp with p = sin^2 a, which takes the singularities off the ends of f1 and
     * gives the angle a near-normal distribution of standard deviation 1/(2 sqrt n).
     */
    private static double probabilitySmaller(ProportionEstimate first, ProportionEstimate second) {
        double a1 = first.successes() + 0.5;
        double b1 = first.trials() - first.successes() + 0.5;
        double a2 = second.successes() + 0.5;
        double b2 = second.trials() - second.successes() + 0.5;
        double middle = Math.atan2(Math.sqrt(a1), Math.sqrt(b1));
        double reach = REACH / (2 * Math.sqrt(a1 + b1));
        LegendreRule rule = RULE.repeated(Math.max(0, middle - reach),
            Math.min(Math.PI / 2, middle + reach), PANELS);
        double sum = 0;
        double logConstant = Math.log(2) - Beta.logBeta(a1, b1);
        for (int i = 0; i < rule.size(); i++) {
            double sine = Math.sin(rule.nodes()[i]);
            double cosine = Math.cos(rule.nodes()[i]);
            double density = Math.exp(logConstant + (2 * a1 - 1) * Math.log(sine) + (2 * b1 - 1) * Math.log(cosine));
            sum += rule.weights()[i] * density * Beta.regularizedBeta(cosine * cosine, b2, a2);
        }
        return Math.min(1, sum);
    }
}
