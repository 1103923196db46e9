package gripwright.storage;

import gripwright.model.ProblemException;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * The small file beside a session file that says which window, on which computer, is at work on it.
 *
 * <p>Network drives know no reliable locks of their own, so this is a matter of manners: who finds it does not save over
 * the session. A window tells at times that it is still there; a lock of a process that has ended, or one that was silent
 * for long, counts no more. Against two windows that mistake each other all the same, the saving looks at the session
 * file's content too.
 */
final class FileLock {

    /** How long a window may be silent before its lock counts no more; several times the usual beat. */
    static final Duration LONGEST_SILENCE = Duration.ofMinutes(2);

    /** A lock younger than this is not written again. */
    private static final Duration FRESH = Duration.ofSeconds(10);

    private static final String ENDING = ".lock";

    /** What the lock says. */
    record Lock(String owner, String computer, long process, Instant since, Instant beat) {

        Party party() {
            return new Party(owner, computer, process);
        }
    }

    private final VersionedFormat<Lock> format = new VersionedFormat<>("lock", 1, Lock.class, List.of());
    private final DiskOperations disk;
    private final Clock clock;
    private final Party party;

    FileLock(DiskOperations disk, Clock clock, Party party) {
        this.disk = disk;
        this.clock = clock;
        this.party = party;
    }

    /** The lock's place for a session file. */
    static Path of(Path file) {
        return file.resolveSibling("." + file.getFileName() + ENDING);
    }

    /** Who holds the file, if it is another window that is still there. */
    Optional<String> heldBy(Path file) {
        return read(file).filter(lock -> !isOurs(lock) && !isStale(lock)).map(this::words);
    }

    /**
     * Takes the file for this window, or renews what it has.
     *
     * @return who has it, if it is another window that is still there
     */
    Optional<String> take(Path file) throws IOException {
        Optional<Lock> found = read(file);
        if (found.isPresent() && isOurs(found.get())) {
            if (Duration.between(found.get().beat(), clock.instant()).compareTo(FRESH) > 0) {
                new AtomicFile(disk).write(of(file), bytes(found.get().since()));
            }
            return Optional.empty();
        }
        if (found.isPresent() && !isStale(found.get())) {
            return Optional.of(words(found.get()));
        }
        if (disk.exists(of(file))) {
            if (found.isEmpty() && isYoung(of(file))) {
                // Another window is just writing its lock.
                return Optional.of("another window");
            }
            clear(file);
        }
        return create(file) ? Optional.empty() : heldBy(file).or(() -> Optional.of("another window"));
    }

    /** Whether this window still has the file. */
    boolean isHeld(Path file) {
        return read(file).filter(this::isOurs).isPresent();
    }

    /** Lets the file go, if this window has it. */
    void release(Path file) {
        if (isHeld(file)) {
            try {
                disk.delete(of(file));
            } catch (IOException e) {
                // A lock that stays behind goes stale; nothing else hangs on it.
                return;
            }
        }
    }

    private boolean create(Path file) throws IOException {
        try (DiskOperations.OpenFile open = disk.create(of(file))) {
            open.append(bytes(clock.instant()));
            return true;
        } catch (FileAlreadyExistsException e) {
            return false;
        }
    }

    /** Renaming it first lets only one of two windows that both find it stale go on. */
    private void clear(Path file) throws IOException {
        Path aside = of(file).resolveSibling(of(file).getFileName() + "." + party.owner());
        try {
            disk.rename(of(file), aside);
            disk.delete(aside);
        } catch (NoSuchFileException e) {
            // The other one was quicker.
            return;
        }
    }

    private byte[] bytes(Instant since) {
        return format.write(new Lock(party.owner(), party.computer(), party.process(), since, clock.instant()));
    }

    private Optional<Lock> read(Path file) {
        try {
            return Optional.of(format.read(disk.read(of(file)), "").value());
        } catch (IOException | ProblemException e) {
            return Optional.empty();
        }
    }

    private boolean isYoung(Path lock) throws IOException {
        return Duration.between(disk.lastModified(lock), clock.instant()).abs().compareTo(FRESH) < 0;
    }

    private boolean isOurs(Lock lock) {
        return lock.owner().equals(party.owner());
    }

    private boolean isStale(Lock lock) {
        return lock.party().hasEnded(party.computer())
                || Duration.between(lock.beat(), clock.instant()).compareTo(LONGEST_SILENCE) > 0;
    }

    private String words(Lock lock) {
        return lock.computer().equals(party.computer()) ? "another window on this computer"
                : "a window on the computer " + lock.computer();
    }
}
