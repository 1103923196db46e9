package gripwright.statistics;

import java.util.Collections;
import java.util.Set;

/**
 * The frequentist reading of a mixed model: restricted maximum likelihood without any prior. Immutable.
 *
 * <p>With one retest only it is a poor guide (one degree of freedom for the block variance, which is often estimated as
 * exactly 0); it is reported beside the posterior for readers who ask for it.
 */
public final class RemlFit {

    private final LeastSquares system;
    private final int[] columnOfGroup;
    private final Set<NotIdentified> notIdentified;
    private final BlockSums sums;
    private final DenominatorDegrees degrees;
    private final int interiorMaxima;

    RemlFit(LeastSquares system, int[] columnOfGroup, Set<NotIdentified> notIdentified) {
        this.system = system;
        this.columnOfGroup = columnOfGroup;
        this.notIdentified = Collections.unmodifiableSet(notIdentified);
        if (isAvailable()) {
            RestrictedLikelihood likelihood = new RestrictedLikelihood(system);
            this.sums = new BlockSums(system, likelihood.rho());
            this.degrees = new DenominatorDegrees(sums);
            this.interiorMaxima = likelihood.interiorMaxima();
        } else {
            this.sums = null;
            this.degrees = null;
            this.interiorMaxima = 0;
        }
    }

    /** Whether there are any figures: without a prior the block variance must be identified too. */
    public boolean isAvailable() {
        return !notIdentified.contains(NotIdentified.BLOCK_VARIANCE)
            && notIdentified.stream().noneMatch(NotIdentified::preventsFit);
    }

    /** What these values cannot tell without a prior. */
    public Set<NotIdentified> notIdentified() {
        return notIdentified;
    }

    /** Whether a drift is in the model, estimated without a prior. */
    public boolean hasDrift() {
        return system.drift;
    }

    /** The ratio of block to residual standard deviation; exactly 0 on the {@link #isBoundary() boundary}. */
    public double blockRatio() {
        return sums == null ? Double.NaN : Math.sqrt(sums.rho);
    }

    /** The residual standard deviation. */
    public double residualStandardDeviation() {
        return sums == null ? Double.NaN
            : system.data.scale * Math.sqrt(sums.solution.residualSquares() / system.nu);
    }

    /** The standard deviation between blocks. */
    public double blockStandardDeviation() {
        return blockRatio() * residualStandardDeviation();
    }

    /** Whether the likelihood is greatest at a block variance of exactly 0. */
    public boolean isBoundary() {
        return sums != null && sums.rho == 0;
    }

    /** The number of local maxima with a positive block variance. */
    public int interiorMaxima() {
        return interiorMaxima;
    }

    /** Minus twice the restricted log likelihood at its maximum, constants as in lme4, covariate in its own units. */
    public double criterion() {
        if (sums == null) {
            return Double.NaN;
        }
        double sigma = residualStandardDeviation();
        double drift = system.drift ? 2 * Math.log(system.data.covariateRange) : 0;
        return system.nu * (Math.log(2 * Math.PI * sigma * sigma) + 1) + sums.solution.logBlocks()
            + 2 * sums.solution.logDeterminant() + drift;
    }

    /** The mean of a group at the centre of the covariate; NaN throughout for a group without values or without a fit. */
    public RemlEstimate mean(int group) {
        return sums == null || columnOfGroup[group] < 0 ? RemlEstimate.UNDEFINED
            : estimate(unit(columnOfGroup[group]), system.data.offset, system.data.scale);
    }

    /** The mean of one group less that of another; NaN throughout where one has no values, they are the same, or no fit is. */
    public RemlEstimate difference(int first, int second) {
        if (sums == null || columnOfGroup[first] < 0 || columnOfGroup[second] < 0 || first == second) {
            return RemlEstimate.UNDEFINED;
        }
        double[] c = unit(columnOfGroup[first]);
        c[columnOfGroup[second]] = -1;
        return estimate(c, 0, system.data.scale);
    }

    /** The change of the response per unit of the covariate. */
    public RemlEstimate drift() {
        return sums == null || !system.drift ? RemlEstimate.UNDEFINED
            : estimate(unit(system.p - 1), 0, system.data.scale / system.data.covariateRange);
    }

    private double[] unit(int column) {
        double[] c = new double[system.p];
        c[column] = 1;
        return c;
    }

    private RemlEstimate estimate(double[] c, double shift, double unit) {
        return new RemlEstimate(shift + unit * SquareMatrices.inner(c, sums.coefficients),
            unit * Math.sqrt(degrees.variance(c)), degrees.satterthwaite(c),
            unit * Math.sqrt(degrees.adjustedVariance(c)), degrees.kenwardRoger(c));
    }
}
