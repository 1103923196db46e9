package gripwright.session;

import gripwright.model.Problem;
import gripwright.model.ProblemException;
import gripwright.model.Session;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Where session files are read and saved; a port that storage implements.
 *
 * <p>One repository stands for one window: what it has claimed, other repositories find in use. Its methods may take
 * long where a network does, and are called off the window's thread.
 */
public interface SessionRepository {

    /**
     * A session as it was read.
     *
     * @param session the session
     * @param file where from
     * @param problems what was passed over
     */
    record Read(Session session, FileState file, List<Problem> problems) {

        public Read {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Reads a session.
     *
     * @throws ProblemException with a sentence; the file is untouched
     */
    Read read(Path file) throws ProblemException;

    /**
     * The newest earlier version of a file that is damaged, which is put aside then under a name with the date; empty
     * where the file is not damaged or there is no earlier version.
     *
     * @throws ProblemException when the disk or the network refused
     */
    Optional<Read> rescue(Path file) throws ProblemException;

    /** The file as it is now, to be replaced deliberately (the person chose it). */
    FileState look(Path file) throws ProblemException;

    /** Whose work the file is in, if it is not this window's. */
    Optional<String> inUseBy(Path file);

    /**
     * Saves in one step, unless another window is at work on the file or has written it since.
     *
     * @param file what this window believes the file to be
     * @throws ProblemException when the disk or the network refused; the old file stands
     */
    SaveOutcome save(FileState file, Session session) throws ProblemException;

    /**
     * Saves beside a file under a new name that says why; never replaces anything.
     *
     * @param reason a word or two for the name: 'conflict'
     * @throws ProblemException when the disk or the network refused
     */
    FileState saveBeside(Path file, Session session, String reason) throws ProblemException;

    /**
     * Puts a file that is damaged aside under a name with the date, so that its place is free and nothing is lost.
     *
     * @return the damaged file under its new name; empty where the file is not there or not damaged
     */
    Optional<FileState> freeDamaged(Path file) throws ProblemException;

    /** Says to other windows that this one is still at work on the file; claims it where nobody does. */
    void beat(Path file);

    /** Lets go of a file; others may claim it. */
    void release(Path file);
}
