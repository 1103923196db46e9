package gripwright.desktop.balance;

import gripwright.balance.BallastPlan;
import gripwright.balance.ConfigurationBalance;
import gripwright.balance.GripProfile;
import gripwright.balance.GripShape;
import gripwright.balance.ReadingFit;
import gripwright.balance.RulesCheck;
import gripwright.balance.SessionBalance;
import gripwright.charts.Look;
import gripwright.charts.SwingweightStrip;
import gripwright.desktop.support.DataTable;
import gripwright.desktop.support.PictureCanvas;
import gripwright.desktop.support.Sheets;
import gripwright.model.ClubTest;
import gripwright.model.ShopSettings;
import gripwright.units.Swingweight;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** The sheets that are only read: readings against predictions, ballast for tests, the grips as shapes. */
final class OtherSheets {

    private final ClubTest test;
    private final SessionBalance.Tested tested;
    private final ShopSettings settings;
    private final Figures figures;
    private final Look look;

    OtherSheets(ClubTest test, SessionBalance.Tested tested, ShopSettings settings, Look look) {
        this.test = test;
        this.tested = tested;
        this.settings = settings;
        this.figures = new Figures(settings);
        this.look = look;
    }

    Node readings() {
        ReadingFit fit = tested.balance().readings();
        if (fit == null) {
            return Sheets.empty("Here every swingweight off the scale will stand beside what was to be expected.",
                    "Read the club with one weighed grip on and write it down in Setup, or read each configuration.", null);
        }
        PictureCanvas strip = new PictureCanvas();
        strip.setLook(look);
        strip.setAccessibleText("Predicted and read swingweights; the table below has them too.");
        strip.setPicture(SwingweightStrip.of(test, tested.balance(), settings.decimalMark()));
        VBox notes = new VBox(Sheets.STEP / 2);
        fit.residuals().stream().map(ReadingFit.Residual::sentence).filter(text -> !text.isEmpty()).distinct()
                .forEach(text -> notes.getChildren().add(Sheets.text(text)));
        notes.getChildren().add(Sheets.text(estimates(fit)));
        if (tested.balance().scaleOffsetPoints() != null) {
            notes.getChildren().add(Sheets.hint("The shop's scale reads "
                    + figures.signed(tested.balance().scaleOffsetPoints(), 1)
                    + " points against letters from parts and memory; the swingweights here follow the scale."));
        }
        return new VBox(2 * Sheets.STEP, strip, Sheets.section("Readings", residuals(fit)), notes,
                Sheets.hint("A band is what the model expects with 95 % probability, a hollow mark what the scale read."));
    }

    private String estimates(ReadingFit fit) {
        return "Bare club " + new Swingweight(fit.bareSwingweight().value()).text() + "; grips without a balance point of"
                + " their own balance at " + figures.place(fit.gripBalancePointMm().value()) + " \u00B1 "
                + figures.place(fit.gripBalancePointMm().standardDeviation()) + " " + figures.length().symbol()
                + " from the cap.";
    }

    private Node residuals(ReadingFit fit) {
        DataTable<ReadingFit.Residual> table = new DataTable<ReadingFit.Residual>("readings and what was expected", "")
                .text("Reading", 200, residual -> residual.reading().source())
                .number("Read", 90, residual -> residual.reading().read().text())
                .number("Predicted", 90, residual -> residual.fittedSwingweight().text())
                .number("Misfit, points", 110, residual -> figures.signed(residual.misfitPoints(), 1))
                .number("From the others", 150, this::fromTheRest)
                .text("", 160, residual -> residual.flagged() ? "can't be right, left out" : "");
        table.getItems().setAll(fit.residuals());
        table.rowsShown(Math.min(10, fit.residuals().size()));
        return table;
    }

    private String fromTheRest(ReadingFit.Residual residual) {
        return residual.fromTheRest() == null ? Figures.NONE
                : new Swingweight(residual.fromTheRest().value()).text() + " \u00B1 "
                        + figures.number(residual.fromTheRest().standardDeviation(), 1);
    }

    Node ballast() {
        if (tested.ballast().isEmpty()) {
            return Sheets.empty("Here will stand what to put into the butts so that all grips of a test weigh alike.",
                    "Weigh at least two grips.", null);
        }
        VBox plans = new VBox(3 * Sheets.STEP);
        plans.getChildren().add(Sheets.text("Ballast inside the butt keeps a test of size from being a test of mass. Plan puts"
                + " it into the configurations."));
        tested.ballast().forEach(plan -> plans.getChildren().add(ballast(plan)));
        return plans;
    }

    private Node ballast(BallastPlan plan) {
        DataTable<BallastPlan.Row> table = new DataTable<BallastPlan.Row>("ballast for equal " + plan.goal().text(), "")
                .text("Configuration", 120, BallastPlan.Row::label)
                .number("Ballast, g", 100, row -> row.grams() == 0 ? Figures.NONE : figures.number(row.grams(), 1))
                .number("From the butt, " + figures.length().symbol(), 120,
                        row -> row.grams() == 0 ? Figures.NONE : figures.place(row.positionMm()))
                .number("Grip end then, g", 120, row -> figures.number(row.gripMassAfterGrams(), 1))
                .number("Swingweight then", 130, row -> Figures.swingweight(row.after().swingweight()))
                .number("Inertia then, kg·cm²", 140, row -> figures.number(row.after().inertiaKgCm2(), 0))
                .text("", 140, row -> row.feasible() ? "" : "can't be done");
        table.getItems().setAll(plan.rows());
        table.rowsShown(plan.rows().size());
        return Sheets.section("Equal " + plan.goal().text(), table, Sheets.hint(plan.sentence()));
    }

    Node shapes() {
        List<ConfigurationBalance> shaped = tested.balance().configurations().stream()
                .filter(balance -> balance.shape() != null).toList();
        if (shaped.stream().noneMatch(balance -> balance.shape().size() != null)) {
            return Sheets.empty("Here each grip will stand as a shape: its diameters where you measure, size and taper.",
                    "Measure the outside of the grips and write it down in Plan.", null);
        }
        DataTable<ConfigurationBalance> table = new DataTable<ConfigurationBalance>("diameters as fitted", "")
                .text("Configuration", 104, ConfigurationBalance::label);
        List<Double> places = settings.rulerPositionsMm().stream().sorted().toList();
        for (double place : places) {
            table.number("At " + figures.roundPlace(place) + " " + figures.length().symbol(), 84,
                    balance -> diameter(balance.shape(), place));
        }
        table.number("Taper, %", 72, balance -> figures.number(balance.shape().taper() == null ? null
                : Double.valueOf(100 * balance.shape().taper()), 1))
                .number("Wraps, g", 72, balance -> figures.number(balance.shape().tapeGrams(), 1))
                .text("Size", 250, balance -> balance.shape().size() == null ? Figures.NONE
                        : balance.shape().size().text());
        table.getItems().setAll(shaped);
        table.rowsShown(shaped.size());
        VBox notes = new VBox(Sheets.STEP / 2, Sheets.hint("Diameters, " + figures.length().symbol()
                + ": a star is one measured as fitted, brackets one that is held beyond the last measured place."));
        shaped.stream().flatMap(balance -> balance.shape().sentences().stream())
                .forEach(sentence -> notes.getChildren().add(Sheets.text(sentence)));
        return new VBox(3 * Sheets.STEP, Sheets.section("Outside diameters as fitted", table, notes), rules(shaped));
    }

    private String diameter(GripShape shape, double place) {
        return shape.atRuler().stream().filter(at -> at.positionMm() == place).findFirst().map(at -> {
            String text = figures.diameter(at.diameterMm());
            if (at.source() == GripProfile.Source.MEASURED_AS_FITTED) {
                return text + " *";
            }
            return at.source() == GripProfile.Source.HELD ? "(" + text + ")" : text;
        }).orElse(Figures.NONE);
    }

    private Node rules(List<ConfigurationBalance> shaped) {
        String unit = ", " + figures.length().symbol();
        DataTable<ConfigurationBalance> table = new DataTable<ConfigurationBalance>("beside the Equipment Rules", "")
                .text("Configuration", 104, ConfigurationBalance::label)
                .text("Comes to", 130, balance -> balance.rules().outcome().text())
                .number("Length" + unit, 110, balance -> measured(balance, RulesCheck.LENGTH))
                .number("At the thickest" + unit, 120, balance -> measured(balance, RulesCheck.DIMENSION))
                .number("Bulge or waist" + unit, 120, balance -> measured(balance, RulesCheck.FORM))
                .text("", 200, balance -> balance.rules().on("section").map(RulesCheck.Finding::sentence).orElse(""));
        table.getItems().setAll(shaped);
        table.rowsShown(shaped.size());
        VBox notes = new VBox(Sheets.STEP / 2);
        shaped.forEach(balance -> balance.rules().findings().stream()
                .filter(finding -> finding.outcome().compareTo(RulesCheck.Outcome.LOOK) >= 0)
                .forEach(finding -> notes.getChildren().add(Sheets.text(balance.label() + ", "
                        + finding.outcome().text() + ": " + finding.sentence()))));
        notes.getChildren().add(Sheets.hint("At least " + figures.diameter(RulesCheck.LEAST_LENGTH_MM) + " "
                + figures.length().symbol() + " long and nowhere over " + figures.diameter(RulesCheck.LARGEST_MM) + " "
                + figures.length().symbol() + ". A warning, not a ruling: look at the grip too, straight and plain, not moulded"
                + " for the hands, its axis that of the shaft."));
        return Sheets.section("Beside the " + RulesCheck.SECTION, table, notes);
    }

    private String measured(ConfigurationBalance balance, String point) {
        return balance.rules().on(point).map(RulesCheck.Finding::measuredMm).map(figures::diameter)
                .orElse(Figures.NONE);
    }
}
