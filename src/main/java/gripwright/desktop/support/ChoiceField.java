package gripwright.desktop.support;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.WeakChangeListener;
import javafx.scene.control.ComboBox;
import javafx.util.StringConverter;

/**
 * A drop-down for a {@link Choice}; arrow keys change it, each change is one edit.
 *
 * @param <T> the values to choose from
 */
public final class ChoiceField<T> extends ComboBox<T> {

    private final Choice<T> choice;
    private final ChangeListener<T> keptChanged = (observed, before, now) -> show(now);
    private boolean showing;

    /**
     * @param choice what is chosen
     * @param values what there is to choose from; may hold null for 'not said'
     * @param text each value for people, null included where it is offered
     */
    public ChoiceField(Choice<T> choice, List<T> values, Function<T, String> text) {
        this.choice = choice;
        getItems().addAll(values);
        setAccessibleText(choice.name());
        setMinWidth(USE_PREF_SIZE);
        setConverter(new StringConverter<>() {
            @Override
            public String toString(T value) {
                return value == null && values.stream().allMatch(Objects::nonNull) ? "" : text.apply(value);
            }

            @Override
            public T fromString(String typed) {
                return null;
            }
        });
        show(choice.kept().getValue());
        choice.kept().addListener(new WeakChangeListener<>(keptChanged));
        valueProperty().addListener((observed, before, chosen) -> chosen(chosen));
    }

    private void show(T value) {
        showing = true;
        setValue(value);
        showing = false;
    }

    private void chosen(T value) {
        if (showing) {
            return;
        }
        choice.keep().apply(value).ifPresent(refused -> show(choice.kept().getValue()));
    }

    /** Gives the control an identity that tests and styles find it by. */
    public ChoiceField<T> named(String id) {
        setId(id);
        return this;
    }
}
