package gripwright.desktop;

import gripwright.desktop.support.SavingStatus;
import gripwright.desktop.support.StatusMessage;
import gripwright.desktop.support.Workbench;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** The foot of the window: what was last said, what undo and redo would do, and how the keeping of the session stands. */
final class Foot extends HBox {

    private static final PseudoClass PROBLEM = PseudoClass.getPseudoClass("problem");

    /** A failure to save is a sentence or three; the foot grows to show all of it until it is cured. */
    private static final double WIDEST_SAVING = 480;

    Foot(Workbench workbench, WindowViewModel model) {
        getStyleClass().add("gw-foot");
        setAlignment(Pos.CENTER_LEFT);
        getChildren().addAll(message(model),
                step("undo", model.undo(), model.nothingToUndo(), workbench.undoLabel(), "Ctrl+Z", workbench::undo),
                step("redo", model.redo(), model.nothingToRedo(), workbench.redoLabel(), "Ctrl+Y", workbench::redo),
                saving(model));
    }

    private static Label message(WindowViewModel model) {
        Label message = new Label();
        message.setId("message");
        message.getStyleClass().add("gw-message");
        message.setMaxWidth(Double.MAX_VALUE);
        message.setWrapText(true);
        message.setMinHeight(USE_PREF_SIZE);
        HBox.setHgrow(message, Priority.ALWAYS);
        message.setTooltip(new Tooltip());
        message.getTooltip().textProperty().bind(message.textProperty());
        model.message().subscribe(now -> {
            message.setText(now.text());
            message.pseudoClassStateChanged(PROBLEM, now.kind() == StatusMessage.Kind.PROBLEM);
        });
        return message;
    }

    private static Button step(String id, ObservableValue<String> text, ObservableValue<Boolean> nothing,
            ObservableValue<String> whole, String keys, Runnable action) {
        Button button = new Button();
        button.setId(id);
        button.getStyleClass().addAll("flat", "gw-step");
        button.setMinWidth(USE_PREF_SIZE);
        button.textProperty().bind(text);
        button.disableProperty().bind(nothing);
        button.setTooltip(new Tooltip());
        button.getTooltip().textProperty().bind(whole.map(label -> label + " (" + keys + ")"));
        button.setFocusTraversable(false);
        button.setOnAction(event -> action.run());
        return button;
    }

    private static Label saving(WindowViewModel model) {
        Label saving = new Label();
        saving.setId("saving");
        saving.getStyleClass().add("gw-saving");
        saving.setWrapText(true);
        saving.setMaxWidth(WIDEST_SAVING);
        saving.setMinHeight(USE_PREF_SIZE);
        model.saving().subscribe(now -> {
            saving.setText(now.sentence());
            saving.pseudoClassStateChanged(PROBLEM, now.state() == SavingStatus.State.FAILED);
        });
        return saving;
    }
}
