package gripwright.balance;

import gripwright.model.ShopSettings;
import java.util.Locale;
import java.util.regex.Pattern;

/** Sentences with numbers in the shop's decimal mark; a swingweight such as D2.5 keeps the point of its notation. */
record Wording(char decimalMark) {

    private static final Pattern POINT = Pattern.compile("(?<=\\d)(?<![A-G]\\d)(?<![A-G]\\d\\d)\\.(?=\\d)");

    static Wording of(ShopSettings settings) {
        return new Wording(settings.decimalMark());
    }

    /** As {@link String#format(String, Object...)}. */
    String format(String pattern, Object... values) {
        String text = String.format(Locale.ROOT, pattern, values);
        return decimalMark == '.' ? text : POINT.matcher(text).replaceAll(String.valueOf(decimalMark));
    }
}
