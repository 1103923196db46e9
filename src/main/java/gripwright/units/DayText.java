package gripwright.units;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** A day as nobody can misread it, on the screen and on paper: 3 Nov 2026. */
public final class DayText {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

    private DayText() {
    }

    public static String of(LocalDate day) {
        return DAY.format(day);
    }
}
