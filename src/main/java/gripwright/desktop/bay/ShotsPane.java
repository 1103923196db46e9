package gripwright.desktop.bay;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The shots of the stint, newest first; a double click sets one aside or brings it back. */
final class ShotsPane extends VBox {

    private static final PseudoClass ASIDE = PseudoClass.getPseudoClass("aside");
    private static final PseudoClass SETTLING = PseudoClass.getPseudoClass("settling");
    private static final String NUMBER = "bay-shot-number";
    private static final String CELL = "bay-shot-cell";

    private final HBox head = new HBox(4);
    private final ListView<ShotRow> list = new ListView<>();
    private List<String> columns = List.of();

    ShotsPane(Consumer<String> toggleAside) {
        setId("bay-shots");
        list.getStyleClass().add("bay-shots");
        list.setFocusTraversable(false);
        list.setCellFactory(view -> new Cell(toggleAside));
        list.setPlaceholder(BayLabels.label(BayLabels.SMALL, BayLabels.QUIET));
        VBox.setVgrow(list, Priority.ALWAYS);
        list.setMinHeight(0);
        getChildren().addAll(head, list);
    }

    void show(List<String> names, List<ShotRow> rows) {
        if (!names.equals(columns)) {
            columns = names;
            head.getChildren().clear();
            head.getChildren().add(BayLabels.label(BayLabels.SMALL, NUMBER));
            for (String name : names.subList(0, Math.min(names.size(), ShotRow.MOST_CELLS))) {
                Label label = BayLabels.label(BayLabels.SMALL, BayLabels.QUIET, CELL);
                label.setText(name);
                head.getChildren().add(label);
            }
        }
        List<ShotRow> before = new ArrayList<>(list.getItems());
        if (rows.equals(before)) {
            return;
        }
        boolean oneMore = rows.size() == before.size() + 1 && rows.subList(1, rows.size()).equals(before);
        if (oneMore) {
            list.getItems().add(0, rows.get(0));
        } else {
            replace(rows, before);
        }
    }

    private void replace(List<ShotRow> rows, List<ShotRow> before) {
        if (rows.size() != before.size()) {
            list.getItems().setAll(rows);
            return;
        }
        for (int n = 0; n < rows.size(); n++) {
            if (!rows.get(n).equals(before.get(n))) {
                list.getItems().set(n, rows.get(n));
            }
        }
    }

    /** One shot. */
    private static final class Cell extends ListCell<ShotRow> {

        private final HBox row = new HBox(4);
        private final Label number = BayLabels.label(BayLabels.QUIET, NUMBER);
        private final List<Label> cells = new ArrayList<>();
        private final Label mark = BayLabels.label(BayLabels.SMALL, BayLabels.QUIET);

        private Cell(Consumer<String> toggleAside) {
            row.getStyleClass().add("bay-shot-row");
            row.getChildren().add(number);
            for (int n = 0; n < ShotRow.MOST_CELLS; n++) {
                Label cell = BayLabels.label(CELL);
                cells.add(cell);
                row.getChildren().add(cell);
            }
            HBox.setHgrow(mark, Priority.ALWAYS);
            row.getChildren().add(mark);
            setPrefWidth(0);
            setOnMouseClicked(event -> {
                if (event.getClickCount() == 2 && getItem() != null) {
                    toggleAside.accept(getItem().shotId());
                }
            });
        }

        private void explain(String reason) {
            boolean explained = getTooltip() != null && getTooltip().getText().equals(reason);
            if (!explained) {
                setTooltip(reason.isEmpty() ? null : new Tooltip(reason));
            }
        }

        @Override
        protected void updateItem(ShotRow shot, boolean none) {
            super.updateItem(shot, none);
            if (none || shot == null) {
                setTooltip(null);
                setGraphic(null);
                return;
            }
            BayLabels.write(number, shot.number());
            for (int n = 0; n < cells.size(); n++) {
                BayLabels.write(cells.get(n), n < shot.cells().size() ? shot.cells().get(n) : "");
            }
            BayLabels.write(mark, shot.mark());
            explain(shot.reason());
            row.pseudoClassStateChanged(ASIDE, shot.setAside());
            row.pseudoClassStateChanged(SETTLING, shot.settling());
            setGraphic(row);
        }
    }
}
