package gripwright.statistics;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The spread of several groups as a result of its own: standard deviations from deviations within blocks, drawn towards
 * the common spread so that a handful of values can't crown a group by luck, and their ratios.
 *
 * <p>sigma_k^2 has a scaled inverse chi-squared prior with f0 degrees of freedom and the scale s0^2 pooled over the
 * groups; its posterior has f0 + f_k degrees of freedom and the scale (f0 s0^2 + f_k s_k^2)/(f0 + f_k). G. K. Smyth,
 * Statistical Applications in Genetics and Molecular Biology 3 (2004) article 3, who estimates f0 from thousands of
 * groups; here it is given. The pooled scale holds the group's own values too, so the posterior is slightly too sure
 * where groups are few; with a single group there is nothing to be drawn to and f0 is 0.
 *
 * @param groups                  one entry for each group
 * @param pooledStandardDeviation s0; no variation where all values within all blocks are equal
 * @param prior                   f0 as asked for
 * @param confidence              of the intervals
 */
public record SpreadAnalysis(List<GroupSpread> groups, Figure<Double> pooledStandardDeviation, SpreadPrior prior,
                             double confidence) {

    /** Copies the list. */
    public SpreadAnalysis {
        groups = List.copyOf(groups);
    }

    /**
     * Analyses the spread.
     *
     * @param values     one for each row, NaN missing
     * @param group      the group of each row, 0 to groups - 1
     * @param block      the block of each row, any numbers; rows are compared with the mean of their group and block
     * @param groups     how many groups there are, those without a value included
     * @param prior      how strongly groups are drawn together
     * @param confidence of intervals, between 0 and 1
     * @return the analysis; figures of groups without a degree of freedom are absent for too few values, all are absent
     *     for no variation where every deviation is 0
     * @throws IllegalArgumentException if lengths differ, a group is out of range or a value infinite
     */
    public static SpreadAnalysis of(double[] values, int[] group, int[] block, int groups, SpreadPrior prior,
                                    double confidence) {
        Distributions.requireConfidence(confidence);
        WithinBlockSquares squares = WithinBlockSquares.of(values, group, block, groups);
        int freedom = squares.totalDegreesOfFreedom();
        double sum = squares.totalSumOfSquares();
        Shortfall shortfall = freedom < 1 ? Shortfall.TOO_FEW_VALUES : sum == 0 ? Shortfall.NO_VARIATION : null;
        double pooled = freedom < 1 ? 0 : sum / freedom;
        double weight = squares.groupsWithFreedom() < 2 ? 0 : prior.degreesOfFreedom();
        List<GroupSpread> spreads = new ArrayList<>();
        for (int k = 0; k < groups; k++) {
            spreads.add(spread(k, squares.degreesOfFreedom()[k], squares.sumOfSquares()[k], weight, pooled, confidence));
        }
        return new SpreadAnalysis(spreads, shortfall == null ? Figure.of(Math.sqrt(pooled)) : Figure.none(shortfall),
            prior, confidence);
    }

    private static GroupSpread spread(int group, int freedom, double sum, double weight, double pooled,
                                      double confidence) {
        if (freedom < 1 || pooled == 0) {
            Shortfall why = freedom < 1 ? Shortfall.TOO_FEW_VALUES : Shortfall.NO_VARIATION;
            return new GroupSpread(group, freedom, Figure.none(why), Figure.none(why), weight + freedom,
                Figure.none(why));
        }
        double posteriorFreedom = weight + freedom;
        double posteriorSum = weight * pooled + sum;
        double tail = (1 - confidence) / 2;
        Figure<Double> raw = Figure.of(Math.sqrt(sum / freedom));
        if (posteriorSum == 0) {
            return new GroupSpread(group, freedom, raw, Figure.none(Shortfall.NO_VARIATION), posteriorFreedom,
                Figure.none(Shortfall.NO_VARIATION));
        }
        Interval interval = new Interval(
            Math.sqrt(posteriorSum / Distributions.chiSquareQuantile(1 - tail, posteriorFreedom)),
            Math.sqrt(posteriorSum / Distributions.chiSquareQuantile(tail, posteriorFreedom)));
        return new GroupSpread(group, freedom, raw, Figure.of(Math.sqrt(posteriorSum / posteriorFreedom)),
            posteriorFreedom, Figure.of(interval));
    }

    /**
     * The posterior probability of each group to have the smallest standard deviation of all that have one.
     *
     * <p>With sigma_k = s_k / v, v the root of chi2/f on the posterior degrees of freedom f of group k,
     * P_k = E_v prod P(sigma_l &gt; s_k / v) over the other groups l, by Gauss-Legendre quadrature.
     *
     * @return one for each group, absent where it has no spread; together 1
     */
    public List<Figure<Double>> probabilitySteadiest() {
        return groups.stream().map(g -> g.interval().map(interval -> probabilitySteadiest(g))).toList();
    }

    /**
     * Draws of the standard deviations from their posteriors, one for each row of scores; see {@link GroupSpread#draws}.
     *
     * @param scores draws x groups, standard normal
     * @return groups x draws; null for a group without a spread
     */
    public double[][] draws(double[][] scores) {
        Map<Double, ChiScores> known = new HashMap<>();
        double[][] drawn = new double[groups.size()][];
        for (GroupSpread one : groups) {
            if (one.shrunkStandardDeviation().isAvailable()) {
                double freedom = one.posteriorDegreesOfFreedom();
                ChiScores chi = known.computeIfAbsent(freedom, ChiScores::new);
                double scale = one.shrunkStandardDeviation().get() * Math.sqrt(freedom);
                double[] values = new double[scores.length];
                for (int i = 0; i < values.length; i++) {
                    values[i] = scale * chi.inverseChi(scores[i][one.group()]);
                }
                drawn[one.group()] = values;
            }
        }
        return drawn;
    }

    private double probabilitySteadiest(GroupSpread candidate) {
        ScaleNodes nodes = ScaleNodes.of(candidate.posteriorDegreesOfFreedom());
        List<GroupSpread> others = groups.stream()
            .filter(g -> g != candidate && g.interval().isAvailable()).toList();
        double sum = 0;
        for (int i = 0; i < nodes.scales().length; i++) {
            double probability = nodes.weights()[i];
            for (GroupSpread other : others) {
                double ratio = other.shrunkStandardDeviation().get() / candidate.shrunkStandardDeviation().get()
                    * nodes.scales()[i];
                double freedom = other.posteriorDegreesOfFreedom();
                probability *= 1 - Distributions.chiSquareUpper(freedom * ratio * ratio, freedom);
            }
            sum += probability;
        }
        return sum;
    }

    /**
     * The ratio of two standard deviations.
     *
     * @param first  index of the group above the line
     * @param second index of the group below the line
     * @return the ratio, or why one of the two has no spread
     * @throws IllegalArgumentException if the two are the same
     */
    public Figure<SpreadRatio> ratio(int first, int second) {
        return ratio(first, second, Distributions::fQuantile);
    }

    /**
     * The ratios of several pairs, each as by itself; quantiles that pairs have in common are worked out once.
     *
     * @param pairs {first, second} each
     * @return in the order of the pairs
     * @throws IllegalArgumentException if the two of a pair are the same
     */
    public List<Figure<SpreadRatio>> ratios(List<int[]> pairs) {
        Map<List<Double>, Double> known = new HashMap<>();
        SpreadRatio.FQuantiles quantiles = (p, f1, f2) ->
            known.computeIfAbsent(List.of(p, f1, f2), key -> Distributions.fQuantile(p, f1, f2));
        return pairs.stream().map(pair -> ratio(pair[0], pair[1], quantiles)).toList();
    }

    private Figure<SpreadRatio> ratio(int first, int second, SpreadRatio.FQuantiles quantiles) {
        if (first == second) {
            throw new IllegalArgumentException("A group can't be compared with itself");
        }
        for (int k : new int[] {first, second}) {
            if (!groups.get(k).interval().isAvailable()) {
                return Figure.none(groups.get(k).interval().shortfall());
            }
        }
        int family = (int) groups.stream().filter(g -> g.interval().isAvailable()).count();
        return Figure.of(SpreadRatio.of(groups.get(first), groups.get(second), confidence, family, quantiles));
    }
}
