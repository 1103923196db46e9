package gripwright.planning;

import gripwright.comparison.Comparison;
import gripwright.comparison.Difference;
import gripwright.comparison.MetricComparison;
import gripwright.comparison.Verdict;
import gripwright.model.ClubTest;
import gripwright.model.ReadingText;
import gripwright.model.ShopSettings;
import java.util.Comparator;
import java.util.Optional;

/**
 * How many shots with each configuration it takes to see the smallest difference that matters, in the primary metric
 * that is not settled and nearest to it; see {@link DetectableDifference#shotsFor}.
 *
 * @param found what can be seen with the shots that are hit
 * @param matters the smallest difference that matters, internal units
 * @param shots how many shots with each it takes; more than {@link #MOST_SHOTS} are no plan for a session
 */
public record Outlook(DetectableDifference found, double matters, long shots) {

    /** More shots with each configuration than anybody hits in a session: common practice, no source. */
    static final int MOST_SHOTS = 100;
    /** Mean of the half-normal distribution over its scale, sqrt(2/pi). */
    private static final double HALF_NORMAL_MEAN = Math.sqrt(2 / Math.PI);

    /**
     * The outlook of a test with its comparison.
     *
     * @return empty where every primary verdict against the reference is settled, or nothing can be told yet
     */
    public static Optional<Outlook> of(ClubTest test, Comparison comparison, ShopSettings settings) {
        DetectableDifference.Size size = DetectableDifference.Size.of(test);
        return comparison.metrics().stream().filter(MetricComparison::primary)
                .filter(m -> m.model().residualSd() != null && m.model().residualSd() > 0 && m.smallestDifference() > 0)
                .filter(m -> m.differences().stream().filter(d -> d.against().equals(comparison.referenceId()))
                        .anyMatch(Outlook::isOpen))
                .filter(m -> size.shots() > 0 && size.stints() > 0)
                .map(m -> of(m, size, settings)).min(Comparator.comparing(Outlook::isReached)
                        .thenComparingLong(Outlook::shots));
    }

    private static boolean isOpen(Difference difference) {
        return difference.verdict() != Verdict.BETTER && difference.verdict() != Verdict.WORSE
                && difference.verdict() != Verdict.SAME;
    }

    private static Outlook of(MetricComparison metric, DetectableDifference.Size size, ShopSettings settings) {
        DetectableDifference found = DetectableDifference.of(metric.metric(), size, metric.model().residualSd(), true,
                settings.verdicts().stintToNoisePriorScale() * HALF_NORMAL_MEAN);
        return new Outlook(found, metric.smallestDifference(), found.shotsFor(metric.smallestDifference()));
    }

    private boolean isReached() {
        return shots <= found.shots();
    }

    /** In a sentence or two. */
    public String sentence(ReadingText text) {
        String metric = found.metric().text();
        String unit = text.unit(found.metric()).symbol();
        String difference = text.mean(found.metric(), matters) + (unit.isEmpty() || "\u00B0".equals(unit) ? unit
                : "\u00A0" + unit) + " in " + metric;
        if (isReached()) {
            return "Enough is hit to see a difference of " + difference + "; what is not settled is likely smaller.";
        }
        if (shots > MOST_SHOTS) {
            return "To see a difference of " + difference + " would take more than " + MOST_SHOTS
                    + " shots with each: choose by what leans, or hit another day.";
        }
        return "To see a difference of " + difference + " takes about " + shots + " shots with each, in stints as long as"
                + " now; the fewest so far are " + found.shots() + ".";
    }
}
