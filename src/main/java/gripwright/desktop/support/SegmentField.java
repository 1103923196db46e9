package gripwright.desktop.support;

import java.util.List;
import java.util.function.Function;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.WeakChangeListener;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;

/**
 * A row of words of which one is chosen, for a {@link Choice} among few; arrow keys move, Space chooses.
 *
 * @param <T> the values to choose from
 */
public final class SegmentField<T> extends HBox {

    private final ToggleGroup group = new ToggleGroup();
    private final Choice<T> choice;
    private final ChangeListener<T> keptChanged = (observed, before, now) -> show(now);

    /**
     * @param choice what is chosen
     * @param values what there is to choose from, at most five or so
     * @param text each value for people
     */
    public SegmentField(Choice<T> choice, List<T> values, Function<T, String> text) {
        this.choice = choice;
        getStyleClass().add("gw-segments");
        setAccessibleText(choice.name());
        for (T value : values) {
            ToggleButton segment = new ToggleButton(text.apply(value));
            segment.setUserData(value);
            segment.setToggleGroup(group);
            segment.setMinWidth(USE_PREF_SIZE);
            segment.setAccessibleText(choice.name() + ": " + text.apply(value));
            segment.setOnAction(event -> chosen(value));
            getChildren().add(segment);
        }
        show(choice.kept().getValue());
        choice.kept().addListener(new WeakChangeListener<>(keptChanged));
    }

    private void chosen(T value) {
        choice.keep().apply(value);
        show(choice.kept().getValue());
    }

    private void show(T value) {
        group.getToggles().forEach(toggle ->
                toggle.setSelected(value != null && value.equals(toggle.getUserData())));
    }
}
