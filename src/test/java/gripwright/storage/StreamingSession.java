package gripwright.storage;

import gripwright.model.Metric;
import gripwright.model.Readings;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.session.SavingPace;
import gripwright.session.SavingStatus;
import gripwright.session.SessionStore;
import gripwright.session.Workspace;
import gripwright.session.edits.PlayEdits;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/**
 * The program without a window, for {@link NeverLostTest}: takes in a shot every 50 ms and says on standard output which
 * shots it has acknowledged as kept, until it is killed.
 */
public final class StreamingSession {

    private static final int SHOTS_PER_SECOND = 20;

    private final Workspace workspace;
    private final PrintStream out = new PrintStream(new java.io.FileOutputStream(java.io.FileDescriptor.out), true,
            StandardCharsets.UTF_8);
    private SessionStore store;
    private long firstNumber;
    private long firstRevision;
    private long acknowledged;
    private long number;

    private StreamingSession(Path home) {
        workspace = workspace(home);
    }

    static Workspace workspace(Path home) {
        SavingPace pace = new SavingPace(Duration.ofMillis(20), Duration.ofMillis(100), Duration.ofSeconds(1),
                Duration.ofSeconds(20), Duration.ofSeconds(10));
        return new Workspace(new SessionFiles(home.resolve("versions")), new JournalShelf(home.resolve("journal")),
                new RecentFiles(home.resolve("recent.json")), home.resolve("sessions"), pace, Clock.systemUTC());
    }

    /** @param arguments the folder of everything */
    public static void main(String[] arguments) {
        new StreamingSession(Path.of(arguments[0])).run();
    }

    private void run() {
        Workspace.Opened opened = workspace.first();
        Session session = opened.session();
        store = new SessionStore(session);
        number = session.tray().stream().mapToLong(shot -> Long.parseLong(shot.id().substring(5))).max().orElse(0);
        firstNumber = number;
        firstRevision = store.revision();
        acknowledged = number;
        workspace.follow(store, opened, this::acknowledge);
        out.println("ready");
        Executors.newSingleThreadScheduledExecutor().scheduleAtFixedRate(this::hit, 0, 1000 / SHOTS_PER_SECOND,
                TimeUnit.MILLISECONDS);
    }

    private void hit() {
        number++;
        store.apply(PlayEdits.of("test-1").takeIn(
                List.of(Shot.of("shot-" + number, Readings.of(Metric.CARRY, 100 + number % 50)))));
    }

    /** Shots and revisions go up together, one each. */
    private void acknowledge(SavingStatus status) {
        long kept = firstNumber + status.keptRevision() - firstRevision;
        while (acknowledged < kept) {
            acknowledged++;
            out.println("kept shot-" + acknowledged);
        }
    }
}
