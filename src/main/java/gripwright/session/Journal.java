package gripwright.session;

import gripwright.model.ProblemException;
import gripwright.model.Session;

/** The running record of one session on this computer's own disk; confined to one thread at a time. */
public interface Journal {

    /**
     * Appends what changed since the last call; it is on the disk itself when this returns.
     *
     * @throws ProblemException when the disk refused; since nobody knows then how much of the record is there, the next
     *     call writes the whole session anew
     */
    void keep(Session session) throws ProblemException;

    /** Notes that the session has this file now, as it was when last read or written. */
    void file(FileState file) throws ProblemException;

    /** Ends the journal and removes it: all of it is in the session's file. */
    void finish();

    /** Ends the journal and leaves it for the next start to find. */
    void leave();
}
