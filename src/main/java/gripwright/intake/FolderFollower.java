package gripwright.intake;

import gripwright.model.Problem;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/**
 * Follows a folder where another program drops a file per shot or per export; a shot that comes in several exports is
 * brought once, since all files of the folder are one source.
 */
final class FolderFollower implements Follower {

    private static final Pattern READINGS = Pattern.compile("[^.~].*\\.(csv|tsv|txt)");
    /** A folder may gather thousands of files; those that no longer change are let go, but not forgotten. */
    private static final Duration LET_GO_AFTER = Duration.ofMinutes(2);

    private final SourceDisk disk;
    private final Path folder;
    private final String source;
    private final Supplier<TakenReadings> takenBefore;
    private final Duration quiet;
    private final Map<Path, Followed> files = new LinkedHashMap<>();
    private CsvIntake intake;
    private TakenReadings taken;
    private boolean skipExisting;
    private SourceStatus.State state = SourceStatus.State.WAITING;
    private String detail = "";
    private Instant lastReading;

    /** A file of the folder and when it was last worth a look. */
    private static final class Followed {
        private final FileFollower follower;
        private FileTime modified;
        private long size = -1;
        private Instant changedAt = Instant.EPOCH;

        Followed(FileFollower follower) {
            this.follower = follower;
        }
    }

    FolderFollower(SourceDisk disk, Path folder, String source, CsvIntake intake, Supplier<TakenReadings> takenBefore,
            boolean skipExisting, Duration quiet) {
        this.disk = disk;
        this.folder = folder;
        this.source = source;
        this.intake = intake;
        this.takenBefore = takenBefore;
        this.taken = takenBefore.get();
        this.skipExisting = skipExisting;
        this.quiet = quiet;
    }

    @Override
    public SourceStatus status() {
        return new SourceStatus(state, source, lastReading, detail);
    }

    @Override
    public void answer(Answers answers) {
        intake = intake.with(intake.answers().and(answers));
        taken = takenBefore.get();
        files.values().forEach(followed -> {
            followed.follower.answer(answers);
            followed.size = -1;
        });
    }

    @Override
    public Arrival look(Instant now) {
        List<Arrival> arrivals = new ArrayList<>();
        try {
            if (!Files.isDirectory(folder)) {
                state = SourceStatus.State.GONE;
                return Arrival.nothing();
            }
            detail = "";
            for (Path file : inOrder()) {
                lookAt(file, now, arrivals);
            }
            skipExisting = false;
            state = lastReading == null ? SourceStatus.State.WAITING : SourceStatus.State.ALIVE;
        } catch (IOException held) {
            state = SourceStatus.State.HELD;
            detail = CsvIntake.reason(held);
        }
        Arrival all = joined(arrivals);
        if (all.hasShots()) {
            lastReading = now;
            state = SourceStatus.State.ALIVE;
        }
        return all;
    }

    /** The files of readings, the oldest first, so that shots come in the order they were hit. */
    private List<Path> inOrder() throws IOException {
        List<Path> found = new ArrayList<>();
        Map<Path, FileTime> times = new LinkedHashMap<>();
        try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder)) {
            for (Path path : stream) {
                String name = path.getFileName().toString().toLowerCase(Locale.ROOT);
                if (READINGS.matcher(name).matches() && Files.isRegularFile(path)) {
                    found.add(path);
                    times.put(path, Files.getLastModifiedTime(path));
                }
            }
        }
        found.sort(Comparator.comparing((Path path) -> times.get(path)).thenComparing(Path::toString));
        Set.copyOf(files.keySet()).stream().filter(path -> !times.containsKey(path)).forEach(found::add);
        return found;
    }

    private void lookAt(Path file, Instant now, List<Arrival> arrivals) throws IOException {
        Followed followed = files.computeIfAbsent(file, path -> new Followed(new FileFollower(disk, path, source, intake,
                () -> taken, skipExisting, quiet)));
        if (Files.exists(file)) {
            BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
            boolean changed = attributes.size() != followed.size || !attributes.lastModifiedTime().equals(followed.modified);
            if (changed) {
                followed.size = attributes.size();
                followed.modified = attributes.lastModifiedTime();
                followed.changedAt = now;
            } else if (followed.changedAt.plus(LET_GO_AFTER).isBefore(now)) {
                followed.follower.letGo();
                return;
            }
        }
        Arrival arrival = followed.follower.look(now);
        if (followed.follower.status().state() == SourceStatus.State.HELD) {
            followed.size = -1;
            detail = file.getFileName() + ": " + followed.follower.status().detail();
        }
        if (!arrival.isNothing()) {
            arrivals.add(arrival);
        }
        if (followed.follower.status().state() == SourceStatus.State.GONE) {
            files.remove(file);
        }
    }

    private static Arrival joined(List<Arrival> arrivals) {
        if (arrivals.isEmpty()) {
            return Arrival.nothing();
        }
        List<IntakeRow> added = new ArrayList<>();
        List<IntakeRow> replaced = new ArrayList<>();
        List<String> withdrawn = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        List<Question> questions = new ArrayList<>();
        for (Arrival arrival : arrivals) {
            added.addAll(arrival.added());
            replaced.addAll(arrival.replaced());
            withdrawn.addAll(arrival.withdrawn());
            problems.addAll(arrival.problems());
            arrival.questions().stream().filter(q -> questions.stream().noneMatch(other -> other.id().equals(q.id())))
                    .forEach(questions::add);
        }
        return new Arrival(added, replaced, withdrawn, problems, questions);
    }

    @Override
    public void close() {
        files.values().forEach(followed -> followed.follower.close());
        state = SourceStatus.State.STOPPED;
    }
}
