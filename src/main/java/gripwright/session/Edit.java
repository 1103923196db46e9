package gripwright.session;

import gripwright.model.Session;
import java.util.Objects;
import java.util.function.UnaryOperator;

/**
 * A change to the session with a name that undo can say.
 *
 * @param label in the imperative, 'Set shot 14 aside'
 * @param change from the session before to the session after; the same session means nothing changed
 */
public record Edit(String label, UnaryOperator<Session> change) {

    public Edit {
        if (label == null || label.isBlank()) {
            throw new IllegalArgumentException("An edit needs a name that undo can say.");
        }
        Objects.requireNonNull(change, "change");
    }
}
