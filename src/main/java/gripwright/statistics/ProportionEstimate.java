package gripwright.statistics;

import org.apache.commons.math3.distribution.BetaDistribution;

/**
 * A share of trials with its interval by Jeffreys' prior.
 *
 * <p>The posterior of the share is Beta(x + 1/2, n - x + 1/2); the interval lies between its tails, except that it starts
 * at 0 where x = 0 and ends at 1 where x = n. L. D. Brown, T. T. Cai and A. DasGupta, Statistical Science 16 (2001)
 * 101-133, who recommend it (or Wilson's) for small n.
 *
 * @param successes  x
 * @param trials     n
 * @param proportion x / n; from one trial on
 * @param interval   of the share; 0 to 1 without trials
 * @param confidence of the interval
 */
public record ProportionEstimate(int successes, int trials, Figure<Double> proportion, Interval interval,
                                 double confidence) {

    /**
     * Estimates a share.
     *
     * @param successes  0 to trials
     * @param trials     0 or more
     * @param confidence between 0 and 1
     * @return the estimate
     * @throws IllegalArgumentException if a count or the confidence is out of range
     */
    public static ProportionEstimate of(int successes, int trials, double confidence) {
        Distributions.requireConfidence(confidence);
        if (successes < 0 || successes > trials) {
            throw new IllegalArgumentException(successes + " successes in " + trials + " trials can't be");
        }
        if (trials == 0) {
            return new ProportionEstimate(0, 0, Figure.none(Shortfall.TOO_FEW_VALUES), new Interval(0, 1), confidence);
        }
        BetaDistribution posterior = new BetaDistribution(null, successes + 0.5, trials - successes + 0.5, 1e-14);
        double tail = (1 - confidence) / 2;
        Interval interval = new Interval(successes == 0 ? 0 : posterior.inverseCumulativeProbability(tail),
            successes == trials ? 1 : posterior.inverseCumulativeProbability(1 - tail));
        return new ProportionEstimate(successes, trials, Figure.of((double) successes / trials), interval, confidence);
    }

    /** Wilson's score interval (E. B. Wilson, Journal of the American Statistical Association 22 (1927) 209-212). */
    static Interval wilson(int successes, int trials, double confidence) {
        double z = -StandardNormal.quantile((1 - confidence) / 2);
        double share = (double) successes / trials;
        double spread = z * Math.sqrt(z * z + 4 * successes * (1 - share));
        double middle = 2 * successes + z * z;
        double scale = 2 * (trials + z * z);
        return new Interval(Math.max(0, (middle - spread) / scale), Math.min(1, (middle + spread) / scale));
    }
}
