package gripwright.desktop.support;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/**
 * Fields of a record that does not exist yet, because not all it needs has been typed: they keep what is typed to
 * themselves until the record can be made, so that no number has to be invented meanwhile.
 */
public final class Draft {

    private final Workbench workbench;
    private final Map<String, ObjectProperty<Double>> numbers = new LinkedHashMap<>();
    private final Map<String, StringProperty> texts = new LinkedHashMap<>();

    public Draft(Workbench workbench) {
        this.workbench = workbench;
    }

    /** The field for a number of this name. */
    public NumberEntry number(String name, Quantity quantity) {
        ObjectProperty<Double> value = numbers.computeIfAbsent(name, key -> new SimpleObjectProperty<>());
        return new NumberEntry(name, NumberEntry.Blank.MEANS_NOT_MEASURED, value, workbench.style(quantity), typed -> {
            value.set(typed);
            return Optional.empty();
        });
    }

    /** The field for a text of this name; {@code problem} gives why a text can't be taken, or empty. */
    public TextEntry text(String name, Function<String, Optional<String>> problem) {
        StringProperty value = texts.computeIfAbsent(name, key -> new SimpleStringProperty(""));
        return new TextEntry(name, value, typed -> {
            Optional<String> refused = problem.apply(typed);
            if (refused.isEmpty()) {
                value.set(typed);
            }
            return refused;
        });
    }

    /** The number typed so far; null where none was. */
    public Double value(String name) {
        ObjectProperty<Double> value = numbers.get(name);
        return value == null ? null : value.get();
    }

    /** The text typed so far; empty where none was. */
    public String text(String name) {
        StringProperty value = texts.get(name);
        return value == null ? "" : value.get();
    }

    /** A sentence that asks for the first of these that is still missing; empty when all are there. */
    public Optional<String> missing(String... names) {
        for (String name : names) {
            boolean there = value(name) != null || !text(name).isBlank();
            if (!there) {
                return Optional.of("Type the " + name + " first.");
            }
        }
        return Optional.empty();
    }

    /** Empties all fields. */
    public void clear() {
        numbers.values().forEach(value -> value.set(null));
        texts.values().forEach(value -> value.set(""));
    }
}
