package gripwright.intake;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

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

    /** Words in brackets that make of a reading something that the catalogue does not have. */
    private static final Set<String> OTHER_THINGS = Set.of("side", "back", "sd", "std", "dev", "deviation", "avg", "average",
            "mean", "median", "max", "min", "maximum", "minimum", "target", "goal", "address", "pin", "hole", "previous",
            "last", "change", "delta", "diff", "difference", "rank", "error", "quality", "confidence", "tolerance");

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
        Said said = new Said();
        Matcher brackets = BRACKETS.matcher(raw);
        while (brackets.find()) {
            said.take(brackets.group().substring(1, brackets.group().length() - 1).strip());
        }
        String term = BRACKETS.matcher(raw).replaceAll(" ").strip();
        return resolved(raw, term, said).fitting();
    }

    /** What stands in the brackets of a heading. */
    private static final class Said {

        private String unit = "";
        private final List<String> legend = new ArrayList<>();
        private final List<String> qualifiers = new ArrayList<>();

        void take(String inside) {
            for (String piece : inside.split("[,;|]")) {
                place(piece.strip());
            }
        }

        private void place(String piece) {
            if (piece.isEmpty()) {
                return;
            }
            List<String> signs = SignLegend.of(piece);
            if (UnitWords.isUnit(piece)) {
                unit = piece;
            } else if (!signs.isEmpty()) {
                legend.addAll(signs);
            } else if (piece.indexOf('/') >= 0) {
                for (String part : piece.split("/")) {
                    place(part.strip());
                }
            } else {
                qualifiers.add(piece);
            }
        }

        boolean makesSomethingElse() {
            return qualifiers.stream().flatMap(words -> Stream.of(plainWords(words).split(" ")))
                    .anyMatch(OTHER_THINGS::contains);
        }
    }

    private static HeaderText resolved(String raw, String term, Said said) {
        Set<ColumnMeaning> qualified = meanings(term + " " + String.join(" ", said.qualifiers));
        if (!qualified.isEmpty()) {
            return new HeaderText(raw, qualified, said.unit, List.copyOf(said.legend));
        }
        Set<ColumnMeaning> plain = meanings(term);
        HeaderText text = plain.isEmpty() && said.unit.isEmpty() ? withTrailingUnit(raw, term, said.legend)
                : new HeaderText(raw, plain, said.unit, List.copyOf(said.legend));
        return said.makesSomethingElse() ? text.unsure() : text;
    }

    /** The same where the unit stands in a line below; a unit in the heading wins. */
    HeaderText withUnitBelow(String below) {
        return unit.isEmpty() && !below.isEmpty() ? new HeaderText(raw, meanings, below, legend).fitting() : this;
    }

    /**
     * Without the meanings that numbers in this unit can't have: 'Time (s)' is no time of day. Where none is left of
     * those that are readings, what the heading means is open.
     */
    private HeaderText fitting() {
        if (unit.isEmpty() || meanings.isEmpty()) {
            return this;
        }
        Set<ColumnMeaning> fitting = new LinkedHashSet<>();
        for (ColumnMeaning meaning : meanings) {
            boolean ignored = meaning.role() == ColumnRole.IGNORE;
            if (ignored || meaning.metric() != null && UnitWords.unit(unit, meaning.metric().dimension()).isPresent()) {
                fitting.add(meaning);
            }
        }
        boolean any = fitting.stream().anyMatch(meaning -> meaning.metric() != null);
        boolean readings = meanings.stream().anyMatch(meaning -> meaning.metric() != null);
        return any ? new HeaderText(raw, fitting, unit, legend)
                : readings ? unsure() : new HeaderText(raw, Set.of(), unit, legend);
    }

    private HeaderText unsure() {
        if (meanings.stream().allMatch(meaning -> meaning.metric() == null)) {
            return this;
        }
        Set<ColumnMeaning> more = new LinkedHashSet<>(meanings);
        more.add(ColumnMeaning.of(ColumnRole.IGNORE));
        return new HeaderText(raw, more, unit, legend);
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
            String rest = String.join(" ", List.of(words).subList(0, words.length - count)).replaceFirst(" in$", "");
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
