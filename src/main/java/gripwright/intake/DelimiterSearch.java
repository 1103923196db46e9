package gripwright.intake;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Finds out which of comma, semicolon and tab parts the cells of a file. */
final class DelimiterSearch {

    private static final char[] CANDIDATES = {';', '\t', ','};
    private static final int ROWS_LOOKED_AT = 100;
    private static final int CHARACTERS_LOOKED_AT = 1 << 17;

    private DelimiterSearch() {
    }

    /** The delimiter under which most headings are known, else the one that makes the most even columns. */
    static char find(String text, ColumnMapping mapping) {
        String head = text.length() <= CHARACTERS_LOOKED_AT ? text : text.substring(0, CHARACTERS_LOOKED_AT);
        char best = ',';
        double bestScore = -1;
        for (char candidate : CANDIDATES) {
            List<CsvRow> rows = CsvTokenizer.firstRows(head, candidate, ROWS_LOOKED_AT);
            double score = HeaderSearch.bestScore(rows, mapping) + evenness(rows);
            if (score > bestScore) {
                best = candidate;
                bestScore = score;
            }
        }
        return best;
    }

    /** Below 1: the share of rows that have the commonest number of cells, where that is more than one. */
    private static double evenness(List<CsvRow> rows) {
        Map<Integer, Integer> counts = new HashMap<>();
        int filled = 0;
        for (CsvRow row : rows) {
            if (!row.isBlank()) {
                filled++;
                if (row.cells().size() > 1) {
                    counts.merge(row.cells().size(), 1, Integer::sum);
                }
            }
        }
        int most = counts.values().stream().mapToInt(Integer::intValue).max().orElse(0);
        return filled == 0 ? 0 : 0.99 * most / filled;
    }
}
