package gripwright.statistics;

import java.util.Arrays;

/**
 * Fits y = mean of the group + drift x t + block effect + noise by exact posterior quadrature over the ratio tau of block
 * to residual standard deviation.
 *
 * <p>Block effects are normal with standard deviation tau sigma, noise is normal with sigma, t is the covariate less its
 * mean over its range, all rows counted. Priors: flat on the means (or exchangeable, for choosing), 1/sigma^2 on
 * sigma^2, half-normal on tau, normal or flat on the drift. Given tau everything is closed form, so that the posterior is
 * a mixture of t distributions over 64 values of tau (more beyond 60 blocks). The method paper derives each step.
 *
 * <p>Options are fixed at construction; every {@code with} returns another fitter. Safe for use by several threads.
 * Distribution tables are shared between the fits of one fitter and those made from it.
 *
 * <pre>{@code
 * MixedModelFit fit = MixedModelFitter.withDefaults().fit(response, group, order, block);
 * double p = fit.difference(2, 0).probabilityAbove(0.5);
 * }</pre>
 */
public final class MixedModelFitter {

    private final BlockPrior blockPrior;
    private final DriftPrior driftPrior;
    private final GroupPrior groupPrior;
    private final TailTables tables;

    private MixedModelFitter(BlockPrior blockPrior, DriftPrior driftPrior, GroupPrior groupPrior, TailTables tables) {
        this.blockPrior = blockPrior;
        this.driftPrior = driftPrior;
        this.groupPrior = groupPrior;
        this.tables = tables;
    }

    /** {@link BlockPrior#USUAL}, {@link DriftPrior#USUAL}, {@link GroupPrior#FLAT}. */
    public static MixedModelFitter withDefaults() {
        return new MixedModelFitter(BlockPrior.USUAL, DriftPrior.USUAL, GroupPrior.FLAT, new TailTables());
    }

    /** The same with another prior on the ratio of block to residual standard deviation. */
    public MixedModelFitter with(BlockPrior prior) {
        return new MixedModelFitter(prior, driftPrior, groupPrior, tables);
    }

    /** The same with another treatment of the drift. */
    public MixedModelFitter with(DriftPrior prior) {
        return new MixedModelFitter(blockPrior, prior, groupPrior, tables);
    }

    /** The same with another prior on the group means. */
    public MixedModelFitter with(GroupPrior prior) {
        return new MixedModelFitter(blockPrior, driftPrior, prior, tables);
    }

    /** The prior on the ratio of block to residual standard deviation. */
    public BlockPrior blockPrior() {
        return blockPrior;
    }

    /** How the drift is treated. */
    public DriftPrior driftPrior() {
        return driftPrior;
    }

    /** The prior on the group means. */
    public GroupPrior groupPrior() {
        return groupPrior;
    }

    /** Fits with as many groups as the greatest group number asks for; see the other method. */
    public MixedModelFit fit(double[] response, int[] group, double[] covariate, int[] block) {
        return fit(response, group, covariate, block, Arrays.stream(group).max().orElse(-1) + 1);
    }

    /**
     * Fits the model.
     *
     * @param response  one number per row; NaN where there is none, such rows count only for the range of the covariate
     * @param group     the group of each row, 0 to groups - 1
     * @param covariate the place of each row in time or order, finite; null for no drift
     * @param block     a label per row; rows with equal labels share one block effect
     * @param groups    how many groups there are, with or without values
     * @return the fit; with too little to fit it is not {@link MixedModelFit#isAvailable() available} and says why
     * @throws IllegalArgumentException if lengths differ, a group is out of range, a response is infinite or a covariate
     *                                  is not finite
     */
    public MixedModelFit fit(double[] response, int[] group, double[] covariate, int[] block, int groups) {
        BlockedData data = BlockedData.of(response, group, covariate, block, groups);
        return new MixedModelFit(data, covariate != null, this, tables);
    }
}
