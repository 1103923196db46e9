package gripwright.desktop.compare;

import gripwright.charts.Look;
import gripwright.charts.MetricStrip;
import gripwright.charts.StripPicture;
import gripwright.comparison.Advice;
import gripwright.comparison.Comparison;
import gripwright.comparison.MetricComparison;
import gripwright.comparison.Standing;
import gripwright.desktop.support.DataTable;
import gripwright.desktop.support.PictureCanvas;
import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.Words;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Metric;
import gripwright.model.ReadingText;
import gripwright.units.NumberText;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** The standing overall: what is advised today and why, beside what is proven; the goal's metrics as strips. */
final class OverallSheet {

    private static final String NONE = "\u2013";
    private static final int STRIPS = 4;

    private final CompareViewModel model;
    private final ClubTest test;
    private final Comparison comparison;
    private final ReadingText text;
    private final Look look;

    OverallSheet(CompareViewModel model, ClubTest test, Comparison comparison, ReadingText text, Look look) {
        this.model = model;
        this.test = test;
        this.comparison = comparison;
        this.text = text;
        this.look = look;
    }

    Node node() {
        VBox sheet = new VBox(3 * Sheets.STEP, advice(), standing());
        List<MetricComparison> shown = comparison.primaryMetrics().isEmpty()
                ? comparison.metrics().stream().filter(MetricComparison::isScored).limit(STRIPS).toList()
                : comparison.primaryMetrics();
        MetricStrip strips = new MetricStrip(test, comparison, text, null);
        List<StripPicture> pictures = StripPicture.stacked(shown.stream().map(strips::of).toList());
        for (int n = 0; n < shown.size(); n++) {
            PictureCanvas canvas = new PictureCanvas();
            canvas.setLook(look);
            canvas.setAccessibleText("Every shot of " + shown.get(n).metric().text() + " by configuration");
            canvas.setPicture(pictures.get(n));
            sheet.getChildren().add(canvas);
        }
        if (comparison.primaryMetrics().isEmpty()) {
            sheet.getChildren().add(Sheets.hint("The goal names no metric yet, so nothing is scored overall: choose up "
                    + "to three in Setup."));
        }
        if (!comparison.sentences().isEmpty()) {
            VBox lines = new VBox(Sheets.STEP / 2);
            comparison.sentences().forEach(line -> lines.getChildren().add(Sheets.text(line)));
            sheet.getChildren().add(Sheets.section("What to know", lines));
        }
        return sheet;
    }

    private Node advice() {
        Advice advice = comparison.advice();
        Label headline = Sheets.text(advice.headline());
        headline.getStyleClass().add("gw-title");
        VBox box = new VBox(Sheets.STEP, headline);
        if (!advice.conflict().isBlank()) {
            box.getChildren().add(Sheets.text(advice.conflict()));
        }
        advice.reasons().stream().filter(reason -> !reason.equals(advice.headline())).forEach(reason -> box.getChildren().add(Sheets.text(reason)));
        box.getChildren().add(fittersAdvice());
        return box;
    }

    /** The fitter may advise something else; papers and the work order go by it. */
    private Node fittersAdvice() {
        ComboBox<Configuration> choice = new ComboBox<>();
        choice.setAccessibleText("what the fitter advises");
        choice.setConverter(new StringConverter<>() {
            @Override
            public String toString(Configuration configuration) {
                return configuration == null ? "as worked out" : configuration.label() + "  "
                        + configuration.grip().name();
            }

            @Override
            public Configuration fromString(String typed) {
                return null;
            }
        });
        choice.getItems().add(null);
        choice.getItems().addAll(test.configurations());
        choice.setValue(model.advised());
        choice.valueProperty().addListener((observed, before, now) -> model.advise(now));
        HBox line = new HBox(Sheets.STEP, Sheets.quiet("The fitter advises"), choice);
        line.setAlignment(Pos.CENTER_LEFT);
        return line;
    }

    private Node standing() {
        NumberText numbers = NumberText.withDecimalMark(text.decimalMark());
        DataTable<Standing> table = new DataTable<Standing>("standing of the configurations", "Nothing to stand on yet.")
                .text("Configuration", 140, this::name)
                .number("Best choice", 130, s -> PairRow.chance(s.probabilityBest()))
                .number("Expected gain, in d", 130,
                        s -> s.expectedGain() == null ? NONE : numbers.formatSigned(s.expectedGain(), 1))
                .number("Worth changing for", 130, s -> PairRow.chance(s.probabilityWorthIt()))
                .number("Feel, 0 to 1", 90, s -> s.feel() == null || s.feel().score() == null ? NONE
                        : numbers.format(s.feel().score(), 2));
        guardrails().forEach((sentence, metric) -> table.number(heading(metric), 110, s -> kept(s, sentence)));
        table.getItems().setAll(comparison.overall());
        table.rowsShown(Math.max(1, comparison.overall().size()));
        String guarded = guardrails().keySet().stream().map(sentence -> " Kept means: " + sentence + ".")
                .collect(Collectors.joining());
        return Sheets.section("Choosing, which is not claiming", table,
                Sheets.hint("d is the smallest difference that matters." + guarded + " The chance of being the best choice "
                        + "is for choosing something today; what is proven are the verdicts of each metric."));
    }

    private String name(Standing standing) {
        String reference = standing.configurationId().equals(comparison.referenceId()) ? ", reference" : "";
        return standing.label() + reference;
    }

    /** The guardrails that were checked, in words, each with the key of its metric. */
    private Map<String, String> guardrails() {
        Map<String, String> sentences = new LinkedHashMap<>();
        comparison.overall().forEach(standing -> standing.guardrails()
                .forEach(check -> sentences.putIfAbsent(check.sentence(), check.metricKey())));
        return sentences;
    }

    private static String heading(String metricKey) {
        return Words.capitalised(Metric.ofKey(metricKey).map(Metric::text).orElse(metricKey)) + " kept";
    }

    private static String kept(Standing standing, String sentence) {
        return standing.guardrails().stream().filter(check -> check.sentence().equals(sentence)).findFirst()
                .map(check -> PairRow.chance(check.probabilityKept())).orElse(NONE);
    }
}
