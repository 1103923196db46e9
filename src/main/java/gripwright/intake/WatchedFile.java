package gripwright.intake;

import gripwright.model.Shot;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Collection;
import java.util.List;

/**
 * A CSV file that another program appends to or rewrites, watched while the session goes on: each of its shots is brought
 * once.
 */
public final class WatchedFile implements LiveSource {

    private final Path folder;
    private final FileFollower follower;
    private final WatchOptions options;
    private final Clock clock;
    private WatchThread thread;

    /**
     * Watches a file, which need not be there yet.
     *
     * @param file the file; its name is the source's name
     * @param intake how it is read
     * @param alreadyTaken shots taken before, which are not brought again
     * @param options how it is watched
     */
    public WatchedFile(Path file, CsvIntake intake, Collection<Shot> alreadyTaken, WatchOptions options) {
        this(file, intake, alreadyTaken, options, SourceDisk.local(), Clock.systemUTC());
    }

    WatchedFile(Path file, CsvIntake intake, Collection<Shot> alreadyTaken, WatchOptions options, SourceDisk disk,
            Clock clock) {
        Path absolute = file.toAbsolutePath();
        String source = String.valueOf(absolute.getFileName());
        List<Shot> before = List.copyOf(alreadyTaken);
        this.folder = absolute.getParent();
        this.options = options;
        this.clock = clock;
        this.follower = new FileFollower(disk, absolute, source, intake,
                () -> TakenReadings.of(before, intake.kind(), source), options.skipExisting(), options.quiet());
    }

    @Override
    public synchronized void start(LiveListener listener) {
        if (thread != null) {
            throw new IllegalStateException("This file is watched already; watch it with a new WatchedFile.");
        }
        thread = new WatchThread(folder, follower, options.poll(), clock, listener);
        thread.start();
    }

    /** Answers questions that were brought; the file is read again and what changes is brought as replaced. */
    public synchronized void answer(Answers answers) {
        if (thread != null) {
            thread.answer(answers);
        }
    }

    @Override
    public synchronized SourceStatus status() {
        return thread == null ? follower.status() : thread.status();
    }

    @Override
    public synchronized void close() {
        if (thread != null) {
            thread.close();
        }
    }
}
