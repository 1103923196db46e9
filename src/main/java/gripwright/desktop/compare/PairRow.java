package gripwright.desktop.compare;

import gripwright.comparison.Comparison;
import gripwright.comparison.Difference;
import gripwright.comparison.Interval;
import gripwright.comparison.MetricComparison;
import gripwright.comparison.VerdictWords;
import gripwright.model.ReadingText;
import gripwright.report.PlayerStory;
import java.util.List;

/**
 * One pair of configurations in one metric, as text.
 *
 * @param pair 'C against A'
 * @param difference with its unit's decimals and sign
 * @param interval its 95 % interval
 * @param positive P(gain above 0), or P(higher) where the metric isn't scored
 * @param matters P(gain above the smallest difference), adjusted for all pairs
 * @param same P(no practical difference)
 * @param words the verdict
 * @param reasons why
 */
record PairRow(String pair, String difference, String interval, String positive, String matters, String same,
        String words, String reasons) {

    private static final String NONE = "\u2013";

    /** All pairs of a metric, those against the reference first. */
    static List<PairRow> of(Comparison comparison, MetricComparison metric, ReadingText text) {
        return metric.differences().stream().map(d -> of(comparison, metric, d, text)).toList();
    }

    private static PairRow of(Comparison comparison, MetricComparison metric, Difference difference, ReadingText text) {
        String pair = difference.ofLabel() + " against " + difference.againstLabel();
        if (difference.estimate() == null) {
            return new PairRow(pair, NONE, NONE, NONE, NONE, NONE, "not measured",
                    String.join(" ", difference.reasons()));
        }
        Double positive = metric.isScored() ? difference.probabilityPositive() : difference.probabilityHigher();
        return new PairRow(pair, text.difference(metric.metric(), difference.estimate()),
                range(metric, difference.interval(), text), chance(positive),
                chance(difference.probabilityMattersAdjusted()), chance(difference.probabilitySame()),
                VerdictWords.forHand(comparison.hand()).of(metric, difference),
                String.join(" ", difference.reasons()));
    }

    /** An interval with the signs of a difference; an en dash where it is unbounded. */
    static String range(MetricComparison metric, Interval interval, ReadingText text) {
        return interval == null || !interval.isBounded() ? NONE
                : text.difference(metric.metric(), interval.low()) + " to "
                        + text.difference(metric.metric(), interval.high());
    }

    /** A probability for people; an en dash where there is none. */
    static String chance(Double probability) {
        return probability == null ? NONE : PlayerStory.chance(probability);
    }
}
