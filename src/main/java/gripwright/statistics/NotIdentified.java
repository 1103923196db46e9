package gripwright.statistics;

/**
 * What a mixed model could not learn from the values at hand, as a field of the result and never a silent omission.
 */
public enum NotIdentified {

    /** There is not one value. */
    NO_VALUES(true, "There are no values."),

    /** Every value is the same number, so that there is no noise to measure a difference by. */
    ALL_VALUES_EQUAL(true, "All values are equal: there is no variation to judge a difference by."),

    /** Fewer values than the model needs: not one degree of freedom is left for the noise. */
    TOO_FEW_VALUES(true, "There are too few values: none is left over to estimate the noise."),

    /** Values differ between blocks but not at all within them: the ratio of the two variations would be infinite. */
    NO_VARIATION_WITHIN_BLOCKS(true, "Values do not vary within blocks: the noise cannot be estimated."),

    /**
     * One block per group, or no block with more than one value: the likelihood is flat in the ratio of block variance
     * to noise, and the prior is all that is known of it.
     */
    BLOCK_VARIANCE(false, "Block-to-block variation cannot be told from these values: its prior is used."),

    /** The covariate does not vary within groups: drift and differences of groups are the same thing here. */
    DRIFT(false, "Drift cannot be told from differences of groups: its prior is used."),

    /** As {@link #DRIFT}, but no prior on the drift keeps the means apart from it. */
    DRIFT_WITHOUT_PRIOR(true, "Drift cannot be told from differences of groups, and no prior limits it."),

    /** The covariate is the same for all rows, so that there is no drift to estimate. */
    COVARIATE_CONSTANT(false, "The covariate does not vary: drift is left out."),

    /** At least one group has no value; its figures are NaN and it takes no part in any ranking. */
    GROUP_WITHOUT_VALUES(false, "At least one group has no values: nothing can be said of it."),

    /** One or two degrees of freedom: t distributions so wide that their standard deviations are infinite. */
    STANDARD_DEVIATIONS(false, "So few values are left over that standard deviations of the estimates are infinite.");

    private final boolean preventsFit;
    private final String explanation;

    NotIdentified(boolean preventsFit, String explanation) {
        this.preventsFit = preventsFit;
        this.explanation = explanation;
    }

    /** Whether there is no result at all: every figure of the fit is then NaN. */
    public boolean preventsFit() {
        return preventsFit;
    }

    /** One general sentence about it. */
    public String explanation() {
        return explanation;
    }
}
