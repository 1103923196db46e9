package gripwright.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gripwright.model.ProblemException;
import gripwright.model.Session;
import gripwright.session.FileState;
import gripwright.session.SaveOutcome;
import gripwright.session.SessionRepository;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Nobody's work is overwritten: not by a failing disk, a second window, a second computer or a damaged file. */
class SessionFilesTest {

    private final Session session = Session.blank("s", LocalDate.of(2026, 3, 31));
    private final TestClock clock = new TestClock();
    private final FailingDisk disk = new FailingDisk();

    @TempDir
    private Path folder;
    private Path file;
    private SessionFiles here;
    private SessionFiles there;

    @BeforeEach
    void twoComputers() {
        file = folder.resolve("share").resolve("visit.json");
        here = files("here", "BAY-1");
        there = files("there", "BAY-2");
    }

    @Test
    void savesAndReadsAndLeavesNothingElse() throws Exception {
        FileState saved = saved(here.save(FileState.absent(file), session));
        SessionRepository.Read read = there.read(file);
        assertThat(read.session()).isEqualTo(session);
        assertThat(read.file()).isEqualTo(saved);
        here.release(file);
        assertThat(names()).containsExactly("visit.json");
    }

    @Test
    void aSecondComputerFindsItInUseAndWritesNothing() throws ProblemException {
        FileState saved = saved(here.save(FileState.absent(file), session));
        assertThat(there.inUseBy(file)).contains("a window on the computer BAY-1");
        assertThat(there.save(saved, session.withNote("theirs")))
                .isEqualTo(new SaveOutcome.InUse("a window on the computer BAY-1"));
        assertThat(here.read(file).session()).isEqualTo(session);
        here.release(file);
        assertThat(there.inUseBy(file)).isEmpty();
        assertThat(there.save(saved, session.withNote("theirs"))).isInstanceOf(SaveOutcome.Saved.class);
    }

    @Test
    void aSecondWindowOnThisComputerToo() throws ProblemException {
        saved(here.save(FileState.absent(file), session));
        assertThat(files("second", "BAY-1").inUseBy(file)).contains("another window on this computer");
    }

    @Test
    void theLaterOneNeverOverwritesAndWritesACopyBeside() throws ProblemException {
        FileState first = saved(here.save(FileState.absent(file), session));
        here.release(file);
        FileState theirs = saved(there.save(first, session.withNote("theirs")));
        there.release(file);
        assertThat(here.save(first, session.withNote("ours"))).isEqualTo(new SaveOutcome.Changed());
        FileState copy = here.saveBeside(file, session.withNote("ours"), "conflict");
        assertThat(copy.name()).startsWith("visit (conflict BAY-1 2026-03-31 ").endsWith(").json");
        assertThat(here.read(file).file()).isEqualTo(theirs);
        assertThat(here.read(copy.path()).session().note()).isEqualTo("ours");
        FileState second = here.saveBeside(file, session.withNote("again"), "conflict");
        assertThat(second.path()).isNotEqualTo(copy.path());
        assertThat(here.read(copy.path()).session().note()).isEqualTo("ours");
    }

    @Test
    void aNewNameThatIsTakenIsNotOverwritten() throws ProblemException {
        saved(here.save(FileState.absent(file), session));
        here.release(file);
        assertThat(there.save(FileState.absent(file), session.withNote("x"))).isEqualTo(new SaveOutcome.Changed());
        assertThat(there.save(there.look(file), session.withNote("chosen"))).isInstanceOf(SaveOutcome.Saved.class);
    }

    @Test
    void aSilentLockCountsNoMoreAndABeatKeepsItAlive() throws ProblemException {
        FileState saved = saved(here.save(FileState.absent(file), session));
        clock.pass(FileLock.LONGEST_SILENCE.minusSeconds(1));
        here.beat(file);
        clock.pass(FileLock.LONGEST_SILENCE.minusSeconds(1));
        assertThat(there.inUseBy(file)).isPresent();
        clock.pass(Duration.ofSeconds(2));
        assertThat(there.inUseBy(file)).isEmpty();
        assertThat(there.save(saved, session.withNote("theirs"))).isInstanceOf(SaveOutcome.Saved.class);
        assertThat(here.save(saved, session.withNote("ours"))).isInstanceOf(SaveOutcome.InUse.class);
        here.release(file);
        assertThat(here.inUseBy(file)).contains("a window on the computer BAY-2");
    }

    @Test
    void aLockThatIsJustBeingWrittenCountsAndARuinedOneDoesNotForEver() throws Exception {
        FileState saved = saved(here.save(FileState.absent(file), session));
        here.release(file);
        Files.writeString(FileLock.of(file), "{");
        Files.setLastModifiedTime(FileLock.of(file), java.nio.file.attribute.FileTime.from(clock.instant()));
        assertThat(here.save(saved, session.withNote("x"))).isEqualTo(new SaveOutcome.InUse("another window"));
        clock.pass(Duration.ofSeconds(11));
        assertThat(here.save(saved, session.withNote("x"))).isInstanceOf(SaveOutcome.Saved.class);
    }

    @Test
    void theLockOfAProcessThatEndedCountsNoMore() throws Exception {
        saved(files("crashed", "BAY-1", 4_194_305).save(FileState.absent(file), session));
        assertThat(here.inUseBy(file)).isEmpty();
        assertThat(there.inUseBy(file)).isPresent();
        assertThat(here.save(here.look(file), session.withNote("x"))).isInstanceOf(SaveOutcome.Saved.class);
    }

    @ParameterizedTest
    @EnumSource(value = FailingDisk.Step.class, names = {"APPEND", "APPEND_HALF", "FORCE", "RENAME", "CREATE"})
    void aFailingStepLeavesTheOldFileAndNoRubbish(FailingDisk.Step step) throws Exception {
        FileState saved = saved(here.save(FileState.absent(file), session));
        disk.fail(step, file.getParent(), "No space left on device");
        assertThatThrownBy(() -> here.save(saved, session.withNote("more"))).isInstanceOf(ProblemException.class)
                .hasMessage("visit.json: The file could not be saved because the disk is full; free some space.");
        assertThat(here.read(file).session()).isEqualTo(session);
        disk.cure();
        assertThat(names()).containsExactlyInAnyOrder("visit.json", ".visit.json.lock");
        assertThat(here.save(saved, session.withNote("more"))).isInstanceOf(SaveOutcome.Saved.class);
    }

    @Test
    void whereOnlyTheFolderCouldNotBeForcedTheNextAttemptKnowsItsOwn() throws ProblemException {
        FileState saved = saved(here.save(FileState.absent(file), session));
        disk.fail(FailingDisk.Step.FORCE_FOLDER, file.getParent(), "Input/output error");
        assertThatThrownBy(() -> here.save(saved, session.withNote("more"))).isInstanceOf(ProblemException.class);
        disk.cure();
        assertThat(here.save(saved, session.withNote("still more"))).isInstanceOf(SaveOutcome.Saved.class);
        assertThat(here.read(file).session().note()).isEqualTo("still more");
    }

    @Test
    void whatACrashLeftHalfWrittenIsSweptAway() throws Exception {
        FileState saved = saved(here.save(FileState.absent(file), session));
        here.release(file);
        Files.writeString(file.resolveSibling(".visit.json.0b1c.tmp"), "{ half");
        Files.writeString(file.resolveSibling(".other.json.0b1c.tmp"), "{ of another");
        saved(there.save(saved, session.withNote("x")));
        there.release(file);
        assertThat(names()).containsExactlyInAnyOrder("visit.json", ".other.json.0b1c.tmp");
    }

    @Test
    void aVanishedShareIsSaidAndAnEmptyMountPointIsNotWrittenTo() throws Exception {
        FileState saved = saved(here.save(FileState.absent(file), session));
        disk.vanish(file.getParent());
        assertThatThrownBy(() -> here.save(saved, session.withNote("x"))).isInstanceOf(ProblemException.class)
                .hasMessageContaining("check the connection");
        disk.cure();
        Files.move(file, folder.resolve("elsewhere.json"));
        assertThat(here.save(saved, session.withNote("x"))).isEqualTo(new SaveOutcome.Gone());
        assertThat(file).doesNotExist();
        Files.move(folder.resolve("elsewhere.json"), file);
        assertThat(here.save(saved, session.withNote("x"))).isInstanceOf(SaveOutcome.Saved.class);
    }

    @Test
    void earlierVersionsAreFewAndBounded() throws Exception {
        FileState state = saved(here.save(FileState.absent(file), session));
        for (int minute = 0; minute < 60 * 24 * 14; minute += 97) {
            clock.pass(Duration.ofMinutes(97));
            state = saved(here.save(state, session.withNote("minute " + minute)));
        }
        EarlierVersions versions = new EarlierVersions(disk, folder.resolve("versions"), clock);
        List<Path> kept = versions.of(file);
        assertThat(kept.size()).isBetween(EarlierVersions.LAST, EarlierVersions.LAST + EarlierVersions.DAYS + 1);
        for (Path version : kept) {
            assertThat(new SessionFile().read(version).value().id()).isEqualTo("s");
        }
        assertThat(kept.stream().map(version -> version.getFileName().toString().substring(0, 10)).distinct())
                .hasSizeBetween(10, 11);
    }

    @Test
    void whatWasFoundAtOpeningIsAlwaysKept() throws ProblemException, IOException {
        FileState state = saved(here.save(FileState.absent(file), session));
        here.release(file);
        clock.pass(Duration.ofSeconds(5));
        FileState opened = there.read(file).file();
        saved(there.save(opened, session.withNote("overwritten at once")));
        assertThat(state).isEqualTo(opened);
        EarlierVersions versions = new EarlierVersions(disk, folder.resolve("versions"), clock);
        assertThat(versions.of(file)).hasSize(1);
        assertThat(new SessionFile().read(versions.of(file).get(0)).value()).isEqualTo(session);
    }

    @Test
    void aVersionThatCanNotBeKeptDoesNotStopTheSaving() throws ProblemException {
        FileState state = saved(here.save(FileState.absent(file), session));
        disk.failWriting(folder.resolve("versions"), "No space left on device");
        assertThat(here.save(state, session.withNote("x"))).isInstanceOf(SaveOutcome.Saved.class);
    }

    @Test
    void aDamagedFileIsPutAsideAndItsNewestEarlierVersionOpened() throws Exception {
        FileState state = saved(here.save(FileState.absent(file), session));
        saved(here.save(state, session.withNote("later")));
        Files.writeString(file, "{\"kind\": \"session\", \"formatVers");
        SessionRepository.Read rescued = here.rescue(file).orElseThrow();
        assertThat(rescued.session()).isEqualTo(session);
        assertThat(rescued.problems()).singleElement().satisfies(problem ->
                assertThat(problem.sentence()).contains("was damaged").contains("visit (damaged 2026-03-31"));
        assertThat(names()).filteredOn(name -> name.contains("damaged")).singleElement().satisfies(name ->
                assertThat(file.resolveSibling(name)).hasContent("{\"kind\": \"session\", \"formatVers"));
        assertThat(here.save(rescued.file(), rescued.session())).isInstanceOf(SaveOutcome.Saved.class);
    }

    @Test
    void filesOfANewerVersionOrAnotherKindAreNeverPutAside() throws Exception {
        FileState state = saved(here.save(FileState.absent(file), session));
        saved(here.save(state, session.withNote("later")));
        String newer = Files.readString(file).replace("\"formatVersion\": 1", "\"formatVersion\": 99");
        Files.writeString(file, newer);
        assertThat(here.rescue(file)).isEmpty();
        assertThat(here.freeDamaged(file)).isEmpty();
        assertThat(file).hasContent(newer);
    }

    private SessionFiles files(String owner, String computer) {
        return files(owner, computer, ProcessHandle.current().pid());
    }

    private SessionFiles files(String owner, String computer, long process) {
        return new SessionFiles(folder.resolve("versions"), disk, clock, new Party(owner, computer, process));
    }

    private static FileState saved(SaveOutcome outcome) {
        assertThat(outcome).isInstanceOf(SaveOutcome.Saved.class);
        return ((SaveOutcome.Saved) outcome).file();
    }

    private List<String> names() throws IOException {
        try (var files = Files.list(file.getParent())) {
            return files.map(path -> path.getFileName().toString()).toList();
        }
    }
}
