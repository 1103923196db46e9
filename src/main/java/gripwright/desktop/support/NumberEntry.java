package gripwright.desktop.support;

import gripwright.units.ParsedNumber;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;
import javafx.beans.value.WeakChangeListener;

/**
 * An {@link Entry} of a number: read and written in the shop's unit and with its decimal mark, kept in internal units, blank
 * where nothing was measured.
 *
 * <p>It never invents a zero: blank text keeps null where that is allowed and is a problem where it is not, and text that is
 * no number is a problem and changes nothing. Text that is left as it was shown keeps the value to its last digit.
 */
public final class NumberEntry implements Entry {

    /** Whether a number may be left blank. */
    public enum Blank {
        MEANS_NOT_MEASURED,
        IS_A_PROBLEM
    }

    /** What a refusal says at its end in internal units; what was typed stands above it in the shop's. */
    private static final Pattern INTERNAL_NUMBER = Pattern.compile(", but is [-\\d.E]+\\.$");

    private final String name;
    private final Blank blank;
    private final ObservableValue<Double> kept;
    private final ObservableValue<NumberStyle> style;
    private final Function<Double, Optional<String>> keep;
    private final StringProperty text = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper unit = new ReadOnlyStringWrapper("");
    private final ChangeListener<Object> keptChanged = (observed, before, now) -> keptChanged();
    private String shown = "";

    /**
     * @param name what the field is for, 'hand length'
     * @param blank what blank text means
     * @param kept the value kept now, internal units; null for not measured
     * @param style how it is read and written
     * @param keep makes an edit of the value (null for blank); gives back why it can't be, or empty
     */
    public NumberEntry(String name, Blank blank, ObservableValue<Double> kept, ObservableValue<NumberStyle> style,
            Function<Double, Optional<String>> keep) {
        this.name = name;
        this.blank = blank;
        this.kept = kept;
        this.style = style;
        this.keep = keep;
        kept.addListener(new WeakChangeListener<>(keptChanged));
        style.addListener(new WeakChangeListener<>(keptChanged));
        restore();
    }

    private void keptChanged() {
        if (isDirty()) {
            unit.set(style.getValue().unit().symbol());
        } else {
            restore();
        }
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
    public void begin() {
        if (!isDirty()) {
            shown = style.getValue().writeToEdit(kept.getValue());
            text.set(shown);
        }
    }

    @Override
    public boolean isDirty() {
        return !text.get().strip().equals(shown);
    }

    @Override
    public boolean commit() {
        if (!isDirty()) {
            restore();
            return true;
        }
        ParsedNumber parsed = style.getValue().read(text.get());
        Optional<String> refused = parsed.problem();
        if (parsed instanceof ParsedNumber.Blank && blank == Blank.IS_A_PROBLEM) {
            refused = Optional.of("The " + name + " is needed. Write a number, or press Escape for the one before.");
        }
        if (refused.isEmpty()) {
            refused = keep.apply(parsed.asDouble().isPresent() ? (Double) parsed.asDouble().getAsDouble() : null);
        }
        if (refused.isEmpty()) {
            restore();
        } else {
            problem.set(INTERNAL_NUMBER.matcher(refused.get()).replaceFirst("."));
        }
        return refused.isEmpty();
    }

    @Override
    public void restore() {
        NumberStyle now = style.getValue();
        problem.set("");
        unit.set(now.unit().symbol());
        shown = now.write(kept.getValue());
        text.set(shown);
    }
}
