package gripwright.desktop.support;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;

/** Rows of fields under headings: a small table whose every cell is a field, so that Tab goes from one to the next. */
public final class RowGrid extends GridPane {

    private final List<String> headings;
    private final List<List<? extends Node>> rows = new ArrayList<>();

    /** @param headings one a column, with its unit where all of the column share one; may be empty */
    public RowGrid(List<String> headings) {
        this.headings = List.copyOf(headings);
        setHgap(Sheets.STEP);
        setVgap(Sheets.STEP / 2);
        getStyleClass().add("gw-rows");
    }

    /** Shows these rows in place of those before. */
    public void show(List<? extends List<? extends Node>> shown) {
        getChildren().clear();
        rows.clear();
        rows.addAll(shown);
        for (int column = 0; column < headings.size(); column++) {
            Label heading = new Label(headings.get(column));
            heading.getStyleClass().addAll("gw-small", "gw-quiet");
            heading.setMinWidth(USE_PREF_SIZE);
            add(heading, column, 0);
        }
        for (int row = 0; row < rows.size(); row++) {
            for (int column = 0; column < rows.get(row).size(); column++) {
                Node cell = rows.get(row).get(column);
                setValignment(cell, VPos.TOP);
                add(cell, column, row + 1);
            }
        }
    }

    /** Gives the focus to the first field of the last row. */
    public void focusLastRow() {
        if (!rows.isEmpty()) {
            Node first = rows.get(rows.size() - 1).get(0);
            (first instanceof EntryField field ? field.input() : first).requestFocus();
        }
    }

    /** A small button that takes its row away; {@code what} is said to screen readers, 'Remove the head'. */
    public static Button remove(String what, Runnable action) {
        Button button = new Button("\u00D7");
        button.getStyleClass().addAll("flat", "gw-remove");
        button.setMinWidth(USE_PREF_SIZE);
        button.setAccessibleText(what);
        button.setTooltip(new javafx.scene.control.Tooltip(what));
        button.setOnAction(event -> action.run());
        return button;
    }
}
