package gripwright.session;

/** What became of an attempt to save a session to its file. */
public sealed interface SaveOutcome {

    /** It is in the file, and forced. */
    record Saved(FileState file) implements SaveOutcome {
    }

    /**
     * Another window, here or on another computer, is at work on the file; nothing was written.
     *
     * @param by who, in words: 'a window on the computer BAY-2'
     */
    record InUse(String by) implements SaveOutcome {
    }

    /** Somebody else wrote the file since this window last did; nothing was written. */
    record Changed() implements SaveOutcome {
    }

    /** The file has gone since, though its folder answers; nothing was written. */
    record Gone() implements SaveOutcome {
    }
}
