package gripwright.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Compares the means of all pairs of several groups at one confidence for all of them together: Tukey-Kramer with one
 * pooled variance, Games-Howell with a variance for each group.
 *
 * <p>C. Y. Kramer, Biometrics 12 (1956) 307-310; P. A. Games and J. F. Howell, Journal of Educational Statistics 1
 * (1976) 113-125. NaN is missing; groups without a value are no part of the family; infinite values are refused with an
 * IllegalArgumentException.
 */
public final class AllPairs {

    private AllPairs() {
    }

    /**
     * Tukey-Kramer: q = |difference| / sqrt(s^2/2 (1/n1 + 1/n2)), s^2 the mean square within on N - k degrees of freedom.
     *
     * @param groups     the values of each group
     * @param confidence of all intervals together, between 0 and 0.9999
     * @return the pairs in order (0,1), (0,2) ..., without those of empty groups; shortfalls as in
     *     {@link EqualMeansTest#oneWay}
     */
    public static Figure<List<PairComparison>> tukeyKramer(double[][] groups, double confidence) {
        return tukeyKramer(groups, confidence, null);
    }

    /**
     * The same with a table that the caller keeps for several data sets of the same number of groups.
     *
     * @param groups     the values of each group
     * @param confidence of all intervals together, between 0 and 0.9999
     * @param tables     for the number of groups; where groups without a value are left out, or for null, a new one is made
     * @return as above
     */
    public static Figure<List<PairComparison>> tukeyKramer(double[][] groups, double confidence,
                                                           StudentizedRangeFamily tables) {
        Distributions.requireConfidence(confidence);
        Figure<VarianceTable> table = EqualMeansTest.oneWay(groups);
        if (!table.isAvailable()) {
            return Figure.none(table.shortfall());
        }
        Sample[] samples = Sample.ofEach(groups);
        StudentizedRangeFamily family = familyFor(samples, tables);
        double variance = table.get().meanSquareWithin();
        double freedom = table.get().test().denominator();
        double critical = family.quantile(confidence, freedom);
        List<PairComparison> pairs = new ArrayList<>();
        for (int[] pair : pairsOf(samples)) {
            Sample a = samples[pair[0]];
            Sample b = samples[pair[1]];
            double standardError = Math.sqrt(variance * (1.0 / a.count() + 1.0 / b.count()));
            pairs.add(comparison(pair, a.meanLess(b), standardError, freedom, family, critical, confidence));
        }
        return Figure.of(List.copyOf(pairs));
    }

    /**
     * Games-Howell: q = |difference| / sqrt((v1/n1 + v2/n2)/2) on Welch's degrees of freedom for each pair.
     *
     * @param groups     the values of each group
     * @param confidence of all intervals together, between 0 and 0.9999
     * @return for each pair in order (0,1), (0,2) ..., without those of empty groups, the comparison or why there is
     *     none: too few values where one of the two has a single value, no variation where neither varies; empty below
     *     two groups
     */
    public static List<Figure<PairComparison>> gamesHowell(double[][] groups, double confidence) {
        return gamesHowell(groups, confidence, null);
    }

    /**
     * The same with a table that the caller keeps for several data sets of the same number of groups.
     *
     * @param groups     the values of each group
     * @param confidence of all intervals together, between 0 and 0.9999
     * @param tables     as for Tukey-Kramer
     * @return as above
     */
    public static List<Figure<PairComparison>> gamesHowell(double[][] groups, double confidence,
                                                           StudentizedRangeFamily tables) {
        Distributions.requireConfidence(confidence);
        Sample[] samples = Sample.ofEach(groups);
        List<int[]> pairs = pairsOf(samples);
        if (pairs.isEmpty()) {
            return List.of();
        }
        StudentizedRangeFamily family = familyFor(samples, tables);
        List<Figure<PairComparison>> results = new ArrayList<>();
        for (int[] pair : pairs) {
            results.add(gamesHowellPair(pair, samples[pair[0]], samples[pair[1]], family, confidence));
        }
        return List.copyOf(results);
    }

    private static Figure<PairComparison> gamesHowellPair(int[] pair, Sample a, Sample b,
                                                          StudentizedRangeFamily family, double confidence) {
        if (a.count() < 2 || b.count() < 2) {
            return Figure.none(Shortfall.TOO_FEW_VALUES);
        }
        double variance = a.meanVariance() + b.meanVariance();
        if (variance == 0) {
            return Figure.none(Shortfall.NO_VARIATION);
        }
        double freedom = MeanDifference.welchDegreesOfFreedom(a, b);
        return Figure.of(comparison(pair, a.meanLess(b), Math.sqrt(variance), freedom, family,
            family.quantile(confidence, freedom), confidence));
    }

    private static PairComparison comparison(int[] pair, double difference, double standardError, double freedom,
                                             StudentizedRangeFamily family, double critical, double confidence) {
        double q = Math.sqrt(2) * Math.abs(difference) / standardError;
        double reach = critical * standardError / Math.sqrt(2);
        return new PairComparison(pair[0], pair[1], difference, standardError, q, freedom,
            family.upperTail(q, freedom), new Interval(difference - reach, difference + reach), confidence);
    }

    private static StudentizedRangeFamily familyFor(Sample[] samples, StudentizedRangeFamily offered) {
        int groups = (int) Arrays.stream(samples).filter(s -> s.count() > 0).count();
        return offered != null && offered.groups() == groups ? offered : new StudentizedRangeFamily(groups);
    }

    private static List<int[]> pairsOf(Sample[] samples) {
        List<int[]> pairs = new ArrayList<>();
        for (int i = 0; i < samples.length; i++) {
            for (int j = i + 1; j < samples.length; j++) {
                if (samples[i].count() > 0 && samples[j].count() > 0) {
                    pairs.add(new int[] {i, j});
                }
            }
        }
        return pairs;
    }
}
