package gripwright.session;

import gripwright.model.ProblemException;
import gripwright.model.Session;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The place of the journals on this computer's own disk; a port that storage implements. */
public interface JournalFolder {

    /**
     * A session found in a journal that no running window writes.
     *
     * @param session as it was last kept; empty where the journal holds none that can be read
     * @param file the session's file, if it had one
     * @param sentences what is to be said of it, such as damage; empty where there is nothing
     * @param wentThrough whether the journal's session once was this one; only before it is settled
     * @param settled removes the journal (a damaged one is put aside instead), once the session is safe elsewhere
     */
    record Found(Optional<Session> session, Optional<FileState> file, List<String> sentences,
            Predicate<Session> wentThrough, Runnable settled) {

        public Found {
            sentences = List.copyOf(sentences);
        }
    }

    /**
     * Begins a journal with the whole session; it is on the disk itself when this returns.
     *
     * @param file the session's file; null where it has none yet
     */
    Journal begin(Session session, FileState file) throws ProblemException;

    /** The journals that a crash left, newest first. */
    List<Found> left() throws ProblemException;
}
