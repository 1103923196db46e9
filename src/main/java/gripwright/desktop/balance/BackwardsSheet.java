package gripwright.desktop.balance;

import gripwright.balance.LeverFigures;
import gripwright.balance.Remedy;
import gripwright.charts.LeverPicture;
import gripwright.desktop.support.EntryField;
import gripwright.desktop.support.PictureCanvas;
import gripwright.desktop.support.SegmentField;
import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.Theme;
import gripwright.model.ShopSettings;
import java.util.List;
import java.util.Optional;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The backward solver: a wanted figure by slider or typed, and what it takes by each means. */
final class BackwardsSheet {

    private static final double SLIDER_WIDTH = 320;
    private static final double TYPED_WIDTH = 128;

    private final SolverViewModel solver;
    private final Slider wanted = new Slider();
    private final Slider buttPlace = new Slider(0, SolverViewModel.DEEPEST_MM, 0);
    private final HBox typed = new HBox();
    private final GridPane ways = new GridPane();
    private final Label now = Sheets.quiet("");
    private final PictureCanvas lever = new PictureCanvas();
    private final VBox node = new VBox(3 * Sheets.STEP);
    private final ConfigurationBox configuration;
    private boolean showing;

    BackwardsSheet(BalanceViewModel model) {
        solver = new SolverViewModel(model);
        configuration = new ConfigurationBox("configuration to bring back", solver.workbench(), solver.configuration());
        layOutSliders();
        layOutWays();
        GridPane form = Sheets.form(Sheets.FORM_WORD);
        Sheets.line(form, "Bring", configuration, now);
        Sheets.line(form, "To a", new SegmentField<>(solver.kindChoice(), List.of(SolverViewModel.Kind.values()),
                SolverViewModel.Kind::text));
        HBox target = new HBox(2 * Sheets.STEP, typed, wanted);
        target.setAlignment(Pos.CENTER_LEFT);
        Sheets.line(form, "Of", target);
        EntryField place = new EntryField(solver.buttPlaceEntry()).named("buttPlace");
        place.setMinWidth(TYPED_WIDTH);
        typed.setMinWidth(TYPED_WIDTH);
        HBox butt = new HBox(2 * Sheets.STEP, place, buttPlace);
        butt.setAlignment(Pos.CENTER_LEFT);
        Sheets.line(form, "Butt weight at", butt);
        node.getChildren().addAll(form, Sheets.section("What it takes", ways), lever, Sheets.hint(
                "Head mass raises swingweight, balance point and inertia together; a butt weight lowers the first two and hardly"
                        + " moves the inertia. Length is solved for the same shaft cut longer or shorter."));
        solver.kind().subscribe(kind -> showTyped());
        solver.wanted().subscribe(value -> showSlider());
        solver.configuration().subscribe(chosen -> showSlider());
        solver.remedies().subscribe(remedies -> show());
    }

    Node node() {
        return node;
    }

    private void layOutSliders() {
        wanted.setPrefWidth(SLIDER_WIDTH);
        wanted.setAccessibleText("wanted figure");
        wanted.setId("wantedSlider");
        wanted.valueProperty().addListener((observed, before, value) -> {
            if (!showing) {
                solver.wanted().set(rounded(value.doubleValue()));
            }
        });
        buttPlace.setPrefWidth(SLIDER_WIDTH);
        buttPlace.setAccessibleText("place of a butt weight");
        buttPlace.setBlockIncrement(5);
        buttPlace.valueProperty().bindBidirectional(solver.buttPlace());
    }

    private double rounded(double value) {
        double step = solver.kind().get() == SolverViewModel.Kind.SWINGWEIGHT ? 0.1 : 1;
        return Math.round(value / step) * step;
    }

    private void layOutWays() {
        ways.setHgap(3 * Sheets.STEP);
        ways.setVgap(1.5 * Sheets.STEP);
        for (int column = 0; column < 8; column++) {
            ColumnConstraints constraints = new ColumnConstraints();
            constraints.setMinWidth(column == 7 ? 0 : Region.USE_PREF_SIZE);
            if (column == 7) {
                constraints.setHgrow(Priority.ALWAYS);
            }
            if (column >= 1 && column <= 5) {
                constraints.setHalignment(HPos.RIGHT);
            }
            ways.getColumnConstraints().add(constraints);
        }
    }

    private void showTyped() {
        typed.getChildren().setAll(solver.kind().get() == SolverViewModel.Kind.SWINGWEIGHT
                ? new EntryField(solver.wantedSwingweight()).columns(5).named("wanted")
                : new EntryField(solver.wantedNumber()).named("wanted"));
        showSlider();
    }

    private void showSlider() {
        Double present = solver.present();
        double target = solver.wanted().get();
        boolean known = present != null && !Double.isNaN(target);
        wanted.setDisable(!known);
        now.setText(known ? "now " + written(present) : "");
        if (!known) {
            return;
        }
        showing = true;
        double reach = Math.max(solver.kind().get().reach(), Math.abs(target - present));
        wanted.setMin(present - reach);
        wanted.setMax(present + reach);
        wanted.setBlockIncrement(solver.kind().get() == SolverViewModel.Kind.SWINGWEIGHT ? 0.5 : reach / 20);
        wanted.setValue(target);
        showing = false;
    }

    private String written(double value) {
        Figures figures = new Figures(solver.workbench().settings().get());
        return switch (solver.kind().get()) {
            case SWINGWEIGHT -> new gripwright.units.Swingweight(value).text();
            case INERTIA -> figures.number(value, 0) + " kg·cm²";
            case BALANCE_POINT -> figures.place(value) + " " + figures.length().symbol();
        };
    }

    private void show() {
        showSlider();
        Optional<LeverPicture> picture = solver.picture();
        lever.setLook(Theme.pictures(solver.workbench().settings().get().dark(), Theme.BODY_SIZE));
        lever.setPicture(picture.orElse(null));
        lever.setAccessibleText("The club as a lever, as it is and with the first way that can be done; the rows below say it.");
        lever.setManaged(picture.isPresent());
        lever.setVisible(picture.isPresent());
        ways.getChildren().clear();
        ShopSettings settings = solver.workbench().settings().get();
        Figures figures = new Figures(settings);
        if (solver.remedies().get().isEmpty()) {
            ways.add(Sheets.text("Nothing to solve yet: the chosen figure of this configuration is not known. The lever's sheet"
                    + " says what to measure."), 0, 0, 8, 1);
            return;
        }
        heading(figures);
        int row = 1;
        for (Remedy remedy : solver.remedies().get()) {
            row(remedy, row, figures);
            row += 2;
        }
    }

    private void heading(Figures figures) {
        String[] headings = {"", "Amount", "Swingweight", "Club, " + figures.mass().symbol(),
            "Balances at, " + figures.length().symbol(), "Inertia, kg·cm²"};
        for (int column = 0; column < headings.length; column++) {
            Label label = Sheets.hint(headings[column]);
            label.setMinWidth(Region.USE_PREF_SIZE);
            ways.add(label, column, 0);
        }
    }

    private void row(Remedy remedy, int row, Figures figures) {
        Label means = new Label(remedy.means().text());
        means.getStyleClass().add("gw-heading-text");
        ways.add(means, 0, row);
        ways.add(figure(amount(remedy, figures), remedy.feasible()), 1, row);
        LeverFigures after = remedy.after();
        if (after != null) {
            ways.add(figure(Figures.swingweight(after.swingweight()), remedy.feasible()), 2, row);
            ways.add(figure(figures.mass(after.massGrams()), remedy.feasible()), 3, row);
            ways.add(figure(figures.place(after.balancePointMm()), remedy.feasible()), 4, row);
            ways.add(figure(figures.number(after.inertiaKgCm2(), 0), remedy.feasible()), 5, row);
        }
        if (solver.canApply(remedy)) {
            Button apply = new Button("Write it into " + solver.configuration().get().label());
            apply.setAccessibleText("Write the " + remedy.means().text() + " into the configuration");
            apply.setMinWidth(Region.USE_PREF_SIZE);
            apply.setOnAction(event -> solver.apply(remedy));
            ways.add(apply, 6, row);
        }
        Label sentence = Sheets.hint(remedy.sentence());
        GridPane.setHalignment(sentence, HPos.LEFT);
        ways.add(sentence, 1, row + 1, 7, 1);
    }

    private static Label figure(String text, boolean feasible) {
        Label label = new Label(text);
        label.setMinWidth(Region.USE_PREF_SIZE);
        if (!feasible) {
            label.getStyleClass().add("gw-quiet");
        }
        return label;
    }

    private static String amount(Remedy remedy, Figures figures) {
        if (remedy.amount() == null) {
            return Figures.NONE;
        }
        return remedy.means() == Remedy.Means.LENGTH
                ? figures.placeOff(remedy.amount()) + " " + figures.length().symbol()
                : figures.massOff(remedy.amount()) + " " + figures.mass().symbol();
    }
}
