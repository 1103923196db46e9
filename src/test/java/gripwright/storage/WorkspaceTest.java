package gripwright.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gripwright.model.Metric;
import gripwright.model.Player;
import gripwright.model.Handedness;
import gripwright.model.ProblemException;
import gripwright.model.Readings;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.session.Journal;
import gripwright.session.SavingPace;
import gripwright.session.SavingStatus;
import gripwright.session.SavingStatus.State;
import gripwright.session.SessionStore;
import gripwright.session.Workspace;
import gripwright.session.edits.PlayEdits;
import gripwright.session.edits.SetupEdits;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Edit, wait, read the disk: the whole of the saving as a window uses it, through every trouble of the disk. */
class WorkspaceTest {

    private static final SavingPace QUICK = new SavingPace(Duration.ofMillis(1), Duration.ofMillis(5),
            Duration.ofMillis(40), Duration.ofSeconds(20), Duration.ofSeconds(20));

    private final FailingDisk disk = new FailingDisk();
    private final TestClock clock = new TestClock();
    private final List<Window> windows = new ArrayList<>();

    @TempDir
    private Path folder;

    /** One window with its own store, repository and journals, as each process has them. */
    private final class Window {

        private final Workspace workspace;
        private final Statuses statuses = new Statuses();
        private SessionStore store;

        Window(String computer) {
            Party party = new Party(java.util.UUID.randomUUID().toString(), computer, ProcessHandle.current().pid());
            Path own = folder.resolve(computer);
            workspace = new Workspace(new SessionFiles(own.resolve("versions"), disk, clock, party),
                    new JournalShelf(own.resolve("journal"), disk, clock, party),
                    new RecentFiles(own.resolve("recent.json"), disk), own.resolve("sessions"), QUICK, clock);
            windows.add(this);
        }

        Window show(Workspace.Opened opened) {
            store = new SessionStore(opened.session());
            workspace.follow(store, opened, statuses);
            return this;
        }

        void hit(int number) {
            store.apply(PlayEdits.of("test-1").takeIn(
                    List.of(Shot.of("shot-" + number, Readings.of(Metric.CARRY, 100 + number)))));
        }

        Path file() {
            return statuses.last().file().orElseThrow().path();
        }

        /** As a crash: nothing is saved, finished or released any more. */
        void crash() {
            windows.remove(this);
            disk.vanish(folder);
            workspace.close();
            disk.cure();
        }
    }

    @AfterEach
    void closeAll() {
        disk.cure();
        List.copyOf(windows).forEach(window -> window.workspace.close());
    }

    @Test
    void aNewSessionGetsAFileAtItsFirstChangeAndEveryChangeReachesIt() throws ProblemException {
        Window window = window("BAY-1");
        assertThat(window.statuses.last().file()).isEmpty();
        assertThat(window.statuses.last().state()).isEqualTo(State.KEPT);
        for (int shot = 1; shot <= 20; shot++) {
            window.hit(shot);
        }
        SavingStatus saved = window.statuses.awaitSaved();
        assertThat(saved.sentence()).isEqualTo("Kept in 2026-03-31 session.json");
        assertThat(read(window.file())).isEqualTo(window.store.session());
        assertThat(window.workspace.close()).isEmpty();
        assertThat(folder.resolve("BAY-1").resolve("journal")).isEmptyDirectory();
        assertThat(new Window("BAY-1").workspace.first().session()).isEqualTo(window.store.session());
    }

    @Test
    void theNextNewSessionGetsAnotherName() {
        Window first = window("BAY-1");
        first.hit(1);
        first.statuses.awaitSaved();
        Window second = new Window("BAY-1").show(first.workspace.fresh());
        second.hit(1);
        second.statuses.awaitSaved();
        assertThat(second.file().getFileName()).hasToString("2026-03-31 session 2.json");
    }

    @Test
    void nothingIsAcknowledgedBeforeTheJournalIsForced() {
        Window window = window("BAY-1");
        window.hit(1);
        window.statuses.awaitSaved();
        disk.fail(FailingDisk.Step.FORCE, folder, "Input/output error");
        window.hit(2);
        SavingStatus status = window.statuses.await(one -> one.state() == State.NOT_ON_DISK_YET && one.isTrouble());
        assertThat(status.keptRevision()).isEqualTo(1);
        assertThat(status.sentence()).startsWith("Not on disk yet. The journal on this computer could not be written")
                .contains("goes on in memory");
        disk.cure();
        assertThat(window.statuses.awaitSaved().keptRevision()).isEqualTo(2);
    }

    @ParameterizedTest
    @EnumSource(value = FailingDisk.Step.class, names = {"CREATE", "APPEND", "APPEND_HALF", "FORCE", "RENAME",
            "FORCE_FOLDER"})
    void whileTheFileCanNotBeSavedTheJournalKeepsAllAndItIsSavedOnceItCanBe(FailingDisk.Step step)
            throws ProblemException {
        Window window = window("BAY-1");
        window.hit(1);
        window.statuses.awaitSaved();
        disk.fail(step, window.file().getParent(), "No space left on device");
        window.hit(2);
        window.hit(3);
        SavingStatus status = window.statuses.await(one -> one.state() == State.NOT_SAVED_TO_FILE);
        assertThat(status.sentence()).contains("the disk is full").contains("tried again by itself");
        assertThat(status.keptRevision()).isEqualTo(3);
        disk.cure();
        window.statuses.awaitSaved();
        assertThat(read(window.file())).isEqualTo(window.store.session());
    }

    @Test
    void whatCouldNotBeSavedAtTheEndIsThereAtTheNextStart() throws ProblemException {
        Window window = window("BAY-1");
        window.hit(1);
        window.statuses.awaitSaved();
        disk.failWriting(window.file().getParent(), "Read-only file system");
        window.hit(2);
        assertThat(window.workspace.close()).singleElement().asString().contains("does not allow it");
        windows.remove(window);
        disk.cure();
        Window next = new Window("BAY-1");
        Workspace.Opened opened = next.workspace.first();
        assertThat(opened.session()).isEqualTo(window.store.session());
        assertThat(opened.sentences()).contains(
                "The program ended without saving last time. Everything that was kept is here again.");
        next.show(opened).statuses.awaitSaved();
        assertThat(read(window.file())).isEqualTo(window.store.session());
        assertThat(next.file()).isEqualTo(window.file());
    }

    @Test
    void aVanishedShareIsWaitedFor() throws ProblemException {
        Path share = folder.resolve("share");
        Window window = onShare(share);
        disk.vanish(share);
        window.hit(2);
        SavingStatus status = window.statuses.await(one -> one.state() == State.NOT_SAVED_TO_FILE);
        assertThat(status.sentence()).contains("connection");
        disk.cure();
        window.statuses.awaitSaved();
        assertThat(read(window.file()).tray()).hasSize(2);
    }

    @Test
    void afterACrashEverythingKeptIsBackWithASentence() throws ProblemException {
        Window window = window("BAY-1");
        window.hit(1);
        window.statuses.awaitSaved();
        disk.failWriting(window.file().getParent(), "Host is down");
        for (int shot = 2; shot <= 10; shot++) {
            window.hit(shot);
        }
        window.statuses.await(one -> one.keptRevision() == 10);
        window.crash();
        Window next = new Window("BAY-1");
        Workspace.Opened opened = next.workspace.first();
        assertThat(opened.session().tray()).hasSize(10);
        assertThat(opened.unsaved()).isTrue();
        clock.pass(Duration.ofMinutes(3));
        next.show(opened).statuses.awaitSaved();
        assertThat(read(next.file()).tray()).hasSize(10);
        next.workspace.close();
        assertThat(folder.resolve("BAY-1").resolve("journal")).isEmptyDirectory();
    }

    @Test
    void aRecoveredSessionDoesNotOverwriteWhatAnotherComputerSavedMeanwhile() throws ProblemException {
        Path share = folder.resolve("share");
        Window window = onShare(share);
        disk.fail(FailingDisk.Step.CREATE, share, "Host is down");
        window.hit(2);
        window.statuses.await(one -> one.state() == State.NOT_SAVED_TO_FILE);
        Path file = window.file();
        window.crash();
        clock.pass(Duration.ofMinutes(3));
        Window other = new Window("BAY-2");
        other.show(other.workspace.open(file));
        other.store.apply(SetupEdits.note("of the other"));
        other.statuses.awaitSaved();
        other.workspace.close();
        Window next = new Window("BAY-1");
        next.show(next.workspace.first());
        SavingStatus status = next.statuses.awaitSaved();
        assertThat(status.notices()).singleElement().asString().contains("was changed by somebody else");
        assertThat(read(file).note()).isEqualTo("of the other");
        assertThat(read(next.file()).tray()).hasSize(2);
    }

    @Test
    void theSecondOfTwoWindowsIsToldAndWaitsForTheFile() throws ProblemException {
        Window first = window("BAY-1");
        first.hit(1);
        first.statuses.awaitSaved();
        Window second = new Window("BAY-2");
        Workspace.Opened opened = second.workspace.open(first.file());
        assertThat(opened.sentences()).singleElement().asString().contains("open in a window on the computer BAY-1");
        second.show(opened);
        second.hit(7);
        SavingStatus waiting = second.statuses.await(one -> one.state() == State.NOT_SAVED_TO_FILE);
        assertThat(waiting.sentence()).contains("in use by a window on the computer BAY-1");
        first.workspace.close();
        second.statuses.awaitSaved();
        assertThat(second.file()).isEqualTo(first.file());
        assertThat(read(first.file()).tray()).extracting(Shot::id).containsExactly("shot-1", "shot-7");
    }

    @Test
    void theLaterOfTwoWindowsGoesOnInACopyBeside() throws ProblemException {
        Window first = window("BAY-1");
        first.hit(1);
        first.statuses.awaitSaved();
        Path file = first.file();
        Window second = new Window("BAY-2").show(new Window("BAY-2").workspace.open(file));
        first.hit(2);
        first.statuses.awaitSaved();
        first.workspace.close();
        second.hit(7);
        SavingStatus copied = second.statuses.awaitSaved();
        assertThat(copied.notices()).singleElement().asString().contains("changed by somebody else")
                .contains("(conflict BAY-2");
        assertThat(second.file()).isNotEqualTo(file).hasParent(file.getParent());
        assertThat(read(file).tray()).extracting(Shot::id).containsExactly("shot-1", "shot-2");
        assertThat(read(second.file()).tray()).extracting(Shot::id).containsExactly("shot-1", "shot-7");
    }

    @Test
    void whoClosesWhileTheFileIsInUseElsewhereLeavesACopyBeside() throws Exception {
        Window first = window("BAY-1");
        first.hit(1);
        first.statuses.awaitSaved();
        Window second = new Window("BAY-2");
        second.show(second.workspace.open(first.file()));
        second.hit(7);
        second.statuses.await(one -> one.state() == State.NOT_SAVED_TO_FILE);
        assertThat(second.workspace.close()).isEmpty();
        assertThat(second.statuses.last().notices()).singleElement().asString().contains("is in use elsewhere");
        assertThat(read(second.file()).tray()).hasSize(2);
        assertThat(read(first.file()).tray()).hasSize(1);
    }

    @Test
    void saveAsMovesOnAndLeavesTheOldFile() throws ProblemException {
        Window window = window("BAY-1");
        window.hit(1);
        window.statuses.awaitSaved();
        Path old = window.file();
        Path chosen = folder.resolve("chosen.json");
        window.workspace.saveAs(chosen);
        assertThat(read(chosen)).isEqualTo(window.store.session());
        window.hit(2);
        window.statuses.awaitSaved();
        assertThat(read(chosen).tray()).hasSize(2);
        assertThat(read(old).tray()).hasSize(1);
        assertThat(window.workspace.recent().get(0)).isEqualTo(chosen);
        disk.failWriting(folder, "Permission denied");
        assertThatThrownBy(() -> window.workspace.saveAs(folder.resolve("refused.json")))
                .isInstanceOf(ProblemException.class);
        disk.cure();
        assertThat(window.file()).isEqualTo(chosen);
    }

    @Test
    void openingAnotherSessionInTheSameStoreNeverReachesTheOldFile() throws ProblemException {
        Window window = window("BAY-1");
        window.hit(1);
        window.statuses.awaitSaved();
        Path old = window.file();
        Workspace.Opened other = window.workspace.fresh();
        window.store.open(other.session().withPlayer(Player.named("other", Handedness.LEFT)));
        window.workspace.follow(window.store, other, window.statuses);
        window.hit(5);
        window.statuses.await(one -> one.file().filter(file -> !file.path().equals(old)).isPresent());
        window.statuses.awaitSaved();
        assertThat(read(old).player().label()).isEmpty();
        assertThat(read(old).tray()).hasSize(1);
        assertThat(read(window.file()).player().label()).isEqualTo("other");
    }

    @Test
    void reopeningTheSameFileSeesItsOwnLastChange() throws ProblemException {
        Window window = window("BAY-1");
        window.hit(1);
        window.statuses.awaitSaved();
        window.hit(2);
        Workspace.Opened again = window.workspace.open(window.file());
        assertThat(again.session().tray()).hasSize(2);
        assertThat(again.sentences()).isEmpty();
    }

    @Test
    void aRecoveryThatIsInterruptedItselfLeavesNoCopyBeside() throws Exception {
        Window first = window("BAY-1");
        first.hit(1);
        first.statuses.awaitSaved();
        Path file = first.file();
        disk.failWriting(file.getParent(), "Host is down");
        first.hit(2);
        first.statuses.await(one -> one.keptRevision() == 2);
        Session older = first.store.session();
        first.crash();
        // The recovering window had begun a journal of its own and died before it removed the old one.
        clock.pass(Duration.ofMillis(5));
        Path journals = folder.resolve("BAY-1").resolve("journal");
        Party dead = new Party("dead", "BAY-1", ProcessHandle.current().pid());
        Journal second = new JournalShelf(journals, disk, clock, dead).begin(older,
                new SessionFiles(folder.resolve("BAY-1").resolve("versions"), disk, clock, dead).look(file));
        Session newest = older.withNote("gone on");
        second.keep(newest);
        second.leave();
        clock.pass(Duration.ofMinutes(3));
        Window third = new Window("BAY-1");
        Workspace.Opened opened = third.workspace.first();
        assertThat(opened.session()).isEqualTo(newest);
        assertThat(opened.sentences()).noneMatch(sentence -> sentence.contains("Another session"));
        third.show(opened).statuses.awaitSaved();
        third.workspace.close();
        assertThat(read(file)).isEqualTo(newest);
        try (var beside = Files.list(file.getParent())) {
            assertThat(beside.filter(path -> path.toString().endsWith(".json"))).containsExactly(file);
        }
        assertThat(journals).isEmptyDirectory();
    }

    @Test
    void severalCrashedSessionsAreAllBack() throws ProblemException {
        Window one = window("BAY-1");
        Window two = new Window("BAY-1").show(one.workspace.fresh());
        disk.failWriting(folder.resolve("BAY-1").resolve("sessions"), "No space left on device");
        one.hit(1);
        two.hit(1);
        two.hit(2);
        one.statuses.await(status -> status.keptRevision() == 1);
        two.statuses.await(status -> status.keptRevision() == 2);
        one.crash();
        two.crash();
        clock.pass(Duration.ofMinutes(3));
        Window next = new Window("BAY-1");
        Workspace.Opened opened = next.workspace.first();
        next.show(opened).statuses.awaitSaved();
        assertThat(opened.sentences()).anyMatch(sentence -> sentence.startsWith("Another session"));
        next.workspace.close();
        List<Integer> shots = new ArrayList<>();
        for (Path file : sessions()) {
            shots.add(read(file).tray().size());
        }
        assertThat(shots).containsExactlyInAnyOrder(1, 2);
        assertThat(folder.resolve("BAY-1").resolve("journal")).isEmptyDirectory();
    }

    @Test
    void aFileDamagedByTheCrashIsKeptBesideTheRecoveredSession() throws Exception {
        Window window = window("BAY-1");
        window.hit(1);
        window.statuses.awaitSaved();
        Path file = window.file();
        window.crash();
        Files.writeString(file, "{ torn");
        clock.pass(Duration.ofMinutes(3));
        Window next = new Window("BAY-1");
        Workspace.Opened opened = next.workspace.first();
        assertThat(opened.session().tray()).hasSize(1);
        assertThat(opened.sentences()).anyMatch(sentence -> sentence.contains("was damaged and is kept"));
        next.show(opened).statuses.awaitSaved();
        assertThat(read(file).tray()).hasSize(1);
        assertThat(sessions()).anyMatch(path -> path.toString().contains("damaged") && !path.equals(file));
    }

    private Window window(String computer) {
        Window window = new Window(computer);
        return window.show(window.workspace.first());
    }

    private Window onShare(Path share) throws ProblemException {
        Window window = window("BAY-1");
        window.hit(1);
        window.statuses.awaitSaved();
        window.workspace.saveAs(share.resolve("visit.json"));
        return window;
    }

    private List<Path> sessions() throws ProblemException {
        try (var files = Files.list(folder.resolve("BAY-1").resolve("sessions"))) {
            return files.filter(file -> file.toString().endsWith(".json")).toList();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Session read(Path file) throws ProblemException {
        return new SessionFile().read(file).value();
    }
}
