package gripwright.intake;

import java.util.Locale;
import java.util.Set;

/** How the text of a cell is cleaned before it is read, and which texts say that nothing was measured. */
final class CellText {

    private static final Set<String> NOTHING = Set.of(".", "..", "n/a", "na", "n.a.", "n.a",
            "#n/a", "n\\a", "nan", "null", "nil", "none", "(blank)", "blank", "not measured", "no data", "*");

    private CellText() {
    }

    /** The text with no-break and thin spaces as spaces, every typographic minus as '-', and no space around it. */
    static String clean(String cell) {
        int length = cell.length();
        boolean plain = length == 0 || cell.charAt(0) > ' ' && cell.charAt(length - 1) > ' ';
        for (int i = 0; plain && i < length; i++) {
            char c = cell.charAt(i);
            plain = c >= ' ' && c < 0x7F;
        }
        return plain ? cell : cleaned(cell);
    }

    private static String cleaned(String cell) {
        StringBuilder clean = new StringBuilder(cell.length());
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            switch (c) {
                case '\u00A0', '\u202F', '\u2007', '\u2009', '\u2008', '\u200A', '\u2002', '\u2003', '\t', '\n', '\r' ->
                        clean.append(' ');
                case '\u2212', '\u2013', '\u2014', '\u2012', '\u2010', '\u2011', '\uFE63', '\uFF0D' ->
                        clean.append('-');
                case '\uFEFF', '\u200B', '\u200E', '\u200F', '\u2060' -> { }
                case '\u2019', '\u02BC' -> clean.append('\'');
                case '\u00BA' -> clean.append('\u00B0');
                default -> clean.append(c);
            }
        }
        return clean.toString().strip();
    }

    /** Whether a cleaned text says that nothing was measured: blank, a dash, 'n/a'. */
    static boolean saysNothing(String clean) {
        if (clean.isEmpty()) {
            return true;
        }
        if (clean.chars().allMatch(c -> c == '-' || c == ' ')) {
            return true;
        }
        return clean.length() <= 12 && NOTHING.contains(clean.toLowerCase(Locale.ROOT));
    }

    /** Whether a cleaned text has a digit in it. */
    static boolean hasDigit(String clean) {
        for (int i = 0; i < clean.length(); i++) {
            if (clean.charAt(i) >= '0' && clean.charAt(i) <= '9') {
                return true;
            }
        }
        return false;
    }
}
