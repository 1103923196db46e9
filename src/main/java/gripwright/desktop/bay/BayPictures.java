package gripwright.desktop.bay;

import gripwright.charts.MetricStrip;
import gripwright.charts.Pattern;
import gripwright.charts.Strip;
import gripwright.charts.TestPattern;
import gripwright.comparison.Comparison;
import gripwright.comparison.Difference;
import gripwright.comparison.MetricComparison;
import gripwright.comparison.VerdictWords;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Metric;
import gripwright.model.PrimaryMetric;
import gripwright.model.ReadingText;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.model.Shot;
import gripwright.model.Stint;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The pictures of the bay for one stint: strips and shot pattern of its configuration against the reference.
 *
 * <p>The marks come from the session as it is now, so that a shot shows at once; figures and verdicts come from the
 * latest comparison, which may be a moment older.
 */
final class BayPictures {

    private static final int MOST_STRIPS = 3;

    private final Session session;
    private final ClubTest test;
    private final ReadingText text;
    private final ShopSettings settings;
    private final Comparison comparison;

    BayPictures(Session session, ClubTest test, ShopSettings settings, Comparison comparison) {
        this.session = session;
        this.test = test;
        this.settings = settings;
        this.text = ReadingText.of(settings, session.player().hand());
        this.comparison = comparison;
    }

    /** The metrics that have a strip: the goal's, else the first of the shop's columns; at most three. */
    List<Metric> metrics() {
        Set<Metric> chosen = session.goal().primaries().stream().map(PrimaryMetric::metric)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        if (chosen.isEmpty()) {
            chosen.addAll(settings.entryColumns());
        }
        return chosen.stream().limit(MOST_STRIPS).toList();
    }

    /** One strip a metric; a metric of which nothing is compared yet has none. */
    List<BayStrip> strips(Stint stint, String newestShotId) {
        if (comparison == null) {
            return List.of();
        }
        MetricStrip strips = new MetricStrip(thisStintOnly(stint), comparison, text, newestShotId);
        List<Configuration> pair = pair(stint);
        return metrics().stream().map(comparison::metric).flatMap(Optional::stream)
                .map(metric -> strip(metric, strips.of(metric, pair), stint)).toList();
    }

    private BayStrip strip(MetricComparison metric, Strip strip, Stint stint) {
        List<Strip.Row> bare = strip.rows().stream().map(row -> new Strip.Row(row.mark(), "", row.dots(),
                row.estimate(), row.low(), row.high(), "", "", row.reference())).toList();
        Strip quiet = new Strip(strip.title(), strip.leftWord(), strip.rightWord(), strip.scale(), strip.band(), bare,
                strip.decimalMark());
        return new BayStrip(quiet, verdict(metric, stint), figures(metric, stint));
    }

    private String verdict(MetricComparison metric, Stint stint) {
        if (Objects.equals(stint.configurationId(), comparison.referenceId())) {
            return "the reference";
        }
        return difference(metric, stint).map(d -> VerdictWords.forHand(text.hand()).of(metric, d))
                .orElse("no verdict yet");
    }

    private String figures(MetricComparison metric, Stint stint) {
        return difference(metric, stint).map(d -> text.difference(metric.metric(), d.estimate())
                + (d.interval() == null || !d.interval().isBounded() ? ""
                : " \u00B1 " + text.mean(metric.metric(), d.interval().halfWidth()))
                + " " + text.unit(metric.metric()).symbol() + " to " + d.againstLabel()).orElse("");
    }

    private Optional<Difference> difference(MetricComparison metric, Stint stint) {
        return comparison.referenceId() == null ? Optional.empty()
                : metric.difference(stint.configurationId(), comparison.referenceId())
                .filter(d -> d.estimate() != null);
    }

    /** The pattern of this stint and of the reference; null where nobody read carry and offline. */
    Pattern pattern(Stint stint, String newestShotId) {
        if (comparison == null) {
            return null;
        }
        Double target = session.goal().primaries().stream().filter(p -> p.metric() == Metric.CARRY)
                .map(PrimaryMetric::target).filter(Objects::nonNull).findFirst().orElse(null);
        Pattern pattern = TestPattern.of(thisStintOnly(stint), comparison, pair(stint), 0, target, text, newestShotId);
        boolean empty = pattern.groups().stream().allMatch(group -> group.points().isEmpty());
        return empty ? null : pattern;
    }

    private List<Configuration> pair(Stint stint) {
        List<Configuration> pair = new ArrayList<>();
        test.configuration(stint.configurationId()).ifPresent(pair::add);
        Optional.ofNullable(comparison.referenceId()).flatMap(test::configuration)
                .filter(reference -> !pair.contains(reference)).ifPresent(pair::add);
        return pair;
    }

    /** The test with the other stints of this configuration left out, so that only this stint's shots are drawn. */
    private ClubTest thisStintOnly(Stint stint) {
        return test.withStints(test.stints().stream().filter(other -> other.id().equals(stint.id())
                || !other.configurationId().equals(stint.configurationId())).toList());
    }

    /** The newest shot of a stint, drawn larger; null where there is none. */
    static String newest(Stint stint) {
        List<Shot> shots = stint.shots();
        return shots.isEmpty() ? null : shots.get(shots.size() - 1).id();
    }
}
