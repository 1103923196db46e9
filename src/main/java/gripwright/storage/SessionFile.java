package gripwright.storage;

import gripwright.model.ProblemException;
import gripwright.model.Session;
import java.nio.file.Path;
import java.util.List;

/** Reads and writes one session as one JSON file; the format is described in docs/file-format.md. */
public final class SessionFile {

    /** The format that is written. */
    public static final int FORMAT_VERSION = 1;

    private final DocumentFile<Session> file;
    private final VersionedFormat<Session> format =
            new VersionedFormat<>("session", FORMAT_VERSION, Session.class, List.of());

    public SessionFile() {
        this(new LocalDisk());
    }

    SessionFile(DiskOperations disk) {
        this.file = new DocumentFile<>(format, disk);
    }

    /**
     * Reads a session.
     *
     * @throws ProblemException with a sentence, and line and column where there are any; the file is untouched
     */
    public Loaded<Session> read(Path path) throws ProblemException {
        return file.read(path);
    }

    /**
     * Writes a session in one step: afterwards, or after a crash at any moment, either the old file or the new one is
     * there, complete.
     *
     * @throws ProblemException with a sentence; the old file stands
     */
    public void write(Path path, Session session) throws ProblemException {
        file.write(path, session);
    }

    /** The session as the file's bytes. */
    public byte[] bytes(Session session) {
        return format.write(session);
    }

    /**
     * Reads a session out of bytes.
     *
     * @param where the name to give in problems
     * @throws ProblemException with a sentence, and line and column where there are any
     */
    public Loaded<Session> parse(byte[] bytes, String where) throws ProblemException {
        return format.read(bytes, where);
    }
}
