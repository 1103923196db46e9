package gripwright.desktop.support;

import gripwright.units.NumberText;
import gripwright.units.ParsedNumber;
import gripwright.units.Unit;

/**
 * How one number is read and written in a field: the shop's decimal mark, a unit, and the decimals.
 *
 * @param text the shop's way with numbers
 * @param unit the unit typed and shown; numbers outside are internal units
 * @param decimals decimals always shown
 * @param mostDecimals decimals shown at most, where the number has them
 */
public record NumberStyle(NumberText text, Unit unit, int decimals, int mostDecimals) {

    /** What is shown for an internal value; empty for null, which is 'not measured'. */
    public String write(Double internal) {
        return write(internal, mostDecimals);
    }

    /** What stands in the field while it is typed in: one decimal further, where the number has it. */
    public String writeToEdit(Double internal) {
        return write(internal, mostDecimals + 1);
    }

    private String write(Double internal, int most) {
        if (internal == null) {
            return "";
        }
        String written = text.format(unit.fromInternal(internal), most);
        int shortest = written.length() - (most - decimals);
        int end = written.length();
        while (end > shortest && written.charAt(end - 1) == '0') {
            end--;
        }
        String kept = written.substring(0, end);
        return endsWithMark(kept) ? kept.substring(0, end - 1) : kept;
    }

    private boolean endsWithMark(String written) {
        return !written.isEmpty() && written.charAt(written.length() - 1) == text.decimalMark();
    }

    /** What was typed, in internal units; blank and unreadable text stay what they are. */
    public ParsedNumber read(String typed) {
        ParsedNumber parsed = text.parse(typed);
        return parsed instanceof ParsedNumber.Value number
                ? new ParsedNumber.Value(unit.toInternal(number.value())) : parsed;
    }
}
