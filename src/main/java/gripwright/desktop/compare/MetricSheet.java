package gripwright.desktop.compare;

import gripwright.charts.Look;
import gripwright.charts.MetricPlayOrder;
import gripwright.charts.MetricStrip;
import gripwright.charts.PlayOrderPicture;
import gripwright.charts.Strip;
import gripwright.charts.StripPicture;
import gripwright.comparison.ClassicalFigures;
import gripwright.comparison.Comparison;
import gripwright.comparison.MetricComparison;
import gripwright.comparison.MetricModel;
import gripwright.desktop.support.DataTable;
import gripwright.desktop.support.PictureCanvas;
import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.Words;
import gripwright.model.ClubTest;
import gripwright.model.ReadingText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** One metric in depth: every shot, the intervals, the order of play, all pairs with their reasons, the textbook figures. */
final class MetricSheet {

    private final ClubTest test;
    private final Comparison comparison;
    private final MetricComparison metric;
    private final ReadingText text;
    private final Look look;

    MetricSheet(ClubTest test, Comparison comparison, MetricComparison metric, ReadingText text, Look look) {
        this.test = test;
        this.comparison = comparison;
        this.metric = metric;
        this.text = text;
        this.look = look;
    }

    Node node() {
        VBox sheet = new VBox(3 * Sheets.STEP);
        sheet.getChildren().addAll(strip(), playOrder(), figures(), pairs());
        List<String> notes = notes();
        if (!notes.isEmpty()) {
            VBox lines = new VBox(Sheets.STEP / 2);
            notes.forEach(note -> lines.getChildren().add(Sheets.text(note)));
            sheet.getChildren().add(Sheets.section("What to know about this metric", lines));
        }
        sheet.getChildren().add(classical());
        return sheet;
    }

    private Node strip() {
        Strip strip = new MetricStrip(test, comparison, text, null).of(metric);
        PictureCanvas canvas = canvas("Every shot of " + metric.metric().text() + " by configuration: "
                + String.join("; ", strip.rows().stream()
                        .map(row -> row.mark().label() + " " + row.figures() + ", " + row.words()).toList()));
        canvas.setPicture(new StripPicture(strip));
        return canvas;
    }

    private Node playOrder() {
        PictureCanvas canvas = canvas("The same shots in the order they were hit");
        canvas.setPicture(new PlayOrderPicture(MetricPlayOrder.of(test, comparison, metric, text)));
        canvas.setPrefHeight(220);
        canvas.setMinHeight(220);
        canvas.setMaxHeight(220);
        return Sheets.section("In the order of play", canvas);
    }

    private PictureCanvas canvas(String words) {
        PictureCanvas canvas = new PictureCanvas();
        canvas.setLook(look);
        canvas.setAccessibleText(words);
        return canvas;
    }

    private Node figures() {
        DataTable<ConfigurationRow> table = new DataTable<ConfigurationRow>("figures by configuration", "No figures.")
                .text("Configuration", 130, ConfigurationRow::label).text("Shots", 120, ConfigurationRow::shots)
                .number("Mean", 80, ConfigurationRow::mean).number("SD", 70, ConfigurationRow::sd)
                .number("Model's mean", 100, ConfigurationRow::estimate)
                .number("95 % interval", 140, ConfigurationRow::interval)
                .number("Best here", 120, ConfigurationRow::best);
        table.getItems().setAll(ConfigurationRow.of(comparison, metric, text));
        table.rowsShown(table.getItems().size());
        VBox section = Sheets.section(Words.capitalised(text.heading(metric.metric())) + ", by configuration", table);
        String plus = metric.metric().sign().positiveWord(comparison.hand());
        if (!plus.isEmpty()) {
            section.getChildren().add(Sheets.hint("+ is " + plus + ", \u2212 is "
                    + metric.metric().sign().negativeWord(comparison.hand()) + ", here and below."));
        }
        return section;
    }

    private Node pairs() {
        DataTable<PairRow> table = new DataTable<PairRow>("differences of all pairs", "There is one configuration only.")
                .text("Pair", 100, PairRow::pair).number("Difference", 90, PairRow::difference)
                .number("95 % interval", 130, PairRow::interval)
                .number(metric.isScored() ? "Gain above 0" : "Higher", 110, PairRow::positive)
                .number("Gain that matters", 120, PairRow::matters)
                .number("No practical difference", 150, PairRow::same)
                .text("What may be said", 260, PairRow::words);
        table.getItems().setAll(PairRow.of(comparison, metric, text));
        table.rowsShown(Math.max(1, Math.min(12, table.getItems().size())));
        VBox reasons = new VBox(Sheets.STEP / 2);
        for (PairRow row : table.getItems()) {
            if (!row.reasons().isBlank()) {
                reasons.getChildren().add(Sheets.hint(row.pair() + ": " + row.reasons()));
            }
        }
        String d = text.mean(metric.metric(), metric.smallestDifference());
        String unit = text.unit(metric.metric()).symbol();
        String raised = metric.smallestDifferenceRaised() ? " (raised to a share of the noise)" : "";
        return Sheets.section("All pairs", table, Sheets.hint("What matters: more than " + d
                + withSpace(unit) + raised + "; \u2018gain that matters\u2019 is adjusted for all pairs."),
                reasons);
    }

    /** A unit behind its number: degrees at once, others after a space. */
    private static String withSpace(String unit) {
        return unit.isEmpty() || "\u00B0".equals(unit) ? unit : " " + unit;
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>(metric.sentences());
        MetricModel model = metric.model();
        if (model != null) {
            String unit = text.unit(metric.metric()).symbol();
            noise(model, unit).ifPresent(notes::add);
            if (model.driftOverSession() != null) {
                notes.add("Over the session it drifted by "
                        + text.difference(metric.metric(), model.driftOverSession().value()) + withSpace(unit) + " ("
                        + PairRow.range(metric, model.driftOverSession().interval(), text)
                        + "); the differences allow for it.");
            }
        }
        if (metric.modelled()) {
            notes.add("The source works this reading out of a model; it did not measure it.");
        }
        return notes;
    }

    /** How much it varies, as far as the shots can tell; empty where they can't at all, as with one shot each. */
    private Optional<String> noise(MetricModel model, String unit) {
        if (model.residualSd() == null) {
            return Optional.empty();
        }
        String stints = model.stintSd() == null ? ""
                : ", stint to stint by " + text.mean(metric.metric(), model.stintSd()) + withSpace(unit);
        return Optional.of("Shot to shot it varies by " + text.mean(metric.metric(), model.residualSd())
                + withSpace(unit) + " (SD)" + stints + ".");
    }

    private Node classical() {
        ClassicalFigures figures = metric.classical();
        VBox lines = new VBox(Sheets.STEP / 2);
        addTest(lines, "One-way analysis of variance", figures.anova());
        addTest(lines, "Welch\u2019s analysis of variance", figures.welchAnova());
        addTest(lines, "Brown and Forsythe\u2019s test of equal variances", figures.brownForsythe());
        if (figures.reml() != null) {
            lines.getChildren().add(Sheets.hint("Restricted maximum likelihood: stint to stint "
                    + text.mean(metric.metric(), figures.reml().stintSd()) + ", shot to shot "
                    + text.mean(metric.metric(), figures.reml().residualSd())
                    + (figures.reml().atBoundary() ? "; the stint variation came out as exactly 0." : ".")));
        }
        if (figures.noiseDiffers()) {
            lines.getChildren().add(Sheets.text("The noise clearly differs between configurations: of the textbook "
                    + "figures, Welch\u2019s and Games and Howell\u2019s are the ones to read."));
        }
        DataTable<ClassicalFigures.PairTest> table = new DataTable<ClassicalFigures.PairTest>(
                "Welch's t of all pairs", "Too few shots for a textbook test.")
                .text("Pair", 110, pair -> pair.of() + " against " + pair.against())
                .number("Difference", 100, pair -> text.difference(metric.metric(), pair.estimate()))
                .number("95 % interval", 150, pair -> PairRow.range(metric, pair.interval(), text))
                .number("df", 60, pair -> String.format(Locale.ROOT, "%.1f", pair.df()))
                .number("p, not adjusted", 110, pair -> probability(pair.p()));
        table.getItems().setAll(figures.welch());
        table.rowsShown(Math.max(1, Math.min(10, figures.welch().size())));
        return Sheets.section("Textbook figures, each shot taken for itself (Welch\u2019s t)", table, lines);
    }

    private static void addTest(VBox lines, String name, ClassicalFigures.FTest test) {
        if (test != null) {
            lines.getChildren().add(Sheets.hint(String.format(Locale.ROOT, "%s: F = %.2f on %.0f and %.1f degrees of "
                    + "freedom, p = %s.", name, test.f(), test.df1(), test.df2(), probability(test.p()))));
        }
    }

    /** Three decimals, or 'under 0.001'. */
    static String probability(double p) {
        return p < 0.001 ? "under 0.001" : String.format(Locale.ROOT, "%.3f", p);
    }
}
