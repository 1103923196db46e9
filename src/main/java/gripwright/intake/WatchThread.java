package gripwright.intake;

import java.io.IOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.time.Clock;
import java.time.Duration;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;

/**
 * The thread that lets a follower look: at once when the folder reports an event, and at every poll, since network
 * folders report none.
 */
final class WatchThread {

    private final Path folder;
    private final Follower follower;
    private final Duration poll;
    private final Clock clock;
    private final LiveListener listener;
    private final Queue<Answers> answers = new ConcurrentLinkedQueue<>();
    private final Thread thread;
    private volatile boolean closed;
    private volatile SourceStatus status;
    private WatchService service;
    private WatchKey key;

    WatchThread(Path folder, Follower follower, Duration poll, Clock clock, LiveListener listener) {
        this.folder = folder;
        this.follower = follower;
        this.poll = poll;
        this.clock = clock;
        this.listener = listener;
        this.status = follower.status();
        this.thread = new Thread(this::run, "watching " + status.source());
        this.thread.setDaemon(true);
    }

    void start() {
        thread.start();
    }

    SourceStatus status() {
        return status;
    }

    void answer(Answers more) {
        answers.add(more);
    }

    private void run() {
        try {
            while (!closed) {
                for (Answers next = answers.poll(); next != null; next = answers.poll()) {
                    follower.answer(next);
                }
                lookOnce();
                waitForChange();
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } finally {
            follower.close();
            status = follower.status();
            closeService();
        }
    }

    private void lookOnce() {
        Arrival arrival = follower.look(clock.instant());
        SourceStatus now = follower.status();
        if (!arrival.isNothing() && !closed) {
            listener.arrived(arrival);
        }
        if (!now.equals(status) && !closed) {
            status = now;
            listener.changed(now);
        }
    }

    private void waitForChange() throws InterruptedException {
        register();
        if (service == null) {
            TimeUnit.MILLISECONDS.sleep(poll.toMillis());
            return;
        }
        try {
            WatchKey signalled = service.poll(poll.toMillis(), TimeUnit.MILLISECONDS);
            if (signalled != null) {
                signalled.pollEvents();
                if (!signalled.reset()) {
                    key = null;
                }
            }
        } catch (ClosedWatchServiceException lost) {
            service = null;
            key = null;
        }
    }

    /** Registers the folder, again and again where it isn't there or has no events; polling goes on meanwhile. */
    private void register() {
        if (key != null && key.isValid() || !Files.isDirectory(folder)) {
            return;
        }
        try {
            if (service == null) {
                service = folder.getFileSystem().newWatchService();
            }
            key = folder.register(service, StandardWatchEventKinds.ENTRY_CREATE, StandardWatchEventKinds.ENTRY_MODIFY,
                    StandardWatchEventKinds.ENTRY_DELETE);
        } catch (IOException | UnsupportedOperationException noEvents) {
            key = null;
        }
    }

    private void closeService() {
        if (service != null) {
            try {
                service.close();
            } catch (IOException nothingToLose) {
                service = null;
            }
        }
    }

    /** Ends after the look that is going on; never by interruption, which could close a file of the listener's. */
    void close() {
        closed = true;
    }
}
