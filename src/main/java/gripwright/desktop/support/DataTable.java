package gripwright.desktop.support;

import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.SelectionMode;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.Tooltip;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;

/**
 * A table to read: arrow keys move, Ctrl+C copies the selected rows (all when none is) as tab-separated text with headings.
 *
 * @param <T> a row
 */
public final class DataTable<T> extends TableView<T> {

    private static final double ROW_HEIGHT = 32;
    /** Numbers that stand further apart than this share of their columns are hard to read across. */
    private static final double MOST_STRETCH = 1.4;
    private static final int LEAST_ROWS = 2;
    private static final int TIPPED_FROM = 20;
    private static final double HEADING_HEIGHT = 33;
    private static final KeyCombination COPY = new KeyCodeCombination(KeyCode.C, KeyCombination.SHORTCUT_DOWN);

    private double wanted;

    /**
     * @param name what the table holds, for screen readers
     * @param empty what stands in it while there is no row
     */
    public DataTable(String name, String empty) {
        setAccessibleText(name);
        Label nothing = Sheets.quiet(empty);
        nothing.setWrapText(true);
        setPlaceholder(nothing);
        setFixedCellSize(ROW_HEIGHT);
        getStyleClass().add("gw-table");
        getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
        setColumnResizePolicy(CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
        setOnKeyPressed(event -> {
            if (COPY.match(event)) {
                copy();
                event.consume();
            }
        });
    }

    /** Adds a column of text, left aligned. */
    public DataTable<T> text(String heading, double width, Function<T, String> cell) {
        add(heading, width, cell, Pos.CENTER_LEFT);
        return this;
    }

    /** Adds a column of numbers, right aligned. */
    public DataTable<T> number(String heading, double width, Function<T, String> cell) {
        add(heading, width, cell, Pos.CENTER_RIGHT);
        return this;
    }

    private void add(String heading, double width, Function<T, String> cell, Pos alignment) {
        TableColumn<T, String> column = new TableColumn<>(heading);
        column.setCellValueFactory(row -> new ReadOnlyStringWrapper(cell.apply(row.getValue())));
        column.setCellFactory(any -> new TippedCell<>());
        column.setPrefWidth(width);
        column.setMinWidth(width / 2);
        column.setSortable(false);
        column.setReorderable(false);
        column.getStyleClass().add(alignment == Pos.CENTER_RIGHT ? "gw-number" : "gw-text");
        getColumns().add(column);
        wanted += width;
        setMaxWidth(alignment == Pos.CENTER_RIGHT ? wanted * MOST_STRETCH : Double.MAX_VALUE);
    }

    /** Makes the table just high enough for this many rows and its heading. */
    public DataTable<T> rowsShown(int rows) {
        setPrefHeight(rows * ROW_HEIGHT + HEADING_HEIGHT);
        setMinHeight(Math.min(rows, LEAST_ROWS) * ROW_HEIGHT + HEADING_HEIGHT);
        return this;
    }

    /** The selected rows, or all when none is selected, as tab-separated text with headings. */
    public String copied() {
        List<T> rows = getSelectionModel().getSelectedItems().isEmpty()
                ? getItems() : getSelectionModel().getSelectedItems();
        return TabSeparated.of(getColumns().stream().map(TableColumn::getText).toList(),
                rows.stream().map(row -> getColumns().stream()
                        .map(column -> String.valueOf(column.getCellObservableValue(row).getValue())).toList()).toList());
    }

    private void copy() {
        ClipboardContent content = new ClipboardContent();
        content.putString(copied());
        Clipboard.getSystemClipboard().setContent(content);
    }

    /** A cell whose whole text stands in its tip, for names longer than the column. */
    private static final class TippedCell<T> extends TableCell<T, String> {

        @Override
        protected void updateItem(String text, boolean empty) {
            super.updateItem(text, empty);
            setText(empty ? null : text);
            setTooltip(empty || text == null || text.length() < TIPPED_FROM ? null : new Tooltip(text));
        }
    }
}
