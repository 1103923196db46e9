package gripwright.intake;

import java.util.List;

/**
 * One record of a CSV file.
 *
 * @param line the line it begins on, from 1
 * @param cells its cells, quotes removed, as written otherwise
 * @param brokenQuote whether a quotation mark was opened and never closed
 */
record CsvRow(int line, List<String> cells, boolean brokenQuote) {

    /** The cell at a position from 0; empty where the record ends before it. */
    String cell(int position) {
        return position < cells.size() ? cells.get(position) : "";
    }

    /** Whether nothing is written in any cell. */
    boolean isBlank() {
        for (String cell : cells) {
            if (!CellText.clean(cell).isEmpty()) {
                return false;
            }
        }
        return true;
    }

    /** How many cells have something in them. */
    int filled() {
        int filled = 0;
        for (String cell : cells) {
            if (!CellText.clean(cell).isEmpty()) {
                filled++;
            }
        }
        return filled;
    }

    /** The record in short, for a report. */
    String excerpt() {
        String joined = String.join(" | ", cells).replaceAll("\\s+", " ").strip();
        return joined.length() <= 80 ? joined : joined.substring(0, 79) + "\u2026";
    }
}
