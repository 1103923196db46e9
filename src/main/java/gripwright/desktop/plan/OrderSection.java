package gripwright.desktop.plan;

import gripwright.charts.Mark;
import gripwright.desktop.support.ChoiceField;
import gripwright.desktop.support.EntryField;
import gripwright.desktop.support.MarkCanvas;
import gripwright.desktop.support.RowGrid;
import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.SwitchField;
import gripwright.desktop.support.Theme;
import gripwright.desktop.support.Workbench;
import gripwright.model.Configuration;
import gripwright.model.PhysicalClub;
import gripwright.model.Plan;
import gripwright.model.Stint;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The order of the stints on the sheet: the rule, the queue at a glance, and each stint as a row. */
final class OrderSection {

    private static final double MARK = 16;
    private static final double CELL = 104;
    private static final int NARROW = 2;

    private final Workbench workbench;
    private final OrderViewModel model;

    OrderSection(Workbench workbench) {
        this.workbench = workbench;
        model = new OrderViewModel(workbench);
    }

    VBox order() {
        Button make = new Button("Make the order");
        make.setId("make-order");
        make.getStyleClass().add("accent");
        make.setMinWidth(Button.USE_PREF_SIZE);
        make.setOnAction(event -> model.make());
        model.mayMake().subscribe(may -> make.setDisable(!may));
        GridPane form = Sheets.form(Sheets.FORM_WORD);
        Sheets.line(form, "Order", new ChoiceField<>(model.order(), List.of(Plan.Order.values()), OrderViewModel::text)
                .named("order"), make);
        Sheets.line(form, "Rounds", new EntryField(model.rounds()).columns(NARROW).named("rounds"),
                Sheets.quiet("seed"), seed());
        Sheets.line(form, "Shots a stint", new EntryField(model.shotsPerStint()).columns(NARROW).named("shots"),
                Sheets.quiet("after"), new EntryField(model.settlingSwings()).columns(NARROW),
                Sheets.quiet("settling swings, not scored"));
        Sheets.line(form, "Warm-up", new EntryField(model.warmUpShots()).columns(NARROW),
                Sheets.quiet("shots with the reference first"));
        FlowPane glance = new FlowPane(Sheets.STEP, Sheets.STEP);
        RowGrid rows = new RowGrid(List.of("", "", "Kind", "Shots", "Settling", "", "", "", ""));
        MenuButton add = new MenuButton("Add a stint");
        add.setId("add-stint");
        model.cells().subscribe(cells -> {
            glance.getChildren().setAll(cells.stream().map(this::cell).toList());
            glance.setVisible(!cells.isEmpty());
            glance.setManaged(!cells.isEmpty());
        });
        model.shape().subscribe(shape -> {
            showRows(rows);
            listConfigurations(add);
        });
        return Sheets.section("Order of the stints", form, glance, rows, add);
    }

    private EntryField seed() {
        EntryField seed = new EntryField(model.seed()).columns(4);
        model.isRandom().subscribe(random -> seed.setDisable(!random));
        return seed;
    }

    private HBox mark(Mark mark) {
        HBox cell = new HBox(2, new MarkCanvas(new SimpleObjectProperty<>(mark),
                workbench.pictureLook(Theme.BODY_SIZE), MARK), new Label(mark.label()));
        cell.setAlignment(Pos.CENTER_LEFT);
        return cell;
    }

    private VBox cell(OrderViewModel.Cell stint) {
        HBox mark = mark(stint.mark());
        Label words = Sheets.hint(stint.words());
        VBox cell = new VBox(mark, words);
        cell.setPrefWidth(CELL);
        return cell;
    }

    private void listConfigurations(MenuButton add) {
        add.getItems().clear();
        for (Configuration configuration : model.configurations()) {
            add.getItems().add(item(configuration.label() + ", scored",
                    () -> model.add(configuration, Stint.Kind.SCORED)));
        }
        Menu others = new Menu("Warm-up or settling");
        for (Configuration configuration : model.configurations()) {
            others.getItems().add(item(configuration.label() + ", warm-up",
                    () -> model.add(configuration, Stint.Kind.WARM_UP)));
            others.getItems().add(item(configuration.label() + ", settling",
                    () -> model.add(configuration, Stint.Kind.SETTLING)));
        }
        add.getItems().add(others);
        add.setDisable(model.configurations().isEmpty());
    }

    private static MenuItem item(String text, Runnable action) {
        MenuItem item = new MenuItem(text);
        item.setMnemonicParsing(false);
        item.setOnAction(event -> action.run());
        return item;
    }

    private void showRows(RowGrid grid) {
        List<List<Node>> rows = new ArrayList<>();
        for (OrderViewModel.Row row : model.rows()) {
            rows.add(planned(row));
        }
        grid.show(rows);
        grid.setVisible(!rows.isEmpty());
        grid.setManaged(!rows.isEmpty());
    }

    private static Label number(OrderViewModel.Row row) {
        Label number = Sheets.quiet(String.valueOf(row.number()));
        number.getStyleClass().add("gw-form-word");
        return number;
    }

    private List<Node> planned(OrderViewModel.Row row) {
        HBox mark = mark(row.mark());
        mark.getStyleClass().add("gw-form-word");
        SwitchField changed = new SwitchField("grip taken off between", row.changedBefore());
        changed.setVisible(row.repeats());
        changed.setManaged(row.repeats());
        changed.getStyleClass().add("gw-form-word");
        return List.of(number(row), mark, new ChoiceField<>(row.kind(), List.of(Stint.Kind.values()),
                OrderViewModel::text), new EntryField(row.shots()).columns(NARROW),
                new EntryField(row.settling()).columns(NARROW), small("\u2191", "Move up", row.up()),
                small("\u2193", "Move down", row.down()), RowGrid.remove("Remove stint " + row.number(), row.remove()),
                changed);
    }

    private static Button small(String sign, String what, Runnable action) {
        Button button = new Button(sign);
        button.getStyleClass().addAll("flat", "gw-remove");
        button.setAccessibleText(what);
        button.setMinWidth(Button.USE_PREF_SIZE);
        button.setOnAction(event -> action.run());
        return button;
    }

    VBox clubs() {
        RowGrid grid = new RowGrid(List.of("Club", "Grips come onto it", ""));
        model.clubCount().subscribe(count -> {
            List<List<Node>> rows = new ArrayList<>();
            for (OrderViewModel.ClubRow row : model.clubs()) {
                rows.add(List.of(new EntryField(row.name()).columns(18), new ChoiceField<>(row.mounting(),
                        List.of(PhysicalClub.Mounting.values()), OrderViewModel::text),
                        RowGrid.remove(row.what(), row.remove())));
            }
            grid.show(rows);
            grid.setVisible(!rows.isEmpty());
            grid.setManaged(!rows.isEmpty());
        });
        Button add = new Button("Add a club");
        add.setId("add-club");
        add.setOnAction(event -> model.addClub());
        return Sheets.section("Clubs one can hold", grid, add, Sheets.hint("Where grips are blown on and off one club, mark "
                + "across grip and shaft, look for twist at each stint, and wear eye protection with air."));
    }
}
