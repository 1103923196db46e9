package gripwright.desktop.bay;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** Every action on a button big enough for a finger, its key under its name. */
final class ActionsBar extends HBox {

    private static final List<BayAction> BUTTONS = List.of(BayAction.SET_ASIDE, BayAction.BRING_BACK,
            BayAction.END_STINT, BayAction.START_NEXT, BayAction.NOTE, BayAction.SWITCH, BayAction.REPEAT,
            BayAction.FEEL, BayAction.TRAY, BayAction.UNDO, BayAction.REDO);

    private static final PseudoClass WAITING = PseudoClass.getPseudoClass("waiting");

    private final Map<BayAction, Button> buttons = new EnumMap<>(BayAction.class);

    ActionsBar(Consumer<BayAction> act) {
        getStyleClass().add("bay-actions");
        for (BayAction action : BUTTONS) {
            Button button = button(action, act);
            button.setMaxWidth(Double.MAX_VALUE);
            button.setPrefWidth(100);
            HBox.setHgrow(button, Priority.ALWAYS);
            buttons.put(action, button);
            getChildren().add(button);
        }
    }

    /** The button of an action; never takes the focus, so that keys stay where they were. */
    static Button button(BayAction action, Consumer<BayAction> act) {
        Label key = BayLabels.label("bay-key");
        key.setText(action.key());
        Button button = new Button(action.text(), key);
        button.getStyleClass().add("bay-button");
        button.setId("action-" + action.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
        button.setFocusTraversable(false);
        button.setAccessibleText(action.what());
        button.setOnAction(event -> act.accept(action));
        return button;
    }

    /** How many shots wait stands on the tray's own button. */
    void showTray(int waiting) {
        Button tray = buttons.get(BayAction.TRAY);
        String text = waiting == 0 ? "Tray" : "Tray: " + waiting;
        if (!tray.getText().equals(text)) {
            tray.setText(text);
            tray.pseudoClassStateChanged(WAITING, waiting > 0);
        }
    }
}
