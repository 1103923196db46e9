package gripwright.desktop.balance;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Lines for a spreadsheet after RFC 4180; with a decimal comma the cells are parted by semicolons, as spreadsheets of such
 * locales expect. Signs are written as plain hyphens and unknown cells left empty, so that numbers stay numbers.
 */
final class SetCsv {

    private static final char TRUE_MINUS = '\u2212';

    private SetCsv() {
    }

    static String of(List<String> headings, List<List<String>> rows, char decimalMark) {
        String delimiter = decimalMark == ',' ? ";" : ",";
        StringBuilder text = new StringBuilder(line(headings, delimiter));
        rows.forEach(row -> text.append(line(row, delimiter)));
        return text.toString();
    }

    private static String line(List<String> cells, String delimiter) {
        return cells.stream().map(SetCsv::plain).map(cell -> quoted(cell, delimiter))
                .collect(Collectors.joining(delimiter, "", "\r\n"));
    }

    static String plain(String cell) {
        return cell.equals(Figures.NONE) ? "" : cell.replace(TRUE_MINUS, '-');
    }

    private static String quoted(String cell, String delimiter) {
        boolean needed = cell.contains(delimiter) || cell.contains("\"") || cell.contains("\n") || cell.contains("\r");
        return needed ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell;
    }
}
