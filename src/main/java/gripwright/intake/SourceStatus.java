package gripwright.intake;

import java.time.Duration;
import java.time.Instant;

/**
 * How a live source is.
 *
 * @param state what it is doing
 * @param source its name
 * @param lastReading when the last shot came; null before the first
 * @param detail what is in the way; empty where nothing is
 */
public record SourceStatus(State state, String source, Instant lastReading, String detail) {

    /** What a live source is doing. */
    public enum State {
        /** There, and readings have come. */
        ALIVE,
        /** There, and nothing has come yet. */
        WAITING,
        /** The file or folder is not there; looked for again and again. */
        GONE,
        /** The file is there and can't be read just now; tried again and again. */
        HELD,
        /** Closed. */
        STOPPED
    }

    /** In words, for the line below the bay: 'shots.csv: alive, last reading 4 s ago'. */
    public String text(Instant now) {
        String said = switch (state) {
            case ALIVE -> "alive, last reading " + ago(Duration.between(lastReading, now));
            case WAITING -> "there, waiting for the first reading";
            case GONE -> "not there; it is looked for again";
            case HELD -> "can't be read just now; it is tried again";
            case STOPPED -> "no longer watched";
        };
        return source + ": " + said + (detail.isEmpty() ? "" : " (" + detail + ")");
    }

    private static String ago(Duration age) {
        long seconds = Math.max(0, age.toSeconds());
        if (seconds < 100) {
            return seconds + " s ago";
        }
        return seconds < 100 * 60 ? seconds / 60 + " min ago" : seconds / 3600 + " h ago";
    }
}
