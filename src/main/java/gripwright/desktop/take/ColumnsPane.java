package gripwright.desktop.take;

import gripwright.desktop.support.Sheets;
import gripwright.intake.FileColumn;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;

/** All columns of a file under one another, as they are written and as they are read; each can be set by hand. */
final class ColumnsPane extends GridPane {

    private static final double[] WIDTHS = {184, 184, 208, 128, 152, 128, 88};
    private static final String[] HEADINGS = {"column", "in the file", "holds", "unit", "sign", "first shot", ""};

    /** Over fields, headings stand where the fields' texts begin. */
    private static final int FIRST_FIELD = 2;
    private static final int LAST_FIELD = 4;

    private final TakeViewModel model;
    private final List<ColumnCells> rows = new ArrayList<>();
    private List<String> keys = List.of();

    ColumnsPane(TakeViewModel model) {
        this.model = model;
        setHgap(Sheets.STEP);
        setVgap(Sheets.STEP);
        setId("take-columns");
        getStyleClass().addAll("take-columns", "gw-section");
        for (double width : WIDTHS) {
            ColumnConstraints constraints = new ColumnConstraints();
            constraints.setPercentWidth(100 * width / java.util.stream.DoubleStream.of(WIDTHS).sum());
            constraints.setHgrow(Priority.ALWAYS);
            getColumnConstraints().add(constraints);
        }
    }

    /** Shows the columns; those of the same file keep their cells, and so the focus. */
    void show(List<FileColumn> columns) {
        List<String> now = columns.stream().map(column -> column.position() + column.key()).toList();
        if (!now.equals(keys)) {
            keys = now;
            build(columns.size());
        }
        for (int n = 0; n < columns.size(); n++) {
            rows.get(n).show(columns.get(n));
        }
    }

    private void build(int count) {
        getChildren().clear();
        rows.clear();
        for (int column = 0; column < HEADINGS.length; column++) {
            Label heading = new Label(HEADINGS[column]);
            heading.getStyleClass().addAll("gw-small", "gw-quiet");
            if (column >= FIRST_FIELD && column <= LAST_FIELD) {
                heading.getStyleClass().add("take-heading-in");
            }
            add(heading, column, 0);
        }
        for (int row = 0; row < count; row++) {
            ColumnCells cells = new ColumnCells(model);
            rows.add(cells);
            addRow(row + 1, cells.nodes());
        }
    }
}
