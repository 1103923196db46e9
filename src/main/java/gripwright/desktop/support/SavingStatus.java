package gripwright.desktop.support;

import java.util.Objects;

/**
 * How the keeping of the session stands, as the status line says it.
 *
 * @param state where it stands
 * @param sentence for people; a failure says what to do and that nothing is lost
 */
public record SavingStatus(State state, String sentence) {

    /** Where the keeping stands. */
    public enum State {
        /** Lives in memory alone; nothing is written. */
        IN_MEMORY,
        KEEPING,
        KEPT,
        FAILED
    }

    public SavingStatus {
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(sentence, "sentence");
    }

    public static SavingStatus inMemory() {
        return new SavingStatus(State.IN_MEMORY, "Not kept on disk");
    }
}
