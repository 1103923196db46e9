package gripwright.desktop;

import gripwright.desktop.support.Place;
import gripwright.desktop.support.Sheets;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** All keys on one sheet over the window: those that work everywhere, and those of the place that is shown. */
final class KeysOverlay extends StackPane {

    private static final List<Place.KeyLine> EVERYWHERE = List.of(
            new Place.KeyLine("Alt+1 \u2026 Alt+7", "go to a place"),
            new Place.KeyLine("1 \u2026 7", "the same, where nothing takes typing"),
            new Place.KeyLine("Ctrl+Z", "undo"),
            new Place.KeyLine("Ctrl+Y, Ctrl+Shift+Z", "redo"),
            new Place.KeyLine("Enter", "keep what is typed"),
            new Place.KeyLine("Escape", "put back what was there"),
            new Place.KeyLine("Tab, Shift+Tab", "next field, field before"),
            new Place.KeyLine("Ctrl+C in a table", "copy its rows for a spreadsheet"),
            new Place.KeyLine("Ctrl+N", "new session"),
            new Place.KeyLine("Ctrl+O", "open a session"),
            new Place.KeyLine("Ctrl+Shift+S", "save as"),
            new Place.KeyLine("Ctrl+I", "take shots from a CSV file"),
            new Place.KeyLine("Ctrl+V", "take pasted rows under headings"),
            new Place.KeyLine("F11", "full screen"),
            new Place.KeyLine("? or F1", "these keys; Escape closes them"));

    private final HBox columns = new HBox(6 * Sheets.STEP);

    KeysOverlay() {
        getStyleClass().add("gw-overlay");
        setId("keys-overlay");
        VBox sheet = new VBox(3 * Sheets.STEP, title(), columns);
        sheet.getStyleClass().add("gw-overlay-sheet");
        sheet.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        getChildren().add(sheet);
        setAlignment(Pos.CENTER);
        setVisible(false);
        setOnMouseClicked(event -> setVisible(false));
    }

    private static Label title() {
        Label title = new Label("Keys");
        title.getStyleClass().add("gw-title");
        return title;
    }

    void show(Place place) {
        columns.getChildren().setAll(column("Everywhere", EVERYWHERE));
        if (!place.keys().isEmpty()) {
            columns.getChildren().add(column(place.key().title(), place.keys()));
        }
        setVisible(true);
    }

    private static VBox column(String heading, List<Place.KeyLine> lines) {
        GridPane grid = new GridPane();
        grid.setHgap(3 * Sheets.STEP);
        grid.setVgap(Sheets.STEP);
        for (Place.KeyLine line : lines) {
            Label keys = new Label(line.keys());
            keys.getStyleClass().add("gw-key");
            keys.setMinWidth(USE_PREF_SIZE);
            Label what = Sheets.quiet(line.what());
            what.setMinWidth(USE_PREF_SIZE);
            grid.addRow(grid.getRowCount(), keys, what);
        }
        return Sheets.section(heading, grid);
    }
}
