package gripwright.statistics;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads the reference values that lie beside the tests of the classical figures. */
final class ClassicalReference {

    private static final String FOLDER = "/gripwright/statistics/reference/";

    private ClassicalReference() {
    }

    static JsonNode json(String file) {
        try (InputStream in = open(file)) {
            return new ObjectMapper().readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<String> lines(String file) {
        try (InputStream in = open(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputStream open(String file) {
        InputStream in = ClassicalReference.class.getResourceAsStream(FOLDER + file);
        if (in == null) {
            throw new IllegalStateException("No reference file " + file);
        }
        return in;
    }

    /** A number that R wrote as a number or as 'Inf'. */
    static double number(JsonNode node) {
        String text = node.asText();
        return text.equals("Inf") ? Double.POSITIVE_INFINITY : Double.parseDouble(text);
    }
}
