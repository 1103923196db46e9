package gripwright.desktop.take;

import gripwright.desktop.support.TabSeparated;
import gripwright.model.Problem;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.SelectionMode;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.text.Text;

/** What was left out of a file or is worth a look, line by line; Ctrl+C copies the selected rows, all when none is. */
final class LeftOutTable extends TableView<Problem> {

    private static final double CELL_PADDING = 20;
    private static final double ROW = 48;
    private static final double HEADING = 40;
    private static final int MOST_ROWS = 5;

    LeftOutTable() {
        setId("take-left-out");
        setAccessibleText("what was left out or is worth a look");
        getStyleClass().addAll("gw-table", "take-left-out");
        setColumnResizePolicy(CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
        getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
        add("line", 64, problem -> number(problem.line()));
        add("column", 72, problem -> number(problem.column()));
        add("found", 168, Problem::found);
        add("what was expected, and what became of it", 640, Problem::sentence);
        addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.isShortcutDown() && event.getCode() == KeyCode.C) {
                copy();
                event.consume();
            }
        });
    }

    private static String number(Integer value) {
        return value == null ? "" : String.valueOf(value);
    }

    private void add(String heading, double width, Function<Problem, String> text) {
        TableColumn<Problem, String> column = new TableColumn<>(heading);
        column.setCellValueFactory(row -> new ReadOnlyStringWrapper(text.apply(row.getValue())));
        column.setCellFactory(any -> new WrappedCell());
        column.setPrefWidth(width);
        column.setMinWidth(width / 2);
        column.setSortable(false);
        column.setReorderable(false);
        getColumns().add(column);
    }

    /** What was rejected first, then what was taken with a note. */
    void show(List<Problem> problems) {
        if (!getItems().equals(problems)) {
            getItems().setAll(problems.stream()
                    .sorted(Comparator.comparing((Problem problem) -> problem.severity() == Problem.Severity.NOTE)).toList());
        }
        setPrefHeight(Math.min(MOST_ROWS, problems.size()) * ROW + HEADING);
        setMinHeight(Math.min(2, problems.size()) * ROW + HEADING);
    }

    /** The selected rows, or all, as tab-separated text with headings. */
    String copied() {
        List<Problem> rows = getSelectionModel().getSelectedItems().isEmpty() ? getItems()
                : getSelectionModel().getSelectedItems();
        return TabSeparated.of(List.of("line", "column", "found", "what was expected"), rows.stream().map(problem ->
                List.of(number(problem.line()), number(problem.column()), problem.found(), problem.sentence())).toList());
    }

    void copy() {
        ClipboardContent content = new ClipboardContent();
        content.putString(copied());
        Clipboard.getSystemClipboard().setContent(content);
    }

    /** A cell whose text wraps, since a sentence that is cut says nothing. */
    private static final class WrappedCell extends TableCell<Problem, String> {

        private final Text wrapped = new Text();

        WrappedCell() {
            wrapped.wrappingWidthProperty().bind(widthProperty().subtract(CELL_PADDING));
        }

        @Override
        protected void updateItem(String text, boolean empty) {
            super.updateItem(text, empty);
            wrapped.setText(empty ? "" : text);
            setGraphic(empty ? null : wrapped);
        }
    }
}
