package gripwright.intake;

import gripwright.model.Shot;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Collection;
import java.util.List;

/** A folder where another program drops a file per shot or per export, watched while the session goes on. */
public final class WatchedFolder implements LiveSource {

    private final Path folder;
    private final FolderFollower follower;
    private final WatchOptions options;
    private final Clock clock;
    private WatchThread thread;

    /**
     * Watches a folder, which need not be there yet.
     *
     * @param folder the folder; its name is the source's name
     * @param intake how its files are read
     * @param alreadyTaken shots taken before, which are not brought again
     * @param options how it is watched
     */
    public WatchedFolder(Path folder, CsvIntake intake, Collection<Shot> alreadyTaken, WatchOptions options) {
        this(folder, intake, alreadyTaken, options, SourceDisk.local(), Clock.systemUTC());
    }

    WatchedFolder(Path folder, CsvIntake intake, Collection<Shot> alreadyTaken, WatchOptions options, SourceDisk disk,
            Clock clock) {
        this.folder = folder.toAbsolutePath();
        String source = String.valueOf(this.folder.getFileName());
        List<Shot> before = List.copyOf(alreadyTaken);
        this.options = options;
        this.clock = clock;
        this.follower = new FolderFollower(disk, this.folder, source, intake,
                () -> TakenReadings.of(before, intake.kind(), source), options.skipExisting(), options.quiet());
    }

    @Override
    public synchronized void start(LiveListener listener) {
        if (thread != null) {
            throw new IllegalStateException("This folder is watched already; watch it with a new WatchedFolder.");
        }
        thread = new WatchThread(folder, follower, options.poll(), clock, listener);
        thread.start();
    }

    /** Answers questions that were brought; the files are read again and what changes is brought as replaced. */
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
