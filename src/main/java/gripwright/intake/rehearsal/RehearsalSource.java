package gripwright.intake.rehearsal;

import gripwright.intake.Arrival;
import gripwright.intake.IntakeRow;
import gripwright.intake.LiveListener;
import gripwright.intake.LiveSource;
import gripwright.intake.SourceStatus;
import gripwright.model.Shot;
import gripwright.model.ShotSource;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Plays a recorded session or a simulated player into the bay at a chosen pace, for training and for tests; every shot is
 * marked as a rehearsal.
 *
 * <p>{@link #start} plays by itself; {@link #playNext} plays one shot at once, so that hours can be rehearsed in moments.
 */
public final class RehearsalSource implements LiveSource {

    private static final String NAME = "rehearsal";

    private final RehearsedShots shots;
    private final Duration pace;
    private final Clock clock;
    private final String run;
    private final Object lock = new Object();
    private LiveListener listener;
    private Instant lastReading;
    private int played;
    private boolean stopped;

    /**
     * A rehearsal.
     *
     * @param shots what is played
     * @param pace time from one shot to the next
     * @param run name of this rehearsal, which makes the identities of its shots its own
     */
    public RehearsalSource(RehearsedShots shots, Duration pace, String run) {
        this(shots, pace, run, Clock.systemUTC());
    }

    /** A rehearsal with a clock of the caller's. */
    public RehearsalSource(RehearsedShots shots, Duration pace, String run, Clock clock) {
        if (pace.isNegative() || pace.isZero()) {
            throw new IllegalArgumentException("The pace of a rehearsal must be above zero, not " + pace + ".");
        }
        this.shots = shots;
        this.pace = pace;
        this.clock = clock;
        this.run = run;
    }

    @Override
    public void start(LiveListener listens) {
        listen(listens);
        Thread thread = new Thread(this::playOn, NAME);
        thread.setDaemon(true);
        thread.start();
    }

    /** Listens without playing: shots come by {@link #playNext} alone. */
    public void listen(LiveListener listens) {
        synchronized (lock) {
            if (listener != null) {
                throw new IllegalStateException("This rehearsal plays already; begin a new one.");
            }
            listener = listens;
        }
    }

    private void playOn() {
        long next = System.nanoTime() + pace.toNanos();
        synchronized (lock) {
            while (!stopped) {
                long wait = next - System.nanoTime();
                if (wait > 0) {
                    try {
                        lock.wait(wait / 1_000_000, (int) (wait % 1_000_000));
                    } catch (InterruptedException ended) {
                        Thread.currentThread().interrupt();
                        return;
                    }
                } else {
                    next += pace.toNanos();
                    playNext();
                }
            }
        }
    }

    /** Plays the next shot now; false when there are no more. */
    public boolean playNext() {
        synchronized (lock) {
            if (stopped || listener == null) {
                return false;
            }
            Optional<RehearsedShots.Rehearsed> next = shots.next();
            if (next.isEmpty()) {
                stop();
                return false;
            }
            lastReading = clock.instant();
            played++;
            listener.arrived(new Arrival(List.of(row(next.get())), List.of(), List.of(), List.of(), List.of()));
            listener.changed(status());
            return true;
        }
    }

    private IntakeRow row(RehearsedShots.Rehearsed next) {
        ShotSource source = new ShotSource(ShotSource.Kind.REHEARSAL, NAME, run + "/" + played, "", "", 0);
        Shot shot = new Shot("r-" + run + "-" + played, lastReading, next.readings(), source, null, true, false, "");
        return new IntakeRow(played, "", next.configuration(), next.kind(), null, "", shot);
    }

    @Override
    public SourceStatus status() {
        synchronized (lock) {
            SourceStatus.State state = stopped ? SourceStatus.State.STOPPED
                    : lastReading == null ? SourceStatus.State.WAITING : SourceStatus.State.ALIVE;
            return new SourceStatus(state, NAME, lastReading, "these shots are not hit by anybody");
        }
    }

    private void stop() {
        stopped = true;
        lock.notifyAll();
        listener.changed(status());
    }

    @Override
    public void close() {
        synchronized (lock) {
            stopped = true;
            lock.notifyAll();
        }
    }
}
