package gripwright.desktop.support;

import java.util.Locale;

/** Values of the model as words on the screen. */
public final class Words {

    private Words() {
    }

    /** The name of a constant in lower case with spaces, 'half cord'. */
    public static String of(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** As {@link #of(Enum)}; 'not said' for null. */
    public static String orNotSaid(Enum<?> value) {
        return value == null ? "not said" : of(value);
    }

    /** A number with its noun: '1 shot', '4 shots'. */
    public static String count(int number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }

    /** The first letter in upper case. */
    public static String capitalised(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
