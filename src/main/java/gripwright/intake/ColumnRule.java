package gripwright.intake;

/**
 * What the shop says about one column.
 *
 * @param heading the column's heading, letter case and punctuation ignored; '#3' for the third column
 * @param meaning key of a metric ('clubSpeed') or of another thing ('shotId', 'stint', 'ignore')
 * @param unit the unit its numbers are in ('mph'); empty to take it from the file
 * @param flipped whether its signs are the other way round than in this program (left positive, heel positive)
 * @param plus the word that a number without a minus means ('left', 'open'), which wins over {@code flipped} and over
 *     the heading; empty where the rule says nothing about it
 */
public record ColumnRule(String heading, String meaning, String unit, boolean flipped, String plus) {

    /** A column with the unit the file gives and the usual signs. */
    public static ColumnRule of(String heading, String meaning) {
        return new ColumnRule(heading, meaning, "", false);
    }

    /** A rule that says by which side alone, not by a word, whether signs are the other way round. */
    public ColumnRule(String heading, String meaning, String unit, boolean flipped) {
        this(heading, meaning, unit, flipped, "");
    }

    public ColumnRule {
        if (heading == null || heading.isBlank()) {
            throw new IllegalArgumentException("Say which column the rule is for: its heading, or '#3' for the third.");
        }
        ColumnMeaning held = meaning == null ? null : ColumnMeaning.ofKey(meaning).orElse(null);
        if (held == null) {
            throw new IllegalArgumentException("A column can't hold '" + meaning
                    + "'; choose a reading such as 'clubSpeed', or 'ignore'.");
        }
        unit = unit == null ? "" : unit;
        if (!unit.isEmpty() && !UnitWords.isUnit(unit)) {
            throw new IllegalArgumentException("'" + unit + "' is no unit; write one such as mph, m/s, yd or mm.");
        }
        plus = plus == null ? "" : plus;
        if (!plus.isEmpty() && (held.metric() == null || DirectionWords.of(held.metric(), plus) == null)) {
            throw new IllegalArgumentException("'" + plus + "' is no side of " + held.text() + "; write one of "
                    + String.join(", ", held.sides()) + ", or nothing.");
        }
    }

    public ColumnRule withUnit(String unit) {
        return new ColumnRule(heading, meaning, unit, flipped, plus);
    }

    public ColumnRule withFlipped(boolean flipped) {
        return new ColumnRule(heading, meaning, unit, flipped, plus);
    }

    /** With the word that a number without a minus means. */
    public ColumnRule withPlus(String plus) {
        return new ColumnRule(heading, meaning, unit, false, plus);
    }

    /** Whether the rule is for a column by its place and not by its heading. */
    boolean isForPlace() {
        return heading.strip().matches("#\\d+");
    }
}
