package gripwright.units;

import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Reads and writes numbers as people of one locale do: either decimal mark where it can only be one, a typographic
 * minus, no-break and thin spaces as thousands separators.
 *
 * <p>The decimal mark of the locale is read as such. The other mark is taken for a thousands separator where groups of
 * three digits follow it and the number has the locale's decimal mark or a second group; a single group, '1.234' in a
 * comma locale or '1,234' in a dot locale, is taken for thousands as well, since that is the locale's own writing; any
 * other position makes it a decimal mark ('86,4' typed in a dot locale).
 */
public final class NumberText {

    private static final char MINUS = '\u2212';
    private static final Pattern SPACES = Pattern.compile("[\\s\\u00A0\\u202F\\u2009\\u2007']");
    private static final Pattern PLAIN = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d+)?");

    private final char decimalMark;

    private NumberText(char decimalMark) {
        this.decimalMark = decimalMark;
    }

    /** Numbers as the locale writes them. */
    public static NumberText of(Locale locale) {
        return withDecimalMark(DecimalFormatSymbols.getInstance(locale).getDecimalSeparator());
    }

    /** Numbers with this decimal mark, '.' or ','; any other mark is read as '.'. */
    public static NumberText withDecimalMark(char decimalMark) {
        return new NumberText(decimalMark == ',' ? ',' : '.');
    }

    public char decimalMark() {
        return decimalMark;
    }

    /** Reads a number; blank text is {@link ParsedNumber.Blank}, anything unreadable a sentence. */
    public ParsedNumber parse(String text) {
        if (text == null || text.isBlank()) {
            return new ParsedNumber.Blank();
        }
        String compact = SPACES.matcher(text.strip().replace(MINUS, '-').replace('\u2013', '-')).replaceAll("");
        String plain = withDot(compact);
        if (!PLAIN.matcher(plain).matches()) {
            return notANumber(text);
        }
        double value = Double.parseDouble(plain);
        return Double.isFinite(value) ? new ParsedNumber.Value(value) : notANumber(text);
    }

    private ParsedNumber notANumber(String text) {
        return new ParsedNumber.NotANumber("'" + text.strip() + "' is not a number; write it like 12"
                + decimalMark + "5, or leave it blank where nothing was measured.");
    }

    private String withDot(String compact) {
        char other = decimalMark == '.' ? ',' : '.';
        String groups = Pattern.quote(String.valueOf(other));
        String mark = Pattern.quote(String.valueOf(decimalMark));
        if (compact.indexOf(other) < 0) {
            return compact.replace(decimalMark, '.');
        }
        if (compact.matches("[+-]?[1-9]\\d{0,2}(" + groups + "\\d{3})+(" + mark + "\\d*)?")) {
            return compact.replace(String.valueOf(other), "").replace(decimalMark, '.');
        }
        if (compact.indexOf(decimalMark) < 0 && compact.indexOf(other) == compact.lastIndexOf(other)) {
            return compact.replace(other, '.');
        }
        return compact;
    }

    /**
     * Writes a number with a fixed count of decimals, a true minus, no grouping below 10,000 and thin no-break spaces
     * from there on. A value that rounds to zero carries no minus. NaN and infinities are written as an en dash.
     */
    public String format(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return "\u2013";
        }
        String digits = String.format(Locale.ROOT, "%." + decimals + "f", Math.abs(value));
        boolean zero = digits.chars().noneMatch(c -> c >= '1' && c <= '9');
        String body = grouped(digits).replace('.', decimalMark);
        return value < 0 && !zero ? MINUS + body : body;
    }

    /** As {@link #format} with a plus before positive numbers. */
    public String formatSigned(double value, int decimals) {
        String text = format(value, decimals);
        boolean positive = Double.isFinite(value) && value > 0 && text.chars().anyMatch(c -> c >= '1' && c <= '9');
        return positive ? "+" + text : text;
    }

    private static String grouped(String digits) {
        int end = digits.indexOf('.') < 0 ? digits.length() : digits.indexOf('.');
        if (end < 5) {
            return digits;
        }
        StringBuilder builder = new StringBuilder(digits);
        for (int at = end - 3; at > 0; at -= 3) {
            builder.insert(at, '\u202F');
        }
        return builder.toString();
    }
}
