package gripwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gripwright.desktop.support.Shop;
import gripwright.intake.ColumnMapping;
import gripwright.intake.ColumnRule;
import gripwright.model.ShopSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The window's services on a real disk. */
class DesktopServicesTest {

    @TempDir
    Path folder;

    @Test
    void settingsThatCantBeWrittenAreSaidAndNotOnlyLogged() throws Exception {
        Path home = folder.resolve("home");
        Files.writeString(home, "a file where the folder should be");
        DesktopServices services = new DesktopServices(new ApplicationFolders(home), false);
        BlockingQueue<String> said = new LinkedBlockingQueue<>();
        services.listenToKeeping(said::add);

        services.keep(new Shop(ShopSettings.usual(), services.shop().stock()));

        assertThat(said.poll(20, TimeUnit.SECONDS)).startsWith("The shop's settings are not kept yet");
    }

    @Test
    void columnMappingsAreKeptUnderTheirNames() throws IOException {
        DesktopServices services = new DesktopServices(new ApplicationFolders(folder), false);
        ColumnMapping mapping = ColumnMapping.none().with(new ColumnRule("Vee", "ballSpeed", "mph", false))
                .withName("bay two");
        services.keepMapping(mapping);
        services.keepMapping(mapping.withName("bay one"));
        assertThat(services.mappings()).isEqualTo(List.of(mapping.withName("bay one"), mapping));
    }

    @Test
    void aColumnMappingIsKeptWithTheFilesItIsKnownAgainByAndCanBeForgotten() throws IOException {
        DesktopServices services = new DesktopServices(new ApplicationFolders(folder), false);
        ColumnMapping mapping = ColumnMapping.none().with(ColumnRule.of("Side", "faceAngle").withPlus("open"))
                .withName("bay two").withFiles(List.of("Shot", "Side"), "bay two *.csv");
        services.keepMapping(mapping);
        assertThat(services.mappings()).containsExactly(mapping);
        services.forgetMapping("bay two");
        services.forgetMapping("never kept");
        assertThat(services.mappings()).isEmpty();
    }

    @Test
    void aMappingThatCantBeReadIsSaidAndStaysWhenAnotherIsKept() throws IOException {
        Path file = folder.resolve("mappings.json");
        Files.writeString(file, "{\"kind\":\"mappings\",\"formatVersion\":1,\"mappings\":{\"byName\":"
                + "{\"odd\":{\"columns\":\"none\"}}}}");
        DesktopServices services = new DesktopServices(new ApplicationFolders(folder), false);
        assertThatThrownBy(services::mappings).isInstanceOf(IOException.class).hasMessageContaining("'odd' can't be read");
        services.keepMapping(ColumnMapping.none().with(ColumnRule.of("Vee", "ballSpeed")).withName("bay one"));
        assertThat(Files.readString(file)).contains("\"odd\"").contains("\"bay one\"");
        services.forgetMapping("odd");
        assertThat(services.mappings()).extracting(ColumnMapping::name).containsExactly("bay one");
    }
}
