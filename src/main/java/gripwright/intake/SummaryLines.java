package gripwright.intake;

import java.util.ArrayList;
import java.util.List;

/**
 * Takes out of a file's last lines those that sum up its shots though their word does not stand first: 'Average' in the
 * column of notes, 'A mean' where the label of a grip stands.
 */
final class SummaryLines {

    /** Fewer numbered lines than this say nothing about how shots are numbered. */
    private static final int LEAST_NUMBERED = 2;

    private final List<FileHeader> headers;

    private SummaryLines(List<FileHeader> headers) {
        this.headers = headers;
    }

    /** Moves such lines from the end of the data to the lines that are passed over. */
    static void takeOut(List<DataLine> data, List<FileHeader> headers, List<SkippedLine> skipped) {
        SummaryLines lines = new SummaryLines(headers);
        while (!data.isEmpty() && lines.isSummary(data.get(data.size() - 1))) {
            CsvRow row = data.remove(data.size() - 1).row();
            skipped.add(new SkippedLine(row.line(), SkippedLine.Reason.SUMMARY, row.excerpt()));
        }
        skipped.sort(java.util.Comparator.comparingInt(SkippedLine::line));
    }

    /** The last lines that have a word in place of the number that all others have; they may be shots or not. */
    static List<DataLine> doubtful(List<DataLine> data, List<FileHeader> headers) {
        SummaryLines lines = new SummaryLines(headers);
        int end = data.size();
        while (end > 0 && lines.isNamedByAWord(data.get(end - 1))) {
            end--;
        }
        List<DataLine> numbered = data.subList(0, end);
        boolean usual = end >= LEAST_NUMBERED && numbered.stream().allMatch(line -> lines.id(line).matches("#?\\d+\\.?"));
        return usual ? new ArrayList<>(data.subList(end, data.size())) : List.of();
    }

    private boolean isSummary(DataLine line) {
        FileHeader header = headers.get(line.header());
        boolean unnamed = header.column(ColumnRole.SHOT_ID) != null && id(line).isEmpty();
        for (Column column : header.columns()) {
            String text = CellText.clean(line.row().cell(column.position()));
            boolean name = column.is(ColumnRole.SHOT_ID) || unnamed && !column.is(ColumnRole.NOTE);
            if (!column.isMetric() && (SummaryWords.isClear(text) || name && SummaryWords.endsClear(text))) {
                return true;
            }
        }
        return false;
    }

    private boolean isNamedByAWord(DataLine line) {
        String id = id(line);
        return !id.isEmpty() && !CellText.hasDigit(id);
    }

    private String id(DataLine line) {
        Column column = headers.get(line.header()).column(ColumnRole.SHOT_ID);
        String id = column == null ? "" : CellText.clean(line.row().cell(column.position()));
        return CellText.saysNothing(id) ? "" : id;
    }
}
