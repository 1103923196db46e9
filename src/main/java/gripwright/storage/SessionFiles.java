package gripwright.storage;

import com.fasterxml.jackson.core.JsonProcessingException;
import gripwright.model.Problem;
import gripwright.model.ProblemException;
import gripwright.model.Session;
import gripwright.session.FileState;
import gripwright.session.SaveOutcome;
import gripwright.session.SessionRepository;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Session files as one window reads and saves them: never over what another window or computer wrote, with earlier
 * versions kept on this computer.
 */
public final class SessionFiles implements SessionRepository {

    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH.mm.ss").withZone(ZoneId.systemDefault());

    /** Stops the exchange at the last moment, when somebody else's content is found in the place. */
    private static final class OthersContent extends IOException {
        private static final long serialVersionUID = 1;
    }

    /** Stops the exchange at the last moment, when another window has taken the file over. */
    private static final class LockLost extends IOException {
        private static final long serialVersionUID = 1;
    }

    private final SessionFile sessions = new SessionFile();
    private final DiskOperations disk;
    private final Clock clock;
    private final Party party;
    private final FileLock locks;
    private final EarlierVersions versions;
    /** Files of which the content found at opening was kept already. */
    private final Set<Path> keptAsFound = ConcurrentHashMap.newKeySet();
    /** Files beside which this window has looked for what crashes left. */
    private final Set<Path> swept = ConcurrentHashMap.newKeySet();
    /** What was in a file and what was to be when a saving failed half-way: either is this window's own. */
    private final Map<Path, Set<String>> attempted = new ConcurrentHashMap<>();

    /** @param versionsFolder where earlier versions are kept, on this computer */
    public SessionFiles(Path versionsFolder) {
        this(versionsFolder, new LocalDisk(), Clock.systemUTC(), Party.ofThisProcess());
    }

    SessionFiles(Path versionsFolder, DiskOperations disk, Clock clock, Party party) {
        this.disk = disk;
        this.clock = clock;
        this.party = party;
        this.locks = new FileLock(disk, clock, party);
        this.versions = new EarlierVersions(disk, versionsFolder, clock);
    }

    @Override
    public Read read(Path file) throws ProblemException {
        try {
            byte[] bytes = disk.read(file);
            Loaded<Session> loaded = sessions.parse(bytes, String.valueOf(file.getFileName()));
            return new Read(loaded.value(), new FileState(file, Fingerprint.of(bytes)), loaded.problems());
        } catch (IOException e) {
            throw DiskProblem.reading(file, e);
        }
    }

    @Override
    public Optional<Read> rescue(Path file) throws ProblemException {
        try {
            if (!isDamaged(file)) {
                return Optional.empty();
            }
            List<Path> earlier = new ArrayList<>(versions.of(file));
            Collections.reverse(earlier);
            for (Path version : earlier) {
                if (!isDamaged(version)) {
                    Session session = sessions.parse(disk.read(version), "").value();
                    Path aside = putAside(file);
                    return Optional.of(new Read(session, FileState.absent(file), List.of(rescued(file, aside, version))));
                }
            }
            return Optional.empty();
        } catch (IOException e) {
            throw DiskProblem.reading(file, e);
        }
    }

    /** Damaged, as against written by a newer version or something else altogether. */
    private boolean isDamaged(Path file) throws IOException {
        try {
            sessions.parse(disk.read(file), "");
            return false;
        } catch (ProblemException e) {
            return e.getCause() instanceof JsonProcessingException;
        }
    }

    private static Problem rescued(Path file, Path aside, Path version) {
        String time = String.valueOf(version.getFileName()).replace("Z.json", " UTC");
        return new Problem(Problem.Severity.NOTE, String.valueOf(file.getFileName()), null, null, "",
                "The file was damaged. It is kept as it is under the name '" + aside.getFileName()
                        + "', and the session is shown as it was on " + time + "; what was changed since may be missing.");
    }

    @Override
    public FileState look(Path file) throws ProblemException {
        try {
            return disk.exists(file) ? new FileState(file, Fingerprint.of(disk.read(file))) : FileState.absent(file);
        } catch (IOException e) {
            throw DiskProblem.reading(file, e);
        }
    }

    @Override
    public Optional<String> inUseBy(Path file) {
        return locks.heldBy(file);
    }

    @Override
    public SaveOutcome save(FileState file, Session session) throws ProblemException {
        Path path = file.path();
        try {
            boolean isNew = file.fingerprint().equals(Fingerprint.ABSENT);
            if (isNew) {
                disk.createFolders(path.toAbsolutePath().getParent());
            }
            Optional<String> other = locks.take(path);
            if (other.isPresent()) {
                return new SaveOutcome.InUse(other.get());
            }
            if (!isNew && !disk.exists(path)) {
                // An unmounted drive looks like this too; writing now could hide the session below the drive.
                return new SaveOutcome.Gone();
            }
            if (swept.add(path)) {
                sweepUnfinished(path);
            }
            return exchange(file, sessions.bytes(session));
        } catch (IOException e) {
            throw DiskProblem.writing(path, e);
        }
    }

    /** What crashes left half-written; nobody else writes beside a file that this window has claimed. */
    private void sweepUnfinished(Path path) {
        try {
            for (Path beside : disk.list(path.toAbsolutePath().getParent())) {
                if (AtomicFile.isUnfinished(beside, path)) {
                    disk.delete(beside);
                }
            }
        } catch (IOException e) {
            // Rubbish that resists harms nobody; the next start sweeps again.
            return;
        }
    }

    private SaveOutcome exchange(FileState file, byte[] content) throws IOException {
        Path path = file.path();
        try {
            String before = Fingerprint.ABSENT;
            if (disk.exists(path)) {
                byte[] found = disk.read(path);
                if (!isOurs(file, found)) {
                    return new SaveOutcome.Changed();
                }
                keepVersion(path, found);
                before = Fingerprint.of(found);
            }
            attempted.put(path, Set.copyOf(List.of(before, Fingerprint.of(content))));
            new AtomicFile(disk).write(path, content, () -> {
                if (disk.exists(path) && !isOurs(file, disk.read(path))) {
                    throw new OthersContent();
                }
                if (!locks.isHeld(path)) {
                    throw new LockLost();
                }
            });
            attempted.remove(path);
            return new SaveOutcome.Saved(new FileState(path, Fingerprint.of(content)));
        } catch (OthersContent e) {
            return new SaveOutcome.Changed();
        } catch (LockLost e) {
            return new SaveOutcome.InUse(locks.heldBy(path).orElse("another window"));
        }
    }

    private boolean isOurs(FileState file, byte[] found) {
        String fingerprint = Fingerprint.of(found);
        return fingerprint.equals(file.fingerprint()) || attempted.getOrDefault(file.path(), Set.of()).contains(fingerprint);
    }

    /** A version that can't be kept must not keep the session from being saved. */
    private void keepVersion(Path path, byte[] found) {
        try {
            boolean first = keptAsFound.add(path);
            versions.keep(path, found, first);
        } catch (IOException e) {
            keptAsFound.remove(path);
        }
    }

    @Override
    public FileState saveBeside(Path file, Session session, String reason) throws ProblemException {
        byte[] content = sessions.bytes(session);
        Path path = Asides.free(disk, file, reason + " " + party.computer() + " " + STAMP.format(clock.instant()));
        try {
            locks.take(path);
            new AtomicFile(disk).write(path, content, () -> {
                if (disk.exists(path)) {
                    throw new OthersContent();
                }
            });
            return new FileState(path, Fingerprint.of(content));
        } catch (IOException e) {
            throw DiskProblem.writing(path, e);
        }
    }

    @Override
    public Optional<FileState> freeDamaged(Path file) throws ProblemException {
        try {
            return disk.exists(file) && isDamaged(file) ? Optional.of(look(putAside(file))) : Optional.empty();
        } catch (IOException e) {
            throw DiskProblem.reading(file, e);
        }
    }

    private Path putAside(Path file) throws ProblemException {
        String name = String.valueOf(file.getFileName());
        Path aside = Asides.free(disk, file, "damaged " + STAMP.format(clock.instant()));
        try {
            disk.rename(file, aside);
            disk.forceFolder(aside.toAbsolutePath().getParent());
            return aside;
        } catch (IOException e) {
            throw new ProblemException(new Problem(Problem.Severity.FATAL, name, null, null, "",
                    "The damaged file could not be put aside; it stays where it is."), e);
        }
    }

    @Override
    public void beat(Path file) {
        try {
            if (disk.exists(file)) {
                locks.take(file);
            }
        } catch (IOException e) {
            // The next saving will say what is wrong; a missed beat harms nothing.
            return;
        }
    }

    @Override
    public void release(Path file) {
        locks.release(file);
    }
}
