package gripwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * What the rows of a file share: the order of day and month, and whose rows are taken.
 *
 * @param dayFirst whether the day comes first in dates that could be either; null while it is open or needless
 * @param clubs the clubs that the file names
 * @param players the players that the file names
 * @param club the club whose rows are taken; '*' for all; empty while it is open
 * @param player the player whose rows are taken; '*' for all; empty while it is open
 */
record RowContext(Boolean dayFirst, List<String> clubs, List<String> players, String club, String player) {

    static final String ALL = "*";

    static RowContext of(List<FileHeader> headers, List<DataLine> data, Answers answers, RowContext known,
            ColumnQuestions questions) {
        List<String> clubs = named(headers, data, ColumnRole.CLUB, known == null ? List.of() : known.clubs);
        List<String> players = named(headers, data, ColumnRole.PLAYER, known == null ? List.of() : known.players);
        return new RowContext(dayFirst(headers, data, answers, known == null ? null : known.dayFirst, questions), clubs,
                players, whose(clubs, "club", answers, questions), whose(players, "player", answers, questions));
    }

    private static List<String> named(List<FileHeader> headers, List<DataLine> data, ColumnRole role,
            List<String> before) {
        TreeSet<String> named = new TreeSet<>(before);
        List<Column> columns = headers.stream().map(header -> header.column(role)).toList();
        for (DataLine line : data) {
            Column column = columns.get(line.header());
            String text = column == null ? "" : CellText.clean(line.row().cell(column.position()));
            if (!CellText.saysNothing(text)) {
                named.add(text);
            }
        }
        return List.copyOf(named);
    }

    private static String whose(List<String> named, String what, Answers answers, ColumnQuestions questions) {
        if (named.size() < 2) {
            return ALL;
        }
        String id = "rows:" + what;
        String answer = answers.to(id).orElse("");
        if (answer.equals(ALL) || named.contains(answer)) {
            return answer;
        }
        List<Choice> choices = new ArrayList<>();
        named.forEach(name -> choices.add(new Choice(name, name)));
        choices.add(new Choice(ALL, "all of them"));
        questions.ask(new Question(id, Question.Kind.WHICH_ROWS, "The file has rows of " + named.size() + " " + what
                + "s. Readings of different " + what + "s don't belong in one comparison: whose rows shall be taken?",
                choices, named.get(0)));
        return "";
    }

    private static Boolean dayFirst(List<FileHeader> headers, List<DataLine> data, Answers answers, Boolean known,
            ColumnQuestions questions) {
        if (known != null) {
            return known;
        }
        boolean showsDay = false;
        boolean showsMonth = false;
        String either = null;
        for (DataLine line : data) {
            for (ColumnRole role : List.of(ColumnRole.DATE, ColumnRole.TIME)) {
                Column column = headers.get(line.header()).column(role);
                String cell = column == null ? "" : line.row().cell(column.position());
                if (cell.isEmpty()) {
                    continue;
                }
                TimeText time = TimeText.of(cell);
                showsDay |= time.showsDayFirst();
                showsMonth |= time.showsMonthFirst();
                either = time.isEither() && either == null ? CellText.clean(cell) : either;
            }
        }
        if (either == null) {
            return null;
        }
        return showsDay != showsMonth ? (Boolean) showsDay : answered(answers, either, questions);
    }

    private static Boolean answered(Answers answers, String either, ColumnQuestions questions) {
        switch (answers.to("dateOrder").orElse("")) {
            case "dayFirst":
                return Boolean.TRUE;
            case "monthFirst":
                return Boolean.FALSE;
            default:
                questions.ask(new Question("dateOrder", Question.Kind.DATE_ORDER, "Does the day or the month come first "
                        + "in the dates of this file, such as '" + either + "'?",
                        List.of(new Choice("dayFirst", "the day"), new Choice("monthFirst", "the month")), either));
                return null;
        }
    }

    /** Whether the rows of this club and this player are taken. */
    boolean takes(String rowsClub, String rowsPlayer) {
        return admits(club, rowsClub) && admits(player, rowsPlayer);
    }

    private static boolean admits(String wanted, String found) {
        return wanted.equals(ALL) || !wanted.isEmpty() && (found.isEmpty() || wanted.equals(found));
    }
}
