package gripwright.storage;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.model.Metric;
import gripwright.model.Readings;
import gripwright.model.Shot;
import gripwright.session.SavingPace;
import gripwright.session.SessionStore;
import gripwright.session.Workspace;
import gripwright.session.edits.PlayEdits;
import gripwright.session.edits.ShotEdits;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Eight hours at ten shots a minute, told by the clock in seconds: memory and disk stay as small as the session. */
class LongDayTest {

    private static final int SHOTS = 8 * 60 * 10;
    private static final Duration BETWEEN_SHOTS = Duration.ofSeconds(6);
    /** The session's own shots, about 1 kB each, and what the collector leaves for later. */
    private static final long MOST_GROWTH_BYTES = 24_000_000;

    private final TestClock clock = new TestClock();

    @TempDir
    private Path folder;

    @Test
    void memoryStaysFlatAndEveryShotIsInTheFile() throws Exception {
        Statuses statuses = new Statuses();
        Party party = Party.ofThisProcess();
        Workspace workspace = new Workspace(
                new SessionFiles(folder.resolve("versions"), new LocalDisk(), clock, party),
                new JournalShelf(folder.resolve("journal"), new LocalDisk(), clock, party),
                new RecentFiles(folder.resolve("recent.json")), folder.resolve("sessions"), pace(), clock);
        Workspace.Opened opened = workspace.first();
        SessionStore store = new SessionStore(opened.session());
        workspace.follow(store, opened, statuses);
        hit(store, statuses, 0, SHOTS / 8);
        long early = used();
        hit(store, statuses, SHOTS / 8, SHOTS);
        long late = used();
        assertThat(late - early).as("growth over seven hours, bytes").isLessThan(MOST_GROWTH_BYTES);
        statuses.awaitSaved();
        assertThat(size(folder.resolve("journal"))).isLessThan(2_000_000L + 2 * size(folder.resolve("sessions")));
        Path file = statuses.last().file().orElseThrow().path();
        assertThat(workspace.close()).isEmpty();
        assertThat(new SessionFile().read(file).value()).isEqualTo(store.session());
        assertThat(store.session().tray()).hasSize(SHOTS);
        int steps = 0;
        while (store.undo().isPresent()) {
            steps++;
        }
        assertThat(steps).isEqualTo(SessionStore.UNDO_STEPS);
    }

    /** Every fifth shot is corrected, as a busy fitter would. */
    private void hit(SessionStore store, Statuses statuses, int from, int to) {
        for (int number = from + 1; number <= to; number++) {
            clock.pass(BETWEEN_SHOTS);
            Readings readings = Readings.of(Metric.CARRY, 100 + number % 40).with(Metric.CLUB_SPEED, 38)
                    .with(Metric.FACE_ANGLE, number % 7 - 3).with(Metric.OFFLINE, number % 11 - 5);
            store.apply(PlayEdits.of("test-1").takeIn(List.of(Shot.of("shot-" + number, readings))));
            if (number % 5 == 0) {
                store.apply(ShotEdits.correct(store.session(), "shot-" + number, readings.with(Metric.CARRY, 90)));
            }
            if (number % 100 == 0) {
                statuses.await(status -> status.keptRevision() == status.revision());
                statuses.forget();
            }
        }
    }

    private static SavingPace pace() {
        return new SavingPace(Duration.ofMillis(200), Duration.ofMillis(50), Duration.ofSeconds(1),
                Duration.ofSeconds(20), Duration.ofSeconds(20));
    }

    private static long used() {
        for (int round = 0; round < 3; round++) {
            System.gc();
        }
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }

    private static long size(Path folder) throws IOException {
        long size = 0;
        try (var files = Files.list(folder)) {
            for (Path file : files.toList()) {
                size += Files.size(file);
            }
        }
        return size;
    }
}
