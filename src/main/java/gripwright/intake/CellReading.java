package gripwright.intake;

import gripwright.model.Metric;
import gripwright.units.Unit;

/**
 * A cell of a metric's column taken apart: the number, the unit and the letter or word for its direction.
 *
 * @param number what the digits can mean; null for a cell that says nothing or can't be read
 * @param unit the unit in the cell; null where it has none
 * @param way the direction in the cell; null where it has none
 * @param negative whether the number carries a minus
 * @param fault what is wrong with the cell; null where nothing is
 */
record CellReading(NumberShape number, Unit unit, DirectionWords.Way way, boolean negative, String fault) {

    static final CellReading NOTHING = new CellReading(null, null, null, false, null);

    /** Longer cells are sentences, not readings. */
    private static final int LONGEST = 60;

    static CellReading of(String cell, Metric metric, Surroundings surroundings) {
        String text = CellText.clean(cell);
        if (CellText.saysNothing(text)) {
            return NOTHING;
        }
        int digit = text.length() > LONGEST ? -1 : firstDigit(text);
        if (digit < 0) {
            return faulty("is no number");
        }
        int begin = beginOfNumber(text, digit);
        int end = endOfNumber(text, digit);
        String digits = text.substring(begin, end);
        boolean signed = digits.charAt(0) == '-' || digits.charAt(0) == '+';
        NumberShape number = NumberShape.of(signed ? digits.charAt(0) + digits.substring(1).strip() : digits);
        if (!number.isNumber()) {
            return faulty("is no number that can be read");
        }
        return withAround(number, text.charAt(begin) == '-', text.substring(0, begin).strip(),
                text.substring(end).strip(), metric, surroundings);
    }

    boolean isNumber() {
        return number != null;
    }

    private static CellReading faulty(String fault) {
        return new CellReading(null, null, null, false, fault);
    }

    private static CellReading withAround(NumberShape number, boolean negative, String before, String after,
            Metric metric, Surroundings surroundings) {
        if (before.isEmpty() && after.isEmpty()) {
            return new CellReading(number, null, null, negative, null);
        }
        Surroundings.Meant lead = surroundings.of(before, metric);
        Surroundings.Meant tail = surroundings.of(after, metric);
        if (lead == null || tail == null) {
            String odd = lead == null ? before : after;
            return faulty("has '" + odd + "' beside the number, which is neither a unit of " + metric.text()
                    + " nor a direction");
        }
        if (lead.unit() != null && tail.unit() != null || lead.way() != null && tail.way() != null) {
            return faulty("gives its unit or direction twice");
        }
        DirectionWords.Way way = lead.way() != null ? lead.way() : tail.way();
        boolean signed = negative && number.withDot() != 0;
        if (way != null && signed) {
            return faulty("has a minus and a direction word, which may contradict each other");
        }
        return new CellReading(number, lead.unit() != null ? lead.unit() : tail.unit(), way, negative, null);
    }

    private static int firstDigit(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (isDigit(text.charAt(i))) {
                return i;
            }
        }
        return -1;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** Takes in a decimal mark and a sign that stand before the first digit. */
    private static int beginOfNumber(String text, int digit) {
        int begin = digit;
        if (begin > 0 && (text.charAt(begin - 1) == '.' || text.charAt(begin - 1) == ',')) {
            begin--;
        }
        int sign = begin;
        while (sign > 0 && text.charAt(sign - 1) == ' ') {
            sign--;
        }
        if (sign > 0 && (text.charAt(sign - 1) == '-' || text.charAt(sign - 1) == '+')) {
            boolean alone = sign == 1 || text.charAt(sign - 2) == ' ' || sign == begin;
            return alone ? sign - 1 : begin;
        }
        return begin;
    }

    private static int endOfNumber(String text, int digit) {
        int end = digit;
        while (end < text.length()) {
            char c = text.charAt(end);
            boolean separator = c == '.' || c == ',' || c == '\'' || c == ' ';
            boolean more = end + 1 < text.length() && isDigit(text.charAt(end + 1));
            boolean power = (c == 'e' || c == 'E') && isPower(text, end + 1);
            if (isDigit(c) || c == '.' && !more || c == ',' && !more || separator && more) {
                end++;
            } else if (power) {
                end += 2;
            } else {
                break;
            }
        }
        return end;
    }

    private static boolean isPower(String text, int at) {
        if (at >= text.length()) {
            return false;
        }
        char c = text.charAt(at);
        return isDigit(c) || (c == '-' || c == '+') && at + 1 < text.length() && isDigit(text.charAt(at + 1));
    }
}
