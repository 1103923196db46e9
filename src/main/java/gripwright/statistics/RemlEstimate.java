package gripwright.statistics;

import org.apache.commons.math3.distribution.TDistribution;

/**
 * One contrast after restricted maximum likelihood, with two small-sample treatments of its uncertainty.
 *
 * @param estimate                  the generalised least squares estimate
 * @param standardError             its plain standard error
 * @param satterthwaiteDegrees      degrees of freedom for the plain standard error
 * @param kenwardRogerStandardError the standard error with Kenward and Roger's adjustment
 * @param kenwardRogerDegrees       degrees of freedom for the adjusted one
 */
public record RemlEstimate(double estimate, double standardError, double satterthwaiteDegrees,
                           double kenwardRogerStandardError, double kenwardRogerDegrees) {

    static final RemlEstimate UNDEFINED =
        new RemlEstimate(Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);

    /** The two-sided p-value of 0 by Satterthwaite; NaN where its degrees of freedom are. */
    public double satterthwaiteP() {
        return twoSided(estimate / standardError, satterthwaiteDegrees);
    }

    /** The two-sided p-value of 0 by Kenward and Roger; NaN where their degrees of freedom are. */
    public double kenwardRogerP() {
        return twoSided(estimate / kenwardRogerStandardError, kenwardRogerDegrees);
    }

    /**
     * Kenward and Roger's p-value adjusted for all pairs by the studentized range: Q(sqrt2 |estimate|/se; groups, df).
     *
     * @param groups of the family, 2 to 100
     * @return the adjusted p-value; NaN where the degrees of freedom are
     * @throws IllegalArgumentException if the number of groups is out of range
     */
    public double kenwardRogerFamilyP(int groups) {
        return kenwardRogerDegrees > 0 ? StudentizedRange.upperTail(
            Math.sqrt(2) * Math.abs(estimate / kenwardRogerStandardError), groups, kenwardRogerDegrees) : Double.NaN;
    }

    /**
     * Satterthwaite's interval: estimate ∓ t se.
     *
     * @param level between 0 and 1
     * @return the interval; NaN at both ends where the degrees of freedom are NaN
     * @throws IllegalArgumentException if the level is not between 0 and 1
     */
    public Interval satterthwaiteInterval(double level) {
        return interval(level, standardError, satterthwaiteDegrees);
    }

    /** Kenward and Roger's interval, with their standard error; otherwise as {@link #satterthwaiteInterval}. */
    public Interval kenwardRogerInterval(double level) {
        return interval(level, kenwardRogerStandardError, kenwardRogerDegrees);
    }

    private static double twoSided(double t, double degrees) {
        return degrees > 0 ? 2 * new TDistribution(null, degrees).cumulativeProbability(-Math.abs(t)) : Double.NaN;
    }

    private Interval interval(double level, double error, double degrees) {
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException("The level of an interval lies between 0 and 1, not at " + level);
        }
        if (!(degrees > 0)) {
            return Interval.UNDEFINED;
        }
        double reach = error * new TDistribution(null, degrees, 1e-12).inverseCumulativeProbability((1 + level) / 2);
        return new Interval(estimate - reach, estimate + reach);
    }
}
