package gripwright.storage;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.deser.DeserializationProblemHandler;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gripwright.model.Problem;
import gripwright.model.ProblemException;
import java.io.IOException;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A kind of JSON document with its version: a header that says what it is, the content under that name, and the steps
 * that bring older versions up to the present one.
 *
 * @param <T> what it holds
 */
final class VersionedFormat<T> {

    private static final String KIND = "kind";
    private static final String VERSION = "formatVersion";

    private final String kind;
    private final int version;
    private final Class<T> type;
    private final List<Migration> migrations;
    private final ObjectMapper mapper = Json.mapper();

    /**
     * @param kind the header's word and the content's name, 'session'
     * @param version the present version
     * @param migrations one from each older version
     */
    VersionedFormat(String kind, int version, Class<T> type, List<Migration> migrations) {
        this.kind = kind;
        this.version = version;
        this.type = type;
        this.migrations = List.copyOf(migrations);
    }

    /** The document as bytes; equal values give equal bytes. */
    byte[] write(T value) {
        Map<String, Object> document = new LinkedHashMap<>();
        document.put(KIND, kind);
        document.put(VERSION, version);
        document.put(kind, value);
        try {
            return Json.pretty(mapper, document);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("A " + kind + " can't be written as JSON.", e);
        }
    }

    /**
     * Reads a document of this or an older version.
     *
     * @param where the file's name, for problems
     * @throws ProblemException when it is damaged, something else, or of a newer version
     */
    Loaded<T> read(byte[] bytes, String where) throws ProblemException {
        try {
            JsonNode document = mapper.readTree(bytes);
            int found = versionOf(document, where);
            List<Problem> passedOver = new ArrayList<>();
            UnknownFields unknown = new UnknownFields(where, bytes, passedOver);
            ObjectReader reader = mapper.readerFor(type).withHandler(unknown);
            T value = found == version
                    ? readPresent(reader, bytes)
                    : migratedValue(reader, (ObjectNode) document, found, where);
            if (value == null) {
                throw refused(where, "'" + kind + "' holds nothing, so there is no " + kind + " to open.");
            }
            for (Iterator<String> names = document.fieldNames(); names.hasNext();) {
                String name = names.next();
                if (!List.of(KIND, VERSION, kind).contains(name)) {
                    unknown.report(name);
                }
            }
            return new Loaded<>(value, passedOver);
        } catch (JsonProcessingException e) {
            throw new ProblemException(JsonProblem.of(where, e), e);
        } catch (IOException e) {
            throw new ProblemException(refused(where, "The file can't be read as text.").problem(), e);
        }
    }

    private T migratedValue(ObjectReader reader, ObjectNode document, int found, String where)
            throws IOException, ProblemException {
        JsonNode content = migrated(document, found, where).get(kind);
        return content == null ? null : reader.readValue(content);
    }

    private T readPresent(ObjectReader reader, byte[] bytes) throws IOException {
        try (JsonParser parser = mapper.createParser(bytes)) {
            parser.nextToken();
            while (parser.nextToken() != null) {
                String field = parser.currentName();
                parser.nextToken();
                if (kind.equals(field)) {
                    // The whole was read once already; here the rest of the document follows the content.
                    return reader.without(DeserializationFeature.FAIL_ON_TRAILING_TOKENS).readValue(parser);
                }
                parser.skipChildren();
            }
        }
        return null;
    }

    private int versionOf(JsonNode document, String where) throws ProblemException {
        if (document.isMissingNode()) {
            throw refused(where, "The file is empty, so it is no " + kind + " file of this program.");
        }
        if (!document.has(VERSION)) {
            throw refused(where, "This is no " + kind + " file of this program: it does not say its format version.");
        }
        if (!kind.equals(document.path(KIND).asText())) {
            throw refused(where, "This is no " + kind + " file but says of itself to be '"
                    + document.path(KIND).asText() + "'; open it where that belongs.");
        }
        JsonNode written = document.get(VERSION);
        if (!written.isIntegralNumber()) {
            throw refused(where, "'" + VERSION + "' must be a whole number such as " + version + ", but is " + written
                    + ".");
        }
        BigInteger found = written.bigIntegerValue();
        if (found.compareTo(BigInteger.valueOf(version)) > 0) {
            throw refused(where, "The file was written by a newer version of the program (format " + found
                    + "; this program reads up to format " + version + "). Update the program to open it.");
        }
        if (found.signum() < 1) {
            throw refused(where, "There is no format version " + found + "; the first one is 1.");
        }
        return found.intValue();
    }

    private ObjectNode migrated(ObjectNode document, int found, String where) throws ProblemException {
        for (int from = found; from < version; from++) {
            int step = from;
            Migration migration = migrations.stream().filter(one -> one.fromVersion() == step).findFirst()
                    .orElseThrow(() -> new IllegalStateException("No migration leads from " + kind + " format " + step));
            try {
                migration.change().accept(document);
            } catch (RuntimeException e) {
                // Whatever a step stumbles over is something the older format never held.
                throw new ProblemException(refused(where, "The file is damaged: it says to be of format " + found
                        + " but does not hold what that format does.").problem(), e);
            }
            document.put(VERSION, from + 1);
        }
        return document;
    }

    private static ProblemException refused(String where, String sentence) {
        return new ProblemException(new Problem(Problem.Severity.FATAL, where, null, null, "",
                sentence + " The file was left as it is."));
    }

    /** Fields that this version does not know are passed over and reported. */
    private static final class UnknownFields extends DeserializationProblemHandler {

        private final String where;
        private final byte[] bytes;
        private final List<Problem> problems;

        UnknownFields(String where, byte[] bytes, List<Problem> problems) {
            this.where = where;
            this.bytes = bytes;
            this.problems = problems;
        }

        @Override
        public boolean handleUnknownProperty(DeserializationContext context, JsonParser parser,
                JsonDeserializer<?> deserializer, Object beanOrClass, String name) throws IOException {
            report(name);
            parser.skipChildren();
            return true;
        }

        void report(String name) throws IOException {
            JsonLocation location = firstField(name);
            boolean known = location != null;
            problems.add(new Problem(Problem.Severity.NOTE, where, known ? location.getLineNr() : null,
                    known ? location.getColumnNr() : null, name,
                    "The field '" + name + "' is none of this format and was passed over; it is gone when the file "
                            + "is saved again, and stays in the earlier version that is kept then."));
        }

        /** Unknown fields come out of a buffer that has no lines, so the bytes are looked through once more. */
        private JsonLocation firstField(String name) throws IOException {
            try (JsonParser parser = new JsonFactory().createParser(bytes)) {
                for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                    if (token == JsonToken.FIELD_NAME && name.equals(parser.currentName())) {
                        return parser.currentTokenLocation();
                    }
                }
            }
            return null;
        }
    }
}
