package gripwright.intake;

import java.util.List;

/** Finds the line of headings among title lines and data. */
final class HeaderSearch {

    private static final int ROWS_LOOKED_AT = 60;

    private HeaderSearch() {
    }

    /** How many headings are known in the best line of headings; 0 where there is none. */
    static int bestScore(List<CsvRow> rows, ColumnMapping mapping) {
        int best = 0;
        for (int i = 0; i < Math.min(rows.size(), ROWS_LOOKED_AT); i++) {
            best = Math.max(best, known(rows.get(i), mapping));
        }
        return best;
    }

    /** The index of the line of headings; −1 where no line has a known heading. */
    static int find(List<CsvRow> rows, ColumnMapping mapping) {
        int best = 0;
        int found = -1;
        for (int i = 0; i < Math.min(rows.size(), ROWS_LOOKED_AT); i++) {
            int known = known(rows.get(i), mapping);
            if (known > best) {
                best = known;
                found = i;
            }
        }
        return found >= 0 ? found : firstOfWords(rows, mapping);
    }

    /** Where columns are set by their places, the first line of words above a line with numbers. */
    private static int firstOfWords(List<CsvRow> rows, ColumnMapping mapping) {
        for (int i = 0; i + 1 < Math.min(rows.size(), ROWS_LOOKED_AT); i++) {
            CsvRow row = rows.get(i);
            if (row.filled() > 1 && numbers(row) == 0 && numbers(rows.get(i + 1)) > 0) {
                return i;
            }
        }
        return -1;
    }

    /** How many cells are known headings; 0 for a line that holds numbers. */
    static int known(CsvRow row, ColumnMapping mapping) {
        int known = 0;
        for (int position = 0; position < row.cells().size(); position++) {
            String cell = CellText.clean(row.cell(position));
            if (cell.isEmpty()) {
                continue;
            }
            if (isNumber(cell)) {
                return 0;
            }
            if (HeaderText.of(cell).isKnown() || isMapped(cell, mapping)) {
                known++;
            }
        }
        return known;
    }

    private static boolean isMapped(String heading, ColumnMapping mapping) {
        String key = HeaderText.key(heading);
        return mapping.columns().stream().anyMatch(rule -> HeaderText.key(rule.heading()).equals(key));
    }

    /** Whether a later line is a line of headings again: most of its cells are known and none is a number. */
    static boolean isHeaderAgain(CsvRow row, ColumnMapping mapping) {
        String first = CellText.clean(row.cell(0));
        if (row.cells().size() < 2 || CellText.hasDigit(first) && first.length() < 3) {
            return false;
        }
        int known = known(row, mapping);
        return known >= 2 && known * 2 >= row.filled();
    }

    private static int numbers(CsvRow row) {
        int numbers = 0;
        for (String cell : row.cells()) {
            if (isNumber(CellText.clean(cell))) {
                numbers++;
            }
        }
        return numbers;
    }

    private static boolean isNumber(String clean) {
        if (clean.isEmpty()) {
            return false;
        }
        char first = clean.charAt(0);
        return (first >= '0' && first <= '9' || first == '-' || first == '+' || first == '.')
                && NumberShape.of(clean).isNumber();
    }
}
