package gripwright.statistics;

/**
 * The prior on the group means: flat, for claims, or exchangeable, for choosing.
 *
 * <p>Exchangeable: the means are independent normal about a common value m with standard deviation omega sigma, m flat,
 * omega half-normal. It keeps the group with the fewest values from looking best by chance.
 *
 * @param scale the scale of the half-normal prior of omega; infinity is the flat prior
 */
public record GroupPrior(double scale) {

    /** Nothing is assumed of the means. */
    public static final GroupPrior FLAT = new GroupPrior(Double.POSITIVE_INFINITY);

    /** The means differ from each other by about one residual standard deviation, or less, or somewhat more. */
    public static final GroupPrior EXCHANGEABLE = new GroupPrior(1);

    /** @throws IllegalArgumentException unless the scale is positive */
    public GroupPrior {
        if (!(scale > 0)) {
            throw new IllegalArgumentException("The scale of the prior must be positive, not " + scale);
        }
    }

    boolean isFlat() {
        return scale == Double.POSITIVE_INFINITY;
    }
}
