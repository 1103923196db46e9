package gripwright.intake;

import gripwright.model.Shot;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Collection;
import java.util.List;
import java.util.function.Supplier;

/**
 * Readings on a disk that another program writes, watched while the session goes on: a CSV file that grows or is
 * rewritten, or a folder where a file per shot or per export is dropped. Each shot is brought once.
 */
public final class WatchedReadings implements LiveSource {

    private final Path folder;
    private final Follower follower;
    private final WatchOptions options;
    private final Clock clock;
    private WatchThread thread;

    private WatchedReadings(Path folder, Follower follower, WatchOptions options, Clock clock) {
        this.folder = folder;
        this.follower = follower;
        this.options = options;
        this.clock = clock;
    }

    /**
     * Watches a file, which need not be there yet.
     *
     * @param file the file; its name is the source's name
     * @param intake how it is read
     * @param alreadyTaken shots taken before, which are not brought again
     * @param options how it is watched
     */
    public static WatchedReadings ofFile(Path file, CsvIntake intake, Collection<Shot> alreadyTaken,
            WatchOptions options) {
        Path absolute = file.toAbsolutePath();
        String source = String.valueOf(absolute.getFileName());
        return new WatchedReadings(absolute.getParent(), new FileFollower(SourceDisk.local(), absolute, source, intake,
                taken(alreadyTaken, intake, source), options.skipExisting(), options.quiet()), options,
                Clock.systemUTC());
    }

    /**
     * Watches a folder, which need not be there yet; all its files are one source, so that a shot in several exports
     * comes once.
     *
     * @param folder the folder; its name is the source's name
     * @param intake how its files are read
     * @param alreadyTaken shots taken before, which are not brought again
     * @param options how it is watched
     */
    public static WatchedReadings ofFolder(Path folder, CsvIntake intake, Collection<Shot> alreadyTaken,
            WatchOptions options) {
        Path absolute = folder.toAbsolutePath();
        String source = String.valueOf(absolute.getFileName());
        return new WatchedReadings(absolute, new FolderFollower(SourceDisk.local(), absolute, source, intake,
                taken(alreadyTaken, intake, source), options.skipExisting(), options.quiet()), options,
                Clock.systemUTC());
    }

    private static Supplier<TakenReadings> taken(Collection<Shot> alreadyTaken, CsvIntake intake, String source) {
        List<Shot> before = List.copyOf(alreadyTaken);
        return () -> TakenReadings.of(before, intake.kind(), source);
    }

    @Override
    public synchronized void start(LiveListener listener) {
        if (thread != null) {
            throw new IllegalStateException("This is watched already; watch it with a new one.");
        }
        thread = new WatchThread(folder, follower, options.poll(), clock, listener);
        thread.start();
    }

    /** Answers questions that were brought; everything is read again and what changes is brought as replaced. */
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
