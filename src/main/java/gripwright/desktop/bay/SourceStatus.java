package gripwright.desktop.bay;

import java.time.Duration;
import java.time.Instant;

/**
 * How the source that shots arrive from is doing.
 *
 * @param name file, folder or rehearsal; empty where shots are typed
 * @param state how it is
 * @param lastReading when the last reading came; null before the first
 * @param problem what is wrong, in a sentence; empty where nothing is
 */
public record SourceStatus(String name, State state, Instant lastReading, String problem) {

    /** How a source is doing. */
    public enum State {
        /** Shots are typed. */
        KEYBOARD,
        ALIVE,
        /** It can't be read just now; it is tried again. */
        TROUBLED,
        REHEARSAL
    }

    private static final int MINUTE = 60;
    private static final int HOUR = 3600;

    public static SourceStatus keyboard() {
        return new SourceStatus("", State.KEYBOARD, null, "");
    }

    public SourceStatus withLastReading(Instant at) {
        return new SourceStatus(name, state, at, problem);
    }

    public boolean isRehearsal() {
        return state == State.REHEARSAL;
    }

    /** 'shots.csv: alive, last reading 4 s ago'. */
    public String text(Instant now) {
        return switch (state) {
            case KEYBOARD -> "shots are typed";
            case ALIVE -> name + ": alive, " + age(now);
            case TROUBLED -> name + ": " + problem;
            case REHEARSAL -> "rehearsal, no real shots: " + name + ", " + age(now);
        };
    }

    private String age(Instant now) {
        if (lastReading == null) {
            return "no reading yet";
        }
        long seconds = Math.max(0, Duration.between(lastReading, now).toSeconds());
        return "last reading " + (seconds < 2 * MINUTE ? seconds + " s ago"
                : seconds < 2 * HOUR ? seconds / MINUTE + " min ago" : seconds / HOUR + " h ago");
    }
}
