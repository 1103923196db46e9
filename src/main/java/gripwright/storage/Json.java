package gripwright.storage;

import com.fasterxml.jackson.annotation.JsonAutoDetect;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The one way this program spells JSON: strict when reading, pretty, in a fixed order and in UTF-8 when writing. */
final class Json {

    /** Set up once and never changed after; what it learns of the records is worth sharing. */
    private static final ObjectMapper SHARED = configured();

    private Json() {
    }

    static ObjectMapper mapper() {
        return SHARED;
    }

    /** Fields by the names of the records' components and in their order; nothing guessed when reading. */
    private static ObjectMapper configured() {
        JsonMapper mapper = JsonMapper.builder()
                .addModule(new JavaTimeModule())
                .addModule(new TradeModule())
                .visibility(PropertyAccessor.GETTER, JsonAutoDetect.Visibility.NONE)
                .visibility(PropertyAccessor.IS_GETTER, JsonAutoDetect.Visibility.NONE)
                .visibility(PropertyAccessor.FIELD, JsonAutoDetect.Visibility.ANY)
                .visibility(PropertyAccessor.CREATOR, JsonAutoDetect.Visibility.ANY)
                .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
                .disable(MapperFeature.AUTO_DETECT_GETTERS)
                .disable(MapperFeature.AUTO_DETECT_IS_GETTERS)
                .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
                .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .disable(DeserializationFeature.ADJUST_DATES_TO_CONTEXT_TIME_ZONE)
                .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
                .build();
        JsonSetter.Value nothingIsEmpty = JsonSetter.Value.forValueNulls(Nulls.AS_EMPTY, Nulls.FAIL);
        for (Class<?> type : List.of(Collection.class, List.class, Set.class, Map.class)) {
            mapper.configOverride(type).setSetterInfo(nothingIsEmpty);
        }
        return mapper;
    }

    /** Pretty text with a line break at its end. */
    static byte[] pretty(ObjectMapper mapper, Object tree) throws JsonProcessingException {
        return utf8(mapper.writer(printer()).writeValueAsString(tree) + "\n");
    }

    /** One line without a line break. */
    static byte[] line(ObjectMapper mapper, Object tree) throws JsonProcessingException {
        return utf8(mapper.writeValueAsString(tree));
    }

    private static DefaultPrettyPrinter printer() {
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER));
        printer.indentArraysWith(new DefaultIndenter("  ", "\n"));
        printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
        return printer;
    }

    /** Half of a surrogate pair is no text in UTF-8; it is escaped, so that a stray one never stops the saving. */
    private static byte[] utf8(String text) {
        StringBuilder repaired = null;
        for (int index = 0; index < text.length(); index++) {
            char letter = text.charAt(index);
            boolean pair = Character.isHighSurrogate(letter) && index + 1 < text.length()
                    && Character.isLowSurrogate(text.charAt(index + 1));
            if (pair) {
                append(repaired, text, index, 2);
                index++;
            } else if (Character.isSurrogate(letter)) {
                repaired = repaired == null ? new StringBuilder(text.substring(0, index)) : repaired;
                repaired.append(String.format("\\u%04x", (int) letter));
            } else {
                append(repaired, text, index, 1);
            }
        }
        return (repaired == null ? text : repaired.toString()).getBytes(StandardCharsets.UTF_8);
    }

    private static void append(StringBuilder repaired, String text, int index, int length) {
        if (repaired != null) {
            repaired.append(text, index, index + length);
        }
    }
}
