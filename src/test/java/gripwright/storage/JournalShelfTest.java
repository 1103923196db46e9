package gripwright.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gripwright.model.Metric;
import gripwright.model.ProblemException;
import gripwright.model.Readings;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.session.FileState;
import gripwright.session.Journal;
import gripwright.session.JournalFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Journals come back after a crash, grow no further than they must, and survive a disk that fails in any step. */
class JournalShelfTest {

    private final Session session = Session.blank("s", LocalDate.of(2026, 3, 31));
    private final FailingDisk disk = new FailingDisk();

    @TempDir
    private Path folder;

    @Test
    void whatWasKeptIsFoundOnceTheWindowIsGone() throws ProblemException {
        Journal journal = shelf().begin(session, null);
        journal.keep(withShots(1));
        journal.file(new FileState(folder.resolve("s.json"), "abc"));
        journal.keep(withShots(2));
        assertThat(shelf().left()).isEmpty();
        journal.leave();
        JournalFolder.Found found = single();
        assertThat(found.session()).contains(withShots(2));
        assertThat(found.file()).contains(new FileState(folder.resolve("s.json"), "abc"));
        assertThat(found.sentences()).isEmpty();
        found.settled().run();
        assertThat(shelf().left()).isEmpty();
        assertThat(files()).isEmpty();
    }

    @Test
    void twoWindowsDoNotRecoverTheSameJournal() throws ProblemException {
        shelf().begin(session, null).leave();
        JournalFolder.Found found = single();
        assertThat(shelf().left()).isEmpty();
        found.settled().run();
    }

    @Test
    void aFinishedJournalLeavesNothing() throws ProblemException {
        Journal journal = shelf().begin(session, null);
        journal.keep(withShots(1));
        journal.finish();
        assertThat(files()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(value = FailingDisk.Step.class, names = {"APPEND", "APPEND_HALF", "FORCE"})
    void afterAFailureTheNextKeepingWritesEverythingAnew(FailingDisk.Step step) throws ProblemException {
        Journal journal = shelf().begin(session, null);
        journal.keep(withShots(1));
        disk.fail(step, folder, "No space left on device");
        assertThatThrownBy(() -> journal.keep(withShots(2))).isInstanceOf(ProblemException.class)
                .hasMessageContaining("the disk is full");
        assertThatThrownBy(() -> journal.keep(withShots(3))).isInstanceOf(ProblemException.class);
        disk.cure();
        journal.keep(withShots(3));
        assertThat(files()).hasSizeLessThanOrEqualTo(2);
        journal.leave();
        assertThat(single().session()).contains(withShots(3));
    }

    @Test
    void whileItFailsTheOldJournalStands() throws ProblemException {
        Journal journal = shelf().begin(session, null);
        journal.keep(withShots(1));
        disk.failWriting(folder, "Read-only file system");
        assertThatThrownBy(() -> journal.keep(withShots(2))).hasMessageContaining("does not allow it");
        assertThatThrownBy(() -> journal.keep(withShots(2))).hasMessageContaining("does not allow it");
        disk.cure();
        journal.leave();
        assertThat(single().session()).contains(withShots(1));
    }

    @Test
    void itBeginsAnewBeforeItGrowsLarge() throws ProblemException, IOException {
        Journal journal = shelf().begin(session, null);
        Session last = session;
        for (int kept = 0; kept < 400; kept++) {
            last = session.withNote(("note " + kept + " ").repeat(2_000));
            journal.keep(last);
        }
        assertThat(files()).hasSizeLessThanOrEqualTo(2);
        for (Path file : files()) {
            assertThat(Files.size(file)).isLessThan(2_100_000);
        }
        journal.file(new FileState(folder.resolve("s.json"), "abc"));
        assertThat(files()).hasSize(1);
        journal.leave();
        assertThat(single().session()).contains(last);
    }

    @Test
    void damageInTheMiddleCostsWhatFollowsAndTheJournalIsKept() throws ProblemException, IOException {
        Journal journal = shelf().begin(session, null);
        for (int shots = 1; shots <= 5; shots++) {
            journal.keep(withShots(shots));
        }
        journal.leave();
        byte[] bytes = Files.readAllBytes(files().get(0));
        int third = lineStart(bytes, 4);
        bytes[third + 40] ^= 1;
        Files.write(files().get(0), bytes);
        JournalFolder.Found found = single();
        assertThat(found.session()).contains(withShots(2));
        assertThat(found.sentences()).singleElement().asString().contains("damaged").contains("kept");
        found.settled().run();
        assertThat(files()).singleElement().satisfies(file -> {
            assertThat(file.getFileName().toString()).contains(".journal.damaged-");
            assertThat(file).hasBinaryContent(bytes);
        });
        assertThat(shelf().left()).isEmpty();
    }

    @Test
    void aJournalOfANewerVersionIsLeftUntouched() throws ProblemException, IOException {
        shelf().begin(session, null).leave();
        String text = Files.readString(files().get(0));
        String record = text.lines().findFirst().orElseThrow().substring(18).replace("\"journalVersion\":1",
                "\"journalVersion\":2");
        byte[] newer = JournalLines.frame(record.getBytes(java.nio.charset.StandardCharsets.UTF_8));
        Files.write(files().get(0), newer);
        assertThat(shelf().left()).isEmpty();
        assertThat(files().get(0)).hasBinaryContent(newer);
    }

    @Test
    void aFileWrittenJustBeforeTheCrashIsKnownAsOwn() throws ProblemException {
        Path file = folder.resolve("own.json");
        Journal journal = shelf().begin(session, new FileState(file, "old"));
        journal.keep(withShots(1));
        journal.keep(withShots(2));
        journal.leave();
        new SessionFile().write(file, withShots(1));
        assertThat(single().file().orElseThrow().fingerprint())
                .isEqualTo(Fingerprint.of(new SessionFile().bytes(withShots(1))));
    }

    @Test
    void evenOneThatOnlyTheJournalBeforeTheLastWentThrough() throws ProblemException {
        Path file = folder.resolve("own.json");
        Journal journal = shelf().begin(session, new FileState(file, "old"));
        journal.keep(withShots(1));
        disk.fail(FailingDisk.Step.FORCE, folder, "Input/output error");
        assertThatThrownBy(() -> journal.keep(withShots(2))).isInstanceOf(ProblemException.class);
        disk.cure();
        journal.keep(withShots(3));
        journal.leave();
        new SessionFile().write(file, withShots(1));
        assertThat(single().file().orElseThrow().fingerprint())
                .isEqualTo(Fingerprint.of(new SessionFile().bytes(withShots(1))));
    }

    @Test
    void aFileOfSomebodyElseIsNot() throws ProblemException {
        Path file = folder.resolve("others.json");
        Journal journal = shelf().begin(session, new FileState(file, "old"));
        journal.keep(withShots(1));
        journal.leave();
        new SessionFile().write(file, session.withNote("of somebody else"));
        assertThat(single().file().orElseThrow().fingerprint()).isEqualTo("old");
    }

    @Test
    void whereFilesCanNotBeMarkedTheProcessTells() throws ProblemException {
        disk.fail(FailingDisk.Step.MARK, folder, "No locks available");
        Journal journal = shelf().begin(session, null);
        assertThat(shelf().left()).isEmpty();
        journal.leave();
        Party here = Party.ofThisProcess();
        JournalShelf ended = new JournalShelf(folder, disk, Clock.systemUTC(),
                new Party("x", here.computer(), unusedProcess()));
        ended.begin(withShots(1), null).leave();
        assertThat(single().session()).contains(withShots(1));
    }

    private static long unusedProcess() {
        long process = 4_000_000;
        while (ProcessHandle.of(process).isPresent()) {
            process++;
        }
        return process;
    }

    private JournalShelf shelf() {
        return new JournalShelf(folder, disk, Clock.systemUTC(), Party.ofThisProcess());
    }

    private JournalFolder.Found single() throws ProblemException {
        List<JournalFolder.Found> left = shelf().left();
        assertThat(left).hasSize(1);
        return left.get(0);
    }

    private List<Path> files() {
        try (var files = Files.list(folder)) {
            return files.filter(file -> !file.toString().endsWith(".json")).toList();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private Session withShots(int count) {
        List<Shot> shots = new ArrayList<>();
        for (int number = 1; number <= count; number++) {
            shots.add(Shot.of("shot-" + number, Readings.of(Metric.CARRY, 120 + number)));
        }
        return session.withTray(shots);
    }

    private static int lineStart(byte[] bytes, int line) {
        int start = 0;
        for (int number = 0; number < line; number++) {
            while (bytes[start] != '\n') {
                start++;
            }
            start++;
        }
        return start;
    }
}
