package gripwright.intake;

/**
 * What the shop says about one column.
 *
 * @param heading the column's heading, letter case and punctuation ignored; '#3' for the third column
 * @param meaning key of a metric ('clubSpeed') or of another thing ('shotId', 'stint', 'ignore')
 * @param unit the unit its numbers are in ('mph'); empty to take it from the file
 * @param flipped whether its signs are the other way round than in this program (left positive, heel positive)
 */
public record ColumnRule(String heading, String meaning, String unit, boolean flipped) {

    /** A column with the unit the file gives and the usual signs. */
    public static ColumnRule of(String heading, String meaning) {
        return new ColumnRule(heading, meaning, "", false);
    }

    public ColumnRule {
        if (heading == null || heading.isBlank()) {
            throw new IllegalArgumentException("Say which column the rule is for: its heading, or '#3' for the third.");
        }
        if (meaning == null || ColumnMeaning.ofKey(meaning).isEmpty()) {
            throw new IllegalArgumentException("A column can't hold '" + meaning
                    + "'; choose a reading such as 'clubSpeed', or 'ignore'.");
        }
        unit = unit == null ? "" : unit;
        if (!unit.isEmpty() && !UnitWords.isUnit(unit)) {
            throw new IllegalArgumentException("'" + unit + "' is no unit; write one such as mph, m/s, yd or mm.");
        }
    }

    public ColumnRule withUnit(String unit) {
        return new ColumnRule(heading, meaning, unit, flipped);
    }

    public ColumnRule withFlipped(boolean flipped) {
        return new ColumnRule(heading, meaning, unit, flipped);
    }
}
