package gripwright.storage;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import gripwright.units.Swingweight;
import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The page about the files says every field, in the order of the file, and every choice. */
class FileFormatPageTest {

    private final Set<Class<?>> records = new LinkedHashSet<>();
    private final Set<Class<?>> choices = new LinkedHashSet<>();

    @Test
    void everyFieldAndEveryChoiceIsOnThePage() throws IOException {
        String page = Files.readString(Path.of("docs", "file-format.md"));
        List.of(Session.class, ShopSettings.class, Stock.class).forEach(this::collect);
        assertThat(records).hasSizeGreaterThan(20);
        for (Class<?> type : records) {
            List<String> fields = Arrays.stream(type.getRecordComponents()).map(RecordComponent::getName).toList();
            assertThat(section(page, type)).as(type.getSimpleName()).isEqualTo(fields);
        }
        for (Class<?> choice : choices) {
            for (Object value : choice.getEnumConstants()) {
                assertThat(page).contains("`" + EnumText.of((Enum<?>) value) + "`");
            }
        }
    }

    /** The fields that the page gives a record, in its order. */
    private static List<String> section(String page, Class<?> type) {
        String heading = "\n### " + type.getSimpleName() + "\n";
        assertThat(page).contains(heading);
        String rest = page.substring(page.indexOf(heading) + heading.length());
        return rest.lines().takeWhile(line -> line.startsWith("|")).filter(line -> line.startsWith("| `"))
                .map(line -> line.substring(3, line.indexOf('`', 3))).toList();
    }

    private void collect(Type type) {
        if (type instanceof ParameterizedType parameterized) {
            Arrays.stream(parameterized.getActualTypeArguments()).forEach(this::collect);
        } else if (type instanceof Class<?> of && of.isEnum()) {
            choices.add(of);
        } else if (type instanceof Class<?> of && of.isRecord() && of != Swingweight.class && records.add(of)) {
            Arrays.stream(of.getRecordComponents()).map(RecordComponent::getGenericType).forEach(this::collect);
        }
    }
}
