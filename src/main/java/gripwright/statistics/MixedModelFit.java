package gripwright.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a mixed model says of one response: means of the groups, their differences, the drift, both standard deviations,
 * and what could not be identified. Immutable; figures are worked out when asked for.
 *
 * <p>Means are those at the centre of the covariate. Where the fit is not {@link #isAvailable() available} all figures
 * are NaN and {@link #notIdentified()} says why; the same holds for groups without values.
 */
public final class MixedModelFit {

    private final BlockedData data;
    private final MixedModelFitter options;
    private final TailTables tables;
    private final Set<NotIdentified> notIdentified;
    private final LeastSquares system;
    private final GridNodes flat;
    private final GridNodes nodes;
    private final int[] columnOfGroup;
    private final boolean covariateGiven;

    MixedModelFit(BlockedData data, boolean covariateGiven, MixedModelFitter options, TailTables tables) {
        this.data = data;
        this.options = options;
        this.tables = tables;
        this.system = new LeastSquares(data, options.driftPrior());
        this.covariateGiven = covariateGiven;
        this.notIdentified = Collections.unmodifiableSet(examine(system, options.driftPrior()));
        this.columnOfGroup = columns(data);
        this.flat = isAvailable() ? flatNodes(GridNodes.FlatGrid.of(system, options.blockPrior())) : null;
        this.nodes = withGroupPrior(flat);
    }

    private MixedModelFit(MixedModelFit origin, MixedModelFitter options) {
        this.data = origin.data;
        this.options = options;
        this.tables = origin.tables;
        this.system = origin.system;
        this.notIdentified = origin.notIdentified;
        this.columnOfGroup = origin.columnOfGroup;
        this.covariateGiven = origin.covariateGiven;
        this.flat = origin.flat;
        this.nodes = withGroupPrior(flat);
    }

    private GridNodes flatNodes(GridNodes.FlatGrid grid) {
        return data.isNested() ? new NestedNodes(grid) : new DenseNodes(grid);
    }

    private GridNodes withGroupPrior(GridNodes flatNodes) {
        int present = data.present.length;
        return flatNodes == null || options.groupPrior().isFlat() || present < 2
            ? flatNodes : flatNodes.exchangeable(options.groupPrior());
    }

    private static int[] columns(BlockedData data) {
        int[] result = new int[data.groups];
        Arrays.fill(result, -1);
        for (int k = 0; k < data.present.length; k++) {
            result[data.present[k]] = k;
        }
        return result;
    }

    private EnumSet<NotIdentified> examine(LeastSquares model, DriftPrior drift) {
        EnumSet<NotIdentified> found = EnumSet.noneOf(NotIdentified.class);
        if (data.present.length < data.groups) {
            found.add(NotIdentified.GROUP_WITHOUT_VALUES);
        }
        if (data.n == 0) {
            found.add(NotIdentified.NO_VALUES);
            return found;
        }
        if (covariateGiven && !drift.isNone() && !data.covariateVaries) {
            found.add(NotIdentified.COVARIATE_CONSTANT);
        }
        if (model.drift && !data.driftSeparable) {
            found.add(drift.isProper() ? NotIdentified.DRIFT : NotIdentified.DRIFT_WITHOUT_PRIOR);
        }
        if (!data.blockVarianceIdentified(model.drift)) {
            found.add(NotIdentified.BLOCK_VARIANCE);
        }
        examineNoise(model).ifPresent(found::add);
        return found;
    }

    private Optional<NotIdentified> examineNoise(LeastSquares model) {
        if (model.nu < 1) {
            return Optional.of(NotIdentified.TOO_FEW_VALUES);
        }
        if (data.allEqual()) {
            return Optional.of(NotIdentified.ALL_VALUES_EQUAL);
        }
        if (model.noNoise()) {
            return Optional.of(NotIdentified.NO_VARIATION_WITHIN_BLOCKS);
        }
        return model.nu <= 2 ? Optional.of(NotIdentified.STANDARD_DEVIATIONS) : Optional.empty();
    }

    /**
     * The same values by restricted maximum likelihood, without priors.
     *
     * @param withDrift whether the drift is in the model (then without any prior)
     * @return the fit; not available where the block variance cannot be told from these values
     */
    public RemlFit reml(boolean withDrift) {
        DriftPrior drift = withDrift ? DriftPrior.FLAT : DriftPrior.NONE;
        LeastSquares model = new LeastSquares(data, drift);
        return new RemlFit(model, columnOfGroup, examine(model, drift));
    }

    /** The same values under another prior on the group means; shares all work done so far. */
    public MixedModelFit with(GroupPrior prior) {
        return new MixedModelFit(this, options.with(prior));
    }

    /** Whether there are any figures; if not, {@link #notIdentified()} says why. */
    public boolean isAvailable() {
        return notIdentified.stream().noneMatch(NotIdentified::preventsFit);
    }

    /** What these values cannot tell; empty where all is well. */
    public Set<NotIdentified> notIdentified() {
        return notIdentified;
    }

    /** The fitter with its options. */
    public MixedModelFitter options() {
        return options;
    }

    /** The number of groups, with or without values. */
    public int groups() {
        return data.groups;
    }

    /** The number of values used. */
    public int values() {
        return data.n;
    }

    /** The number of blocks with at least one value. */
    public int blocks() {
        return data.blocks();
    }

    /** Whether a group has at least one value. */
    public boolean hasValues(int group) {
        return columnOfGroup[group] >= 0;
    }

    /** The degrees of freedom nu of the components of the posterior; below 1 where there are too few values. */
    public int degreesOfFreedom() {
        return nodes == null ? system.nu : nodes.nu;
    }

    /** Whether drift is a coefficient of the model. */
    public boolean hasDrift() {
        return system.drift;
    }

    /**
     * The mean of a group at the centre of the covariate, in the unit of the response.
     *
     * @param group 0 to groups - 1
     * @return its posterior; undefined (NaN throughout) for a group without values or a fit that is not available
     * @throws IndexOutOfBoundsException if there is no such group
     */
    public ContrastPosterior mean(int group) {
        if (!isAvailable() || columnOfGroup[group] < 0) {
            return ContrastPosterior.undefined();
        }
        double[] c = new double[system.p];
        c[columnOfGroup[group]] = 1;
        return posterior(c, data.offset, false);
    }

    /**
     * The mean of one group less that of another; the only kind with a family of all pairs.
     *
     * @param first  0 to groups - 1
     * @param second another
     * @return its posterior; undefined (NaN throughout) where one of the two has no values, they are the same or the fit is
     *     not available
     * @throws IndexOutOfBoundsException if there is no such group
     */
    public ContrastPosterior difference(int first, int second) {
        if (!isAvailable() || columnOfGroup[first] < 0 || columnOfGroup[second] < 0 || first == second) {
            return ContrastPosterior.undefined();
        }
        double[] c = new double[system.p];
        c[columnOfGroup[first]] = 1;
        c[columnOfGroup[second]] = -1;
        return posterior(c, 0, options.groupPrior().isFlat());
    }

    /**
     * Any weighted sum of the group means.
     *
     * @param weights one per group
     * @return its posterior, undefined if a group with a weight other than 0 has no values
     * @throws IllegalArgumentException if there is not one weight per group
     */
    public ContrastPosterior contrast(double[] weights) {
        if (weights.length != data.groups) {
            throw new IllegalArgumentException("A contrast needs " + data.groups + " weights, not " + weights.length);
        }
        double[] c = new double[system.p];
        double total = 0;
        for (int g = 0; g < weights.length; g++) {
            if (weights[g] != 0 && columnOfGroup[g] < 0) {
                return ContrastPosterior.undefined();
            }
            if (columnOfGroup[g] >= 0) {
                c[columnOfGroup[g]] = weights[g];
            }
            total += weights[g];
        }
        return isAvailable() ? posterior(c, total * data.offset, false) : ContrastPosterior.undefined();
    }

    /** The change of the response over the whole range of the covariate; undefined where it is not in the model. */
    public ContrastPosterior drift() {
        if (!isAvailable() || !system.drift) {
            return ContrastPosterior.undefined();
        }
        double[] c = new double[system.p];
        c[system.p - 1] = 1;
        return posterior(c, 0, false);
    }

    /** The range of the covariate over all rows; divide {@link #drift()} by it for the change per unit. */
    public double covariateRange() {
        return data.covariateRange;
    }

    private ContrastPosterior posterior(double[] c, double shift, boolean pair) {
        double[] location = new double[nodes.size()];
        double[] spread = new double[nodes.size()];
        nodes.contrast(c, data.scale, location, spread);
        for (int i = 0; i < location.length && shift != 0; i++) {
            location[i] += shift;
        }
        return new ContrastPosterior(nodes.weight, location, spread, tables.student(nodes.nu),
            pair ? () -> tables.range(data.present.length, nodes.nu) : null);
    }

    /** The posterior as it is held: the nodes of the grid that carry weight; empty where the fit is not available. */
    public List<PosteriorNode> nodes() {
        List<PosteriorNode> result = new ArrayList<>();
        for (int i = 0; isAvailable() && i < nodes.size(); i++) {
            double[] coefficients = nodes.coefficients(i);
            for (int c = 0; c < coefficients.length; c++) {
                coefficients[c] = data.scale * coefficients[c] + (c < data.present.length ? data.offset : 0);
            }
            result.add(new PosteriorNode(nodes.weight[i], nodes.tau[nodes.base[i]], nodes.omega[i], coefficients,
                nodes.unscaledCovariance(i), data.scale * data.scale * nodes.squares[i], nodes.nu));
        }
        return result;
    }

    /** The ratio of the standard deviation between blocks to the residual one. */
    public ScalePosterior blockRatio() {
        return isAvailable() ? ScalePosterior.ofRatio(nodes, options.blockPrior().scale())
            : ScalePosterior.undefined();
    }

    /**
     * How many times better a prior on tau twice as wide explains these values (a Bayes factor): about 1 or less where the
     * prior fits, above 3 where values and prior disagree and {@link BlockPrior#CAUTIOUS} deserves a look.
     */
    public double evidenceForWiderBlockPrior() {
        if (!isAvailable()) {
            return Double.NaN;
        }
        double scale = options.blockPrior().scale();
        BlockPrior wider = new BlockPrior(2 * scale);
        double sum = 0;
        for (int i = 0; i < flat.size(); i++) {
            double tau = flat.tau[flat.base[i]];
            sum += flat.weight[i] * Math.exp(wider.logDensity(tau) - options.blockPrior().logDensity(tau));
        }
        return sum;
    }

    /** The residual standard deviation. */
    public ScalePosterior residualStandardDeviation() {
        return isAvailable() ? ScalePosterior.ofResidual(nodes, data.scale) : ScalePosterior.undefined();
    }

    /** The standard deviation between blocks. */
    public ScalePosterior blockStandardDeviation() {
        return isAvailable() ? ScalePosterior.ofBlocks(nodes, options.blockPrior().scale(), data.scale)
            : ScalePosterior.undefined();
    }

    /** How many scores one draw takes: node, residual standard deviation, drift, then one per group. */
    public int scoresPerDraw() {
        return PosteriorSampler.scoresPerDraw(data.groups);
    }

    /**
     * Simultaneous draws of everything.
     *
     * <p>Each row of scores gives one draw: column 0 picks the node of the grid, 1 the residual standard deviation (rising
     * with the score), 2 the drift and 3 + g the mean of group g; a greater score gives a greater value. Several responses
     * are tied by giving their fits scores that are correlated between responses (a Gaussian copula); independent scores
     * within a row are what the posterior of one response needs.
     *
     * @param standardNormals rows of at least {@link #scoresPerDraw()} standard normal scores, such as
     *                        {@link QuasiRandomNormals#points}
     * @return the draws; without any means if the fit is not available (then all NaN)
     * @throws IllegalArgumentException if a row is too short
     */
    public PosteriorDraws draw(double[][] standardNormals) {
        for (double[] row : standardNormals) {
            if (row.length < scoresPerDraw()) {
                throw new IllegalArgumentException("A draw takes " + scoresPerDraw() + " scores, not " + row.length);
            }
        }
        return isAvailable() ? new PosteriorSampler(nodes, data, tables.chi(nodes.nu)).draw(standardNormals)
            : PosteriorDraws.undefined(data.groups, standardNormals.length);
    }

    /**
     * The probability of each group to have the best mean, by quadrature: exact to about 1e-6, but slow; draws are quick.
     *
     * @param largerIsBetter whether the largest mean is the best, otherwise the smallest
     * @return one probability per group, NaN for groups without values
     * @throws IllegalStateException if a block spans several groups, where the means are never independent
     */
    public double[] probabilityBest(boolean largerIsBetter) {
        double[] result = new double[data.groups];
        Arrays.fill(result, Double.NaN);
        if (!isAvailable()) {
            return result;
        }
        if (!(nodes instanceof NestedNodes nested)) {
            throw new IllegalStateException("The quadrature needs each block to lie in one group; use draws");
        }
        double[] present = new BestProbability(nested, largerIsBetter).compute();
        for (int k = 0; k < present.length; k++) {
            result[data.present[k]] = present[k];
        }
        return result;
    }
}
