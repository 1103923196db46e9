package gripwright.storage;

import gripwright.model.ProblemException;
import gripwright.model.Session;
import gripwright.session.FileState;
import gripwright.session.Journal;
import gripwright.session.JournalFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;

/** The journals in one folder of this computer's own disk. */
public final class JournalShelf implements JournalFolder {

    static final String ENDING = ".journal";

    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuuMMdd-HHmmssSSS").withZone(ZoneId.of("UTC"));

    private final Path folder;
    private final DiskOperations disk;
    private final Clock clock;
    private final Party party;

    public JournalShelf(Path folder) {
        this(folder, new LocalDisk(), Clock.systemUTC(), Party.ofThisProcess());
    }

    JournalShelf(Path folder, DiskOperations disk, Clock clock, Party party) {
        this.folder = folder;
        this.disk = disk;
        this.clock = clock;
        this.party = party;
    }

    @Override
    public Journal begin(Session session, FileState file) throws ProblemException {
        String chain = STAMP.format(clock.instant()) + "-" + UUID.randomUUID().toString().substring(0, 8);
        return JournalFile.begin(disk, folder, chain, clock, party, session, file);
    }

    @Override
    public List<Found> left() throws ProblemException {
        Map<String, List<Path>> chains = new TreeMap<>(Comparator.reverseOrder());
        try {
            for (Path file : disk.list(folder)) {
                String name = file.getFileName().toString();
                int sequence = name.lastIndexOf('-');
                if (name.endsWith(ENDING) && sequence > 0) {
                    chains.computeIfAbsent(name.substring(0, sequence), none -> new ArrayList<>()).add(0, file);
                }
            }
        } catch (IOException e) {
            throw DiskProblem.reading(folder, e);
        }
        List<Found> found = new ArrayList<>();
        for (List<Path> chain : chains.values()) {
            found(chain).ifPresent(found::add);
        }
        return List.copyOf(found);
    }

    /** @param chain the files of one journal, newest first */
    private Optional<Found> found(List<Path> chain) {
        List<DiskOperations.OpenFile> claimed = new ArrayList<>();
        JournalReplay.Replayed best = null;
        boolean damaged = false;
        for (Path file : chain) {
            JournalReplay.Replayed replayed = read(file, claimed);
            if (replayed == null) {
                close(claimed);
                return Optional.empty();
            }
            boolean better = best == null || best.session().isEmpty() && replayed.session().isPresent();
            damaged = damaged || better && replayed.damaged();
            best = better ? replayed : best;
        }
        if (best == null || best.newer()) {
            close(claimed);
            return Optional.empty();
        }
        List<String> sentences = new ArrayList<>();
        if (damaged) {
            sentences.add("The journal of the last session is damaged; everything in it that can be read was taken, and "
                    + "the journal itself is kept beside the others as it is.");
        }
        boolean aside = damaged;
        Optional<FileState> file = best.file().map(noted -> asWritten(noted, claimed));
        return Optional.of(new Found(best.session(), file, sentences, session -> wentThrough(claimed, session),
                () -> settle(chain, claimed, aside)));
    }

    private static boolean wentThrough(List<DiskOperations.OpenFile> chain, Session session) {
        byte[] sought = new SessionFile().bytes(session);
        for (DiskOperations.OpenFile journal : chain) {
            try {
                if (new JournalReplay().passedThrough(journal.read(), sought)) {
                    return true;
                }
            } catch (IOException e) {
                // A journal that can't be read vouches for nothing.
                continue;
            }
        }
        return false;
    }

    /** A crash between the saving and its note in the journal leaves a file that the journal does not know as its own. */
    private FileState asWritten(FileState noted, List<DiskOperations.OpenFile> chain) {
        try {
            byte[] found = disk.exists(noted.path()) ? disk.read(noted.path()) : new byte[0];
            if (Fingerprint.of(found).equals(noted.fingerprint())) {
                return noted;
            }
            for (DiskOperations.OpenFile journal : chain) {
                if (new JournalReplay().passedThrough(journal.read(), found)) {
                    return new FileState(noted.path(), Fingerprint.of(found));
                }
            }
            return noted;
        } catch (IOException e) {
            return noted;
        }
    }

    /** Null for a journal that is in use or can't be read now; it stays for another start. */
    private JournalReplay.Replayed read(Path file, List<DiskOperations.OpenFile> claimed) {
        try {
            DiskOperations.OpenFile open = disk.open(file);
            claimed.add(open);
            Optional<Boolean> free = claim(open);
            if (free.isPresent() && !free.get()) {
                return null;
            }
            JournalReplay.Replayed replayed = new JournalReplay().replay(open.read());
            boolean ended = free.isPresent() || replayed.party().map(one -> one.hasEnded(party.computer())).orElse(true);
            return ended ? replayed : null;
        } catch (IOException e) {
            return null;
        }
    }

    /** Empty where the system can't mark files; then the process in the head tells whether it still runs. */
    private static Optional<Boolean> claim(DiskOperations.OpenFile open) {
        try {
            return Optional.of(open.claim());
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private void settle(List<Path> chain, List<DiskOperations.OpenFile> claimed, boolean aside) {
        close(claimed);
        for (Path file : chain) {
            try {
                if (aside) {
                    disk.rename(file, file.resolveSibling(file.getFileName() + ".damaged-" + LocalDate.now(clock)));
                } else {
                    disk.delete(file);
                }
            } catch (IOException e) {
                // It is found once more at the next start, where its session is already in its file: nothing to do.
                continue;
            }
        }
    }

    private static void close(List<DiskOperations.OpenFile> files) {
        for (DiskOperations.OpenFile file : files) {
            try {
                file.close();
            } catch (IOException e) {
                // Only the mark is at stake, and the system lifts it with the process.
                continue;
            }
        }
    }
}
