package gripwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** docs/json.md names every path that the commands write, and no other, and says rightly what stands there. */
class JsonDocumentationTest {

    private static final String DEMO = Path.of("demo-data", "left-handed-8-iron.json").toString();
    private static final Pattern ROW = Pattern.compile("^\\| `([^`]+)` \\|", Pattern.MULTILINE);
    private static final Pattern TYPE = Pattern.compile("^\\| `([^`]+)` \\| ([^|]+) \\|", Pattern.MULTILINE);

    @Test
    void compareIsDocumented() throws IOException {
        assertDocumented("compare", "## `compare --json`", "## `balance --json`", "--sensitivity");
    }

    @Test
    void balanceIsDocumented() throws IOException {
        assertDocumented("balance", "## `balance --json`", null);
    }

    private static void assertDocumented(String command, String from, String to, String... more) throws IOException {
        String[] arguments = new String[3 + more.length];
        arguments[0] = command;
        arguments[1] = DEMO;
        arguments[2] = "--json";
        System.arraycopy(more, 0, arguments, 3, more.length);
        CommandRun run = CommandRun.of(arguments);
        assertThat(run.code()).as(run.err()).isZero();
        Set<String> written = new TreeSet<>();
        JsonNode result = new ObjectMapper().readTree(run.out());
        result.fields().forEachRemaining(field -> {
            if (!field.getKey().equals("tests")) {
                collect(field.getValue(), field.getKey(), written);
            }
        });
        assertThat(documented(from, to)).containsExactlyInAnyOrderElementsOf(written);
        Map<String, String> types = types(from, to);
        result.fields().forEachRemaining(field -> {
            if (!field.getKey().equals("tests")) {
                assertTypes(field.getValue(), field.getKey(), types);
            }
        });
    }

    /** What can be null now may be a number in another session; but what is there must be what the page says. */
    private static void assertTypes(JsonNode node, String path, Map<String, String> types) {
        if (node.isObject()) {
            node.fields().forEachRemaining(field -> assertTypes(field.getValue(), path + "." + field.getKey(), types));
        } else if (node.isArray()) {
            node.forEach(item -> assertTypes(item, path + "[]", types));
        } else if (!node.isNull()) {
            String type = node.isTextual() ? "text" : node.isBoolean() ? "true or false" : "number";
            assertThat(types.get(path).replace("whole number", "number")).as(path).isEqualTo(type);
        }
    }

    private static Map<String, String> types(String from, String to) throws IOException {
        String page = Files.readString(Path.of("docs", "json.md"));
        Matcher rows = TYPE.matcher(page.substring(page.indexOf(from), to == null ? page.length() : page.indexOf(to)));
        Map<String, String> types = new TreeMap<>();
        while (rows.find()) {
            types.put(rows.group(1), rows.group(2));
        }
        return types;
    }

    private static Set<String> documented(String from, String to) throws IOException {
        String page = Files.readString(Path.of("docs", "json.md"));
        int end = to == null ? page.length() : page.indexOf(to);
        Matcher rows = ROW.matcher(page.substring(page.indexOf(from), end));
        Set<String> documented = new TreeSet<>();
        while (rows.find()) {
            documented.add(rows.group(1));
        }
        return documented;
    }

    private static void collect(JsonNode node, String path, Set<String> paths) {
        if (node.isObject()) {
            node.fields().forEachRemaining(field -> collect(field.getValue(), path + "." + field.getKey(), paths));
        } else if (node.isArray()) {
            if (node.isEmpty()) {
                paths.add(path + "[]");
            }
            node.forEach(item -> collect(item, path + "[]", paths));
        } else {
            paths.add(path);
        }
    }
}
