package gripwright.model;

import java.time.Instant;

/**
 * Something noted in the bay.
 *
 * @param at when; null where not known
 * @param kind what it is about; a change of ball, glove or mat is told to the comparison
 * @param text in the fitter's words; may be empty for a change
 * @param afterShotId the shot it came after; null for the start of the stint
 */
public record Note(Instant at, Kind kind, String text, String afterShotId) {

    /** What a note is about. */
    public enum Kind {
        NOTE,
        BALL_CHANGED,
        GLOVE_CHANGED,
        MAT_CHANGED,
        TWIST_CHECKED,
        PAIN
    }

    public Note {
        Check.present(kind, "kind of a note");
        text = Check.orEmpty(text);
    }

    public Note withAt(Instant at) {
        return new Note(at, kind, text, afterShotId);
    }

    public Note withKind(Kind kind) {
        return new Note(at, kind, text, afterShotId);
    }

    public Note withText(String text) {
        return new Note(at, kind, text, afterShotId);
    }

    public Note withAfterShotId(String afterShotId) {
        return new Note(at, kind, text, afterShotId);
    }
}
