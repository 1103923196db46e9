package gripwright.storage;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** Turns a tree of maps, lists, texts, finite numbers, truth values and null into pretty JSON text. */
public final class JsonText {

    private JsonText() {
    }

    /**
     * The tree as JSON, keys in the order of the maps, with a line break at its end.
     *
     * @throws IllegalArgumentException when the tree holds anything else, such as NaN or an infinite number: JSON
     *     can't say those, and null says 'not known'
     */
    public static String write(Object tree) {
        check(tree);
        try {
            return new String(Json.pretty(Json.mapper(), tree), StandardCharsets.UTF_8);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("The tree can't be written as JSON.", e);
        }
    }

    static void check(Object tree) {
        if (tree instanceof Map<?, ?> map) {
            map.forEach((key, value) -> {
                if (!(key instanceof String)) {
                    throw new IllegalArgumentException("A key of JSON must be a text, not " + key + ".");
                }
                check(value);
            });
        } else if (tree instanceof List<?> list) {
            list.forEach(JsonText::check);
        } else if (tree instanceof Number number) {
            if (!Double.isFinite(number.doubleValue())) {
                throw new IllegalArgumentException("JSON has no word for " + number + "; write null where a number "
                        + "is not known.");
            }
        } else if (tree != null && !(tree instanceof String) && !(tree instanceof Boolean)) {
            throw new IllegalArgumentException("JSON has no form for a " + tree.getClass().getSimpleName() + ".");
        }
    }
}
