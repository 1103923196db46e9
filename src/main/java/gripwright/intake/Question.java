package gripwright.intake;

import java.util.List;

/**
 * Something a file leaves open that must be asked and never guessed; until it is answered, what depends on it is left
 * out.
 *
 * @param id the same for the same question of the same kind of file, so that a saved answer fits again
 * @param kind what it is about
 * @param sentence the question, for people
 * @param choices the possible answers
 * @param example a cell or heading that raised it; may be empty
 */
public record Question(String id, Kind kind, String sentence, List<Choice> choices, String example) {

    /** What is open. */
    public enum Kind {
        /** Numbers without a unit that could be in several. */
        UNIT,
        /** A heading that the trade uses for more than one thing. */
        MEANING,
        /** Two columns that could both be one thing. */
        WHICH_COLUMN,
        /** Whether '1.234' is one and a bit or more than a thousand. */
        DECIMAL_MARK,
        /** Whether the day or the month comes first. */
        DATE_ORDER,
        /** Words such as 'open' need the player's hand. */
        HANDEDNESS,
        /** Rows of several clubs, or of several players. */
        WHICH_ROWS,
        /** A heading that says something about its signs that is not understood. */
        SIGNS
    }

    public Question {
        choices = List.copyOf(choices);
        example = example == null ? "" : example;
    }
}
