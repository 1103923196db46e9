package gripwright.statistics;

/**
 * How the slope on the covariate is treated: left out, estimated without any prior, or drawn towards zero.
 *
 * @param standardDeviation the prior standard deviation of the change over the whole range of the covariate, in residual
 *                          standard deviations; 0 leaves the drift out, infinity is the flat prior
 */
public record DriftPrior(double standardDeviation) {

    /** No drift in the model. */
    public static final DriftPrior NONE = new DriftPrior(0);

    /** The drift is estimated from the values alone. */
    public static final DriftPrior FLAT = new DriftPrior(Double.POSITIVE_INFINITY);

    /**
     * The change over the whole range is normal with a standard deviation of one residual standard deviation. It costs
     * nothing where the order of the groups is balanced and protects where it is not.
     */
    public static final DriftPrior USUAL = new DriftPrior(1);

    /** @throws IllegalArgumentException if the standard deviation is negative or NaN */
    public DriftPrior {
        if (!(standardDeviation >= 0)) {
            throw new IllegalArgumentException("The prior deviation of the drift must not be negative: "
                + standardDeviation);
        }
    }

    boolean isNone() {
        return standardDeviation == 0;
    }

    boolean isProper() {
        return standardDeviation > 0 && standardDeviation < Double.POSITIVE_INFINITY;
    }
}
