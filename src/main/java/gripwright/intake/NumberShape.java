package gripwright.intake;

/**
 * What a written number can be: one value whatever the decimal mark of the file, or two values, like '1.234' and
 * '1,234', between which only the decimal mark of the file decides.
 *
 * @param withDot the value if the decimal mark is the dot; NaN where this can't be a number
 * @param withComma the value if it is the comma; the same where it makes no difference
 * @param evidence '.' or ',' where this number shows the decimal mark of its file; else 0
 */
record NumberShape(double withDot, double withComma, char evidence) {

    private static final NumberShape NONE = new NumberShape(Double.NaN, Double.NaN, '\0');
    private static final int GROUP = 3;

    boolean isNumber() {
        return !Double.isNaN(withDot);
    }

    boolean isAmbiguous() {
        return isNumber() && withDot != withComma;
    }

    private static NumberShape certain(String plain, char evidence) {
        double value = Double.parseDouble(plain);
        return Double.isFinite(value) ? new NumberShape(value, value, evidence) : NONE;
    }

    /** Reads the digits, marks and group separators of a number; a sign may stand first. */
    static NumberShape of(String written) {
        String text = written;
        if (text.indexOf(' ') >= 0 || text.indexOf('\'') >= 0) {
            text = withoutSpaces(text);
            if (text == null) {
                return NONE;
            }
        }
        int exponent = indexOfExponent(text);
        String power = exponent < 0 ? "" : text.substring(exponent);
        String body = exponent < 0 ? text : text.substring(0, exponent);
        if (!isWellFormed(body) || power.length() > 5) {
            return NONE;
        }
        int dots = count(body, '.');
        int commas = count(body, ',');
        if (dots == 0 && commas == 0) {
            return certain(body + power, '\0');
        }
        if (dots > 0 && commas > 0) {
            return withBoth(body, power, dots, commas);
        }
        char mark = dots > 0 ? '.' : ',';
        return dots + commas == 1 ? withOne(body, power, mark) : withMany(body, power, mark);
    }

    private static NumberShape withOne(String body, String power, char mark) {
        int at = body.indexOf(mark);
        int lead = leading(body, at);
        String decimal = body.replace(',', '.') + power;
        boolean couldGroup = body.length() - at - 1 == GROUP && lead >= 1 && lead <= GROUP
                && firstDigit(body) != '0' && power.isEmpty();
        if (!couldGroup) {
            return certain(decimal, mark);
        }
        double asDecimal = Double.parseDouble(decimal);
        double asGroup = Double.parseDouble(body.substring(0, at) + body.substring(at + 1));
        return mark == '.' ? new NumberShape(asDecimal, asGroup, '\0') : new NumberShape(asGroup, asDecimal, '\0');
    }

    /** '1,234,567' or '1.234.567': groups, so that the other mark is the decimal one. */
    private static NumberShape withMany(String body, String power, char mark) {
        String grouped = withoutGroups(body, mark);
        return grouped == null ? NONE : certain(grouped + power, mark == '.' ? ',' : '.');
    }

    /** '1.234,5' or '1,234.5': the last mark is the decimal one. */
    private static NumberShape withBoth(String body, String power, int dots, int commas) {
        char decimal = body.lastIndexOf('.') > body.lastIndexOf(',') ? '.' : ',';
        if ((decimal == '.' ? dots : commas) != 1) {
            return NONE;
        }
        int at = body.indexOf(decimal);
        String whole = withoutGroups(body.substring(0, at), decimal == '.' ? ',' : '.');
        return whole == null ? NONE : certain(whole + "." + body.substring(at + 1) + power, decimal);
    }

    private static String withoutGroups(String whole, char separator) {
        String[] groups = whole.split(separator == '.' ? "\\." : String.valueOf(separator), -1);
        int lead = leading(groups[0], groups[0].length());
        if (lead < 1 || lead > GROUP) {
            return null;
        }
        for (int i = 1; i < groups.length; i++) {
            if (groups[i].length() != GROUP) {
                return null;
            }
        }
        return String.join("", groups);
    }

    /** Spaces and apostrophes may only part groups of three digits. */
    private static String withoutSpaces(String text) {
        String[] groups = text.split("[ ']", -1);
        for (int i = 1; i < groups.length; i++) {
            String group = groups[i];
            boolean last = i == groups.length - 1;
            int digits = 0;
            while (digits < group.length() && Character.isDigit(group.charAt(digits))) {
                digits++;
            }
            if (digits != GROUP || !last && group.length() != GROUP) {
                return null;
            }
        }
        int lead = leading(groups[0], groups[0].length());
        return lead >= 1 && lead <= GROUP ? String.join("", groups) : null;
    }

    private static boolean isWellFormed(String body) {
        boolean digit = false;
        for (int i = 0; i < body.length(); i++) {
            char c = body.charAt(i);
            boolean sign = (c == '-' || c == '+') && i == 0;
            boolean isDigit = c >= '0' && c <= '9';
            if (!sign && !isDigit && c != '.' && c != ',') {
                return false;
            }
            digit |= isDigit;
        }
        return digit;
    }

    private static int indexOfExponent(String text) {
        for (int i = 1; i < text.length() - 1; i++) {
            if ((text.charAt(i) == 'e' || text.charAt(i) == 'E') && Character.isDigit(text.charAt(i - 1))) {
                String power = text.substring(i + 1);
                return power.matches("[+-]?\\d{1,3}") ? i : -1;
            }
        }
        return -1;
    }

    private static int leading(String body, int end) {
        boolean signed = end > 0 && (body.charAt(0) == '-' || body.charAt(0) == '+');
        return signed ? end - 1 : end;
    }

    private static char firstDigit(String body) {
        return Character.isDigit(body.charAt(0)) ? body.charAt(0) : body.charAt(1);
    }

    private static int count(String text, char wanted) {
        int count = 0;
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) == wanted) {
                count++;
            }
        }
        return count;
    }
}
