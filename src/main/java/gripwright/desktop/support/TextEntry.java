package gripwright.desktop.support;

import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;
import javafx.beans.value.WeakChangeListener;

/** An {@link Entry} whose text is kept as it is typed, or by a function that may refuse it with a sentence. */
public final class TextEntry implements Entry {

    private final String name;
    private final ObservableValue<String> kept;
    private final Function<String, Optional<String>> keep;
    private final StringProperty text = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper unit = new ReadOnlyStringWrapper("");
    private final ChangeListener<String> keptChanged = (observed, before, now) -> keptChanged(before);

    /**
     * @param name what the field is for
     * @param kept what is kept now; null counts as empty
     * @param keep makes an edit of the stripped text; gives back why it can't be, or empty
     */
    public TextEntry(String name, ObservableValue<String> kept, Function<String, Optional<String>> keep) {
        this.name = name;
        this.kept = kept;
        this.keep = keep;
        kept.addListener(new WeakChangeListener<>(keptChanged));
        restore();
    }

    private void keptChanged(String before) {
        if (text.get().strip().equals(before == null ? "" : before)) {
            restore();
        }
    }

    private String keptText() {
        return kept.getValue() == null ? "" : kept.getValue();
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public StringProperty text() {
        return text;
    }

    @Override
    public ReadOnlyStringProperty problem() {
        return problem.getReadOnlyProperty();
    }

    @Override
    public ReadOnlyStringProperty unit() {
        return unit.getReadOnlyProperty();
    }

    @Override
    public boolean isDirty() {
        return !text.get().strip().equals(keptText());
    }

    @Override
    public boolean commit() {
        if (!isDirty()) {
            restore();
            return true;
        }
        Optional<String> refused = keep.apply(text.get().strip());
        problem.set(refused.orElse(""));
        if (refused.isEmpty()) {
            restore();
        }
        return refused.isEmpty();
    }

    @Override
    public void restore() {
        problem.set("");
        text.set(keptText());
    }
}
