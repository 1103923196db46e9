package gripwright.comparison;

import java.util.List;
import java.util.Objects;

/**
 * One metric, one configuration against another: how much, how sure, and what may be said.
 *
 * <p>The gain is the difference in the direction that serves this player: of − against where higher serves, the
 * opposite where lower does, |against − target| − |of − target| near a target. Where a metric isn't scored there is no
 * gain; its probabilities are those of the difference itself, and its verdict takes no side.
 *
 * @param of configuration that is judged, by identity
 * @param ofLabel its label
 * @param against configuration it is judged against, by identity
 * @param againstLabel its label
 * @param estimate mean of {@code of} minus mean of {@code against}, internal units; null where either has no reading
 * @param interval 95 % interval of the difference; null where it can't be known
 * @param gain the gain with its interval; null where the metric isn't scored or it can't be known
 * @param probabilityHigher P(difference > 0); null where it can't be known
 * @param probabilityPositive P(gain > 0)
 * @param probabilityMatters P(gain > d), d the smallest difference that matters
 * @param probabilityMattersAdjusted the same, adjusted for the family of all pairs
 * @param probabilityHarms P(gain < −d)
 * @param probabilityHarmsAdjusted the same, adjusted for the family of all pairs
 * @param probabilitySame P(|gain| < d)
 * @param verdict what may be said
 * @param leaning which way a verdict that isn't settled leans
 * @param change what may be said of the signed difference
 * @param reasons why, in words; never empty
 */
public record Difference(String of, String ofLabel, String against, String againstLabel, Double estimate,
        Interval interval, Estimate gain, Double probabilityHigher, Double probabilityPositive,
        Double probabilityMatters, Double probabilityMattersAdjusted, Double probabilityHarms,
        Double probabilityHarmsAdjusted, Double probabilitySame, Verdict verdict, Leaning leaning, Change change,
        List<String> reasons) {

    public Difference {
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(leaning, "leaning");
        Objects.requireNonNull(change, "change");
        reasons = List.copyOf(reasons);
    }

    /** The same difference with the two sides swapped; the reasons stay. */
    public Difference reversed() {
        return new Difference(against, againstLabel, of, ofLabel, estimate == null ? null : 0 - estimate,
                interval == null ? null : interval.negated(), gain == null ? null : gain.negated(),
                opposite(probabilityHigher), opposite(probabilityPositive), probabilityHarms,
                probabilityHarmsAdjusted, probabilityMatters, probabilityMattersAdjusted, probabilitySame,
                verdict.reversed(), leaning.reversed(), change.reversed(), reasons);
    }

    Difference withReasons(List<String> changed) {
        return new Difference(of, ofLabel, against, againstLabel, estimate, interval, gain, probabilityHigher,
                probabilityPositive, probabilityMatters, probabilityMattersAdjusted, probabilityHarms,
                probabilityHarmsAdjusted, probabilitySame, verdict, leaning, change, changed);
    }

    private static Double opposite(Double probability) {
        return probability == null ? null : 1 - probability;
    }
}
