package gripwright.storage;

import gripwright.model.Metric;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** How files spell fixed choices: metrics by their key, all others in lower camel case ('warmUp'). */
final class EnumText {

    private EnumText() {
    }

    static String of(Enum<?> value) {
        if (value instanceof Metric metric) {
            return metric.key();
        }
        StringBuilder text = new StringBuilder();
        boolean capital = false;
        for (char letter : value.name().toCharArray()) {
            if (letter == '_') {
                capital = true;
            } else {
                text.append(capital ? letter : Character.toLowerCase(letter));
                capital = false;
            }
        }
        return text.toString();
    }

    static Optional<Enum<?>> parse(Class<?> type, String text) {
        return Optional.ofNullable(byText(type).get(text));
    }

    /** All spellings of a type, 'right, left'. */
    static String choices(Class<?> type) {
        return Arrays.stream(type.getEnumConstants()).map(value -> of((Enum<?>) value))
                .collect(Collectors.joining(", "));
    }

    private static Map<String, Enum<?>> byText(Class<?> type) {
        Map<String, Enum<?>> byText = new TreeMap<>();
        for (Object value : type.getEnumConstants()) {
            byText.put(of((Enum<?>) value), (Enum<?>) value);
        }
        return byText;
    }
}
