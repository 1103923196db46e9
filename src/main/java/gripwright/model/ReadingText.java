package gripwright.model;

import gripwright.units.Dimension;
import gripwright.units.NumberText;
import gripwright.units.Unit;
import gripwright.units.UnitChoice;

/**
 * Readings as the people of one shop read them: in its units, with no more digits than the reading carries, and with
 * the sign as a word where the player's hand matters ('0.8 closed').
 *
 * @param units the shop's units
 * @param decimalMark '.' or ','
 * @param hand the player's hand, for the words
 */
public record ReadingText(UnitChoice units, char decimalMark, Handedness hand) {

    public ReadingText {
        Check.present(units, "units of the shop");
        Check.present(hand, "hand of the player");
    }

    /** In the shop's units and the player's words. */
    public static ReadingText of(ShopSettings shop, Handedness hand) {
        return new ReadingText(shop.units(), shop.decimalMark(), hand);
    }

    /** The unit that readings of this metric are shown in. */
    public Unit unit(Metric metric) {
        return units.of(metric.dimension());
    }

    /** Decimals that one reading of this metric carries in its unit; common practice, no source. */
    public int decimals(Metric metric) {
        Unit unit = unit(metric);
        return switch (metric.dimension()) {
            case SPEED, ANGLE -> 1;
            case RATIO -> 2;
            case LENGTH -> unit == Unit.INCH ? 2 : unit == Unit.CENTIMETRE ? 1 : 0;
            case ANGULAR_RATE -> unit == Unit.RADIAN_PER_SECOND ? 1 : 0;
            default -> 0;
        };
    }

    /** Decimals of a mean or a difference of means: one more where a single reading carries none. */
    public int meanDecimals(Metric metric) {
        boolean coarse = metric.dimension() == Dimension.SPIN || metric.dimension() == Dimension.ANGULAR_RATE;
        return coarse ? decimals(metric) : Math.max(1, decimals(metric));
    }

    /** The number alone, with a true minus: internal units in, the shop's unit out; NaN as an en dash. */
    public String number(Metric metric, double internal) {
        return format(metric, internal, decimals(metric));
    }

    /** The number of a mean, with the decimals of one. */
    public String mean(Metric metric, double internal) {
        return format(metric, internal, meanDecimals(metric));
    }

    /** A difference with its sign, plus included, in the decimals of a mean. */
    public String difference(Metric metric, double internal) {
        return NumberText.withDecimalMark(decimalMark)
                .formatSigned(unit(metric).fromInternal(internal), meanDecimals(metric));
    }

    /** '0.8 closed' where the sign is a word, else the number alone; a value that rounds to zero carries no word. */
    public String worded(Metric metric, double internal) {
        String word = word(metric, internal);
        return word.isEmpty() ? number(metric, internal) : number(metric, Math.abs(internal)) + " " + word;
    }

    /** The word of the sign for this hand; empty for what rounds to zero and where there is no sign. */
    public String word(Metric metric, double internal) {
        boolean zero = number(metric, internal).chars().noneMatch(c -> c >= '1' && c <= '9');
        return zero ? "" : metric.sign().word(internal, hand);
    }

    /** 'face angle, °': the name with its unit, as it stands in a heading. */
    public String heading(Metric metric) {
        String symbol = unit(metric).symbol();
        return symbol.isEmpty() ? metric.text() : metric.text() + ", " + symbol;
    }

    private String format(Metric metric, double internal, int decimals) {
        return NumberText.withDecimalMark(decimalMark).format(unit(metric).fromInternal(internal), decimals);
    }
}
