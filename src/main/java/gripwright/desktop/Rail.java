package gripwright.desktop;

import gripwright.desktop.support.PlaceKey;
import gripwright.desktop.support.Workbench;
import java.util.EnumMap;
import java.util.Map;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;

/**
 * The rail of the seven places, in the order of work, each with the digit that goes there.
 *
 * <p>It is one stop of the Tab key, the place that is shown; Up and Down go to the places above and below.
 */
final class Rail extends VBox {

    private static final PseudoClass HERE = PseudoClass.getPseudoClass("here");

    private final Map<PlaceKey, Button> buttons = new EnumMap<>(PlaceKey.class);

    Rail(Workbench workbench) {
        getStyleClass().add("gw-rail");
        for (PlaceKey place : PlaceKey.values()) {
            Button button = button(place);
            button.setOnAction(event -> workbench.place().set(place));
            buttons.put(place, button);
            getChildren().add(button);
        }
        workbench.place().subscribe(this::mark);
        addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.UP || event.getCode() == KeyCode.DOWN) {
                PlaceKey.ofDigit(workbench.place().get().digit() + (event.getCode() == KeyCode.DOWN ? 1 : -1))
                        .ifPresent(next -> go(workbench, next));
                event.consume();
            }
        });
    }

    /** Goes to a place and stays on the rail, so that the next arrow goes on. */
    private void go(Workbench workbench, PlaceKey next) {
        workbench.place().set(next);
        focus(next);
    }

    private static Button button(PlaceKey place) {
        Label digit = new Label(String.valueOf(place.digit()));
        digit.getStyleClass().add("gw-rail-digit");
        Button button = new Button(place.title(), digit);
        button.getStyleClass().add("gw-rail-button");
        button.setMaxWidth(Double.MAX_VALUE);
        button.setId("rail-" + place.name().toLowerCase(java.util.Locale.ROOT));
        button.setAccessibleText(place.title() + ", place " + place.digit() + " of 7. " + place.purpose());
        return button;
    }

    private void mark(PlaceKey here) {
        buttons.forEach((place, button) -> {
            button.pseudoClassStateChanged(HERE, place == here);
            button.setFocusTraversable(place == here);
        });
    }

    /** Gives the focus to the place that is shown. */
    void focus(PlaceKey place) {
        buttons.get(place).requestFocus();
    }
}
