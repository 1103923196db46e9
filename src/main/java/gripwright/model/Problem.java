package gripwright.model;

/**
 * Something that could not be taken as it is: what, where, and what to do.
 *
 * @param severity how bad
 * @param where a file's name or the place of the program; may be empty
 * @param line line from 1; null where it does not apply
 * @param column column from 1; null where it does not apply
 * @param found what was found; may be empty
 * @param sentence what happened, what was expected and what to do, for people
 */
public record Problem(Severity severity, String where, Integer line, Integer column, String found, String sentence) {

    /** How bad a problem is. */
    public enum Severity {
        /** Taken, and worth a look. */
        NOTE,
        /** Left out, everything else went in. */
        REJECTED,
        /** Nothing could be done. */
        FATAL
    }

    public Problem {
        Check.present(severity, "severity of a problem");
        where = Check.orEmpty(where);
        if (line != null) {
            Check.atLeast(line, 1, "line of a problem");
        }
        if (column != null) {
            Check.atLeast(column, 1, "column of a problem");
        }
        found = Check.orEmpty(found);
        Check.text(sentence, "sentence of a problem");
    }

    /** Where and what in one line: 'shots.csv, line 7, column 3: …'. */
    public String text() {
        StringBuilder text = new StringBuilder(where);
        if (line != null) {
            text.append(text.isEmpty() ? "line " : ", line ").append(line);
        }
        if (column != null) {
            text.append(", column ").append(column);
        }
        return text.isEmpty() ? sentence : text + ": " + sentence;
    }
}
