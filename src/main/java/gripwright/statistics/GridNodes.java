package gripwright.statistics;

import java.util.Arrays;

/**
 * The posterior of all coefficients and variances on a grid: over tau, and over omega too under the exchangeable prior.
 *
 * <p>Given a node the coefficients are multivariate t with location b and scale matrix S/nu C. How b and C are held is
 * left to the two kinds: {@link NestedNodes} where each block lies in one group, {@link DenseNodes} in general.
 *
 * <table>
 * <caption>Symbols and shapes (B values of tau, N nodes, p coefficients; standardised units)</caption>
 * <tr><th>symbol</th><th>shape</th><th>meaning</th></tr>
 * <tr><td>tau</td><td>B</td><td>ratio of block to residual standard deviation, ascending</td></tr>
 * <tr><td>tauMass</td><td>grid</td><td>posterior weights of all values of tau on the grid, whatever omega</td></tr>
 * <tr><td>base</td><td>N</td><td>index of the node's tau, ascending</td></tr>
 * <tr><td>weight</td><td>N</td><td>posterior weights, sum 1</td></tr>
 * <tr><td>omega</td><td>N</td><td>spread of the means over sigma, infinite under the flat prior</td></tr>
 * <tr><td>squares</td><td>N</td><td>S</td></tr>
 * </table>
 */
abstract class GridNodes {

    /** Nodes below this part of the heaviest carry nothing, not even in tails of 1e-10. */
    private static final double NEGLIGIBLE = 1e-26;
    /** For choosing no far tails are wanted. */
    private static final double NEGLIGIBLE_FOR_CHOICE = 1e-11;
    /** In scales of the prior: beyond it the nodes of the usual rule are wider apart than the posterior may be. */
    private static final double FAR_OUT = 4;
    private static final double FAR_OUT_MASS = 0.01;

    final int p;
    final int groups;
    final int nu;
    final LegendreRule rule;
    final double[] tau;
    final double[] tauMass;
    final int[] base;
    final double[] weight;
    final double[] omega;
    final double[] squares;
    private final int[] gridIndex;

    /** One node per tau, under the flat prior. */
    GridNodes(FlatGrid grid) {
        LeastSquares system = grid.system;
        this.p = system.p;
        this.groups = system.data.present.length;
        this.nu = system.nu;
        this.rule = grid.rule;
        this.tauMass = grid.mass;
        this.gridIndex = grid.kept;
        int count = grid.kept.length;
        this.tau = new double[count];
        this.weight = new double[count];
        this.squares = new double[count];
        this.base = new int[count];
        this.omega = new double[count];
        Arrays.fill(omega, Double.POSITIVE_INFINITY);
        for (int i = 0; i < count; i++) {
            base[i] = i;
            tau[i] = grid.tau[grid.kept[i]];
            weight[i] = grid.mass[grid.kept[i]];
            squares[i] = grid.solutions[grid.kept[i]].residualSquares();
        }
    }

    /** One node per tau and omega, under the exchangeable prior. */
    GridNodes(GridNodes flat, SpreadGrid grid) {
        this.p = flat.p;
        this.groups = flat.groups;
        this.nu = grid.nu;
        this.rule = flat.rule;
        this.tau = flat.tau;
        this.gridIndex = flat.gridIndex;
        int[] kept = normalise(grid.logWeight, NEGLIGIBLE_FOR_CHOICE);
        int count = kept.length;
        this.base = new int[count];
        this.weight = new double[count];
        this.omega = new double[count];
        this.squares = new double[count];
        this.tauMass = new double[flat.tauMass.length];
        for (int i = 0; i < count; i++) {
            base[i] = kept[i] / grid.spreads.size();
            weight[i] = grid.logWeight[kept[i]];
            omega[i] = grid.spreads.nodes()[kept[i] % grid.spreads.size()];
            squares[i] = grid.squares[kept[i]];
            tauMass[gridIndex[base[i]]] += weight[i];
        }
    }

    /** The solutions and weights for every tau, before they are cast into nodes. */
    static final class FlatGrid {
        final LeastSquares system;
        final LegendreRule rule;
        final double[] tau;
        final LeastSquares.Solution[] solutions;
        final double[] mass;
        final int[] kept;

        FlatGrid(LeastSquares system, BlockPrior prior) {
            this(system, prior, HalfLineGrid.ruleForBlocks(system.data.blocks()));
        }

        private FlatGrid(LeastSquares system, BlockPrior prior, LegendreRule rule) {
            this.system = system;
            this.rule = rule;
            HalfLineGrid grid = HalfLineGrid.of(rule, prior.scale());
            tau = grid.nodes();
            solutions = new LeastSquares.Solution[tau.length];
            mass = new double[tau.length];
            for (int i = 0; i < tau.length; i++) {
                solutions[i] = system.solve(tau[i] * tau[i]);
                mass[i] = solutions[i].logLikelihood(system.nu) + prior.logDensity(tau[i]) + grid.logWeights()[i];
            }
            kept = normalise(mass, NEGLIGIBLE);
        }

        /** The grid, with more nodes where the posterior lies so far out that the usual ones stand too wide there. */
        static FlatGrid of(LeastSquares system, BlockPrior prior) {
            FlatGrid usual = new FlatGrid(system, prior);
            double farOut = 0;
            for (int i = 0; i < usual.mass.length; i++) {
                farOut += usual.tau[i] > FAR_OUT * prior.scale() ? usual.mass[i] : 0;
            }
            return farOut > FAR_OUT_MASS && usual.rule != HalfLineGrid.FINEST
                ? new FlatGrid(system, prior, HalfLineGrid.FINEST) : usual;
        }
    }

    /** The weights for every tau and omega, before they are cast into nodes. */
    abstract static class SpreadGrid {
        final HalfLineGrid spreads;
        final int nu;
        final double[] logWeight;
        final double[] squares;

        SpreadGrid(GridNodes flat, GroupPrior prior) {
            this.spreads = HalfLineGrid.forGroupSpread(prior.scale());
            this.nu = flat.nu + flat.groups - 1;
            this.logWeight = new double[flat.size() * spreads.size()];
            this.squares = new double[logWeight.length];
            Arrays.fill(logWeight, Double.NEGATIVE_INFINITY);
        }

        /** Calls {@link #weigh} for every pair of values that may matter. */
        final void fill(GridNodes flat, GroupPrior prior) {
            double heaviest = Arrays.stream(flat.weight).max().orElse(1);
            for (int b = 0; b < flat.size(); b++) {
                if (flat.weight[b] < NEGLIGIBLE_FOR_CHOICE * heaviest) {
                    continue;
                }
                prepare(b);
                // What the flat weight says of tau alone: its own power of S is taken out again.
                double common = Math.log(flat.weight[b]) + flat.nu / 2.0 * Math.log(flat.squares[b]);
                for (int j = 0; j < spreads.size(); j++) {
                    double standardised = spreads.nodes()[j] / prior.scale();
                    int node = b * spreads.size() + j;
                    logWeight[node] = common + weigh(b, spreads.nodes()[j], node)
                        - nu / 2.0 * Math.log(squares[node])
                        - 0.5 * standardised * standardised + spreads.logWeights()[j];
                }
            }
        }

        /** Called once before all the spreads of one tau. */
        abstract void prepare(int flatNode);

        /** Sets squares[node] and returns the logarithm of the ratio of root determinants, flat to exchangeable. */
        abstract double weigh(int flatNode, double spread, int node);
    }

    /** Turns logarithms into weights that sum to 1 and returns the indices of those that count. */
    static int[] normalise(double[] logWeight, double negligible) {
        double greatest = Double.NEGATIVE_INFINITY;
        for (double value : logWeight) {
            greatest = Math.max(greatest, value);
        }
        double sum = 0;
        for (int i = 0; i < logWeight.length; i++) {
            logWeight[i] = logWeight[i] < greatest - 100 ? 0 : Math.exp(logWeight[i] - greatest);
            sum += logWeight[i];
        }
        int[] kept = new int[logWeight.length];
        int count = 0;
        for (int i = 0; i < logWeight.length; i++) {
            if (logWeight[i] >= negligible) {
                kept[count++] = i;
            }
            logWeight[i] /= sum;
        }
        return Arrays.copyOf(kept, count);
    }

    final int size() {
        return weight.length;
    }

    final boolean hasDrift() {
        return p > groups;
    }

    /** The same values under the exchangeable prior on the group means. */
    abstract GridNodes exchangeable(GroupPrior prior);

    /** Location and scale of the contrast c at every node, in units of the response. */
    abstract void contrast(double[] c, double unit, double[] location, double[] spread);

    /** Coefficients at a node for a residual standard deviation and p scores in the order of the coefficients. */
    abstract void draw(int node, double sigma, double[] scores, double[] coefficients);

    /** b at one node. */
    abstract double[] coefficients(int node);

    /** C at one node. */
    abstract double[][] unscaledCovariance(int node);
}
