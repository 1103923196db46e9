package gripwright.intake;

import gripwright.model.Metric;
import gripwright.units.Unit;
import java.util.List;

/**
 * Finds the decimal mark of a file from its numbers, or asks.
 *
 * <p>A number such as '86,4' shows it. Where nothing in the file does and some number could be two, the mark decides
 * that makes possible readings of all of those, if the other one makes an impossible one; else it is asked for.
 */
final class DecimalMark {

    private DecimalMark() {
    }

    /** '.' or ','; null where it is open, or where it makes no difference. */
    static Character find(List<List<ColumnPlan>> plans, List<ParsedLine> lines, Answers answers,
            ColumnQuestions questions) {
        boolean dot = false;
        boolean comma = false;
        boolean possibleWithDot = true;
        boolean possibleWithComma = true;
        NumberShape open = null;
        for (ParsedLine line : lines) {
            List<ColumnPlan> columns = plans.get(line.data().header());
            for (int i = 0; i < columns.size(); i++) {
                NumberShape number = line.cells().get(i).number();
                if (number == null) {
                    continue;
                }
                dot |= number.evidence() == '.';
                comma |= number.evidence() == ',';
                if (number.isAmbiguous()) {
                    open = number;
                    Unit own = line.cells().get(i).unit();
                    Unit unit = own != null ? own : columns.get(i).unit();
                    possibleWithDot &= isPossible(number.withDot(), columns.get(i).metric(), unit);
                    possibleWithComma &= isPossible(number.withComma(), columns.get(i).metric(), unit);
                }
            }
        }
        if (dot != comma) {
            return dot ? '.' : ',';
        }
        if (open == null) {
            return null;
        }
        if (!dot && possibleWithDot != possibleWithComma) {
            return possibleWithDot ? '.' : ',';
        }
        return answered(answers, questions, open);
    }

    private static boolean isPossible(double value, Metric metric, Unit unit) {
        return unit == null || metric.isSensible(unit.toInternal(value));
    }

    private static Character answered(Answers answers, ColumnQuestions questions, NumberShape open) {
        String answer = answers.to("decimalMark").orElse("");
        if (answer.equals(".") || answer.equals(",")) {
            return answer.charAt(0);
        }
        double small = Math.min(Math.abs(open.withDot()), Math.abs(open.withComma()));
        double large = Math.max(Math.abs(open.withDot()), Math.abs(open.withComma()));
        String smallText = String.valueOf(small);
        String largeText = String.valueOf((long) large);
        questions.ask(new Question("decimalMark", Question.Kind.DECIMAL_MARK, "Which sign is the decimal mark of this "
                + "file? One of its numbers is " + smallText + " or " + largeText + ", and no other number decides.",
                List.of(new Choice(".", "the dot, as in 86.4"), new Choice(",", "the comma, as in 86,4")), largeText));
        return null;
    }
}
