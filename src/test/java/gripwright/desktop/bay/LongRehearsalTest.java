package gripwright.desktop.bay;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.desktop.support.DemoSessions;
import gripwright.desktop.support.InMemoryServices;
import gripwright.desktop.support.Workbench;
import gripwright.intake.Arrival;
import gripwright.intake.LiveListener;
import gripwright.intake.SourceStatus;
import gripwright.intake.rehearsal.RehearsalSource;
import gripwright.intake.rehearsal.RehearsedShots;
import gripwright.intake.rehearsal.SimulatedPlayer;
import gripwright.model.Handedness;
import gripwright.model.Session;
import gripwright.model.Stint;
import gripwright.session.SessionStore;
import gripwright.session.edits.QueueEdits;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Eight hours of rehearsal at ten shots a minute, in accelerated time: nothing piles up but the shots themselves. */
class LongRehearsalTest {

    private static final int HOURS = 8;
    private static final int SHOTS_AN_HOUR = 600;
    private static final int SHOTS_A_STINT = 12;
    private static final long MEBIBYTE = 1 << 20;
    /** A shot with its sixteen readings and its source takes about 1,700 bytes with the lists around it. */
    private static final long MOST_BYTES_A_SHOT = 2048;
    /** What the undo steps may hold beyond the session, and what the runtime itself moves about. */
    private static final long ALLOWANCE = 4 * MEBIBYTE;

    /** The time of the rehearsal, six seconds a shot. */
    private static final class RehearsalClock extends Clock {
        private Instant now = Instant.parse("2026-03-14T09:00:00Z");

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    private final RehearsalClock clock = new RehearsalClock();
    private final Deque<Runnable> background = new ArrayDeque<>();
    private final RehearsalSource rehearsal = new RehearsalSource(RehearsedShots.of(
            SimulatedPlayer.middling(Handedness.LEFT, 8), () -> "", HOURS * SHOTS_AN_HOUR), Duration.ofSeconds(6),
            "long", clock);
    private Workbench workbench;
    private BayViewModel bay;
    private int shots;
    private int stints;

    @Test
    void memoryStaysFlatOverEightHours() {
        Session session = BaySessions.planned("ABCDE", "ABCDE", SHOTS_A_STINT, 0);
        workbench = new Workbench(new InMemoryServices(session, DemoSessions.shop()), background::add, Runnable::run);
        bay = new BayViewModel(workbench, clock, () -> "stint-" + ++stints);
        listen();
        List<Long> used = new ArrayList<>();
        for (int hour = 0; hour < HOURS; hour++) {
            playAnHour();
            runBackground();
            used.add(usedBytes());
        }
        assertThat(shots).isEqualTo(HOURS * SHOTS_AN_HOUR);
        assertThat(bay.sheet().get().swings().swings()).isEqualTo(shots);
        assertThat(bay.elapsed().get()).isEqualTo("8 h 00 min");
        long growth = used.get(HOURS - 1) - used.get(0);
        long shotsSince = (HOURS - 1L) * SHOTS_AN_HOUR;
        assertThat(growth).as("bytes used after each hour: %s", used)
                .isLessThan(shotsSince * MOST_BYTES_A_SHOT + ALLOWANCE);
    }

    @Test
    void noMoreThanTheBoundedStepsCanBeTakenBack() {
        Session session = BaySessions.planned("A", "A", SHOTS_A_STINT, 0);
        workbench = new Workbench(new InMemoryServices(session, DemoSessions.shop()), background::add, Runnable::run);
        bay = new BayViewModel(workbench, clock, () -> "stint-" + ++stints);
        listen();
        bay.startNext();
        for (int n = 0; n < SessionStore.UNDO_STEPS + 100; n++) {
            shoot();
        }
        int back = 0;
        while (!workbench.undoLabel().get().isEmpty()) {
            workbench.undo();
            back++;
        }
        assertThat(back).isEqualTo(SessionStore.UNDO_STEPS);
    }

    private void playAnHour() {
        for (int n = 0; n < SHOTS_AN_HOUR; n++) {
            if (shots % SHOTS_A_STINT == 0) {
                nextStint();
            }
            shoot();
        }
    }

    private void nextStint() {
        boolean planned = workbench.test().get().stints().stream().anyMatch(s -> s.state() == Stint.State.PLANNED);
        if (!planned) {
            String like = workbench.test().get().stints().get(stints % 5).id();
            workbench.applyOrSay(QueueEdits.of("test-1").repeat(like, "again-" + ++stints,
                    QueueEdits.Repeat.AT_THE_END));
        }
        bay.startNext();
    }

    private void listen() {
        rehearsal.listen(new LiveListener() {
            @Override
            public void arrived(Arrival arrival) {
                bay.arrived(arrival);
            }

            @Override
            public void changed(SourceStatus status) {
                bay.sourceChanged(status, true);
            }
        });
    }

    private void shoot() {
        shots++;
        clock.now = clock.now.plus(Duration.ofSeconds(6));
        rehearsal.playNext();
    }

    /** Comparisons are made once an hour, on the newest state, as accelerated time leaves no room for more. */
    private void runBackground() {
        while (!background.isEmpty()) {
            background.poll().run();
        }
    }

    private static long usedBytes() {
        Runtime runtime = Runtime.getRuntime();
        long least = Long.MAX_VALUE;
        for (int n = 0; n < 4; n++) {
            System.gc();
            least = Math.min(least, runtime.totalMemory() - runtime.freeMemory());
        }
        return least;
    }
}
