package gripwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A column's heading taken apart: the term, the unit and what is said about the sign.
 *
 * @param raw the heading as written, on one line
 * @param meanings what the term can mean; empty where it is not known
 * @param unit the unit's text; empty where none is given
 * @param legend '+' or '-' followed by the word it stands for, 'R+' as '+r'; empty where nothing is said
 */
record HeaderText(String raw, Set<ColumnMeaning> meanings, String unit, List<String> legend) {

    private static final Pattern BRACKETS = Pattern.compile("\\(([^()]*)\\)|\\[([^\\[\\]]*)]|\\{([^{}]*)}");
    private static final Pattern CAMEL = Pattern.compile("(?<=[a-z])(?=[A-Z])");

    /** A heading longer than this is a sentence. */
    private static final int LONGEST = 80;

    /** Lower-case words of a heading, 'clubSpeed' as 'club speed'. */
    static String words(String text) {
        return plainWords(CAMEL.matcher(text).replaceAll(" "));
    }

    private static String plainWords(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[_\\-./:|\\s]+", " ").strip();
    }

    static HeaderText of(String cell) {
        String raw = CellText.clean(cell).replaceAll("\\s+", " ");
        if (raw.isEmpty() || raw.length() > LONGEST) {
            return new HeaderText(raw, Set.of(), "", List.of());
        }
        String unit = "";
        List<String> legend = new ArrayList<>();
        List<String> qualifiers = new ArrayList<>();
        Matcher brackets = BRACKETS.matcher(raw);
        while (brackets.find()) {
            String inside = brackets.group().substring(1, brackets.group().length() - 1).strip();
            if (UnitWords.isUnit(inside)) {
                unit = inside;
            } else {
                for (String piece : inside.split("[,;/]|\\s+(?=[+-])")) {
                    unit = place(piece.strip(), unit, legend, qualifiers);
                }
            }
        }
        String term = BRACKETS.matcher(raw).replaceAll(" ").strip();
        return resolved(raw, term, String.join(" ", qualifiers), unit, legend);
    }

    private static String place(String piece, String unit, List<String> legend, List<String> qualifiers) {
        if (piece.isEmpty()) {
            return unit;
        }
        if (UnitWords.isUnit(piece)) {
            return piece;
        }
        signOf(piece).ifPresentOrElse(legend::add, () -> qualifiers.add(piece));
        return unit;
    }

    /** '+ = open', 'R+' and '-left' as '+open', '+r' and '-left'. */
    private static Optional<String> signOf(String piece) {
        char first = piece.charAt(0);
        char last = piece.charAt(piece.length() - 1);
        if (piece.length() < 2 || CellText.hasDigit(piece)) {
            return Optional.empty();
        }
        if (first == '+' || first == '-') {
            return Optional.of(first + piece.substring(1).replaceFirst("^\\s*(=|:|is)?\\s*", "").toLowerCase(Locale.ROOT));
        }
        if (last == '+' || last == '-') {
            return Optional.of(last + piece.substring(0, piece.length() - 1).replaceFirst("\\s*(=|:|is)?\\s*$", "")
                    .toLowerCase(Locale.ROOT));
        }
        return Optional.empty();
    }

    private static HeaderText resolved(String raw, String term, String qualifier, String unit, List<String> legend) {
        for (String candidate : List.of(term + " " + qualifier, term)) {
            Set<ColumnMeaning> meanings = meanings(candidate);
            if (!meanings.isEmpty()) {
                return new HeaderText(raw, meanings, unit, List.copyOf(legend));
            }
        }
        return unit.isEmpty() ? withTrailingUnit(raw, term, legend)
                : new HeaderText(raw, Set.of(), unit, List.copyOf(legend));
    }

    private static Set<ColumnMeaning> meanings(String text) {
        Set<ColumnMeaning> asWritten = Vocabulary.meanings(plainWords(text));
        return asWritten.isEmpty() ? Vocabulary.meanings(words(text)) : asWritten;
    }

    /** 'Club speed mph', 'Carry, yd', 'clubSpeedMph': the last one to three words may be the unit. */
    private static HeaderText withTrailingUnit(String raw, String term, List<String> legend) {
        String spaced = CAMEL.matcher(term).replaceAll(" ").replaceAll("[_,;:|]+|\\s-\\s", " ").strip();
        String[] words = spaced.split("\\s+");
        for (int count = 1; count <= 3 && count < words.length; count++) {
            String last = String.join(" ", List.of(words).subList(words.length - count, words.length));
            String rest = String.join(" ", List.of(words).subList(0, words.length - count));
            Set<ColumnMeaning> meanings = meanings(rest);
            if (UnitWords.isUnit(last) && !meanings.isEmpty()) {
                return new HeaderText(raw, meanings, last, List.copyOf(legend));
            }
        }
        return new HeaderText(raw, Set.of(), "", List.copyOf(legend));
    }

    boolean isKnown() {
        return !meanings.isEmpty();
    }

    /** The heading as mappings and answers know it: letter case and punctuation do not matter. */
    static String key(String heading) {
        return plainWords(CellText.clean(heading));
    }
}
