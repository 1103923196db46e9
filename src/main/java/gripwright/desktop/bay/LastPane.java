package gripwright.desktop.bay;

import java.util.ArrayList;
import java.util.List;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The last shot's chosen readings, large. */
final class LastPane extends VBox {

    private static final PseudoClass UNUSUAL = PseudoClass.getPseudoClass("unusual");

    private final Label title = BayLabels.label(BayLabels.SMALL, BayLabels.QUIET);
    private final GridPane grid = new GridPane();
    private final List<Cell> cells = new ArrayList<>();
    private LastShot shown;

    LastPane() {
        setId("bay-last");
        grid.getStyleClass().add("bay-last");
        title.setId("last-title");
        getChildren().addAll(title, grid);
    }

    void show(LastShot last) {
        if (last.equals(shown)) {
            return;
        }
        shown = last;
        BayLabels.write(title, last.title());
        if (cells.size() != last.readings().size()) {
            build(last.readings().size());
        }
        for (int n = 0; n < cells.size(); n++) {
            cells.get(n).show(last.readings().get(n));
        }
    }

    private void build(int count) {
        cells.clear();
        grid.getChildren().clear();
        grid.getColumnConstraints().clear();
        for (int n = 0; n < count; n++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(100.0 / count);
            grid.getColumnConstraints().add(column);
            Cell cell = new Cell(n);
            cells.add(cell);
            grid.add(cell, n, 0);
        }
    }

    /** One reading: its name over the number and its word. */
    private static final class Cell extends VBox {

        private final Label name = BayLabels.label(BayLabels.MIDDLE, BayLabels.QUIET);
        private final Label number = BayLabels.whole(BayLabels.HUGE);
        private final Label word = BayLabels.whole(BayLabels.LARGE);

        private Cell(int place) {
            number.setId("last-" + place);
            number.getStyleClass().add("bay-last-number");
            HBox line = new HBox(6, number, word);
            line.setAlignment(Pos.BASELINE_LEFT);
            getChildren().addAll(name, line);
        }

        private void show(LastShot.Big reading) {
            BayLabels.write(name, reading.unusual() ? reading.name() + ", unusual" : reading.name());
            BayLabels.write(number, reading.number());
            BayLabels.write(word, reading.word());
            number.pseudoClassStateChanged(UNUSUAL, reading.unusual());
        }
    }
}
