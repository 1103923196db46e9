package gripwright.app;

import java.util.ArrayList;
import java.util.List;

/** A table in letters of one width: first and last column set left, the others right. */
final class TextTable {

    private final List<String[]> rows = new ArrayList<>();
    private final int columns;

    TextTable(String... heading) {
        columns = heading.length;
        rows.add(heading);
    }

    void row(String... cells) {
        if (cells.length != columns) {
            throw new IllegalArgumentException("A row of this table has " + columns + " cells, not " + cells.length);
        }
        rows.add(cells);
    }

    String text(String indent) {
        int[] widths = new int[columns];
        for (String[] row : rows) {
            for (int at = 0; at < columns; at++) {
                widths[at] = Math.max(widths[at], row[at].length());
            }
        }
        StringBuilder out = new StringBuilder();
        for (String[] row : rows) {
            StringBuilder line = new StringBuilder(indent);
            for (int at = 0; at < columns; at++) {
                boolean left = at == 0 || at == columns - 1;
                String space = " ".repeat(widths[at] - row[at].length());
                line.append(left ? row[at] + space : space + row[at]).append(at < columns - 1 ? "  " : "");
            }
            out.append(line.toString().stripTrailing()).append('\n');
        }
        return out.toString();
    }
}
