package gripwright.intake;

import java.util.ArrayList;
import java.util.List;

/**
 * A line of headings with the line of units under it, turned into columns.
 *
 * @param line the line it stands on
 * @param columns its columns
 * @param hasUnitLine whether the next line holds the units
 */
record FileHeader(int line, List<Column> columns, boolean hasUnitLine) {

    static FileHeader of(CsvRow headings, CsvRow next, ColumnMapping mapping) {
        boolean unitLine = next != null && isUnitLine(next);
        List<Column> columns = new ArrayList<>();
        for (int position = 0; position < headings.cells().size(); position++) {
            String below = unitLine ? unitText(next.cell(position)) : "";
            columns.add(column(HeaderText.of(headings.cell(position)).withUnitBelow(below), position, mapping));
        }
        return new FileHeader(headings.line(), List.copyOf(columns), unitLine);
    }

    private static Column column(HeaderText heading, int position, ColumnMapping mapping) {
        ColumnRule rule = mapping.ruleFor(heading.raw(), position);
        String unitText = heading.unit();
        if (rule != null) {
            ColumnMeaning meaning = ColumnMeaning.ofKey(rule.meaning()).orElseThrow();
            String wanted = rule.unit().isEmpty() ? unitText : rule.unit();
            return new Column(position, heading.raw(), meaning, wanted, rule.flipped(), legend(heading, rule), true);
        }
        ColumnMeaning only = heading.meanings().size() == 1 ? heading.meanings().iterator().next() : null;
        return new Column(position, heading.raw(), only, unitText, false, heading.legend(), false);
    }

    /** What a rule says about the sign wins over the heading; a rule that says nothing about it leaves the heading's word. */
    private static List<String> legend(HeaderText heading, ColumnRule rule) {
        if (!rule.plus().isEmpty()) {
            return List.of("+" + rule.plus());
        }
        return rule.flipped() ? List.of() : heading.legend();
    }

    /** Columns known by their places alone, where a file has no headings. */
    static FileHeader byPlace(int line, int width, ColumnMapping mapping) {
        List<Column> columns = new ArrayList<>();
        for (int position = 0; position < width; position++) {
            columns.add(column(HeaderText.of(""), position, mapping));
        }
        return new FileHeader(line, List.copyOf(columns), false);
    }

    private static String unitText(String cell) {
        String text = CellText.clean(cell);
        if (text.length() > 2 && "([{".indexOf(text.charAt(0)) >= 0) {
            text = text.substring(1, text.length() - 1).strip();
        }
        return UnitWords.isUnit(text) ? text : "";
    }

    /** Whether at least half of what is written on the line are units, and nothing is a number or a heading. */
    private static boolean isUnitLine(CsvRow row) {
        int units = 0;
        int filled = 0;
        for (String cell : row.cells()) {
            String text = CellText.clean(cell);
            if (CellText.saysNothing(text)) {
                continue;
            }
            filled++;
            if (!unitText(text).isEmpty()) {
                units++;
            } else if (CellText.hasDigit(text)) {
                return false;
            }
        }
        return units > 0 && units * 2 >= filled;
    }

    FileHeader withColumns(List<Column> columns) {
        return new FileHeader(line, List.copyOf(columns), hasUnitLine);
    }

    /** The first column with this role; null where there is none. */
    Column column(ColumnRole role) {
        for (Column column : columns) {
            if (column.is(role)) {
                return column;
            }
        }
        return null;
    }

    /** Whether another line of headings is the same. */
    boolean isSameAs(CsvRow row) {
        for (Column column : columns) {
            if (!HeaderText.key(row.cell(column.position())).equals(HeaderText.key(column.heading()))) {
                return false;
            }
        }
        return true;
    }
}
