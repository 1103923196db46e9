package gripwright.intake;

import java.util.ArrayList;
import java.util.List;

/**
 * Splits text into records and cells as RFC 4180 describes, with any delimiter, and goes on after a broken quotation
 * mark.
 *
 * <p>A parser of ours and not a library's, since a file from a bay must be read on past its faults: each record keeps
 * the line it began on, and a quotation mark that is opened and never closed spoils its own line only.
 */
final class CsvTokenizer {

    /** A quoted cell with more line breaks than this is taken for one whose closing mark is missing. */
    private static final int MOST_BREAKS_IN_A_CELL = 20;
    /** After so many broken marks in one record its marks are letters like others; each costs a look at what follows. */
    private static final int MOST_BROKEN_IN_A_RECORD = 100;

    private final String text;
    private final char delimiter;
    private final int limit;
    private int at;
    private int line;
    private boolean broken;
    private int brokenMarks;

    private CsvTokenizer(String text, char delimiter, int firstLine, int limit) {
        this.text = text;
        this.delimiter = delimiter;
        this.line = firstLine;
        this.limit = limit;
    }

    /** All records of a text whose first line has this number. */
    static List<CsvRow> rows(String text, char delimiter, int firstLine) {
        return new CsvTokenizer(text, delimiter, firstLine, Integer.MAX_VALUE).read();
    }

    /** At most so many records from the beginning. */
    static List<CsvRow> firstRows(String text, char delimiter, int most) {
        return new CsvTokenizer(text, delimiter, 1, most).read();
    }

    private List<CsvRow> read() {
        List<CsvRow> rows = new ArrayList<>();
        while (at < text.length() && rows.size() < limit) {
            int begin = line;
            broken = false;
            brokenMarks = 0;
            List<String> cells = record();
            rows.add(new CsvRow(begin, cells, broken));
        }
        return rows;
    }

    private List<String> record() {
        List<String> cells = new ArrayList<>();
        while (true) {
            cells.add(cell());
            if (at >= text.length()) {
                return cells;
            }
            char stop = text.charAt(at);
            at++;
            if (stop == delimiter) {
                if (at >= text.length()) {
                    cells.add("");
                    return cells;
                }
                continue;
            }
            if (stop == '\r' && at < text.length() && text.charAt(at) == '\n') {
                at++;
            }
            line++;
            return cells;
        }
    }

    private String cell() {
        int start = at;
        while (start < text.length() && text.charAt(start) == ' ' && delimiter != ' ') {
            start++;
        }
        if (start < text.length() && text.charAt(start) == '"') {
            String quoted = brokenMarks < MOST_BROKEN_IN_A_RECORD ? quoted(start) : null;
            if (quoted != null) {
                return quoted;
            }
            broken = true;
            brokenMarks++;
        }
        int end = at;
        while (end < text.length() && !isStop(text.charAt(end))) {
            end++;
        }
        String cell = text.substring(at, end);
        at = end;
        return cell;
    }

    /** The content of a quoted cell; null, with nothing consumed, where its closing mark is missing. */
    private String quoted(int open) {
        StringBuilder content = new StringBuilder();
        int breaks = 0;
        for (int i = open + 1; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"') {
                if (i + 1 < text.length() && text.charAt(i + 1) == '"') {
                    content.append('"');
                    i++;
                    continue;
                }
                int after = afterSpaces(i + 1);
                if (after >= text.length() || isStop(text.charAt(after))) {
                    at = after;
                    line += breaks;
                    return content.toString();
                }
                if (breaks > 0) {
                    return null;
                }
            } else if (c == '\n' || c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n')) {
                breaks++;
                if (breaks > MOST_BREAKS_IN_A_CELL) {
                    return null;
                }
            }
            content.append(c);
        }
        return null;
    }

    private int afterSpaces(int from) {
        int after = from;
        while (after < text.length() && text.charAt(after) == ' ') {
            after++;
        }
        return after;
    }

    private boolean isStop(char c) {
        return c == delimiter || c == '\n' || c == '\r';
    }
}
