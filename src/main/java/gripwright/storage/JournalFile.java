package gripwright.storage;

import com.fasterxml.jackson.databind.ObjectMapper;
import gripwright.model.ProblemException;
import gripwright.model.Session;
import gripwright.session.FileState;
import gripwright.session.Journal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The journal of one session: a chain of files of which the newest alone counts once it is complete.
 *
 * <p>A file begins with the whole session and goes on with what changed. Past a size, and after any failure, a new file
 * with the whole session takes its place.
 */
final class JournalFile implements Journal {

    private static final int LARGEST_BYTES = 2_000_000;

    private final DiskOperations disk;
    private final Path folder;
    private final String chain;
    private final Clock clock;
    private final Party party;
    private final JournalRecord records;
    private final TreeChanges differences;
    private final List<Path> older = new ArrayList<>();
    private int sequence;
    private Path path;
    private DiskOperations.OpenFile open;
    private FileState file;
    private Session kept;
    private boolean broken;
    private long size;

    private JournalFile(DiskOperations disk, Path folder, String chain, Clock clock, Party party) {
        ObjectMapper mapper = Json.mapper();
        this.disk = disk;
        this.folder = folder;
        this.chain = chain;
        this.clock = clock;
        this.party = party;
        this.records = new JournalRecord(mapper);
        this.differences = new TreeChanges(mapper);
    }

    /** Begins a chain; the session is on the disk itself when this returns. */
    static JournalFile begin(DiskOperations disk, Path folder, String chain, Clock clock, Party party, Session session,
            FileState file) throws ProblemException {
        JournalFile journal = new JournalFile(disk, folder, chain, clock, party);
        journal.file = file;
        journal.anew(session);
        return journal;
    }

    @Override
    public void keep(Session session) throws ProblemException {
        if (broken || size > LARGEST_BYTES) {
            anew(session);
            return;
        }
        List<Map<String, Object>> changes = differences.between(kept, session);
        if (!changes.isEmpty()) {
            append(records.changes(changes));
        }
        kept = session;
    }

    @Override
    public void file(FileState now) throws ProblemException {
        file = now;
        if (!broken) {
            append(records.file(now));
            sweep(older.size());
        }
    }

    @Override
    public void finish() {
        leave();
        older.add(path);
        sweep(older.size());
    }

    @Override
    public void leave() {
        try {
            if (open != null) {
                open.close();
            }
        } catch (IOException e) {
            // Everything in it was forced before; there is nothing left to lose.
            broken = true;
        }
        open = null;
    }

    private void append(byte[] line) throws ProblemException {
        try {
            open.append(line);
            open.force();
            size += line.length;
        } catch (IOException e) {
            broken = true;
            throw DiskProblem.journal(path, e);
        }
    }

    private void anew(Session session) throws ProblemException {
        broken = true;
        if (path != null) {
            leave();
            older.add(path);
        }
        sequence++;
        path = folder.resolve(String.format("%s-%04d%s", chain, sequence, JournalShelf.ENDING));
        byte[] beginning = beginning(session);
        try {
            disk.createFolders(folder);
            open = disk.create(path);
            claim();
            open.append(beginning);
            open.force();
            disk.forceFolder(folder);
        } catch (IOException e) {
            throw DiskProblem.journal(path, e);
        }
        size = beginning.length;
        kept = session;
        broken = false;
        // The last one stays until the file is noted again: a saving may be on its way whose content only it went through.
        sweep(older.size() - 1);
    }

    private byte[] beginning(Session session) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.writeBytes(records.head(clock.instant(), party));
        if (file != null) {
            bytes.writeBytes(records.file(file));
        }
        bytes.writeBytes(records.session(session));
        return bytes.toByteArray();
    }

    private void claim() {
        try {
            open.claim();
        } catch (IOException e) {
            // Where the system can't mark files in use, the process in the head tells whether it still runs.
            return;
        }
    }

    /** Deletes the oldest files of the chain; one that resists is found at the next start. */
    private void sweep(int count) {
        for (Path old : List.copyOf(older.subList(0, Math.max(0, count)))) {
            try {
                disk.delete(old);
                older.remove(old);
            } catch (IOException e) {
                continue;
            }
        }
    }
}
