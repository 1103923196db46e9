package gripwright.desktop.support;

import java.util.List;
import java.util.stream.Collectors;

/** Rows of text as tab-separated lines, which spreadsheets take from the clipboard. */
public final class TabSeparated {

    private TabSeparated() {
    }

    /** One line a row, the heading first; tabs and line breaks inside a cell become spaces. */
    public static String of(List<String> heading, List<List<String>> rows) {
        return line(heading) + rows.stream().map(TabSeparated::line).collect(Collectors.joining());
    }

    private static String line(List<String> cells) {
        return cells.stream().map(cell -> cell == null ? "" : cell.replaceAll("[\\t\\r\\n]+", " "))
                .collect(Collectors.joining("\t", "", "\n"));
    }
}
