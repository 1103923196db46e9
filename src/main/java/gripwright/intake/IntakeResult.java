package gripwright.intake;

import gripwright.model.Problem;
import gripwright.model.Shot;
import java.util.List;

/**
 * What came of reading a file: the new shots, and all that was not taken or needs an answer.
 *
 * @param source the source's name
 * @param rows the shots that are new, in the order of the file
 * @param alreadyTaken how many rows were known from before
 * @param problems what was rejected or is worth a look
 * @param questions what must be answered; what depends on them is left out of the rows
 * @param recognisedColumns the columns that are read
 * @param unknownColumns the columns that are not
 * @param columns all columns under the file's last headings, read or not; under none where the file has none
 * @param skippedLines lines that hold no shot and aren't meant to
 * @param dialect how the file is written; null where nothing could be read
 * @param cancelled whether the reading was broken off, so that there are no rows
 */
public record IntakeResult(String source, List<IntakeRow> rows, int alreadyTaken, List<Problem> problems,
        List<Question> questions, List<RecognisedColumn> recognisedColumns, List<UnknownColumn> unknownColumns,
        List<FileColumn> columns, List<SkippedLine> skippedLines, Dialect dialect, boolean cancelled) {

    public IntakeResult {
        rows = List.copyOf(rows);
        problems = List.copyOf(problems);
        questions = List.copyOf(questions);
        recognisedColumns = List.copyOf(recognisedColumns);
        unknownColumns = List.copyOf(unknownColumns);
        columns = List.copyOf(columns);
        skippedLines = List.copyOf(skippedLines);
    }

    static IntakeResult failed(String source, Problem problem) {
        return failed(source, problem, List.of(), null);
    }

    static IntakeResult failed(String source, Problem problem, List<FileColumn> columns, Dialect dialect) {
        return new IntakeResult(source, List.of(), 0, List.of(problem), List.of(), List.of(), List.of(), columns,
                List.of(), dialect, false);
    }

    /** The new shots. */
    public List<Shot> shots() {
        return rows.stream().map(IntakeRow::shot).toList();
    }

    /** Whether the file says which configuration each shot was hit with, so that it can fill a whole test. */
    public boolean isWholeTest() {
        return recognisedColumns.stream().anyMatch(c -> c.meaning().role() == ColumnRole.CONFIGURATION);
    }

    /** Whether the file has a column of this heading, letter case and punctuation ignored, or at this place ('#3'). */
    public boolean hasColumn(String heading) {
        String key = HeaderText.key(heading);
        return columns.stream().anyMatch(column -> HeaderText.key(column.heading()).equals(key)
                || heading.strip().equals("#" + column.position()));
    }

    /** Whether nothing could be read at all. */
    public boolean hasFailed() {
        return problems.stream().anyMatch(p -> p.severity() == Problem.Severity.FATAL);
    }

    /** What came of it in one sentence, for the screen. */
    public String sentence() {
        if (cancelled) {
            return "The reading of " + source + " was broken off; nothing was taken.";
        }
        if (hasFailed()) {
            return problems.get(0).text();
        }
        long rejected = problems.stream().filter(p -> p.severity() == Problem.Severity.REJECTED).count();
        StringBuilder text = new StringBuilder(counted(rows.size(), "new shot")).append(" from ").append(source);
        if (alreadyTaken > 0) {
            text.append(", ").append(alreadyTaken).append(" taken before");
        }
        if (rejected > 0) {
            text.append(", ").append(counted(rejected, "cell or line", "cells or lines")).append(" rejected");
        }
        if (!questions.isEmpty()) {
            text.append(", ").append(counted(questions.size(), "question")).append(" to answer");
        }
        return text.append('.').toString();
    }

    private static String counted(long count, String one) {
        return counted(count, one, one + "s");
    }

    private static String counted(long count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }
}
