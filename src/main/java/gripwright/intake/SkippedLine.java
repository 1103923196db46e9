package gripwright.intake;

/**
 * A line that holds no shot and isn't meant to.
 *
 * @param line from 1
 * @param reason what it is
 * @param text the line in short
 */
public record SkippedLine(int line, Reason reason, String text) {

    /** What a line without a shot is. */
    public enum Reason {
        TITLE,
        HEADER,
        REPEATED_HEADER,
        UNITS,
        SUMMARY,
        REMARK
    }
}
