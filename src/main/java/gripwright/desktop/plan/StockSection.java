package gripwright.desktop.plan;

import gripwright.desktop.support.DataTable;
import gripwright.desktop.support.EntryField;
import gripwright.desktop.support.RowGrid;
import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.SwitchField;
import gripwright.desktop.support.Words;
import gripwright.desktop.support.Workbench;
import gripwright.model.Grip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The shop's stock list on the sheet: the table of grips, the chosen one beside it, and the tapes. */
final class StockSection {

    private static final int LEAST_ROWS = 2;
    private static final int ROWS = 9;
    private static final double EDITOR = 520;

    private final Workbench workbench;
    private final StockViewModel model;
    private final VBox editor = new VBox();

    StockSection(Workbench workbench) {
        this.workbench = workbench;
        model = new StockViewModel(workbench);
    }

    VBox grips() {
        DataTable<Grip> table = table();
        HBox.setHgrow(table, Priority.ALWAYS);
        editor.setMinWidth(EDITOR);
        editor.setPrefWidth(EDITOR);
        model.chosenIndex().subscribe(this::edit);
        workbench.settings().subscribe(changed -> edit(model.chosenIndex().getValue()));
        VBox left = new VBox(Sheets.STEP, table, actions());
        HBox.setHgrow(left, Priority.ALWAYS);
        return Sheets.section("Stock list: grips", new HBox(4 * Sheets.STEP, left, editor));
    }

    private DataTable<Grip> table() {
        DataTable<Grip> table = new DataTable<>("Grips in stock", "No grip is on the list yet. Name one below, then say "
                + "what is known of it.");
        table.setId("stock-grips");
        table.text("Grip", 300, Grip::name).number(model.sizeHeading(), 90, model::size)
                .number(model.massHeading(), 84, model::mass).text("Texture", 76, grip -> Words.orNotSaid(grip.texture()))
                .text("Condition", 76, grip -> Words.of(grip.condition()));
        workbench.settings().subscribe(changed -> {
            table.getColumns().get(1).setText(model.sizeHeading());
            table.getColumns().get(2).setText(model.massHeading());
            table.refresh();
        });
        model.grips().subscribe(grips -> {
            String chosen = model.chosen().get();
            table.getItems().setAll(grips);
            table.rowsShown(Math.max(LEAST_ROWS, Math.min(ROWS, grips.size())));
            select(table, chosen);
        });
        table.getSelectionModel().selectedItemProperty().addListener((observed, before, grip) -> {
            if (grip != null) {
                model.chosen().set(grip.id());
            }
        });
        model.chosen().addListener((observed, before, id) -> select(table, id));
        return table;
    }

    private static void select(DataTable<Grip> table, String id) {
        for (int index = 0; index < table.getItems().size(); index++) {
            if (table.getItems().get(index).id().equals(id)) {
                table.getSelectionModel().clearAndSelect(index);
                return;
            }
        }
        table.getSelectionModel().clearSelection();
    }

    private VBox actions() {
        Label problem = problem();
        EntryField name = new EntryField(model.draftName()).columns(20).prompt("name of a grip, without a brand")
                .named("draft-grip-name");
        name.onEnter(() -> say(problem, model.addGrip()));
        Button add = button("Add", "add-grip", () -> say(problem, model.addGrip()));
        Button copy = button("Copy", "copy-grip", model::copyGrip);
        Button remove = button("Remove", "remove-grip", model::removeGrip);
        model.chosenIndex().subscribe(index -> {
            copy.setDisable(index < 0);
            remove.setDisable(index < 0);
        });
        return new VBox(Sheets.STEP / 2, new HBox(Sheets.STEP, name, add, copy, remove), problem);
    }

    private static Button button(String text, String id, Runnable action) {
        Button button = new Button(text);
        button.setId(id);
        button.setMinWidth(Button.USE_PREF_SIZE);
        button.setOnAction(event -> action.run());
        return button;
    }

    private void edit(Integer index) {
        if (index == null || index < 0) {
            editor.getChildren().setAll(Sheets.hint("Choose a grip to see and change what is known of it. Labels mislead: "
                    + "the mass off your own scale and the diameters off your own caliper win."));
        } else {
            editor.getChildren().setAll(new GripEditor(workbench, model.grip(index)).node());
        }
    }

    VBox tapes() {
        RowGrid grid = new RowGrid(List.of("Tape", "Per wrap", "g/m\u00B2", "", ""));
        Label problem = problem();
        model.tapeCount().subscribe(count -> showTapes(grid, problem));
        return Sheets.section("Stock list: tapes", grid, problem, Sheets.hint("Build-up per wrap on the diameter, measured "
                + "by the shop: published values contradict each other. The double-sided layer that holds the grip is not "
                + "counted as a wrap."));
    }

    private void showTapes(RowGrid grid, Label problem) {
        List<List<Node>> rows = new ArrayList<>();
        for (StockViewModel.TapeRow row : model.tapes()) {
            SwitchField doubleSided = new SwitchField("double-sided", row.doubleSided());
            doubleSided.getStyleClass().add("gw-form-word");
            rows.add(List.of(new EntryField(row.name()).columns(15), new EntryField(row.perWrap()),
                    new EntryField(row.arealMass()).columns(4), doubleSided, RowGrid.remove(row.what(), row.remove())));
        }
        Button add = button("Add", "add-tape", () -> say(problem, model.addTape()));
        rows.add(List.of(new EntryField(model.draftTapeName()).columns(15).prompt("name of a tape"),
                new EntryField(model.draftPerWrap()),
                new EntryField(model.draftArealMass()).columns(4).onEnter(() -> say(problem, model.addTape())), add));
        grid.show(rows);
    }

    private static Label problem() {
        Label problem = new Label();
        problem.getStyleClass().add("gw-problem");
        say(problem, Optional.empty());
        return problem;
    }

    private static void say(Label problem, Optional<String> sentence) {
        problem.setText(sentence.orElse(""));
        problem.setVisible(sentence.isPresent());
        problem.setManaged(sentence.isPresent());
    }
}
