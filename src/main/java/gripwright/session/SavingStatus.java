package gripwright.session;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * How safe the session is, with the reason where it is not.
 *
 * @param state the one thing to show
 * @param revision the newest revision that this is about
 * @param keptRevision every change up to this revision is on a disk, forced; a shot is kept when its revision is
 * @param savedRevision every change up to this revision is in the session's file
 * @param file the session's file; empty while it has none
 * @param sentence for people: what is so, why, and what happens next
 * @param notices what happened on the way and stays worth knowing, such as a copy made in a conflict
 */
public record SavingStatus(State state, long revision, long keptRevision, long savedRevision,
        Optional<FileState> file, String sentence, List<String> notices) {

    /** What is to be shown. */
    public enum State {
        /** Everything is on this computer's disk, and in the file or about to be. */
        KEPT,
        /** Something lives in memory alone: for a moment while the disk works, longer where it refuses. */
        NOT_ON_DISK_YET,
        /** Everything is in the journal, but the file could not be saved. */
        NOT_SAVED_TO_FILE
    }

    public SavingStatus {
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(sentence, "sentence");
        notices = List.copyOf(notices);
    }

    /** Whether something is wrong, rather than merely on its way. */
    public boolean isTrouble() {
        return state == State.NOT_SAVED_TO_FILE || state == State.NOT_ON_DISK_YET && !sentence.equals(ON_ITS_WAY);
    }

    static final String ON_ITS_WAY = "Being kept";
}
