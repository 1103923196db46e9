package gripwright.desktop.balance;

import gripwright.balance.SetPlan;
import gripwright.desktop.support.ChoiceField;
import gripwright.desktop.support.DataTable;
import gripwright.desktop.support.EntryField;
import gripwright.desktop.support.RowGrid;
import gripwright.desktop.support.Sheets;
import gripwright.model.ClubKind;
import gripwright.model.SetClub;
import gripwright.model.ShopSettings;
import java.io.File;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;

/** The whole set: what is known of each club in fields, and what the bench has to do in a table. */
final class SetSheet {

    private final SetViewModel model;
    private final VBox fields = new VBox(Sheets.STEP);
    private final VBox plan = new VBox(2 * Sheets.STEP);
    private final VBox node = new VBox(3 * Sheets.STEP, fields, plan);
    private RowGrid grid;

    SetSheet(BalanceViewModel balance) {
        model = new SetViewModel(balance);
        model.order().subscribe(order -> showFields());
        model.workbench().settings().subscribe(settings -> showFields());
        model.planned().subscribe(now -> showPlan());
    }

    Node node() {
        return node;
    }

    void focus() {
        if (grid != null) {
            grid.focusLastRow();
        }
    }

    private void showFields() {
        List<SetViewModel.Row> rows = model.rows();
        if (rows.isEmpty()) {
            Button usual = new Button("Start with a usual set");
            usual.setId("usualSet");
            usual.setOnAction(event -> model.addUsual());
            fields.getChildren().setAll(Sheets.empty("Here the whole set will go over the bench: what comes off, what goes on,"
                    + " and what brings each club to its target.", "Write down the clubs, one row each.", usual));
            grid = null;
            return;
        }
        ShopSettings settings = model.workbench().settings().get();
        Figures figures = new Figures(settings);
        String length = figures.length().symbol();
        String mass = figures.mass().symbol();
        Cell focused = focusedCell();
        grid = new RowGrid(List.of("Club", "Family", "Length, " + length, "Butt, " + length, "Reads now",
                "Grip off, " + mass, "Whole, " + mass, "Stripped", "Done", "Target", "", ""));
        List<List<Node>> cells = new ArrayList<>();
        rows.forEach(row -> cells.add(cells(row)));
        grid.show(cells);
        Button add = new Button("Add a club");
        add.setOnAction(event -> {
            model.add();
            focus();
        });
        fields.getChildren().setAll(Sheets.section("The set as it came", grid), add);
        restore(focused);
    }

    /** A place in the grid. */
    private record Cell(int row, int column) {
    }

    /** Where the focus is in the grid that is about to be made anew; null where it is elsewhere. */
    private Cell focusedCell() {
        Node at = grid == null || grid.getScene() == null ? null : grid.getScene().getFocusOwner();
        while (at != null && at.getParent() != grid) {
            at = at.getParent();
        }
        return at == null ? null : new Cell(GridPane.getRowIndex(at), GridPane.getColumnIndex(at));
    }

    private void restore(Cell cell) {
        if (cell != null) {
            grid.getChildren().stream().filter(child -> GridPane.getRowIndex(child) == cell.row
                    && GridPane.getColumnIndex(child) == cell.column).findFirst()
                    .ifPresent(child -> (child instanceof EntryField field ? field.input() : child).requestFocus());
        }
    }

    private List<Node> cells(SetViewModel.Row row) {
        ChoiceField<ClubKind> kind = new ChoiceField<>(row.kind(), List.of(ClubKind.values()), ClubKind::text);
        List<Node> cells = new ArrayList<>(List.of(new EntryField(row.name()).columns(8), kind));
        if (row.kind().kept().getValue() == ClubKind.PUTTER) {
            cells.addAll(List.of(new HBox(), new HBox(), new HBox(), new HBox(), new HBox(), new HBox(), new HBox(),
                    new HBox(), new HBox()));
        } else {
            cells.add(new EntryField(row.length()).withoutUnit().columns(4));
            cells.add(new EntryField(row.butt()).withoutUnit().columns(4));
            cells.add(new EntryField(row.present()).columns(3));
            cells.add(new EntryField(row.gripOff()).withoutUnit().columns(3));
            cells.add(new EntryField(row.totalMass()).withoutUnit().columns(3));
            cells.add(new EntryField(row.bare()).columns(3));
            cells.add(new EntryField(row.done()).columns(3));
            cells.add(new ChoiceField<>(row.target(), List.of(SetClub.Target.values()), SetSheet::text));
            cells.add(target(row));
        }
        cells.add(RowGrid.remove("Remove the " + row.name().text().get(), row.remove()));
        return cells;
    }

    private static Node target(SetViewModel.Row row) {
        return switch (row.target().kept().getValue()) {
            case VALUE -> new EntryField(row.targetSwingweight()).columns(3);
            case COMMON_INERTIA -> new EntryField(row.targetInertia()).withoutUnit().columns(4).prompt("test");
            case AS_NOW -> new HBox();
        };
    }

    private static String text(SetClub.Target target) {
        return switch (target) {
            case AS_NOW -> "as now";
            case VALUE -> "value";
            case COMMON_INERTIA -> "inertia";
        };
    }

    private void showPlan() {
        plan.getChildren().clear();
        SetPlan now = model.plan();
        if (now == null || now.rows().isEmpty()) {
            return;
        }
        Button copy = new Button("Copy the table");
        copy.setOnAction(event -> {
            ClipboardContent content = new ClipboardContent();
            content.putString(model.copied());
            Clipboard.getSystemClipboard().setContent(content);
            model.workbench().say("The table of the set is on the clipboard.");
        });
        Button save = new Button("Save as CSV \u2026");
        save.setOnAction(event -> chooseAndSave());
        plan.getChildren().addAll(Sheets.section("Over the bench", table()), new HBox(Sheets.STEP, copy, save), notes(),
                stock(now));
    }

    private Node table() {
        List<String> headings = SetRow.headings(model.workbench().settings().get());
        DataTable<SetRow> table = new DataTable<SetRow>("the set over the bench", "")
                .text(headings.get(0), 112, SetRow::club).text(headings.get(1), 44, SetRow::gets)
                .number(headings.get(2), 68, SetRow::stripped).number(headings.get(3), 76, SetRow::regripped)
                .number(headings.get(4), 88, SetRow::target).number(headings.get(5), 60, SetRow::headMass)
                .text(headings.get(6), 112, SetRow::how).number(headings.get(7), 52, SetRow::after)
                .number(headings.get(8), 52, SetRow::wraps).number(headings.get(9), 60, SetRow::size)
                .number(headings.get(10), 64, SetRow::off).number(headings.get(11), 72, SetRow::readOff)
                .number(headings.get(12), 60, SetRow::cost).text(headings.get(13), 96, SetRow::restsOn);
        table.getItems().setAll(model.table());
        table.rowsShown(Math.min(14, table.getItems().size()));
        return table;
    }

    private Node notes() {
        VBox notes = new VBox(Sheets.STEP / 2);
        model.sentences().forEach(sentence -> notes.getChildren().add(Sheets.hint(sentence)));
        return notes;
    }

    private Node stock(SetPlan now) {
        Figures figures = new Figures(model.workbench().settings().get());
        DataTable<SetPlan.StockLine> table = new DataTable<SetPlan.StockLine>("stock to take", "")
                .text("Item", 280, SetPlan.StockLine::item)
                .number("Needed", 80, line -> figures.number(line.needed(), line.unit().equals("g") ? 1 : 0))
                .text("", 80, SetPlan.StockLine::unit)
                .number("In stock", 80, line -> line.inStock() == null ? Figures.NONE : line.inStock().toString())
                .number("Missing", 80, line -> line.missing() > 0 ? figures.number(line.missing(), 0) : "");
        table.getItems().setAll(now.stock());
        table.rowsShown(now.stock().size());
        String cost = now.cost() == null ? "No grip of these has a price in the stock list."
                : "Grips together: " + model.workbench().settings().get().currency() + figures.number(now.cost(), 2);
        return Sheets.section("Stock to take", table, Sheets.text(cost));
    }

    private void chooseAndSave() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Save the set");
        chooser.setInitialFileName("set.csv");
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter("Tables", "*.csv"));
        File file = chooser.showSaveDialog(node.getScene().getWindow());
        if (file != null) {
            model.save(file.toPath());
        }
    }
}
