package gripwright.desktop.balance;

import gripwright.balance.SessionBalance;
import gripwright.charts.SwingweightStrip;
import gripwright.desktop.support.DataTable;
import gripwright.desktop.support.PictureCanvas;
import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.Theme;
import gripwright.desktop.support.Workbench;
import gripwright.model.ShopSettings;
import javafx.animation.Interpolator;
import javafx.animation.KeyFrame;
import javafx.animation.KeyValue;
import javafx.animation.Timeline;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/** The club as a lever between two configurations, the swingweights of all, and the table of all. */
final class LeverSheet {

    private static final Duration WAY = Duration.millis(420);
    private static final double SLIDER_WIDTH = 160;

    private final BalanceViewModel model;
    private final Workbench workbench;
    private final PictureCanvas lever = new PictureCanvas();
    private final PictureCanvas strip = new PictureCanvas();
    private final Label onTheWay = new Label();
    private final Label difference = Sheets.text("");
    private final Timeline motion = new Timeline();
    private final VBox table = new VBox();
    private final VBox notes = new VBox(Sheets.STEP / 2);
    private final ConfigurationBox first;
    private final VBox node = new VBox(2 * Sheets.STEP);

    LeverSheet(BalanceViewModel model) {
        this.model = model;
        this.workbench = model.workbench();
        first = new ConfigurationBox("first configuration", workbench, model.first());
        onTheWay.getStyleClass().add("gw-heading-text");
        HBox words = new HBox(3 * Sheets.STEP, difference, Sheets.spring(), onTheWay);
        words.setAlignment(Pos.BASELINE_LEFT);
        onTheWay.setMinWidth(Region.USE_PREF_SIZE);
        node.getChildren().addAll(choice(), lever, words, strip, table, notes);
        model.share().subscribe(now -> drawLever());
        model.first().subscribe(now -> go());
        model.second().subscribe(now -> go());
        model.tested().subscribe(now -> show());
        workbench.settings().subscribe(now -> show());
    }

    Node node() {
        return node;
    }

    private Node choice() {
        Slider slider = new Slider(0, 1, 1);
        slider.setPrefWidth(SLIDER_WIDTH);
        slider.setMinWidth(SLIDER_WIDTH);
        slider.setBlockIncrement(0.1);
        slider.setAccessibleText("how far on the way from the first configuration to the second");
        slider.valueProperty().bindBidirectional(model.share());
        Button exchange = new Button("\u21C4");
        exchange.setAccessibleText("Exchange the two configurations");
        exchange.setTooltip(new javafx.scene.control.Tooltip("Exchange the two"));
        exchange.setOnAction(event -> model.exchange());
        ConfigurationBox second = new ConfigurationBox("second configuration", workbench, model.second());
        HBox.setHgrow(first, Priority.ALWAYS);
        HBox.setHgrow(second, Priority.ALWAYS);
        HBox row = new HBox(Sheets.STEP, first, slider, second, exchange);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    /** Goes from the first configuration to the second, at once where nothing shall move. */
    private void go() {
        motion.stop();
        if (workbench.lessMotion().get() || node.getScene() == null) {
            model.share().set(1);
            drawLever();
            return;
        }
        model.share().set(0);
        motion.getKeyFrames().setAll(new KeyFrame(WAY, new KeyValue(model.share(), 1, Interpolator.EASE_BOTH)));
        motion.play();
    }

    private void drawLever() {
        lever.setLook(Theme.pictures(workbench.settings().get().dark(), Theme.BODY_SIZE));
        lever.setPicture(model.picture().orElse(null));
        onTheWay.setText(model.onTheWay());
        difference.setText(model.difference());
        lever.setAccessibleText("The club as a lever. " + model.difference());
    }

    private void show() {
        drawLever();
        SessionBalance.Tested tested = model.tested().get();
        if (tested == null) {
            return;
        }
        ShopSettings settings = workbench.settings().get();
        strip.setLook(Theme.pictures(settings.dark(), Theme.BODY_SIZE));
        strip.setPicture(SwingweightStrip.of(workbench.test().get(), tested.balance(), settings.decimalMark()));
        strip.setAccessibleText("Predicted and read swingweights of all configurations; the table below has them too.");
        strip.setManaged(model.knowsClub());
        strip.setVisible(model.knowsClub());
        table.getChildren().setAll(Sheets.section("All configurations", table(tested, settings)));
        notes.getChildren().clear();
        model.sentences().forEach(sentence -> notes.getChildren().add(Sheets.text(sentence)));
    }

    private Node table(SessionBalance.Tested tested, ShopSettings settings) {
        Figures figures = new Figures(settings);
        String mass = figures.mass().symbol();
        DataTable<BalanceRow> rows = new DataTable<BalanceRow>("balance by configuration", "No configuration yet.")
                .text("Configuration", 104, BalanceRow::label).text("Grip", 176, BalanceRow::grip)
                .number("Grip end, " + mass, 84, BalanceRow::gripMass).number("Club, " + mass, 68, BalanceRow::mass)
                .number("Balance, " + figures.length().symbol(), 84, BalanceRow::balancePoint)
                .number("Moment, g·in", 92, BalanceRow::moment).number("Swingweight", 92, BalanceRow::swingweight)
                .number("\u00B1 SD", 56, BalanceRow::doubt).number("Inertia, kg·cm²", 108, BalanceRow::inertia)
                .text("Rules", 104, BalanceRow::rules);
        rows.getItems().setAll(BalanceRow.of(workbench.test().get(), tested, settings));
        rows.rowsShown(Math.max(1, rows.getItems().size()));
        return rows;
    }
}
