package gripwright.desktop.plan;

import gripwright.charts.Mark;
import gripwright.desktop.support.ChoiceField;
import gripwright.desktop.support.EntryField;
import gripwright.desktop.support.MarkCanvas;
import gripwright.desktop.support.Quantity;
import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.Theme;
import gripwright.desktop.support.Workbench;
import gripwright.model.Grip;
import gripwright.model.PhysicalClub;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The test matrix on the sheet: properties down, configurations across. */
final class MatrixSection {

    private static final double COLUMN = 120;
    private static final double MARK = 18;

    private final Workbench workbench;
    private final MatrixViewModel model;
    private final MatrixFigures figures;
    private final GridPane grid = new GridPane();
    private int row;

    MatrixSection(Workbench workbench, MatrixViewModel model) {
        this.workbench = workbench;
        this.model = model;
        figures = new MatrixFigures(workbench);
    }

    VBox node() {
        grid.setHgap(Sheets.STEP);
        grid.setVgap(Sheets.STEP / 2);
        grid.getStyleClass().add("gw-matrix");
        ScrollPane sideways = new ScrollPane(grid);
        sideways.setVbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        sideways.getStyleClass().add("gw-scroll");
        sideways.setFocusTraversable(false);
        MenuButton add = new MenuButton("Add from stock");
        add.setId("add-configuration");
        VBox empty = Sheets.empty("Nothing is under test yet.", "Add the grip that is played now, and those to be tried "
                + "against it. Each becomes a column here.", null);
        model.shape().subscribe(shape -> {
            List<MatrixViewModel.Column> columns = model.columns();
            show(columns);
            sideways.setVisible(!columns.isEmpty());
            sideways.setManaged(!columns.isEmpty());
            empty.setVisible(columns.isEmpty());
            empty.setManaged(columns.isEmpty());
            listStock(add);
        });
        return Sheets.section("Configurations under test", empty, sideways, add);
    }

    private void listStock(MenuButton add) {
        add.getItems().setAll(model.stockGrips().stream().map(grip -> item(grip.name(), () -> model.add(grip))).toList());
        if (add.getItems().isEmpty()) {
            MenuItem nothing = new MenuItem("The stock list is empty: add a grip to it below.");
            nothing.setDisable(true);
            add.getItems().add(nothing);
        }
    }

    private static MenuItem item(String text, Runnable action) {
        MenuItem item = new MenuItem(text);
        item.setMnemonicParsing(false);
        item.setOnAction(event -> action.run());
        return item;
    }

    private void show(List<MatrixViewModel.Column> columns) {
        grid.getChildren().clear();
        row = 0;
        String length = ", " + workbench.unit(Quantity.LENGTH);
        String mass = ", " + workbench.unit(Quantity.MASS);
        line("", columns, this::head);
        line("Grip", columns, column -> wrapped(column.gripName()));
        line("Full wraps", columns, column -> field(new EntryField(column.fullWraps())));
        line("Lower wraps", columns, column -> field(new EntryField(column.lowerWraps())));
        line("Lower wraps from" + length, columns, column -> field(new EntryField(column.lowerFrom())));
        line("Tape", columns, column -> wrapped(column.tapeName()));
        line("Ballast" + mass, columns, column -> field(new EntryField(column.ballast())));
        line("Ballast at" + length, columns, column -> field(new EntryField(column.ballastAt())));
        line("Head mass added" + mass, columns, column -> field(new EntryField(column.headMass())));
        if (!model.physicalClubs().isEmpty()) {
            line("On club", columns, this::club);
        }
        line("Played now", columns, MatrixSection::gamer);
        ToggleGroup references = new ToggleGroup();
        line("Compared with", columns, column -> reference(column, references));
        rule(columns.size());
        for (double place : model.rulerPositions()) {
            line("Diameter (" + workbench.unit(Quantity.DIAMETER) + ") at " + figures.place(place), columns, column ->
                    field(prompted(new EntryField(column.fitted(place)),
                            column.figure(of -> figures.diameter(of, place)))));
        }
        line("Size", columns, column -> wrapped(column.figure(figures::size)));
        line("Grip as built" + mass, columns, column -> figure(column.figure(figures::gripMass)));
        line("Swingweight", columns, column -> field(prompted(new EntryField(column.swingweightRead()),
                column.figure(figures::swingweight))));
        line("Whole club" + mass, columns, column -> field(prompted(new EntryField(column.totalMassRead()),
                column.figure(figures::clubMass))));
        line("Balances at" + length, columns, column -> figure(column.figure(figures::balancePoint)));
        line("Inertia, kg\u00B7cm\u00B2", columns, column -> figure(column.figure(figures::inertia)));
        line("Equipment rules", columns, this::rules);
    }

    private void line(String word, List<MatrixViewModel.Column> columns, Function<MatrixViewModel.Column, Node> cell) {
        Label label = Sheets.quiet(word);
        label.setMinWidth(Region.USE_PREF_SIZE);
        label.getStyleClass().add("gw-matrix-word");
        GridPane.setValignment(label, VPos.TOP);
        grid.add(label, 0, row);
        for (int column = 0; column < columns.size(); column++) {
            Node node = cell.apply(columns.get(column));
            GridPane.setValignment(node, VPos.TOP);
            grid.add(node, column + 1, row);
        }
        row++;
    }

    private void rule(int columns) {
        Label predicted = Sheets.hint("Grey figures are predicted; type over them what was measured as fitted.");
        predicted.setWrapText(false);
        predicted.setMinWidth(Region.USE_PREF_SIZE);
        predicted.getStyleClass().add("gw-matrix-rule");
        predicted.setMaxWidth(Double.MAX_VALUE);
        grid.add(predicted, 0, row, columns + 1, 1);
        row++;
    }

    private Node head(MatrixViewModel.Column column) {
        MarkCanvas mark = new MarkCanvas(column.mark(), workbench.pictureLook(Theme.BODY_SIZE), MARK);
        EntryField label = new EntryField(column.labelEntry()).columns(2).named("label-" + column.id());
        label.input().getStyleClass().add("gw-matrix-label");
        MenuButton menu = new ColumnMenu(workbench, model, column).button();
        HBox head = new HBox(Sheets.STEP / 2, mark, label, menu);
        head.setAlignment(Pos.CENTER_LEFT);
        head.setPrefWidth(COLUMN);
        return head;
    }

    private static Node field(EntryField field) {
        field.input().getStyleClass().add("gw-number");
        return field.withoutUnit().wide(COLUMN);
    }

    private static EntryField prompted(EntryField field, ObservableValue<String> predicted) {
        field.input().promptTextProperty().bind(predicted);
        return field;
    }

    private static Label wrapped(ObservableValue<String> text) {
        Label label = Sheets.hint("");
        label.getStyleClass().remove("gw-quiet");
        label.setPrefWidth(COLUMN);
        label.setMaxWidth(COLUMN);
        label.getStyleClass().add("gw-matrix-text");
        label.textProperty().bind(text);
        return label;
    }

    private static Label figure(ObservableValue<String> text) {
        Label label = new Label();
        label.getStyleClass().add("gw-matrix-figure");
        label.setPrefWidth(COLUMN);
        label.textProperty().bind(text);
        return label;
    }

    private Node rules(MatrixViewModel.Column column) {
        Label label = wrapped(column.figure(figures::rules));
        Tooltip tip = new Tooltip();
        tip.textProperty().bind(column.figure(figures::rulesAtLength));
        label.setTooltip(tip);
        return label;
    }

    private Node club(MatrixViewModel.Column column) {
        List<String> ids = new ArrayList<>();
        ids.add(null);
        model.physicalClubs().forEach(club -> ids.add(club.id()));
        ChoiceField<String> field = new ChoiceField<>(column.physicalClub(), ids, this::clubName);
        field.setMinWidth(COLUMN);
        field.setPrefWidth(COLUMN);
        field.setMaxWidth(COLUMN);
        field.getStyleClass().add("gw-matrix-club");
        field.setButtonCell(new WrappedName());
        return field;
    }

    /** The chosen club's name over as many lines as it needs, so that the columns of the matrix stay narrow. */
    private final class WrappedName extends ListCell<String> {

        private WrappedName() {
            getStyleClass().add("gw-small");
            setWrapText(true);
            setPrefWidth(0);
        }

        @Override
        protected void updateItem(String id, boolean empty) {
            super.updateItem(id, empty);
            setText(empty ? "" : clubName(id));
        }
    }

    private String clubName(String id) {
        return model.physicalClubs().stream().filter(club -> club.id().equals(id)).map(PhysicalClub::name).findFirst()
                .orElse("not said");
    }

    private static Node gamer(MatrixViewModel.Column column) {
        CheckBox box = new CheckBox();
        box.setAccessibleText(column.label() + " is what is played now");
        column.isGamer().subscribe(gamer -> box.setSelected(Boolean.TRUE.equals(gamer)));
        box.setOnAction(event -> column.makeGamer(box.isSelected()));
        return box;
    }

    private static Node reference(MatrixViewModel.Column column, ToggleGroup group) {
        RadioButton button = new RadioButton();
        button.setToggleGroup(group);
        button.setAccessibleText("Compare the others with " + column.label());
        column.isReference().subscribe(reference -> button.setSelected(Boolean.TRUE.equals(reference)));
        button.setOnAction(event -> column.makeReference());
        return button;
    }
}
