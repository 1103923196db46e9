package gripwright.intake;

import gripwright.model.Problem;
import java.util.ArrayList;
import java.util.List;

/**
 * Sorts the lines of a file into headings, units, data, summaries and remarks.
 *
 * @param headers the lines of headings, in order
 * @param data the lines of data
 * @param skipped the lines that aren't meant to hold a shot
 */
record FileLines(List<FileHeader> headers, List<DataLine> data, List<SkippedLine> skipped) {

    /** Sorts a whole file; without headers where no line of headings was found. */
    static FileLines of(List<CsvRow> rows, ColumnMapping mapping) {
        int at = HeaderSearch.find(rows, mapping);
        List<SkippedLine> skipped = new ArrayList<>();
        if (at < 0) {
            return new FileLines(List.of(), List.of(), List.of());
        }
        for (int i = 0; i < at; i++) {
            skip(skipped, rows.get(i), SkippedLine.Reason.TITLE);
        }
        List<FileHeader> headers = new ArrayList<>();
        List<DataLine> data = new ArrayList<>();
        sort(rows, at, mapping, headers, data, skipped);
        return new FileLines(headers, data, skipped);
    }

    /** Sorts a file that has no headings; every line may hold a shot. */
    static FileLines byPlace(List<CsvRow> rows, ColumnMapping mapping) {
        int width = rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
        int line = rows.isEmpty() ? 1 : rows.get(0).line();
        return more(rows, FileHeader.byPlace(line, width, mapping), mapping);
    }

    /** Sorts further lines under headings found before. */
    static FileLines more(List<CsvRow> rows, FileHeader header, ColumnMapping mapping) {
        List<FileHeader> headers = new ArrayList<>(List.of(header));
        List<DataLine> data = new ArrayList<>();
        List<SkippedLine> skipped = new ArrayList<>();
        sort(rows, 0, mapping, headers, data, skipped);
        return new FileLines(headers, data, skipped);
    }

    private static void sort(List<CsvRow> rows, int from, ColumnMapping mapping, List<FileHeader> headers,
            List<DataLine> data, List<SkippedLine> skipped) {
        int end = beginOfSummariesAtTheEnd(rows, from);
        for (int i = from; i < rows.size(); i++) {
            CsvRow row = rows.get(i);
            if (row.isBlank()) {
                continue;
            }
            FileHeader current = headers.isEmpty() ? null : headers.get(headers.size() - 1);
            if (current == null || HeaderSearch.isHeaderAgain(row, mapping)) {
                CsvRow next = i + 1 < rows.size() ? rows.get(i + 1) : null;
                FileHeader header = FileHeader.of(row, next, mapping);
                boolean again = current != null && current.isSameAs(row);
                skip(skipped, row, again ? SkippedLine.Reason.REPEATED_HEADER : SkippedLine.Reason.HEADER);
                if (!again) {
                    headers.add(header);
                }
                if (header.hasUnitLine()) {
                    i++;
                    skip(skipped, rows.get(i), SkippedLine.Reason.UNITS);
                }
            } else if (isSummary(row, current) || i >= end && isNewWord(row, data)) {
                skip(skipped, row, SkippedLine.Reason.SUMMARY);
            } else if (isRemark(row, current)) {
                skip(skipped, row, SkippedLine.Reason.REMARK);
            } else {
                data.add(new DataLine(row, headers.size() - 1));
            }
        }
        SummaryLines.takeOut(data, headers, skipped);
    }

    /** Where the last lines begin that all start with a word such as 'Average'. */
    private static int beginOfSummariesAtTheEnd(List<CsvRow> rows, int from) {
        int end = rows.size();
        while (end > from && (rows.get(end - 1).isBlank() || SummaryWords.isSummary(firstText(rows.get(end - 1))))) {
            end--;
        }
        return end;
    }

    private static String firstText(CsvRow row) {
        return row.cells().stream().map(CellText::clean).filter(text -> !text.isEmpty()).findFirst().orElse("");
    }

    /** Whether no shot above begins with the same word, as the label of a configuration would. */
    private static boolean isNewWord(CsvRow row, List<DataLine> data) {
        String word = firstText(row);
        return data.stream().noneMatch(line -> firstText(line.row()).equals(word));
    }

    private static void skip(List<SkippedLine> skipped, CsvRow row, SkippedLine.Reason reason) {
        if (!row.isBlank()) {
            skipped.add(new SkippedLine(row.line(), reason, row.excerpt()));
        }
    }

    private static boolean isSummary(CsvRow row, FileHeader header) {
        for (Column column : header.columns()) {
            String text = CellText.clean(row.cell(column.position()));
            if (text.isEmpty()) {
                continue;
            }
            boolean named = column.is(ColumnRole.SHOT_ID) || column.is(ColumnRole.TIME) || column.is(ColumnRole.DATE);
            if (named && (SummaryWords.isSummary(text) || SummaryWords.endsClear(text))) {
                return true;
            }
        }
        return beginsWithSummary(row, header);
    }

    private static boolean beginsWithSummary(CsvRow row, FileHeader header) {
        for (int position = 0; position < row.cells().size(); position++) {
            String text = CellText.clean(row.cell(position));
            if (text.isEmpty()) {
                continue;
            }
            Column column = position < header.columns().size() ? header.columns().get(position) : null;
            boolean words = column != null && column.meaning() != null && column.meaning().role() != null;
            return SummaryWords.isSummary(text) && (!words || isUnnamed(row, header));
        }
        return false;
    }

    /** Whether a line names neither its shot nor its time, though the file has a column for it. */
    private static boolean isUnnamed(CsvRow row, FileHeader header) {
        Column id = header.column(ColumnRole.SHOT_ID);
        Column time = header.column(ColumnRole.TIME);
        boolean any = id != null || time != null;
        return any && (id == null || CellText.saysNothing(CellText.clean(row.cell(id.position()))))
                && (time == null || CellText.saysNothing(CellText.clean(row.cell(time.position()))));
    }

    /** A single cell of words in a table of several columns. */
    private static boolean isRemark(CsvRow row, FileHeader header) {
        if (header.columns().size() < 3 || row.filled() != 1 || row.brokenQuote()) {
            return false;
        }
        for (int position = 0; position < row.cells().size(); position++) {
            String text = CellText.clean(row.cell(position));
            if (!text.isEmpty()) {
                Column column = position < header.columns().size() ? header.columns().get(position) : null;
                boolean reading = column != null && column.isMetric();
                return !CellText.hasDigit(text) || !reading && text.length() > 8;
            }
        }
        return false;
    }

    static Problem noHeader(String source) {
        return new Problem(Problem.Severity.FATAL, source, null, null, "",
                "No line of headings with a known term, such as 'Club speed', was found. Nothing was taken and nothing "
                        + "was changed; set the columns by hand, or look whether this is the right file.");
    }
}
