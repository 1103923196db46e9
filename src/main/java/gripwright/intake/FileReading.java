package gripwright.intake;

import gripwright.model.Problem;
import gripwright.units.Unit;
import java.util.ArrayList;
import java.util.List;

/** One reading of a file from its text to rows, problems and questions; used once. */
final class FileReading {

    private static final int ROWS_BETWEEN_REPORTS = 250;
    /** Several times what the widest table of readings has. */
    private static final int MOST_COLUMNS = 500;
    private static final int MOST_SAMPLES = 3;
    private static final double SHARE_OF_PARSING = 0.6;

    private final CsvIntake settings;
    private final String source;
    private final TakenReadings.Pass taken;
    private final List<Problem> problems = new ArrayList<>();
    private final ColumnQuestions questions;

    FileReading(CsvIntake settings, String source, TakenReadings.Pass taken) {
        this.settings = settings;
        this.source = source;
        this.taken = taken;
        this.questions = new ColumnQuestions(settings.answers());
    }

    /**
     * What came of a reading.
     *
     * @param result for the caller
     * @param continuation how to read further lines of the same file; null where that needs the whole file
     */
    record Outcome(IntakeResult result, Continuation continuation) {
    }

    /**
     * What was found out about a file, so that lines appended to it can be read by themselves.
     *
     * @param delimiter between cells
     * @param encoding name of the encoding
     * @param header the last headings
     * @param numbers decimal mark, units and signs
     * @param context order of dates, and which club's rows are taken
     */
    record Continuation(char delimiter, String encoding, FileHeader header, NumberPlan numbers, RowContext context) {
    }

    /** Reads a whole file. */
    Outcome whole(String text, String encoding) {
        char delimiter = settings.delimiter() != null ? settings.delimiter()
                : DelimiterSearch.find(text, settings.mapping());
        List<CsvRow> rows = CsvTokenizer.rows(text, delimiter, 1);
        FileLines lines = FileLines.of(rows, settings.mapping());
        FileHeader wide = lines.headers().stream().filter(FileReading::isTooWide).findFirst().orElse(null);
        if (wide != null) {
            return new Outcome(IntakeResult.failed(source, tooWide(wide)), null);
        }
        if (!lines.headers().isEmpty()) {
            return read(lines, delimiter, encoding, null);
        }
        FileLines byPlace = FileLines.byPlace(rows, settings.mapping());
        if (isTooWide(byPlace.headers().get(0))) {
            return new Outcome(IntakeResult.failed(source, FileLines.noHeader(source)), null);
        }
        if (settings.mapping().namesPlaces()) {
            return read(byPlace, delimiter, encoding, null);
        }
        return new Outcome(IntakeResult.failed(source, FileLines.noHeader(source), FileColumns.of(byPlace.headers().get(0),
                byPlace.data(), List.of(), questions), new Dialect(encoding, delimiter, null)), null);
    }

    private static boolean isTooWide(FileHeader header) {
        return header.columns().size() > MOST_COLUMNS;
    }

    private Problem tooWide(FileHeader header) {
        return new Problem(Problem.Severity.FATAL, source, header.line(), null, "", "The line has "
                + header.columns().size() + " headings, which no table of shots has. Nothing was taken; look whether this "
                + "is the right file.");
    }

    /** Reads lines appended to a file; null where only the whole file can tell how to read them. */
    Outcome more(Continuation known, String text, int firstLine) {
        List<CsvRow> rows = CsvTokenizer.rows(text, known.delimiter, firstLine);
        FileLines lines = FileLines.more(rows, known.header, settings.mapping());
        if (lines.headers().size() > 1) {
            return null;
        }
        return read(lines, known.delimiter, known.encoding, known);
    }

    private Outcome read(FileLines lines, char delimiter, String encoding, Continuation known) {
        List<FileHeader> headers = known != null ? List.of(known.header) : settle(lines);
        List<ParsedLine> parsed = parse(lines.data(), headers);
        if (parsed == null) {
            return cancelled();
        }
        Character markGiven = known == null ? null : known.numbers.decimalMark();
        NumberPlan numbers = NumberPlan.of(headers, parsed, settings.answers(), settings.hand(), markGiven, questions);
        RowContext context = RowContext.of(headers, lines.data(), settings.answers(), known == null ? null : known.context,
                questions);
        if (known != null && (!questions.open().isEmpty() || !context.equals(known.context))) {
            return null;
        }
        RowReading reading = new RowReading(settings, source, numbers, context, taken, problems, questions);
        List<IntakeRow> rows = new ArrayList<>();
        for (int i = 0; i < parsed.size(); i++) {
            if (i % ROWS_BETWEEN_REPORTS == 0 && !goOn(SHARE_OF_PARSING + (1 - SHARE_OF_PARSING) * i / parsed.size())) {
                return cancelled();
            }
            IntakeRow row = reading.row(parsed.get(i), headers);
            if (row != null) {
                rows.add(row);
            }
        }
        reading.reportOnTheWhole(headers);
        noteUnitsThatDoNotFit(headers);
        SummaryLines.doubtful(lines.data(), headers).forEach(line -> problems.add(new Problem(Problem.Severity.NOTE, source,
                line.row().line(), null, line.row().excerpt(), "The line has a word where the others have the shot's "
                + "number. It was taken as a shot; set it aside if it sums the others up.")));
        if (known == null && headers.stream().flatMap(h -> h.columns().stream()).noneMatch(Column::isMetric)
                && questions.open().isEmpty()) {
            problems.add(0, noReadings(headers.get(0)));
        }
        Outcome outcome = outcome(lines, delimiter, encoding, headers, numbers, context, rows, reading.known());
        return outcome.continuation == null && known != null ? new Outcome(outcome.result, known) : outcome;
    }

    private Outcome outcome(FileLines lines, char delimiter, String encoding, List<FileHeader> headers,
            NumberPlan numbers, RowContext context, List<IntakeRow> rows, int knownRows) {
        IntakeResult result = new IntakeResult(source, rows, knownRows, problems, questions.open(),
                recognised(headers, numbers), unknown(headers, lines.data()), columns(headers, numbers, lines.data()),
                lines.skipped(), new Dialect(encoding, delimiter, numbers.decimalMark()), false);
        boolean settled = questions.open().isEmpty() && !lines.data().isEmpty() && !result.hasFailed();
        FileHeader last = headers.get(headers.size() - 1);
        NumberPlan lastNumbers = new NumberPlan(numbers.decimalMark(), numbers.hand(),
                List.of(numbers.plans().get(headers.size() - 1)));
        return new Outcome(result, settled ? new Continuation(delimiter, encoding, last, lastNumbers, context) : null);
    }

    private List<FileHeader> settle(FileLines lines) {
        List<FileHeader> headers = new ArrayList<>();
        for (int h = 0; h < lines.headers().size(); h++) {
            int index = h;
            List<CsvRow> under = lines.data().stream().filter(d -> d.header() == index).map(DataLine::row).toList();
            FileHeader header = LetterColumns.joined(questions.settled(lines.headers().get(h), under), under);
            header.columns().stream().filter(column -> column.letters() >= 0).forEach(column -> problems.add(
                    new Problem(Problem.Severity.NOTE, source, header.line(), column.letters() + 1,
                            header.columns().get(column.letters()).heading(), "The letters in this column were read as the "
                            + "directions of the numbers in " + column.name() + ".")));
            headers.add(header);
        }
        return headers;
    }

    private List<ParsedLine> parse(List<DataLine> data, List<FileHeader> headers) {
        List<List<Column>> metrics = headers.stream()
                .map(header -> header.columns().stream().filter(Column::isMetric).toList()).toList();
        Surroundings surroundings = new Surroundings();
        List<ParsedLine> parsed = new ArrayList<>(data.size());
        for (int i = 0; i < data.size(); i++) {
            if (i % ROWS_BETWEEN_REPORTS == 0 && !goOn(SHARE_OF_PARSING * i / data.size())) {
                return null;
            }
            DataLine line = data.get(i);
            List<Column> columns = metrics.get(line.header());
            List<CellReading> cells = new ArrayList<>(columns.size());
            for (Column column : columns) {
                cells.add(CellReading.of(column.text(line.row()), column.metric(), surroundings));
            }
            parsed.add(new ParsedLine(line, cells));
        }
        return parsed;
    }

    private boolean goOn(double fraction) {
        return settings.progress().goOn(fraction);
    }

    private Outcome cancelled() {
        return new Outcome(new IntakeResult(source, List.of(), 0, List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), null, true), null);
    }

    private void noteUnitsThatDoNotFit(List<FileHeader> headers) {
        for (FileHeader header : headers) {
            for (Column column : header.columns()) {
                if (column.isMetric() && !column.unitText().isEmpty() && column.unit() == null) {
                    problems.add(new Problem(Problem.Severity.NOTE, source, header.line(), column.position() + 1,
                            column.heading(), "'" + column.unitText() + "' is no unit of " + column.metric().text()
                            + "; its numbers are read as if no unit were given. Look whether the column is the right "
                            + "one."));
                }
            }
        }
    }

    private Problem noReadings(FileHeader header) {
        return new Problem(Problem.Severity.FATAL, source, header.line(), null, "",
                "None of the headings is a reading that is known. Nothing was taken; say what the columns hold and save "
                        + "that as a mapping.");
    }

    private List<FileColumn> columns(List<FileHeader> headers, NumberPlan numbers, List<DataLine> data) {
        int last = headers.size() - 1;
        return FileColumns.of(headers.get(last), data.stream().filter(line -> line.header() == last).toList(),
                numbers.plans().get(last), questions);
    }

    private static List<RecognisedColumn> recognised(List<FileHeader> headers, NumberPlan numbers) {
        List<RecognisedColumn> recognised = new ArrayList<>();
        FileHeader header = headers.get(headers.size() - 1);
        for (Column column : header.columns()) {
            if (column.isRead()) {
                Unit unit = column.isMetric() ? numbers.plans().get(headers.size() - 1).stream()
                        .filter(plan -> plan.column().equals(column)).findFirst().map(ColumnPlan::unit).orElse(null)
                        : null;
                recognised.add(new RecognisedColumn(column.position() + 1, column.heading(), column.meaning(),
                        unit == null ? "" : unit.symbol(), column.byHand()));
            }
        }
        return recognised;
    }

    private static List<UnknownColumn> unknown(List<FileHeader> headers, List<DataLine> data) {
        List<UnknownColumn> unknown = new ArrayList<>();
        int last = headers.size() - 1;
        for (Column column : headers.get(last).columns()) {
            boolean letters = headers.get(last).columns().stream().anyMatch(c -> c.letters() == column.position());
            if (!letters && column.meaning() == null && !HeaderText.of(column.heading()).withUnitBelow(column.unitText()).isKnown()) {
                List<String> samples = data.stream().filter(line -> line.header() == last)
                        .map(line -> CellText.clean(line.row().cell(column.position())))
                        .filter(text -> !text.isEmpty()).limit(MOST_SAMPLES).toList();
                if (!column.heading().isEmpty() || !samples.isEmpty()) {
                    unknown.add(new UnknownColumn(column.position() + 1, column.heading(), samples));
                }
            }
        }
        return unknown;
    }
}
