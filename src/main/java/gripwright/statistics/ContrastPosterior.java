package gripwright.statistics;

import java.util.function.Supplier;

/**
 * The posterior of one number (a mean, a difference of means, any contrast): a mixture of shifted and scaled t
 * distributions over the nodes of the grid.
 *
 * <p>With node weights w, locations m and scales s: P(value &gt; d) = sum w T((m - d)/s). All figures are in units of the
 * response; all are NaN where the fit is not available or a group concerned has no values. Immutable.
 */
public final class ContrastPosterior {

    /** Below this the tabulated tails would lose relative precision and exact ones are summed instead. */
    private static final double SMALL = 1e-5;
    /** Nodes below this weight cannot move an interval. */
    private static final double NEGLIGIBLE = 1e-14;
    private static final double SQRT_2 = Math.sqrt(2);
    private static final int MOST_STEPS = 200;

    private final double[] weight;
    private final double[] location;
    private final double[] spread;
    private final StudentTail student;
    private final Supplier<FamilyTail> family;

    /** The upper tail of the studentized range of the family of all pairs. */
    @FunctionalInterface
    interface FamilyTail {
        double at(double q);
    }

    ContrastPosterior(double[] weight, double[] location, double[] spread, StudentTail student,
            Supplier<FamilyTail> family) {
        this.weight = weight;
        this.location = location;
        this.spread = spread;
        this.student = student;
        this.family = family;
    }

    /** What stands for a number of which nothing is known. */
    static ContrastPosterior undefined() {
        return new ContrastPosterior(new double[0], new double[0], new double[0], null, null);
    }

    /** Whether there is anything to report. */
    public boolean isDefined() {
        return weight.length > 0;
    }

    /** The degrees of freedom of each component of the mixture; NaN if undefined. */
    public double degreesOfFreedom() {
        return isDefined() ? student.degreesOfFreedom() : Double.NaN;
    }

    /** The posterior mean (with one degree of freedom, where no mean exists, the middle of the mixture). */
    public double estimate() {
        if (!isDefined()) {
            return Double.NaN;
        }
        double sum = 0;
        for (int i = 0; i < weight.length; i++) {
            sum += weight[i] * location[i];
        }
        return sum;
    }

    /** The posterior standard deviation; infinite with two degrees of freedom or fewer. */
    public double standardDeviation() {
        if (!isDefined()) {
            return Double.NaN;
        }
        double nu = student.degreesOfFreedom();
        if (nu <= 2) {
            return Double.POSITIVE_INFINITY;
        }
        double centre = estimate();
        double variance = 0;
        for (int i = 0; i < weight.length; i++) {
            double deviation = location[i] - centre;
            variance += weight[i] * (spread[i] * spread[i] * nu / (nu - 2) + deviation * deviation);
        }
        return Math.sqrt(variance);
    }

    /**
     * The probability that the value is above a limit.
     *
     * @param limit any number
     * @return the probability, relative error below 1e-5 of itself and absolute error below 1e-9
     */
    public double probabilityAbove(double limit) {
        return tailSum(limit, 1);
    }

    /** The probability that the value is below a limit; see {@link #probabilityAbove}. */
    public double probabilityBelow(double limit) {
        return tailSum(limit, -1);
    }

    /** The probability that the value lies strictly between -limit and limit, for a limit of 0 or more. */
    public double probabilityWithin(double limit) {
        return Math.max(0, 1 - probabilityAbove(limit) - probabilityBelow(-limit));
    }

    private double tailSum(double limit, int sign) {
        if (!isDefined()) {
            return Double.NaN;
        }
        double sum = 0;
        for (int i = 0; i < weight.length; i++) {
            sum += weight[i] * student.upper(sign * (limit - location[i]) / spread[i]);
        }
        if (sum >= SMALL) {
            return Math.min(1, sum);
        }
        sum = 0;
        for (int i = 0; i < weight.length; i++) {
            sum += weight[i] * student.exactUpper(sign * (limit - location[i]) / spread[i]);
        }
        return sum;
    }

    /**
     * The interval that leaves equal probability on either side.
     *
     * @param level the probability inside, between 0 and 1
     * @return the interval, its ends to about ten digits of their distance from the estimate
     * @throws IllegalArgumentException if the level is not between 0 and 1
     */
    public Interval interval(double level) {
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException("The level of an interval lies between 0 and 1, not at " + level);
        }
        if (!isDefined()) {
            return Interval.UNDEFINED;
        }
        double tail = (1 - level) / 2;
        double multiple = student.upperQuantile(tail);
        return new Interval(-reach(tail, multiple, -1), reach(tail, multiple, 1));
    }

    /**
     * The point beyond which the given probability lies, after turning the axis by sign: a safeguarded Newton search
     * between the least and the greatest quantile of the nodes, padded by 1e-3 of the largest scale.
     */
    private double reach(double tail, double multiple, int sign) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double widest = 0;
        double x = 0;
        for (int i = 0; i < weight.length; i++) {
            double quantile = sign * location[i] + multiple * spread[i];
            low = Math.min(low, quantile);
            high = Math.max(high, quantile);
            widest = Math.max(widest, spread[i]);
            x += weight[i] * quantile;
        }
        low -= 1e-3 * widest;
        high += 1e-3 * widest;
        for (int step = 0; step < MOST_STEPS; step++) {
            double excess = -tail;
            double density = 0;
            for (int i = 0; i < weight.length; i++) {
                if (weight[i] > NEGLIGIBLE) {
                    double standardised = (x - sign * location[i]) / spread[i];
                    excess += weight[i] * student.upper(standardised);
                    density += weight[i] * student.quickDensity(standardised) / spread[i];
                }
            }
            if (excess > 0) {
                low = x;
            } else {
                high = x;
            }
            double next = x + excess / density;
            if (!(next > low && next < high)) {
                next = (low + high) / 2;
            }
            // Newton's error is about the square of the last step, in units of the scale.
            boolean settled = Math.abs(next - x) <= 1e-6 * widest;
            x = next;
            if (settled) {
                break;
            }
        }
        return x;
    }

    /**
     * The probability that a difference is above a limit, adjusted for the family of all pairs of groups:
     * sum w [1 - Q/2] where the location is above the limit and sum w Q/2 elsewhere, Q the upper tail of the studentized
     * range at sqrt(2) |m - d|/s.
     *
     * @param limit any number
     * @return the adjusted probability, always nearer to one half than the plain one
     * @throws IllegalStateException if this is not a difference of two groups from a fit with a flat prior on the means
     */
    public double familyProbabilityAbove(double limit) {
        return familySum(limit, 1);
    }

    /** The adjusted probability that a difference is below a limit; see {@link #familyProbabilityAbove}. */
    public double familyProbabilityBelow(double limit) {
        return familySum(limit, -1);
    }

    private double familySum(double limit, int sign) {
        if (!isDefined()) {
            return Double.NaN;
        }
        FamilyTail tail = family();
        double sum = 0;
        for (int i = 0; i < weight.length; i++) {
            double standardised = sign * (location[i] - limit) / spread[i];
            double half = 0.5 * tail.at(SQRT_2 * Math.abs(standardised));
            sum += weight[i] * (standardised > 0 ? 1 - half : half);
        }
        return sum;
    }

    /**
     * The two-sided p-value of no difference, adjusted for the family of all pairs: sum w Q(sqrt(2) |m|/s).
     *
     * @throws IllegalStateException as for {@link #familyProbabilityAbove}
     */
    public double familyTwoSidedP() {
        if (!isDefined()) {
            return Double.NaN;
        }
        FamilyTail tail = family();
        double sum = 0;
        for (int i = 0; i < weight.length; i++) {
            sum += weight[i] * tail.at(SQRT_2 * Math.abs(location[i]) / spread[i]);
        }
        return sum;
    }

    private FamilyTail family() {
        if (family == null) {
            throw new IllegalStateException("Only differences of two groups under a flat prior have a family");
        }
        return family.get();
    }
}
