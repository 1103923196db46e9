package gripwright.intake;

import gripwright.model.Handedness;
import gripwright.model.SignConvention;
import gripwright.units.Dimension;
import gripwright.units.Unit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What all numbers of a file are read with: decimal mark, units, signs and the player's hand, each known, worked out of
 * the file, answered, or left open.
 *
 * @param decimalMark '.' or ','; null while it is open or makes no difference
 * @param hand the player's hand; null while it is open
 * @param plans for each headings of the file, its metric columns
 */
record NumberPlan(Character decimalMark, Handedness hand, List<List<ColumnPlan>> plans) {

    /** As radians per second these would be beyond any club: the number can only be in degrees per second. */
    private static final double CERTAINLY_DEGREES_PER_SECOND = 105;

    static NumberPlan of(List<FileHeader> headers, List<ParsedLine> lines, Answers answers, Handedness givenHand,
            Character givenMark, ColumnQuestions questions) {
        Handedness hand = givenHand != null ? givenHand : handAnswered(answers);
        Map<Dimension, Unit> fallback = unitsOfBareNumbers(headers, lines, questions);
        List<List<ColumnPlan>> plans = new ArrayList<>();
        for (FileHeader header : headers) {
            List<ColumnPlan> columns = new ArrayList<>();
            for (Column column : header.columns()) {
                if (column.isMetric()) {
                    Unit unit = column.unit() != null ? column.unit() : fallback.get(column.metric().dimension());
                    columns.add(new ColumnPlan(column, unit, sign(column, hand, questions)));
                }
            }
            plans.add(List.copyOf(columns));
        }
        Character mark = givenMark != null ? givenMark : DecimalMark.find(plans, lines, answers, questions);
        return new NumberPlan(mark, hand, List.copyOf(plans));
    }

    private static Handedness handAnswered(Answers answers) {
        return switch (answers.to("hand").orElse("")) {
            case "left" -> Handedness.LEFT;
            case "right" -> Handedness.RIGHT;
            default -> null;
        };
    }

    static Question askForHand(String example) {
        return new Question("hand", Question.Kind.HANDEDNESS, "Is the player right- or left-handed? '" + example
                + "' points the other way for the other hand.",
                List.of(new Choice("right", "right-handed"), new Choice("left", "left-handed")), example);
    }

    /** For each dimension that has numbers without a unit, the unit they are in; missing while it is open. */
    private static Map<Dimension, Unit> unitsOfBareNumbers(List<FileHeader> headers, List<ParsedLine> lines,
            ColumnQuestions questions) {
        Map<Dimension, Bare> bare = new EnumMap<>(Dimension.class);
        List<List<Column>> metrics = headers.stream()
                .map(header -> header.columns().stream().filter(Column::isMetric).toList()).toList();
        List<boolean[]> given = metrics.stream().map(NumberPlan::unitGiven).toList();
        for (ParsedLine line : lines) {
            int header = line.data().header();
            for (int i = 0; i < line.cells().size(); i++) {
                CellReading cell = line.cells().get(i);
                if (!given.get(header)[i] && cell.isNumber() && cell.unit() == null) {
                    Column column = metrics.get(header).get(i);
                    bare.computeIfAbsent(column.metric().dimension(), d -> new Bare()).add(column, cell);
                }
            }
        }
        Map<Dimension, Unit> units = new EnumMap<>(Dimension.class);
        bare.forEach((dimension, numbers) -> {
            boolean degrees = dimension == Dimension.ANGULAR_RATE && numbers.smallest >= CERTAINLY_DEGREES_PER_SECOND;
            Unit unit = degrees ? Unit.DEGREE_PER_SECOND
                    : questions.unit(dimension, numbers.columns, numbers.columns.get(0).heading());
            if (unit != null) {
                units.put(dimension, unit);
            }
        });
        for (Dimension dimension : Dimension.values()) {
            if (UnitWords.hasOneUnit(dimension)) {
                units.put(dimension, dimension.internalUnit());
            }
        }
        return units;
    }

    private static boolean[] unitGiven(List<Column> columns) {
        boolean[] given = new boolean[columns.size()];
        for (int i = 0; i < given.length; i++) {
            given[i] = columns.get(i).unit() != null;
        }
        return given;
    }

    /** The numbers of one dimension that carry no unit. */
    private static final class Bare {
        private final List<Column> columns = new ArrayList<>();
        private double smallest = Double.POSITIVE_INFINITY;

        void add(Column column, CellReading cell) {
            if (columns.stream().noneMatch(c -> c.heading().equals(column.heading()))) {
                columns.add(column);
            }
            double size = Math.min(Math.abs(cell.number().withDot()), Math.abs(cell.number().withComma()));
            smallest = Math.min(smallest, size);
        }
    }

    private static int sign(Column column, Handedness hand, ColumnQuestions questions) {
        if (column.legend().isEmpty() || column.metric().sign() == SignConvention.UNSIGNED) {
            return column.flipped() ? -1 : 1;
        }
        for (String said : column.legend()) {
            DirectionWords.Way way = DirectionWords.of(column.metric(), said.substring(1));
            if (way != null) {
                return (said.charAt(0) == '+' ? 1 : -1) * sign(way, said.substring(1), hand, questions);
            }
        }
        String side = questions.sideOfPlus(column);
        return side == null ? 0 : sign(DirectionWords.of(column.metric(), side), side, hand, questions);
    }

    /** +1 or −1; 0, and asked, where the word needs the player's hand and that is open. */
    private static int sign(DirectionWords.Way way, String word, Handedness hand, ColumnQuestions questions) {
        if (way.byHand() && hand == null) {
            questions.ask(askForHand(word));
            return 0;
        }
        return sign(way, hand);
    }

    /** +1 or −1 in this program's signs for a word of this player's. */
    static int sign(DirectionWords.Way way, Handedness hand) {
        return way.byHand() && hand == Handedness.LEFT ? -way.sign() : way.sign();
    }

    /** Whether a signed number of this column could be meant the other way round by a left-handed player's source. */
    static boolean signDependsOnSource(Column column) {
        SignConvention sign = column.metric().sign();
        boolean spatial = sign == SignConvention.FACE || sign == SignConvention.PATH
                || sign == SignConvention.FACE_TO_PATH || sign == SignConvention.SPIN_AXIS;
        return spatial && column.legend().isEmpty() && !column.byHand();
    }
}
