package gripwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a hurried hand types by mistake: nothing is overwritten, and a sentence says what is wrong. */
class WrongUseTest {

    private static final Path DEMO = Path.of("demo-data", "left-handed-8-iron.json");

    @TempDir
    Path folder;

    private Path file(String name, String content) throws IOException {
        return Files.writeString(folder.resolve(name), content, StandardCharsets.UTF_8);
    }

    @Test
    void theSummaryNeverTakesThePlaceOfASession() throws IOException {
        Path session = Files.copy(DEMO, folder.resolve("session.json"));
        byte[] before = Files.readAllBytes(session);

        CommandRun run = CommandRun.of("summary", session.toString(), "--out", session.toString());

        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).contains("is there already and is no PDF");
        assertThat(Files.readAllBytes(session)).isEqualTo(before);
    }

    @Test
    void theSummaryNeverTakesThePlaceOfAFolder() throws IOException {
        Path place = Files.createDirectory(folder.resolve("papers"));

        CommandRun run = CommandRun.of("summary", DEMO.toString(), "--out", place.toString());

        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).contains("is a folder");
        assertThat(place).isDirectory();
    }

    @Test
    void anEarlierPdfIsReplacedAndCanBeReadByOthersAsAnyFileCan() throws IOException {
        Path pdf = file("summary.pdf", "%PDF-1.6 of yesterday");
        Path any = file("any.txt", "x");

        CommandRun run = CommandRun.of("summary", DEMO.toString(), "--out", pdf.toString());

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(Files.size(pdf)).isGreaterThan(10_000);
        if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(pdf)))
                    .isEqualTo(PosixFilePermissions.toString(Files.getPosixFilePermissions(any)));
        }
    }
}
