package gripwright.desktop.bay;

import gripwright.model.Metric;
import gripwright.model.ReadingText;
import gripwright.model.SignConvention;
import gripwright.units.Dimension;
import gripwright.units.NumberText;
import gripwright.units.ParsedNumber;
import gripwright.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One cell of the entry line: a metric in the shop's unit, typed as people type it: '86.4', '0.8 c', 'L 4', '38,6 m/s'.
 *
 * <p>The sign may be a letter or word before or after the number: L and R, the words of the metric for this player
 * ('open', 'closed', 'in to out', 'toe', 'down') or their beginning.
 *
 * @param metric which reading
 * @param text units, decimal mark and the player's hand
 */
public record EntryColumn(Metric metric, ReadingText text) {

    private static final String MINUSES = "-\u2212\u2013";

    /** The name above the cell. */
    public String heading() {
        return metric.text();
    }

    /** The unit beside the name; empty for a plain number. */
    public String unit() {
        return text.unit(metric).symbol();
    }

    /** The letters that give the sign, for the prompt of an empty cell: 'c / o'; empty where there is no sign. */
    public String signHint() {
        return takesWords() && metric.sign() != SignConvention.CLOSING ? negativeWord().charAt(0) + " / " + positiveWord().charAt(0) : "";
    }

    /** Reads what stands in the cell. */
    public EntryCell read(String typed) {
        if (typed == null || typed.isBlank()) {
            return new EntryCell.Blank();
        }
        Pieces pieces = Pieces.of(typed);
        ParsedNumber number = NumberText.withDecimalMark(text.decimalMark()).parse(pieces.number());
        if (!(number instanceof ParsedNumber.Value value)) {
            return new EntryCell.Wrong(number.problem().filter(p -> pieces.isBare())
                    .orElse("'" + typed.strip() + "' is not " + metric.text() + "; write it like " + example() + "."));
        }
        return withWords(typed, value.value(), pieces);
    }

    private EntryCell withWords(String typed, double number, Pieces pieces) {
        Unit unit = text.unit(metric);
        int side = 0;
        for (String piece : List.of(pieces.before(), pieces.after())) {
            List<String> words = new ArrayList<>(List.of(piece.split("\\s+")));
            Optional<Unit> named = words.stream().flatMap(word -> unitNamed(word).stream()).findFirst();
            words.removeIf(word -> unitNamed(word).isPresent());
            unit = named.orElse(unit);
            String phrase = String.join(" ", words).strip();
            if (phrase.isEmpty()) {
                continue;
            }
            int found = side(phrase);
            if (found == 0 || side != 0) {
                return new EntryCell.Wrong("'" + phrase + "' says nothing about " + metric.text() + "; write it like "
                        + example() + ".");
            }
            side = found;
        }
        if (side != 0 && number < 0) {
            return new EntryCell.Wrong("'" + typed.strip() + "' has both a minus and a word for the side; "
                    + "leave one out.");
        }
        return checked(unit.toInternal(side == 0 ? number : side * number));
    }

    private EntryCell checked(double internal) {
        if (metric.isSensible(internal)) {
            return new EntryCell.Reading(internal, "");
        }
        return new EntryCell.Reading(internal, text.number(metric, internal) + " " + unit() + " is unusual for "
                + metric.text() + " (" + text.number(metric, metric.sensibleLow()) + " to "
                + text.number(metric, metric.sensibleHigh()) + " is usual); it is taken as typed.");
    }

    private String example() {
        double middle = (metric.sensibleLow() + metric.sensibleHigh()) / 2;
        double shown = takesWords() ? metric.sensibleHigh() / 10 : middle;
        return text.worded(metric, shown);
    }

    /** +1 or −1 for a letter or word of the side, 0 for anything else. */
    private int side(String typed) {
        String word = typed.strip().toLowerCase(Locale.ROOT).replace('-', ' ');
        boolean positive = begins(positiveWord(), word) || readsSides() && begins("right", word);
        boolean negative = begins(negativeWord(), word) || readsSides() && begins("left", word);
        return positive == negative ? 0 : positive ? 1 : -1;
    }

    private static boolean begins(String word, String typed) {
        boolean several = word.contains(" ");
        return !word.isEmpty() && !typed.isEmpty() && (word.startsWith(typed)
                || several && (word.replace(" ", "").startsWith(typed) || initials(word).equals(typed)));
    }

    private static String initials(String words) {
        StringBuilder initials = new StringBuilder();
        for (String word : words.split(" ")) {
            initials.append(word.charAt(0));
        }
        return initials.toString();
    }

    private boolean takesWords() {
        return !positiveWord().isEmpty();
    }

    /** Whether right is positive, so that L and R can be written. */
    private boolean readsSides() {
        return switch (metric.sign()) {
            case FACE, PATH, FACE_TO_PATH, RIGHT, SPIN_AXIS -> true;
            default -> false;
        };
    }

    private String positiveWord() {
        return metric.sign().positiveWord(text.hand());
    }

    private String negativeWord() {
        return metric.sign().negativeWord(text.hand());
    }

    private Optional<Unit> unitNamed(String word) {
        Dimension dimension = metric.dimension();
        for (Unit unit : Unit.values()) {
            if (unit.dimension() == dimension && !unit.symbol().isEmpty()
                    && unit.symbol().equalsIgnoreCase(word.strip())) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }

    /** A typed cell taken apart: the number, and the words before and after it. */
    private record Pieces(String before, String number, String after) {

        static Pieces of(String typed) {
            String line = typed.strip();
            int from = 0;
            while (from < line.length() && !startsNumber(line, from)) {
                from++;
            }
            int to = from;
            while (to < line.length() && inNumber(line.charAt(to))) {
                to++;
            }
            return new Pieces(line.substring(0, from).strip(), line.substring(from, to),
                    line.substring(to).strip());
        }

        boolean isBare() {
            return before.isEmpty() && after.isEmpty();
        }

        private static boolean startsNumber(String line, int at) {
            char c = line.charAt(at);
            boolean digitNext = at + 1 < line.length() && (Character.isDigit(line.charAt(at + 1))
                    || line.charAt(at + 1) == ' ' && MINUSES.indexOf(c) >= 0 || ".,".indexOf(line.charAt(at + 1)) >= 0);
            return Character.isDigit(c) || (MINUSES.indexOf(c) >= 0 || "+.,".indexOf(c) >= 0) && digitNext;
        }

        private static boolean inNumber(char c) {
            return Character.isDigit(c) || ".,+'\u00A0\u202F\u2009 ".indexOf(c) >= 0 || MINUSES.indexOf(c) >= 0;
        }
    }
}
