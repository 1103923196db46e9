package gripwright.model;

/**
 * Where a shot's readings came from, so that the same reading is never taken twice.
 *
 * @param kind file, keyboard, paste or rehearsal
 * @param name the source's name: a file name, 'keyboard'
 * @param shotId the source's own shot id; empty where it has none
 * @param time the source's own time, as it was written; empty where it has none
 * @param rowKey a digest of the row's cells; empty for typed shots
 * @param occurrence how many identical rows of this source came before, from 0
 */
public record ShotSource(Kind kind, String name, String shotId, String time, String rowKey, int occurrence) {

    /** How readings came in. */
    public enum Kind {
        FILE,
        KEYBOARD,
        PASTE,
        REHEARSAL
    }

    /** Typed by hand. */
    public static ShotSource keyboard() {
        return new ShotSource(Kind.KEYBOARD, "keyboard", "", "", "", 0);
    }

    public ShotSource {
        Check.present(kind, "kind of a source");
        name = Check.orEmpty(name);
        shotId = Check.orEmpty(shotId);
        time = Check.orEmpty(time);
        rowKey = Check.orEmpty(rowKey);
        Check.atLeast(occurrence, 0, "occurrence of a row");
    }
}
