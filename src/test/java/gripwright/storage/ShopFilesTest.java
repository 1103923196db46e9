package gripwright.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gripwright.model.ProblemException;
import gripwright.model.ShopSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shop's own files: usual values where there is none yet, a sentence where one is damaged. */
class ShopFilesTest {

    @TempDir
    private Path folder;

    @Test
    void withoutAFileEverythingIsAsUsual() throws ProblemException {
        assertThat(new SettingsFile().read(folder.resolve("none")).value()).isEqualTo(ShopSettings.usual());
        assertThat(new StockFile().read(folder.resolve("none")).value().grips()).isEmpty();
        assertThat(new MappingsFile().read(folder.resolve("none")).value()).isEmpty();
        assertThat(new RecentFiles(folder.resolve("none")).read()).isEmpty();
    }

    @Test
    void mappingsAreTreesUnderTheShopsOwnNames() throws ProblemException {
        Map<String, Object> mappings = new LinkedHashMap<>();
        mappings.put("Bay 2", Map.of("columns", List.of("speed", "face"), "skip", 3, "exact", true));
        mappings.put("Allée", Map.of("factor", 0.5));
        Path file = folder.resolve("deep").resolve("mappings.json");
        new MappingsFile().write(file, mappings);
        assertThat(new MappingsFile().read(file).value()).isEqualTo(mappings);
        assertThat(new MappingsFile().read(file).value().keySet()).containsExactly("Bay 2", "Allée");
        assertThatThrownBy(() -> new MappingsFile().write(file, Map.of("x", Double.NaN)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(new MappingsFile().read(file).value()).isEqualTo(mappings);
    }

    @Test
    void damagedOnesAreSaidAndLeft() throws IOException {
        Path file = Files.writeString(folder.resolve("settings.json"), "{\"kind\": \"settings\",");
        assertThatThrownBy(() -> new SettingsFile().read(file)).isInstanceOf(ProblemException.class)
                .hasMessageContaining("line 1").hasMessageContaining("damaged");
        assertThat(file).hasContent("{\"kind\": \"settings\",");
    }

    @Test
    void theNewestFileComesFirstAndTheListIsBounded() throws ProblemException {
        RecentFiles recent = new RecentFiles(folder.resolve("recent.json"));
        for (int number = 0; number < 20; number++) {
            recent.remember(folder.resolve("s" + number + ".json"));
        }
        recent.remember(folder.resolve("s15.json"));
        assertThat(recent.read()).hasSize(12).doesNotHaveDuplicates();
        assertThat(recent.read().subList(0, 3)).containsExactly(folder.resolve("s15.json"),
                folder.resolve("s19.json"), folder.resolve("s18.json"));
    }

    @Test
    void aDamagedListBeginsAnew() throws Exception {
        Path list = Files.writeString(folder.resolve("recent.json"), "garbage");
        RecentFiles recent = new RecentFiles(list);
        recent.remember(folder.resolve("s.json"));
        assertThat(recent.read()).containsExactly(folder.resolve("s.json"));
    }
}
