package gripwright.report;

import gripwright.comparison.Comparison;
import gripwright.comparison.Difference;
import gripwright.comparison.Estimate;
import gripwright.comparison.Interval;
import gripwright.comparison.MetricComparison;
import gripwright.comparison.SpreadComparison;
import gripwright.comparison.Verdict;
import gripwright.comparison.VerdictWords;
import gripwright.model.Direction;
import gripwright.model.Metric;
import gripwright.model.ReadingText;
import gripwright.model.ShopSettings;
import java.util.ArrayList;
import java.util.List;

/**
 * What one configuration did against another, for a reader at home: what got better, what got worse, what made no
 * difference, what nobody can tell yet, and what merely changed.
 *
 * @param of the label of the configuration looked at
 * @param against the label of the one it is held against
 * @param better gains, proven or probable
 * @param worse losses, proven or probable
 * @param same no practical difference
 * @param open not settled, the primary ones first
 * @param changed metrics that serve no direction but moved
 */
public record PlayerStory(String of, String against, List<StoryLine> better, List<StoryLine> worse,
        List<StoryLine> same, List<StoryLine> open, List<StoryLine> changed) {

    private static final int HUNDRED = 100;

    public PlayerStory {
        better = List.copyOf(better);
        worse = List.copyOf(worse);
        same = List.copyOf(same);
        open = List.copyOf(open);
        changed = List.copyOf(changed);
    }

    /** The story of one configuration against another, by identity; empty lists where nothing was compared. */
    public static PlayerStory of(Comparison comparison, String of, String against, ShopSettings shop) {
        Teller teller = new Teller(comparison, of, against, ReadingText.of(shop, comparison.hand()));
        comparison.primaryMetrics().forEach(teller::tell);
        comparison.metrics().stream().filter(m -> !m.primary()).forEach(teller::tell);
        comparison.spread().stream().filter(SpreadComparison::primary).forEach(teller::tellSpread);
        return new PlayerStory(comparison.label(of), comparison.label(against), teller.better, teller.worse,
                teller.same, teller.open, teller.changed);
    }

    public boolean isEmpty() {
        return better.isEmpty() && worse.isEmpty() && same.isEmpty() && open.isEmpty() && changed.isEmpty();
    }

    /** A probability as people say it: 'better than 99 in 100', '87 in 100', 'less than 1 in 100'. */
    public static String chance(double probability) {
        long of = Math.round(probability * HUNDRED);
        if (of >= HUNDRED) {
            return "more than 99 in 100";
        }
        return of < 1 ? "less than 1 in 100" : of + " in 100";
    }

    /** Collects the lines of a story. */
    private static final class Teller {

        private final List<StoryLine> better = new ArrayList<>();
        private final List<StoryLine> worse = new ArrayList<>();
        private final List<StoryLine> same = new ArrayList<>();
        private final List<StoryLine> open = new ArrayList<>();
        private final List<StoryLine> changed = new ArrayList<>();
        private final String of;
        private final String against;
        private final ReadingText text;
        private final VerdictWords words;

        private Teller(Comparison comparison, String of, String against, ReadingText text) {
            this.of = of;
            this.against = against;
            this.text = text;
            this.words = VerdictWords.forHand(comparison.hand());
        }

        private void tell(MetricComparison metric) {
            Difference difference = metric.difference(of, against).orElse(null);
            if (difference == null || difference.estimate() == null) {
                return;
            }
            if (metric.direction() == Direction.NOT_SCORED) {
                if (difference.change().side() != 0) {
                    changed.add(line(metric, difference, difference.probabilityHigher()));
                }
                return;
            }
            place(difference.verdict()).add(line(metric, difference, difference.probabilityPositive()));
        }

        private List<StoryLine> place(Verdict verdict) {
            return switch (verdict) {
                case BETTER, PROBABLY_BETTER -> better;
                case WORSE, PROBABLY_WORSE -> worse;
                case SAME -> same;
                case NOT_SETTLED -> open;
            };
        }

        private StoryLine line(MetricComparison metric, Difference difference, Double probability) {
            Double sure = probability == null ? null : Math.max(probability, 1 - probability);
            boolean lean = sure != null && difference.verdict() != Verdict.SAME;
            return new StoryLine(capital(metric.metric().text()), words.of(metric, difference),
                    by(metric.metric(), difference), range(metric.metric(), difference), lean ? chance(sure) : "", metric.primary());
        }

        private String by(Metric metric, Difference difference) {
            return text.difference(metric, difference.estimate()) + unitAfter(metric);
        }

        private String range(Metric metric, Difference difference) {
            Interval interval = difference.interval();
            if (interval == null || !interval.isBounded()) {
                return "";
            }
            return text.difference(metric, interval.low()) + " to " + text.difference(metric, interval.high());
        }

        private String unitAfter(Metric metric) {
            String symbol = text.unit(metric).symbol();
            if (symbol.isEmpty()) {
                return "";
            }
            return symbol.startsWith("\u00B0") ? symbol : "\u00A0" + symbol;
        }

        private void tellSpread(SpreadComparison spread) {
            SpreadComparison.SpreadRatio ratio = spread.ratio(of, against).orElse(null);
            if (ratio == null) {
                return;
            }
            double sure = Math.max(ratio.probabilitySteadier(), 1 - ratio.probabilitySteadier());
            place(ratio.verdict()).add(new StoryLine("Spread of " + spread.metric().text(), words.ofSpread(ratio),
                    Math.round(ratio.ratio().value() * HUNDRED) + " % of the spread", percentRange(ratio.ratio()),
                    ratio.verdict() == Verdict.SAME ? "" : chance(sure), true));
        }

        private static String percentRange(Estimate ratio) {
            return Math.round(ratio.interval().low() * HUNDRED) + " to "
                    + Math.round(ratio.interval().high() * HUNDRED) + " %";
        }

        private static String capital(String text) {
            return Character.toUpperCase(text.charAt(0)) + text.substring(1);
        }
    }
}
