package gripwright.desktop.support;

import java.util.Objects;

/**
 * One line at the foot of the window: what was just done, or what could not be.
 *
 * @param kind note or problem
 * @param text a sentence for people; empty for nothing to say
 */
public record StatusMessage(Kind kind, String text) {

    /** Whether the line asks for attention. */
    public enum Kind {
        NOTE,
        PROBLEM
    }

    public StatusMessage {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(text, "text");
    }

    public static StatusMessage none() {
        return new StatusMessage(Kind.NOTE, "");
    }

    public static StatusMessage note(String text) {
        return new StatusMessage(Kind.NOTE, text);
    }

    public static StatusMessage problem(String text) {
        return new StatusMessage(Kind.PROBLEM, text);
    }
}
