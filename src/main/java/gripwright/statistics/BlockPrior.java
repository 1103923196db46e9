package gripwright.statistics;

/**
 * The prior on tau, the ratio of the standard deviation between blocks to the residual one: half-normal.
 *
 * @param scale the standard deviation of the normal distribution that is folded; its median is 0.674 scale, 95 % of it
 *              lie below 1.96 scale
 */
public record BlockPrior(double scale) {

    /** Our judgement of what is usual, with no data behind it: median .34, 95 % below .98. */
    public static final BlockPrior USUAL = new BlockPrior(0.5);

    /** Twice as wide, for readers who distrust {@link #USUAL}. */
    public static final BlockPrior CAUTIOUS = new BlockPrior(1);

    /** @throws IllegalArgumentException unless the scale is positive and finite */
    public BlockPrior {
        if (!(scale > 0 && scale < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("The scale of the prior must be positive and finite, not " + scale);
        }
    }

    /** The logarithm of the density at tau, for tau of 0 or more. */
    double logDensity(double tau) {
        double standardised = tau / scale;
        return Math.log(Math.sqrt(2 / Math.PI) / scale) - 0.5 * standardised * standardised;
    }
}
