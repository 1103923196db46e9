package gripwright.desktop.bay;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** The question that is asked in the window's own line, one at a time; an answer may ask the next one. */
final class Asking {

    private final ReadOnlyObjectWrapper<Prompt> prompt = new ReadOnlyObjectWrapper<>();

    /** The question that is asked; null for none. */
    ReadOnlyObjectProperty<Prompt> prompt() {
        return prompt.getReadOnlyProperty();
    }

    /** Asks this instead of what was asked before; null asks nothing. */
    void ask(Prompt question) {
        prompt.set(question);
    }

    void choose(int number) {
        Prompt asked = prompt.get();
        if (asked != null && number >= 1 && number <= asked.options().size()) {
            prompt.set(null);
            asked.options().get(number - 1).chosen().run();
        }
    }

    void answerWith(String typed) {
        Prompt asked = prompt.get();
        if (asked == null) {
            return;
        }
        if (typed.isBlank() || !asked.takesText()) {
            choose(1);
            return;
        }
        prompt.set(null);
        asked.typed().accept(typed.strip());
    }
}
