package gripwright.desktop.compare;

import gripwright.charts.Look;
import gripwright.charts.PatternPicture;
import gripwright.charts.TestPattern;
import gripwright.comparison.Comparison;
import gripwright.comparison.Estimate;
import gripwright.comparison.MishitFlag;
import gripwright.comparison.Sensitivity;
import gripwright.comparison.ShotPattern;
import gripwright.comparison.SizeResponse;
import gripwright.comparison.SpreadComparison;
import gripwright.comparison.Standing;
import gripwright.comparison.VerdictWords;
import gripwright.desktop.support.DataTable;
import gripwright.desktop.support.PictureCanvas;
import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.Words;
import gripwright.model.ClubTest;
import gripwright.model.Metric;
import gripwright.model.ReadingText;
import gripwright.report.FeelWords;
import gripwright.units.Dimension;
import gripwright.units.NumberText;
import gripwright.units.Unit;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The results beside the means: shot patterns, spread, response to size, feel, mishits, other readings of the session. */
final class OtherSheets {

    private static final String NONE = "\u2013";
    private static final double SHARE = 0.8;

    private final ClubTest test;
    private final Comparison comparison;
    private final ReadingText text;
    private final Look look;
    private final NumberText numbers;

    OtherSheets(ClubTest test, Comparison comparison, ReadingText text, Look look) {
        this.test = test;
        this.comparison = comparison;
        this.text = text;
        this.look = look;
        this.numbers = NumberText.withDecimalMark(text.decimalMark());
    }

    Node patterns() {
        PictureCanvas canvas = new PictureCanvas();
        canvas.setLook(look);
        canvas.setAccessibleText("Where the balls came down, by configuration");
        canvas.setPicture(new PatternPicture(TestPattern.of(test, comparison, test.configurations(), SHARE, null, text,
                null)));
        canvas.setPrefHeight(440);
        canvas.setMinHeight(440);
        canvas.setMaxHeight(440);
        Unit unit = text.unit(Metric.CARRY);
        DataTable<ShotPattern> table = new DataTable<ShotPattern>("shot patterns", "No shot has carry and offline.")
                .text("Configuration", 110, ShotPattern::label).number("Shots", 60, p -> String.valueOf(p.shots()))
                .number("Carry, " + unit.symbol(), 90, p -> metres(unit, p.centreCarry()))
                .number("Offline, " + unit.symbol(), 90, p -> metres(unit, p.centreOffline()))
                .number("Area for 8 of 10, " + unit.symbol() + "\u00B2", 150, p -> area(unit, p.ellipse(SHARE)))
                .number("Distance to the target, " + unit.symbol(), 170, p -> range(unit, p.distanceToTarget()))
                .text("Chance to miss by more", 260, this::misses);
        table.getItems().setAll(comparison.patterns());
        table.rowsShown(Math.max(1, comparison.patterns().size()));
        VBox notes = new VBox(Sheets.STEP / 2);
        comparison.patterns().stream().map(ShotPattern::distribution).filter(words -> !words.isBlank()).distinct()
                .forEach(words -> notes.getChildren().add(Sheets.hint(words)));
        comparison.patterns().stream().flatMap(p -> p.sentences().stream()).distinct()
                .forEach(words -> notes.getChildren().add(Sheets.hint(words)));
        comparison.patternDifferences().forEach(d -> notes.getChildren().add(Sheets.hint(d.ofLabel() + " against "
                + d.againstLabel() + ": centre " + numbers.formatSigned(unit.fromInternal(d.carry()), 1) + " out and "
                + numbers.formatSigned(unit.fromInternal(d.offline()), 1) + " to the right (Hotelling\u2019s T\u00B2, p = "
                + MetricSheet.probability(d.p()) + ", not adjusted).")));
        return new VBox(3 * Sheets.STEP, canvas, Sheets.section("By configuration", table, notes));
    }

    private String metres(Unit unit, double metres) {
        return numbers.format(unit.fromInternal(metres), 1);
    }

    private String area(Unit unit, ShotPattern.Ellipse ellipse) {
        return ellipse == null ? NONE : numbers.format(unit.fromInternal(unit.fromInternal(ellipse.area())), 0);
    }

    private String range(Unit unit, Estimate estimate) {
        return estimate == null ? NONE : metres(unit, estimate.value()) + " (" + metres(unit, estimate.interval().low())
                + " to " + metres(unit, estimate.interval().high()) + ")";
    }

    private String misses(ShotPattern pattern) {
        Unit unit = text.unit(Metric.OFFLINE);
        return pattern.misses().stream().map(miss -> numbers.format(unit.fromInternal(miss.distance()), 0) + " "
                + unit.symbol() + " " + miss.side().name().toLowerCase(Locale.ROOT) + ": "
                + PairRow.chance(miss.probability().value())).collect(Collectors.joining("; "));
    }

    Node spread() {
        VBox sheet = new VBox(3 * Sheets.STEP);
        VerdictWords words = VerdictWords.forHand(comparison.hand());
        for (SpreadComparison spread : comparison.spread()) {
            DataTable<SpreadComparison.SpreadFigures> table = new DataTable<SpreadComparison.SpreadFigures>(
                    "spread of " + spread.metric().text(), "Too few shots.")
                    .text("Configuration", 120, SpreadComparison.SpreadFigures::label)
                    .number("Shots", 60, f -> String.valueOf(f.shots()))
                    .number("SD as read", 100, f -> f.sd() == null ? NONE : text.mean(spread.metric(), f.sd()))
                    .number("SD, shrunk", 190, f -> sd(spread.metric(), f.shrunkSd()))
                    .number("Steadiest", 130, f -> PairRow.chance(f.probabilitySteadiest()))
                    .text("Against the reference", 260, f -> spread.ratio(f.configurationId(), comparison.referenceId())
                            .map(words::ofSpread).orElse("the reference"));
            table.getItems().setAll(spread.configurations());
            table.rowsShown(Math.max(1, spread.configurations().size()));
            VBox section = Sheets.section(Words.capitalised(text.heading(spread.metric())) + (spread.primary() ? ", named by the goal" : ""),
                    table);
            spread.sentences().forEach(line -> section.getChildren().add(Sheets.hint(line)));
            sheet.getChildren().add(section);
        }
        sheet.getChildren().add(Sheets.hint("SDs are within stints and shrunk towards what all configurations share, so "
                + "that five lucky shots crown nobody."));
        return sheet;
    }

    private String sd(Metric metric, Estimate sd) {
        return text.mean(metric, sd.value()) + " (" + text.mean(metric, sd.interval().low()) + " to "
                + text.mean(metric, sd.interval().high()) + ")";
    }

    Node size() {
        VBox sheet = new VBox(3 * Sheets.STEP);
        Unit unit = text.units().of(Dimension.LENGTH);
        int decimals = unit == Unit.INCH ? 3 : 1;
        for (SizeResponse response : comparison.sizeResponses()) {
            DataTable<SizeResponse.Point> table = new DataTable<SizeResponse.Point>("sizes", "No sizes.")
                    .text("Configuration", 120, SizeResponse.Point::label)
                    .number("Diameter, " + unit.symbol(), 120,
                            p -> numbers.format(unit.fromInternal(p.diameterMm()), decimals))
                    .number(text.heading(response.metric()), 200, p -> sd(response.metric(), p.estimate()));
            table.getItems().setAll(response.points());
            table.rowsShown(Math.max(1, response.points().size()));
            String place = response.place() == SizeResponse.Place.UPPER_HAND ? "under the upper hand"
                    : "under the lower hand";
            sheet.getChildren().add(Sheets.section(Words.capitalised(text.heading(response.metric())) + " by size " + place,
                    Sheets.text(response.sentence()), table));
        }
        return sheet;
    }

    Node feel() {
        List<Standing> answered = comparison.overall().stream().filter(s -> s.feel() != null).toList();
        DataTable<Standing> table = new DataTable<Standing>("feel by configuration", "Nothing was answered.")
                .text("Configuration", 120, Standing::label)
                .number("Comfort, 1\u20137", 100, s -> mean(s.feel().comfort()))
                .number("Control, 1\u20137", 100, s -> mean(s.feel().control()))
                .number("Confidence, 1\u20137", 110, s -> mean(s.feel().confidence()))
                .text("Head", 140, s -> FeelWords.side(s.feel().headWeight(), "too light", "too heavy"))
                .text("Size", 140, s -> FeelWords.side(s.feel().size(), "too thin", "too thick"))
                .text("Would play it", 100, s -> FeelWords.wouldPlay(s.feel()))
                .text("In a word", 220, s -> FeelWords.words(test, s.configurationId()));
        table.getItems().setAll(answered);
        table.rowsShown(Math.max(1, answered.size()));
        VBox sheet = new VBox(3 * Sheets.STEP, Sheets.section("What the player felt", table));
        if (!comparison.advice().conflict().isBlank()) {
            sheet.getChildren().add(Sheets.text(comparison.advice().conflict()));
        }
        return sheet;
    }

    private String mean(Double value) {
        return value == null ? NONE : numbers.format(value, 1);
    }

    Node mishits(CompareViewModel model) {
        VBox flags = new VBox(Sheets.STEP);
        for (MishitFlag flag : comparison.flags()) {
            Button aside = new Button("Set aside");
            aside.setOnAction(event -> model.setAside(flag));
            HBox line = new HBox(2 * Sheets.STEP, Sheets.text(comparison.label(flag.configurationId()) + ": "
                    + flag.sentence()), Sheets.spring(), aside);
            flags.getChildren().add(line);
        }
        if (comparison.flags().isEmpty()) {
            flags.getChildren().add(Sheets.quiet("No scored shot looks like a mishit."));
        }
        var rates = new DataTable<gripwright.comparison.MishitRate>("mishit rates", "No shot yet.")
                .text("Configuration", 120, gripwright.comparison.MishitRate::label)
                .number("Shots", 80, rate -> String.valueOf(rate.shots()))
                .number("Set aside", 80, rate -> String.valueOf(rate.setAside()))
                .number("Rate, with its 95 % interval", 220, rate -> rate.rate() == null ? NONE
                        : percent(rate.rate().value()) + " (" + percent(rate.rate().interval().low()) + " to "
                                + percent(rate.rate().interval().high()) + ")");
        rates.getItems().setAll(comparison.mishitRates());
        rates.rowsShown(Math.max(1, comparison.mishitRates().size()));
        return new VBox(3 * Sheets.STEP,
                Sheets.section("Shots that look like mishits; only you set aside", flags),
                Sheets.section("How often each was mishit", rates));
    }

    private String percent(double share) {
        return numbers.format(share * 100, 0) + " %";
    }

    Node otherwise(CompareViewModel model) {
        VBox lines = new VBox(Sheets.STEP);
        Sensitivity now = model.sensitivity().get();
        if (now == null) {
            Button work = new Button("Work it out");
            work.setOnAction(event -> model.workOutSensitivity());
            work.disableProperty().bind(model.sensitivityState().isNotEmpty());
            javafx.scene.control.Label state = Sheets.quiet("");
            state.textProperty().bind(model.sensitivityState());
            lines.getChildren().addAll(Sheets.text("What changes with the set-aside shots back in, with one stint left "
                    + "out, and with a more cautious prior on stint-to-stint variation."), work, state);
        } else {
            now.variations().forEach(variation -> lines.getChildren().add(variation(variation)));
        }
        return Sheets.section("Read another way", lines);
    }

    private Node variation(Sensitivity.Variation variation) {
        String choice = variation.adviceChanges() ? " The choice becomes " + variation.adviceLabel() + "." : "";
        VBox box = new VBox(Sheets.STEP / 2);
        if (variation.changes().isEmpty()) {
            box.getChildren().add(Sheets.text(variation.description() + ": every verdict stands." + choice));
            return box;
        }
        box.getChildren().add(Sheets.text(variation.description() + ": " + variation.changes().size()
                + (variation.changes().size() == 1 ? " verdict changes." : " verdicts change.") + choice));
        variation.changes().forEach(change -> box.getChildren().add(Sheets.hint(change.metric().text() + ", "
                + change.ofLabel() + " against " + change.againstLabel() + ": "
                + change.verdict().wire().replace('-', ' ') + " becomes "
                + change.otherVerdict().wire().replace('-', ' '))));
        return box;
    }
}
