package gripwright.desktop.support;

import javafx.beans.value.ChangeListener;
import javafx.beans.value.WeakChangeListener;
import javafx.scene.control.CheckBox;

/** A check box for a yes-or-no {@link Choice}; each change is one edit. */
public final class SwitchField extends CheckBox {

    private final ChangeListener<Boolean> keptChanged = (observed, before, now) ->
            setSelected(Boolean.TRUE.equals(now));

    /**
     * @param text what ticking it says
     * @param choice the yes or no
     */
    public SwitchField(String text, Choice<Boolean> choice) {
        super(text);
        setSelected(Boolean.TRUE.equals(choice.kept().getValue()));
        choice.kept().addListener(new WeakChangeListener<>(keptChanged));
        setOnAction(event -> choice.keep().apply(isSelected())
                .ifPresent(refused -> setSelected(Boolean.TRUE.equals(choice.kept().getValue()))));
    }

    /** Gives the control an identity that tests and styles find it by. */
    public SwitchField named(String id) {
        setId(id);
        return this;
    }
}
