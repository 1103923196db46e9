package gripwright.statistics;

/**
 * A row that stands out, and what told.
 *
 * @param row    index of the row
 * @param cause  whether one reading stands out by itself or several do together
 * @param column the reading that told: the farthest out, or the one whose removal brings the row nearest to the others
 * @param score  modified z of that reading, or the distance (not squared) of the row
 * @param limit  what the score would have to stay within
 */
public record OutlierFlag(int row, Cause cause, int column, double score, double limit) {

    /** What stands out. */
    public enum Cause {
        /** One reading by itself. */
        ONE_READING,
        /** No reading by itself, but the readings don't go together as in the other rows. */
        READINGS_TOGETHER
    }
}
