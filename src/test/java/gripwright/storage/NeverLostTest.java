package gripwright.storage;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.session.Workspace;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The program without a window, killed by the system at random moments while shots stream in: no shot that it had
 * acknowledged is missing, none is there twice, and no file is unreadable.
 *
 * <p>Twenty kills; the Maven profile {@code crash} makes it two hundred and writes the result into docs/never-lost.md.
 */
class NeverLostTest {

    private static final int LEAST_MILLIS = 200;
    private static final int MOST_MILLIS = 1500;

    private final Set<String> acknowledged = new LinkedHashSet<>();
    private int killedInStart;
    private int unacknowledged;

    @TempDir
    private Path home;

    @Test
    void noAcknowledgedShotIsEverMissingOrThereTwice() throws Exception {
        int kills = Integer.getInteger("crash.kills", 20);
        long seed = Long.getLong("crash.seed", System.nanoTime());
        Random random = new Random(seed);
        for (int kill = 1; kill <= kills; kill++) {
            runAndKill(random, kill % 4 == 0);
            everyFileIsReadable("kill " + kill + ", seed " + seed);
        }
        Session last = recovered();
        List<String> ids = last.tray().stream().map(Shot::id).toList();
        assertThat(ids).as("seed " + seed).doesNotHaveDuplicates().containsAll(acknowledged);
        assertThat(acknowledged).hasSizeGreaterThan(kills);
        unacknowledged = ids.size() - acknowledged.size();
        record(kills, ids.size());
    }

    /** @param inStart whether the moment counts from the start of the process, so that recovery too is interrupted */
    private void runAndKill(Random random, boolean inStart) throws IOException, InterruptedException {
        int moment = LEAST_MILLIS + random.nextInt(MOST_MILLIS - LEAST_MILLIS);
        Path said = Files.createTempFile(home, "said", ".txt");
        Process process = new ProcessBuilder(System.getProperty("java.home") + File.separator + "bin" + File.separator
                + "java", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp", System.getProperty("java.class.path"),
                StreamingSession.class.getName(), home.resolve("home").toString())
                .redirectOutput(said.toFile()).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        try {
            long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
            while (!inStart && Files.size(said) == 0) {
                assertThat(process.isAlive()).isTrue();
                assertThat(System.nanoTime()).isLessThan(deadline);
                process.waitFor(5, TimeUnit.MILLISECONDS);
            }
            process.waitFor(moment, TimeUnit.MILLISECONDS);
        } finally {
            process.destroyForcibly().waitFor();
        }
        hear(Files.readString(said, StandardCharsets.UTF_8));
        Files.delete(said);
    }

    /** Only whole lines count as said. */
    private void hear(String said) {
        killedInStart += said.isEmpty() ? 1 : 0;
        String whole = said.substring(0, said.lastIndexOf('\n') + 1);
        whole.lines().filter(line -> line.startsWith("kept ")).forEach(line -> {
            assertThat(acknowledged.add(line.substring(5))).as(line + " acknowledged twice").isTrue();
        });
    }

    private void everyFileIsReadable(String when) throws Exception {
        List<Path> files = new ArrayList<>();
        for (String folder : List.of("sessions", "versions")) {
            Path below = home.resolve("home").resolve(folder);
            if (Files.isDirectory(below)) {
                try (var all = Files.walk(below)) {
                    all.filter(file -> file.toString().endsWith(".json")).forEach(files::add);
                }
            }
        }
        for (Path file : files) {
            Session session = new SessionFile().read(file).value();
            assertThat(session.tray().stream().map(Shot::id)).as(when + ": " + file).doesNotHaveDuplicates();
            assertThat(file.toString()).as(when).doesNotContain("conflict").doesNotContain("damaged");
        }
    }

    private Session recovered() {
        Workspace workspace = StreamingSession.workspace(home.resolve("home"));
        return workspace.first().session();
    }

    private void record(int kills, int shots) throws IOException {
        String result = String.format("%d kills (%d of them before the program was ready), %d shots acknowledged and all "
                + "of them found, %d more found that were kept but not yet acknowledged, 0 missing, 0 twice, 0 "
                + "unreadable files.", kills, killedInStart, acknowledged.size(), shots - acknowledged.size());
        Path target = Path.of("target", "never-lost.txt");
        Files.createDirectories(target.getParent());
        Files.writeString(target, result + "\n");
        String page = System.getProperty("crash.page", "");
        if (!page.isEmpty()) {
            Path doc = Path.of(page);
            String text = Files.readString(doc);
            String begin = "<!-- result -->\n";
            String end = "<!-- end of result -->";
            Files.writeString(doc, text.substring(0, text.indexOf(begin) + begin.length()) + result + "\n"
                    + text.substring(text.indexOf(end)));
        }
        assertThat(unacknowledged).isNotNegative();
    }
}
