package gripwright.statistics;

/**
 * How strongly the spread of each group is drawn to the spread of all: the worth of the common spread in degrees of
 * freedom.
 *
 * @param degreesOfFreedom of the common spread, 0 or more; 0 leaves each group to itself
 */
public record SpreadPrior(double degreesOfFreedom) {

    /** Six degrees of freedom: a judgement, in force until data on many groups say otherwise. */
    public static final SpreadPrior USUAL = new SpreadPrior(6);

    /** Refuses what is no number of degrees of freedom. */
    public SpreadPrior {
        if (!(degreesOfFreedom >= 0) || Double.isInfinite(degreesOfFreedom)) {
            throw new IllegalArgumentException("The prior degrees of freedom must be 0 or more, not " + degreesOfFreedom);
        }
    }
}
