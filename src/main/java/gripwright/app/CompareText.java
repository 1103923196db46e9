package gripwright.app;

import gripwright.comparison.Comparison;
import gripwright.comparison.ConfigurationFigures;
import gripwright.comparison.Difference;
import gripwright.comparison.Interval;
import gripwright.comparison.MetricComparison;
import gripwright.comparison.Sensitivity;
import gripwright.comparison.Standing;
import gripwright.comparison.VerdictWords;
import gripwright.model.ReadingText;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.report.PlayerStory;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** A comparison as text for a terminal, in the shop's units and the player's words. */
final class CompareText {

    private static final String NONE = "\u2013";

    private final Session session;
    private final ReadingText text;

    CompareText(Session session, ShopSettings shop) {
        this.session = session;
        this.text = ReadingText.of(shop, session.player().hand());
    }

    /** All tests, one after the other. */
    String of(List<Comparison> comparisons) {
        StringBuilder out = new StringBuilder();
        String player = session.player().label().isBlank() ? "Player" : session.player().label();
        out.append(player).append(", ").append(session.player().hand().text()).append(", ").append(session.date());
        if (session.invented()) {
            out.append(" (invented demo data)");
        }
        out.append('\n');
        if (!session.goal().sentence().isBlank()) {
            out.append("Goal: ").append(session.goal().sentence()).append('\n');
        }
        comparisons.forEach(comparison -> append(out, comparison));
        return out.toString();
    }

    private void append(StringBuilder out, Comparison comparison) {
        out.append('\n').append(comparison.clubName());
        if (comparison.referenceId() != null) {
            out.append(", compared with ").append(comparison.label(comparison.referenceId()));
        }
        out.append('\n');
        List<MetricComparison> ordered = new ArrayList<>(comparison.primaryMetrics());
        comparison.metrics().stream().filter(metric -> !metric.primary()).forEach(ordered::add);
        for (MetricComparison metric : ordered) {
            out.append('\n').append(text.heading(metric.metric())).append(metric.primary() ? "  (goal)" : "")
                    .append(metric.modelled() ? "  (modelled)" : "").append('\n');
            out.append(table(comparison, metric));
        }
        appendOverall(out, comparison);
    }

    private String table(Comparison comparison, MetricComparison metric) {
        TextTable table = new TextTable("", "shots", "mean", "SD", "95 % interval", "difference", "95 % interval", "");
        for (ConfigurationFigures figures : metric.configurations()) {
            boolean reference = figures.configurationId().equals(comparison.referenceId());
            Difference difference = reference || comparison.referenceId() == null ? null
                    : metric.difference(figures.configurationId(), comparison.referenceId()).orElse(null);
            boolean known = difference != null && difference.estimate() != null;
            table.row(figures.label(), String.valueOf(figures.shots()), mean(metric, figures.mean()),
                    mean(metric, figures.sd()), range(metric, figures.interval(), false),
                    known ? text.difference(metric.metric(), difference.estimate()) : "",
                    known ? range(metric, difference.interval(), true) : "",
                    reference ? "reference" : difference == null ? ""
                            : VerdictWords.forHand(text.hand()).of(metric, difference));
        }
        return table.text("  ");
    }

    private String mean(MetricComparison metric, Double value) {
        return value == null ? NONE : text.mean(metric.metric(), value);
    }

    private String range(MetricComparison metric, Interval interval, boolean signed) {
        if (interval == null || !interval.isBounded()) {
            return NONE;
        }
        return signed
                ? text.difference(metric.metric(), interval.low()) + " to "
                        + text.difference(metric.metric(), interval.high())
                : text.mean(metric.metric(), interval.low()) + " to " + text.mean(metric.metric(), interval.high());
    }

    private void appendOverall(StringBuilder out, Comparison comparison) {
        out.append('\n').append(comparison.advice().headline()).append('\n');
        if (!comparison.advice().conflict().isBlank()) {
            out.append(comparison.advice().conflict()).append('\n');
        }
        comparison.advice().reasons().forEach(reason -> out.append("  ").append(reason).append('\n'));
        boolean choice = comparison.overall().stream().filter(s -> s.probabilityBest() != null).count() > 1;
        for (Standing standing : comparison.overall()) {
            if (choice && standing.probabilityBest() != null) {
                out.append("  ").append(standing.label()).append(": best choice with a chance of ")
                        .append(PlayerStory.chance(standing.probabilityBest())).append('\n');
            }
        }
        Set<String> sentences = new LinkedHashSet<>(comparison.sentences());
        comparison.metrics().forEach(metric -> sentences.addAll(metric.sentences()));
        if (!sentences.isEmpty()) {
            out.append("\nWhat to know:\n");
            sentences.forEach(sentence -> out.append("  ").append(sentence).append('\n'));
        }
    }

    /** What changes when the tests are read another way. */
    String of(Sensitivity sensitivity) {
        StringBuilder out = new StringBuilder("\nRead another way:\n");
        for (Sensitivity.Variation variation : sensitivity.variations()) {
            out.append("  ").append(variation.description()).append(": ");
            if (variation.changes().isEmpty() && !variation.adviceChanges()) {
                out.append("nothing changes\n");
                continue;
            }
            out.append(variation.changes().size()).append(" verdicts change");
            out.append(variation.adviceChanges() ? ", the choice becomes " + variation.adviceLabel() : "");
            out.append('\n');
        }
        return out.toString();
    }
}
