package gripwright.intake;

import gripwright.units.Dimension;
import gripwright.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Settles what each column holds with the answers given, and asks where the headings leave it open. */
final class ColumnQuestions {

    private static final String NONE = "none";

    private final Answers answers;
    private final Map<String, Question> open = new LinkedHashMap<>();

    ColumnQuestions(Answers answers) {
        this.answers = answers;
    }

    /** The questions that are still open. */
    List<Question> open() {
        return List.copyOf(open.values());
    }

    void ask(Question question) {
        open.putIfAbsent(question.id(), question);
    }

    /** The columns with what they hold settled; what is open holds nothing yet. */
    FileHeader settled(FileHeader header, List<CsvRow> rows) {
        List<Column> columns = new ArrayList<>();
        for (Column column : header.columns()) {
            columns.add(column.meaning() != null || column.byHand() ? column : meaning(column));
        }
        return header.withColumns(withoutRivals(columns, rows));
    }

    private Column meaning(Column column) {
        HeaderText heading = HeaderText.of(column.heading()).withUnitBelow(column.unitText());
        if (heading.meanings().size() < 2) {
            return column;
        }
        String id = "meaning:" + HeaderText.key(column.heading());
        String answer = answers.to(id).orElse("");
        for (ColumnMeaning meaning : heading.meanings()) {
            if (meaning.key().equals(answer)) {
                return column.withMeaning(meaning);
            }
        }
        if (answer.equals(ColumnRole.IGNORE.key())) {
            return column.withMeaning(ColumnMeaning.of(ColumnRole.IGNORE));
        }
        List<Choice> choices = new ArrayList<>();
        heading.meanings().forEach(meaning -> choices.add(new Choice(meaning.key(), meaning.text())));
        if (choices.stream().noneMatch(choice -> choice.key().equals(ColumnRole.IGNORE.key()))) {
            choices.add(new Choice(ColumnRole.IGNORE.key(), ColumnRole.IGNORE.text()));
        }
        ask(new Question(id, Question.Kind.MEANING, "What does the column " + column.name() + " hold?", choices,
                column.heading()));
        return column;
    }

    /** The word that a number without a minus means, from the answers; null, and asked, where it is open. */
    String sideOfPlus(Column column) {
        List<String> sides = column.meaning().sides();
        String id = "signs:" + HeaderText.key(column.heading());
        String answer = answers.to(id).orElse("");
        if (sides.contains(answer)) {
            return answer;
        }
        ask(new Question(id, Question.Kind.SIGNS, "The heading " + column.name() + " says something about its signs that "
                + "is not understood. What does a number without a minus mean?",
                sides.stream().map(side -> new Choice(side, side)).toList(), column.heading()));
        return null;
    }

    /** Asks where two columns claim the same thing, unless they say the same in every row. */
    private List<Column> withoutRivals(List<Column> columns, List<CsvRow> rows) {
        Map<ColumnMeaning, List<Column>> byMeaning = new LinkedHashMap<>();
        columns.stream().filter(Column::isRead)
                .forEach(column -> byMeaning.computeIfAbsent(column.meaning(), m -> new ArrayList<>()).add(column));
        List<Column> settled = new ArrayList<>(columns);
        byMeaning.forEach((meaning, rivals) -> {
            if (rivals.size() > 1 && meaning.role() != ColumnRole.SHOT_ID && meaning.role() != ColumnRole.NOTE) {
                Column chosen = chosen(meaning, rivals, rows);
                for (Column rival : rivals) {
                    if (rival != chosen) {
                        settled.set(rival.position(), rival.withMeaning(ColumnMeaning.of(ColumnRole.IGNORE)));
                    }
                }
            }
        });
        return settled;
    }

    private Column chosen(ColumnMeaning meaning, List<Column> rivals, List<CsvRow> rows) {
        List<Column> byHand = rivals.stream().filter(Column::byHand).toList();
        if (byHand.size() == 1) {
            return byHand.get(0);
        }
        if (areTheSame(rivals, rows)) {
            return rivals.get(0);
        }
        String id = "which:" + meaning.key();
        String answer = answers.to(id).orElse("");
        for (Column rival : rivals) {
            if (key(rival, rivals).equals(answer)) {
                return rival;
            }
        }
        if (!answer.equals(NONE)) {
            List<Choice> choices = rivals.stream().map(rival -> new Choice(key(rival, rivals),
                    "column " + (rival.position() + 1) + ", " + rival.name())).collect(Collectors.toList());
            choices.add(new Choice(NONE, "neither"));
            ask(new Question(id, Question.Kind.WHICH_COLUMN, "Several columns could be " + meaning.text()
                    + ". Which one is it?", choices, rivals.get(0).heading()));
        }
        return null;
    }

    private static String key(Column rival, List<Column> rivals) {
        String key = HeaderText.key(rival.heading());
        boolean alone = rivals.stream().filter(r -> HeaderText.key(r.heading()).equals(key)).count() == 1;
        return alone && !key.isEmpty() ? key : "#" + (rival.position() + 1);
    }

    private static boolean areTheSame(List<Column> rivals, List<CsvRow> rows) {
        Column first = rivals.get(0);
        for (Column rival : rivals) {
            if (rival.unit() != first.unit() || rival.flipped() != first.flipped()) {
                return false;
            }
            for (CsvRow row : rows) {
                if (!CellText.clean(row.cell(rival.position())).equals(CellText.clean(row.cell(first.position())))) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The unit of numbers that carry none, from the answers; null, and asked, where it is open. */
    Unit unit(Dimension dimension, List<Column> columns, String example) {
        if (UnitWords.hasOneUnit(dimension)) {
            return dimension.internalUnit();
        }
        String id = "unit:" + dimension.name().toLowerCase(java.util.Locale.ROOT);
        String answer = answers.to(id).orElse("");
        for (Unit unit : UnitWords.choices(dimension)) {
            if (unit.symbol().equals(answer)) {
                return unit;
            }
        }
        String names = columns.stream().map(Column::name).collect(Collectors.joining(" and "));
        List<Choice> choices = UnitWords.choices(dimension).stream()
                .map(unit -> new Choice(unit.symbol(), unit.symbol())).toList();
        ask(new Question(id, Question.Kind.UNIT, "The file gives no unit for " + names + ". Which one is it?", choices,
                example));
        return null;
    }
}
