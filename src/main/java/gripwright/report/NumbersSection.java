package gripwright.report;

import gripwright.comparison.Comparison;
import gripwright.comparison.ConfigurationFigures;
import gripwright.comparison.Difference;
import gripwright.comparison.Interval;
import gripwright.comparison.MetricComparison;
import gripwright.comparison.VerdictWords;
import gripwright.model.ClubTest;
import gripwright.model.Metric;
import gripwright.model.ReadingText;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The page of numbers: what the configurations are, every reading with its difference, and what limits them. */
final class NumbersSection {

    private static final String NONE = "\u2013";

    private final ClubTest test;
    private final Comparison comparison;
    private final ShopSettings shop;
    private final ReadingText text;

    NumbersSection(Session session, ClubTest test, Comparison comparison, ShopSettings shop) {
        this.test = test;
        this.comparison = comparison;
        this.shop = shop;
        this.text = ReadingText.of(shop, session.player().hand());
    }

    Map<String, Object> content() {
        Map<String, Object> content = new LinkedHashMap<>();
        content.put("referenceLabel", comparison.referenceId() == null ? "nothing yet"
                : comparison.label(comparison.referenceId()));
        content.putAll(new ConfigurationTable(test, comparison, shop).content());
        content.put("hasReasons", !comparison.advice().reasons().isEmpty());
        content.put("reasons", comparison.advice().reasons());
        content.put("metrics", metrics());
        List<String> sentences = sentences();
        content.put("hasSentences", !sentences.isEmpty());
        content.put("sentences", sentences);
        content.put("method", method());
        return content;
    }

    private List<Map<String, Object>> metrics() {
        List<Map<String, Object>> metrics = new ArrayList<>();
        List<MetricComparison> ordered = new ArrayList<>(comparison.primaryMetrics());
        comparison.metrics().stream().filter(m -> !m.primary()).forEach(ordered::add);
        for (MetricComparison metric : ordered) {
            Map<String, Object> group = new LinkedHashMap<>();
            group.put("heading", text.heading(metric.metric()));
            group.put("primary", metric.primary());
            group.put("modelled", metric.modelled());
            group.put("rows", metric.configurations().stream().map(c -> row(metric, c)).toList());
            metrics.add(group);
        }
        return metrics;
    }

    private Map<String, Object> row(MetricComparison metric, ConfigurationFigures figures) {
        Metric key = metric.metric();
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("label", figures.label());
        row.put("shots", figures.shots());
        row.put("mean", figures.mean() == null ? NONE : text.mean(key, figures.mean()));
        row.put("sd", figures.sd() == null ? NONE : text.mean(key, figures.sd()));
        boolean reference = figures.configurationId().equals(comparison.referenceId());
        Difference difference = reference || comparison.referenceId() == null ? null
                : metric.difference(figures.configurationId(), comparison.referenceId()).orElse(null);
        boolean known = difference != null && difference.estimate() != null;
        row.put("difference", known ? text.difference(key, difference.estimate()) : "");
        row.put("interval", known ? interval(key, difference.interval()) : "");
        row.put("words", reference ? "the reference"
                : difference == null ? "" : VerdictWords.forHand(text.hand()).of(metric, difference));
        return row;
    }

    private String interval(Metric metric, Interval interval) {
        if (interval == null || !interval.isBounded()) {
            return NONE;
        }
        return text.difference(metric, interval.low()) + " to " + text.difference(metric, interval.high());
    }

    private List<String> sentences() {
        Set<String> sentences = new LinkedHashSet<>(comparison.sentences());
        comparison.primaryMetrics().forEach(metric -> sentences.addAll(metric.sentences()));
        return List.copyOf(sentences);
    }

    private String method() {
        return "Means and SDs are of the scored shots. Differences, intervals and words come from a model that allows "
                + "for drift over the session and for stint-to-stint variation (half-normal prior of scale "
                + comparison.settings().stintToNoisePriorScale()
                + " on its ratio to the shot-to-shot noise); \u2018better\u2019 is said from "
                + Math.round(comparison.settings().claim() * 100) + " in 100 for a gain above the smallest difference "
                + "that matters, adjusted for all pairs, and \u2018probably\u2019 from "
                + Math.round(comparison.settings().probable() * 100) + " in 100.";
    }
}
