package gripwright.desktop.plan;

import gripwright.charts.Mark;
import gripwright.desktop.support.MarkCanvas;
import gripwright.desktop.support.Theme;
import gripwright.desktop.support.Words;
import gripwright.desktop.support.Workbench;
import gripwright.model.Configuration;
import gripwright.model.Grip;
import gripwright.model.MarkerShape;
import gripwright.model.Tape;
import java.util.List;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;

/** What can be done with one column of the test matrix beyond its fields: grip, tape, look, place, removal. */
final class ColumnMenu {

    private static final List<String> COLOURS = List.of("blue", "vermilion", "green", "pink", "orange", "sky blue",
            "yellow", "ink");
    private static final double MARK = 16;

    private final Workbench workbench;
    private final MatrixViewModel model;
    private final MatrixViewModel.Column column;

    ColumnMenu(Workbench workbench, MatrixViewModel model, MatrixViewModel.Column column) {
        this.workbench = workbench;
        this.model = model;
        this.column = column;
    }

    MenuButton button() {
        MenuButton button = new MenuButton("\u2026");
        button.getStyleClass().addAll("flat", "gw-more");
        button.setAccessibleText("More about " + column.label());
        button.setId("more-" + column.id());
        button.setMinWidth(MenuButton.USE_PREF_SIZE);
        button.getItems().addAll(grips(), tapes(), markers(), colours(), new SeparatorMenuItem());
        column.changedInStock().ifPresent(grip -> button.getItems().add(
                item("Take the changed grip from stock", () -> column.takeGrip(grip))));
        MenuItem left = item("Move left", () -> column.move(-1));
        left.setDisable(column.isFirst());
        MenuItem right = item("Move right", () -> column.move(1));
        right.setDisable(column.isLast());
        button.getItems().addAll(left, right, item("Remove " + column.label(), column::remove));
        return button;
    }

    private static MenuItem item(String text, Runnable action) {
        MenuItem item = new MenuItem(text);
        item.setMnemonicParsing(false);
        item.setOnAction(event -> action.run());
        return item;
    }

    private Menu grips() {
        Menu menu = new Menu("Another grip");
        for (Grip grip : model.stockGrips()) {
            menu.getItems().add(item(grip.name(), () -> column.takeGrip(grip)));
        }
        menu.setDisable(menu.getItems().isEmpty());
        return menu;
    }

    private Menu tapes() {
        Menu menu = new Menu("Tape");
        for (Tape tape : model.tapes()) {
            menu.getItems().add(item(tape.name(), () -> column.takeTape(tape)));
        }
        menu.setDisable(menu.getItems().isEmpty());
        return menu;
    }

    private Menu markers() {
        Menu menu = new Menu("Marker");
        for (MarkerShape shape : MarkerShape.values()) {
            MenuItem item = item(Words.of(shape), () -> column.takeMarker(shape));
            item.setGraphic(mark(column.mark().getValue().colourIndex(), shape));
            menu.getItems().add(item);
        }
        return menu;
    }

    private Menu colours() {
        Menu menu = new Menu("Colour");
        for (int colour = 0; colour < Configuration.COLOURS; colour++) {
            int chosen = colour;
            MenuItem item = item(COLOURS.get(colour), () -> column.takeColour(chosen));
            item.setGraphic(mark(colour, column.mark().getValue().shape()));
            menu.getItems().add(item);
        }
        return menu;
    }

    private Node mark(int colour, MarkerShape shape) {
        return new MarkCanvas(new SimpleObjectProperty<>(new Mark(colour, shape, "")),
                workbench.pictureLook(Theme.BODY_SIZE), MARK);
    }
}
