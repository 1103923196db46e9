package gripwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Tells people about the columns of a file, all of them, in their order. */
final class FileColumns {

    private static final int MOST_SAMPLES = 3;
    /** Cells looked at for samples; a column that is blank for longer is blank. */
    private static final int LINES_LOOKED_AT = 500;

    private final List<FileColumn> columns = new ArrayList<>();
    private final FileHeader header;
    private final List<DataLine> data;
    private final List<ColumnPlan> plans;
    private final ColumnQuestions questions;

    private FileColumns(FileHeader header, List<DataLine> data, List<ColumnPlan> plans, ColumnQuestions questions) {
        this.header = header;
        this.data = data;
        this.plans = plans;
        this.questions = questions;
    }

    /**
     * The columns under one line of headings.
     *
     * @param data the lines under it
     * @param plans how its metric columns are read; empty where nothing is read
     * @param questions what is asked
     */
    static List<FileColumn> of(FileHeader header, List<DataLine> data, List<ColumnPlan> plans,
            ColumnQuestions questions) {
        FileColumns all = new FileColumns(header, data, plans, questions);
        header.columns().forEach(all::add);
        return List.copyOf(all.columns);
    }

    private void add(Column column) {
        List<String> samples = data.stream().limit(LINES_LOOKED_AT)
                .map(line -> CellText.clean(line.row().cell(column.position()))).filter(text -> !text.isEmpty())
                .limit(MOST_SAMPLES).toList();
        if (column.heading().isEmpty() && samples.isEmpty() && column.meaning() == null) {
            return;
        }
        ColumnPlan plan = plans.stream().filter(each -> each.column().equals(column)).findFirst().orElse(null);
        String unit = plan == null || plan.unit() == null ? "" : plan.unit().symbol();
        columns.add(new FileColumn(column.position() + 1, column.heading(), samples, column.meaning(), unit,
                side(column, plan), column.byHand(), isOpen(column, plan), key(column)));
    }

    private String key(Column column) {
        String key = HeaderText.key(column.heading());
        long same = header.columns().stream().filter(other -> HeaderText.key(other.heading()).equals(key)).count();
        return key.isEmpty() || same > 1 ? "#" + (column.position() + 1) : column.heading();
    }

    private boolean isOpen(Column column, ColumnPlan plan) {
        String key = HeaderText.key(column.heading());
        if (isAsked("meaning:" + key)) {
            return true;
        }
        if (plan == null) {
            return HeaderText.of(column.heading()).withUnitBelow(column.unitText()).meanings().stream()
                    .anyMatch(m -> isAsked("which:" + m.key()));
        }
        return plan.sign() == 0 || plan.unit() == null
                && isAsked("unit:" + plan.metric().dimension().name().toLowerCase(Locale.ROOT));
    }

    private boolean isAsked(String id) {
        return questions.open().stream().anyMatch(question -> question.id().equals(id));
    }

    /** The word for plus: of the two that depend on the hand where the heading or a rule uses one of them. */
    private String side(Column column, ColumnPlan plan) {
        List<String> sides = column.meaning() == null ? List.of() : column.meaning().sides();
        if (plan == null || sides.isEmpty()) {
            return "";
        }
        for (String said : column.legend()) {
            DirectionWords.Way way = DirectionWords.of(column.metric(), said.substring(1));
            if (way != null) {
                int sign = (said.charAt(0) == '+' ? 1 : -1) * way.sign();
                int first = way.byHand() && sides.size() > 2 ? 2 : 0;
                return sides.get(sign > 0 ? first : first + 1);
            }
        }
        if (!column.legend().isEmpty()) {
            String answered = questions.sideOfPlus(column);
            return answered == null ? "" : answered;
        }
        return sides.get(column.flipped() ? 1 : 0);
    }
}
