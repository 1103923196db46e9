package gripwright.intake;

import gripwright.model.Handedness;
import gripwright.model.Problem;
import gripwright.model.Readings;
import gripwright.model.Shot;
import gripwright.model.ShotSource;
import gripwright.model.Stint;
import gripwright.units.Unit;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Turns lines of data into rows with a shot each, and reports every cell and line that can't be taken as it is. */
final class RowReading {

    /** In internal units; what is beyond it is a fault of the file, and would drown every other reading. */
    private static final double LARGEST = 1e6;
    private static final Set<String> NO = Set.of("no", "n", "false", "0", "ok", "in", "counts");
    private static final Set<String> YES = Set.of("yes", "y", "true", "x", "1", "\u2713", "out");

    private final CsvIntake settings;
    private final String source;
    private final NumberPlan numbers;
    private final RowContext context;
    private final TakenReadings.Pass taken;
    private final List<Problem> problems;
    private final ColumnQuestions questions;
    private final RowKeys keys = new RowKeys();
    private final Set<String> signedBySource = new TreeSet<>();
    private int known;
    private int linesWithOldId;
    private int firstLineWithOldId;
    private int linesLikeAnother;
    private int firstLineLikeAnother;

    RowReading(CsvIntake settings, String source, NumberPlan numbers, RowContext context, TakenReadings.Pass taken,
            List<Problem> problems, ColumnQuestions questions) {
        this.settings = settings;
        this.source = source;
        this.numbers = numbers;
        this.context = context;
        this.taken = taken;
        this.problems = problems;
        this.questions = questions;
    }

    /** How many rows were known from before. */
    int known() {
        return known;
    }

    /** The row of a line; null where it is rejected, known, or another club's. */
    IntakeRow row(ParsedLine parsed, List<FileHeader> headers) {
        CsvRow row = parsed.data().row();
        FileHeader header = headers.get(parsed.data().header());
        if (!fits(row, header)) {
            return null;
        }
        String club = text(row, header, ColumnRole.CLUB);
        if (!context.takes(club, text(row, header, ColumnRole.PLAYER))) {
            return null;
        }
        Readings readings = readings(parsed);
        String id = ids(row, header);
        String dateText = text(row, header, ColumnRole.DATE);
        String timeText = text(row, header, ColumnRole.TIME);
        TimeText date = TimeText.of(dateText);
        TimeText time = TimeText.of(timeText);
        if (readings.isEmpty() && !namesAShot(id, time)) {
            rejectUnlessOpen(row);
            return null;
        }
        String when = (dateText + " " + timeText).strip();
        String rowKey = keys.ofCells(row, header);
        return placed(parsed, header, readings, new TakenReadings.Candidate(id, when, time.time() != null, rowKey,
                readings), at(row, header, date, time), club);
    }

    /** A line whose only readings wait for an answer is not rejected. */
    private void rejectUnlessOpen(CsvRow row) {
        if (questions.open().isEmpty()) {
            problem(Problem.Severity.REJECTED, row, null, row.excerpt(), "No reading could be taken from this line, so "
                    + "it was left out. A number was expected in at least one of the columns that are read.");
        }
    }

    private IntakeRow placed(ParsedLine parsed, FileHeader header, Readings readings, TakenReadings.Candidate candidate,
            Instant at, String club) {
        CsvRow row = parsed.data().row();
        int occurrence = taken.occurrence(candidate.rowKey());
        TakenReadings.Outcome outcome = taken.take(candidate);
        if (outcome == TakenReadings.Outcome.KNOWN) {
            known++;
            return null;
        }
        if (outcome == TakenReadings.Outcome.REPEATED) {
            problem(Problem.Severity.NOTE, row, null, row.excerpt(), "The line is the same in every cell, the shot's number "
                    + "or time included, as one above; the shot was taken once.");
            return null;
        }
        if (outcome == TakenReadings.Outcome.NEW_WITH_OLD_ID && linesWithOldId++ == 0) {
            firstLineWithOldId = row.line();
        }
        if (outcome == TakenReadings.Outcome.NEW_LIKE_ANOTHER && linesLikeAnother++ == 0) {
            firstLineLikeAnother = row.line();
        }
        if (readings.isEmpty() && questions.open().isEmpty()) {
            problem(Problem.Severity.NOTE, row, null, "", "The line names a shot but holds no reading; the shot was "
                    + "taken without readings.");
        }
        ShotSource shotSource = new ShotSource(settings.kind(), source, candidate.id(), candidate.time(),
                candidate.rowKey(), occurrence);
        Shot shot = new Shot(keys.shotId(shotSource), at, readings, shotSource, setAside(row, header), false, false,
                notes(row, header));
        return new IntakeRow(row.line(), text(row, header, ColumnRole.STINT),
                text(row, header, ColumnRole.CONFIGURATION), kind(row, header), changed(row, header), club, shot);
    }

    /** Reports what concerns the file and not one of its lines. */
    void reportOnTheWhole(List<FileHeader> headers) {
        if (linesWithOldId > 0) {
            problems.add(new Problem(Problem.Severity.NOTE, source, firstLineWithOldId, null, "",
                    "The numbering of the shots begins again here; " + linesWithOldId
                            + " of them were taken as further shots. Look whether any shot is there twice."));
        }
        if (linesLikeAnother > 0) {
            problems.add(new Problem(Problem.Severity.NOTE, source, firstLineLikeAnother, null, "",
                    "From here on, " + linesLikeAnother + (linesLikeAnother == 1 ? " line is" : " lines are")
                            + " the same in every cell as one of a file that was taken before under another name, and "
                            + "no number or time tells the shots apart; they were taken as further shots. Look whether "
                            + "any shot is there twice."));
        }
        if (!signedBySource.isEmpty()) {
            problems.add(new Problem(Problem.Severity.NOTE, source, headers.get(0).line(), null,
                    String.join(", ", signedBySource), "Plain signs are taken as positive to the right of the target. "
                            + "If this source means positive as open, or as in to out, for a left-handed player, say "
                            + "of the column which side plus is."));
        }
    }

    private boolean fits(CsvRow row, FileHeader header) {
        if (row.brokenQuote()) {
            problem(Problem.Severity.NOTE, row, null, row.excerpt(), "A quotation mark is opened on this line and never "
                    + "closed; the line was read as if it weren't there.");
        }
        int width = header.columns().size();
        for (int position = width; position < row.cells().size(); position++) {
            if (!CellText.clean(row.cell(position)).isEmpty()) {
                problem(Problem.Severity.REJECTED, row, position + 1, row.cell(position), "The line has "
                        + row.cells().size() + " cells, but there are only " + width + " columns, so it can't be told "
                        + "which number is which. The line was left out; look for a delimiter inside a number.");
                return false;
            }
        }
        if (row.cells().size() < width) {
            problem(Problem.Severity.NOTE, row, null, row.excerpt(), "The line has " + row.cells().size()
                    + (row.cells().size() == 1 ? " cell of " : " cells of ") + width
                    + "; those that are missing were taken as blank.");
        }
        return true;
    }

    private Readings readings(ParsedLine parsed) {
        Map<gripwright.model.Metric, Double> values = new EnumMap<>(gripwright.model.Metric.class);
        List<ColumnPlan> plans = numbers.plans().get(parsed.data().header());
        for (int i = 0; i < plans.size(); i++) {
            CellReading cell = parsed.cells().get(i);
            ColumnPlan plan = plans.get(i);
            CsvRow row = parsed.data().row();
            if (cell.fault() != null) {
                String found = CellText.clean(row.cell(plan.column().position()));
                problem(Problem.Severity.REJECTED, row, plan.column().position() + 1, found, "'" + shortened(found)
                        + "' " + cell.fault() + "; expected was " + plan.metric().text() + " as a number, or a blank. "
                        + "The cell was left out, the rest of the line was taken.");
            } else if (cell.isNumber()) {
                Double value = value(cell, plan);
                if (value != null && Math.abs(value) > LARGEST) {
                    String found = CellText.clean(row.cell(plan.column().position()));
                    problem(Problem.Severity.REJECTED, row, plan.column().position() + 1, found, "'" + shortened(found)
                            + "' is larger than any " + plan.metric().text() + " can be; the cell was left out, the rest of "
                            + "the line was taken.");
                } else if (value != null) {
                    values.put(plan.metric(), value);
                    warnIfOdd(row, plan, value);
                }
            }
        }
        return new Readings(values);
    }

    /** The reading in internal units; null while something about it is open. */
    private Double value(CellReading cell, ColumnPlan plan) {
        Unit unit = cell.unit() != null ? cell.unit() : plan.unit();
        if (unit == null || cell.number().isAmbiguous() && numbers.decimalMark() == null) {
            return null;
        }
        boolean comma = numbers.decimalMark() != null && numbers.decimalMark() == ',';
        double number = comma ? cell.number().withComma() : cell.number().withDot();
        double sign;
        if (cell.way() == null) {
            sign = plan.sign();
            if (numbers.hand() == Handedness.LEFT && number != 0 && NumberPlan.signDependsOnSource(plan.column())) {
                signedBySource.add(plan.column().heading());
            }
        } else if (cell.way().byHand() && numbers.hand() == null) {
            questions.ask(NumberPlan.askForHand(plan.metric().sign().positiveWord(Handedness.RIGHT)));
            return null;
        } else {
            sign = NumberPlan.sign(cell.way(), numbers.hand());
        }
        double value = unit.toInternal(number) * sign;
        return sign == 0 || !Double.isFinite(value) ? null : (Double) (value == 0 ? 0.0 : value);
    }

    private void warnIfOdd(CsvRow row, ColumnPlan plan, double value) {
        if (!plan.metric().isSensible(value)) {
            String found = CellText.clean(row.cell(plan.column().position()));
            problem(Problem.Severity.NOTE, row, plan.column().position() + 1, found, "'" + found + "' is unusual for "
                    + plan.metric().text() + ". It was taken; look whether the unit and the column are right.");
        }
    }

    private static boolean namesAShot(String id, TimeText time) {
        return time.time() != null || !id.isEmpty() && CellText.hasDigit(id) && id.length() <= 12;
    }

    private Instant at(CsvRow row, FileHeader header, TimeText date, TimeText time) {
        for (ColumnRole role : List.of(ColumnRole.DATE, ColumnRole.TIME)) {
            TimeText text = role == ColumnRole.DATE ? date : time;
            Column column = header.column(role);
            if (!text.readable()) {
                problem(Problem.Severity.NOTE, row, column.position() + 1, row.cell(column.position()), "'"
                        + shortened(text(row, header, role)) + "' is no " + role.text() + " that can be read; expected "
                        + "was one like 2026-03-14 or 14:05:30. The shot was taken without its time.");
            }
        }
        TimeText dated = date.hasDate() ? date : time;
        LocalDate day = dated.hasDate() ? dated.date(context.dayFirst()) : settings.day();
        TimeText timed = time.time() != null ? time : date;
        return TimeText.instant(day, timed.time(), timed.offset(), settings.zone());
    }

    private String text(CsvRow row, FileHeader header, ColumnRole role) {
        Column column = header.column(role);
        if (column == null) {
            return "";
        }
        String text = CellText.clean(row.cell(column.position()));
        return CellText.saysNothing(text) ? "" : text;
    }

    /** The id; of several columns that name a shot, all of them in the order of their headings. */
    private static String ids(CsvRow row, FileHeader header) {
        return joined(row, header, ColumnRole.SHOT_ID, "/");
    }

    private static String notes(CsvRow row, FileHeader header) {
        return joined(row, header, ColumnRole.NOTE, "; ");
    }

    private static String joined(CsvRow row, FileHeader header, ColumnRole role, String between) {
        List<Column> columns = new ArrayList<>();
        header.columns().stream().filter(column -> column.is(role)).forEach(columns::add);
        if (columns.size() > 1) {
            columns.sort(java.util.Comparator.comparing(Column::heading));
        }
        StringBuilder joined = new StringBuilder();
        for (Column column : columns) {
            String text = CellText.clean(row.cell(column.position()));
            if (!CellText.saysNothing(text)) {
                joined.append(joined.isEmpty() ? "" : between).append(text);
            }
        }
        return joined.toString();
    }

    private String setAside(CsvRow row, FileHeader header) {
        String text = text(row, header, ColumnRole.SET_ASIDE);
        String word = text.toLowerCase(Locale.ROOT);
        if (text.isEmpty() || NO.contains(word)) {
            return null;
        }
        return YES.contains(word) ? "set aside in the file" : text;
    }

    private Boolean changed(CsvRow row, FileHeader header) {
        String word = text(row, header, ColumnRole.CHANGED).toLowerCase(Locale.ROOT);
        return word.isEmpty() ? null : (Boolean) YES.contains(word);
    }

    private Stint.Kind kind(CsvRow row, FileHeader header) {
        String text = text(row, header, ColumnRole.KIND);
        String word = text.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "");
        return switch (word) {
            case "" -> null;
            case "warmup", "warmingup", "warm", "w" -> Stint.Kind.WARM_UP;
            case "settling", "settlingswing", "settle", "practice" -> Stint.Kind.SETTLING;
            case "scored", "score", "test", "counted", "s" -> Stint.Kind.SCORED;
            default -> {
                problem(Problem.Severity.REJECTED, row, header.column(ColumnRole.KIND).position() + 1, text, "'"
                        + shortened(text) + "' is no kind of stint; expected was warm-up, settling or scored. The cell "
                        + "was left out, the rest of the line was taken.");
                yield null;
            }
        };
    }

    private static String shortened(String text) {
        String line = text.replaceAll("\\s+", " ");
        return line.length() <= 40 ? line : line.substring(0, 39) + "\u2026";
    }

    private void problem(Problem.Severity severity, CsvRow row, Integer column, String found, String sentence) {
        problems.add(new Problem(severity, source, row.line(), column, shortened(found), sentence));
    }
}
