package gripwright.desktop.take;

import gripwright.desktop.support.Sheets;
import gripwright.intake.ColumnMapping;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Which of the shop's mappings a file is read with, and the way to drop it, choose another, or keep one for next time. */
final class MappingPane {

    private final TakeViewModel model;
    private final Label inUse = Sheets.quiet("");
    private final Button drop = flat("Drop it");
    private final Button forget = flat("Forget it for good");
    private final MenuButton others = new MenuButton("Read with");
    private final TextField name = new TextField();
    private final TextField files = new TextField();
    private String shownName = "";

    MappingPane(TakeViewModel model) {
        this.model = model;
        inUse.setId("take-mapping");
        inUse.setWrapText(true);
        inUse.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(inUse, Priority.ALWAYS);
        drop.setId("take-drop-mapping");
        drop.setOnAction(event -> model.use(null));
        forget.setOnAction(event -> model.forget());
        others.setMinWidth(MenuButton.USE_PREF_SIZE);
        name.setPromptText("a name of your own");
        name.setAccessibleText("name to keep the columns under");
        name.setId("take-mapping-name");
        files.setPromptText("bay two *.csv");
        files.setAccessibleText("names of the files it is for, with a star for any letters");
        name.setOnAction(event -> keep());
        files.setOnAction(event -> keep());
    }

    private static Button flat(String text) {
        Button button = new Button(text);
        button.getStyleClass().add("flat");
        button.setMinWidth(Button.USE_PREF_SIZE);
        return button;
    }

    /** Which mapping is in use. */
    HBox line() {
        HBox line = new HBox(Sheets.STEP, inUse, drop, forget, others);
        line.setAlignment(Pos.CENTER_LEFT);
        line.setMinHeight(4 * Sheets.STEP);
        return line;
    }

    /** Keeping the columns for the next file. */
    VBox keeping() {
        Button keep = new Button("Keep");
        keep.setId("take-keep-mapping");
        keep.setMinWidth(Button.USE_PREF_SIZE);
        keep.setOnAction(event -> keep());
        name.setPrefColumnCount(16);
        files.setPrefColumnCount(16);
        FlowPane line = new FlowPane(Sheets.STEP, Sheets.STEP, Sheets.quiet("Keep columns and answers as"), name,
                Sheets.quiet("for files of these headings, and files named"), files, keep);
        line.setAlignment(Pos.CENTER_LEFT);
        return Sheets.section("For the next file of this kind", line);
    }

    private void keep() {
        model.save(name.getText(), files.getText());
    }

    void show() {
        ColumnMapping now = model.mapping();
        inUse.setText(model.mappingInUse());
        for (Button button : new Button[] {drop, forget}) {
            button.setVisible(now.isNamed());
            button.setManaged(now.isNamed());
        }
        others.getItems().setAll(model.saved().stream().filter(each -> !each.name().equals(now.name())).map(each -> {
            MenuItem item = new MenuItem(each.name());
            item.setMnemonicParsing(false);
            item.setOnAction(event -> model.use(each));
            return item;
        }).toList());
        others.setVisible(!others.getItems().isEmpty());
        others.setManaged(others.isVisible());
        if (!shownName.equals(now.name())) {
            shownName = now.name();
            name.setText(now.isNamed() ? now.name() : "");
            files.setText(now.files());
        }
    }
}
