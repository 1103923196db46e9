package gripwright.desktop.bay;

/** What became of one cell of the entry line while it is typed. */
public sealed interface EntryCell {

    /** Nothing typed: this reading was not taken. */
    record Blank() implements EntryCell {
    }

    /**
     * A reading in internal units.
     *
     * @param internal the value
     * @param unusual why it is unusual, in a sentence; empty for an ordinary one. It is taken all the same
     */
    record Reading(double internal, String unusual) implements EntryCell {

        public boolean isUnusual() {
            return !unusual.isEmpty();
        }
    }

    /** Something that is no reading; the sentence says what and how to write it. */
    record Wrong(String sentence) implements EntryCell {
    }
}
