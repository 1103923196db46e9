package gripwright.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Trees become JSON in their own order, and what JSON can't say is refused. */
class JsonTextTest {

    @Test
    void treesBecomePrettyTextInTheirOrder() {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("z", 1);
        tree.put("a", Arrays.asList(0.5, null, true, "Käte \"x\""));
        tree.put("empty", Map.of());
        assertThat(JsonText.write(tree)).isEqualTo("""
                {
                  "z": 1,
                  "a": [
                    0.5,
                    null,
                    true,
                    "Käte \\"x\\""
                  ],
                  "empty": { }
                }
                """);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void numbersThatAreNoneAreRefused(double number) {
        assertThatThrownBy(() -> JsonText.write(Map.of("a", List.of(number))))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("write null");
    }

    @Test
    void otherThingsAreRefused() {
        assertThatThrownBy(() -> JsonText.write(List.of(Optional.empty())))
                .isInstanceOf(IllegalArgumentException.class).hasMessage("JSON has no form for a Optional.");
        assertThatThrownBy(() -> JsonText.write(Map.of(1, "a")))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("must be a text");
    }
}
