package gripwright.desktop.balance;

import gripwright.model.ShopSettings;
import gripwright.units.Dimension;
import gripwright.units.NumberText;
import gripwright.units.Swingweight;
import gripwright.units.Unit;

/** Figures of a lever as this shop reads them; an en dash for what can't be known. */
final class Figures {

    static final String NONE = "\u2013";

    private final ShopSettings settings;
    private final NumberText numbers;

    Figures(ShopSettings settings) {
        this.settings = settings;
        numbers = NumberText.withDecimalMark(settings.decimalMark());
    }

    Unit length() {
        return settings.units().of(Dimension.LENGTH);
    }

    Unit mass() {
        return settings.units().of(Dimension.MASS);
    }

    /** A whole club's or a part's mass, without its unit. */
    String mass(Double grams) {
        return mass(grams, 0);
    }

    /** A small mass, with a decimal more. */
    String smallMass(Double grams) {
        return mass(grams, 1);
    }

    /** A small mass to add or take away, with its sign. */
    String massOff(Double grams) {
        return grams == null ? NONE
                : numbers.formatSigned(mass().fromInternal(grams), mass() == Unit.OUNCE ? 3 : 1);
    }

    private String mass(Double grams, int decimals) {
        return grams == null ? NONE
                : numbers.format(mass().fromInternal(grams), mass() == Unit.OUNCE ? decimals + 2 : decimals);
    }

    /** A place along a club, without its unit. */
    String place(Double mm) {
        return mm == null ? NONE : numbers.format(length().fromInternal(mm), length() == Unit.INCH ? 2 : 0);
    }

    /** A measuring place: whole where it is one. */
    String roundPlace(double mm) {
        double value = length().fromInternal(mm);
        boolean whole = Math.abs(value - Math.rint(value)) < 1e-6;
        return numbers.format(value, whole ? 0 : length() == Unit.INCH ? 2 : 0);
    }

    /** A difference of places with its sign. */
    String placeOff(Double mm) {
        return mm == null ? NONE : numbers.formatSigned(length().fromInternal(mm), length() == Unit.INCH ? 2 : 0);
    }

    /** A diameter as a caliper reads it, without its unit. */
    String diameter(Double mm) {
        return mm == null ? NONE : numbers.format(length().fromInternal(mm), length() == Unit.INCH ? 3 : 2);
    }

    /** A difference of diameters with its sign. */
    String diameterOff(Double mm) {
        return mm == null ? NONE : numbers.formatSigned(length().fromInternal(mm), length() == Unit.INCH ? 3 : 2);
    }

    String number(Double value, int decimals) {
        return value == null ? NONE : numbers.format(value, decimals);
    }

    String signed(Double value, int decimals) {
        return value == null ? NONE : numbers.formatSigned(value, decimals);
    }

    static String swingweight(Swingweight swingweight) {
        return swingweight == null ? NONE : swingweight.text();
    }
}
