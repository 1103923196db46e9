package gripwright.intake;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A date, a time of day or both, as written; a date such as 03/04/2026 keeps both of its readings open.
 *
 * @param dayFirst the date if the day comes first; null where there is none
 * @param monthFirst the date if the month comes first; the same where it makes no difference
 * @param time the time of day; null where there is none
 * @param offset the offset from UTC; null where none is written
 * @param readable whether the text could be read
 */
record TimeText(LocalDate dayFirst, LocalDate monthFirst, LocalTime time, ZoneOffset offset, boolean readable) {

    private static final TimeText UNREADABLE = new TimeText(null, null, null, null, false);
    private static final TimeText NOTHING = new TimeText(null, null, null, null, true);
    private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})");
    private static final Pattern YEAR_LAST = Pattern.compile("(\\d{1,2})[-/.] ?(\\d{1,2})[-/.] ?(\\d{4}|\\d{2})");
    private static final Pattern NAMED = Pattern.compile(
            "(?:(\\d{1,2})\\.?[ -]([A-Za-z]{3,9})\\.?|([A-Za-z]{3,9})\\.? (\\d{1,2})),?[ -](\\d{4}|\\d{2})");
    private static final Pattern CLOCK = Pattern.compile(
            "(\\d{1,2}):(\\d{2})(?::(\\d{2})(?:[.,](\\d{1,9}))?)? ?([AaPp]\\.?[Mm]\\.?)?");
    private static final Pattern OFFSET = Pattern.compile("(Z|[+-]\\d{2}:?\\d{2})$");
    private static final List<String> MONTHS = List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep",
            "oct", "nov", "dec");
    private static final int CENTURY = 2000;

    static TimeText of(String cell) {
        String text = CellText.clean(cell);
        if (CellText.saysNothing(text)) {
            return NOTHING;
        }
        if (text.length() > 48) {
            return UNREADABLE;
        }
        try {
            return read(text);
        } catch (DateTimeException impossible) {
            return UNREADABLE;
        }
    }

    private static TimeText read(String whole) {
        Matcher clock = CLOCK.matcher(whole);
        LocalTime time = null;
        ZoneOffset offset = null;
        String rest = whole;
        if (clock.find()) {
            time = time(clock);
            String after = whole.substring(clock.end()).strip();
            Matcher zone = OFFSET.matcher(after);
            if (zone.matches()) {
                offset = ZoneOffset.of(after);
                after = "";
            }
            rest = (whole.substring(0, clock.start()) + " " + after).strip();
            if (rest.endsWith("T") || rest.endsWith(",")) {
                rest = rest.substring(0, rest.length() - 1).strip();
            }
        }
        if (rest.isEmpty()) {
            return new TimeText(null, null, time, offset, true);
        }
        return withDate(rest, time, offset);
    }

    private static TimeText withDate(String text, LocalTime time, ZoneOffset offset) {
        Matcher yearFirst = YEAR_FIRST.matcher(text);
        if (yearFirst.matches()) {
            LocalDate date = LocalDate.of(number(yearFirst, 1), number(yearFirst, 2), number(yearFirst, 3));
            return new TimeText(date, date, time, offset, true);
        }
        Matcher yearLast = YEAR_LAST.matcher(text);
        if (yearLast.matches()) {
            int year = year(number(yearLast, 3));
            LocalDate dayFirst = dateOrNull(year, number(yearLast, 2), number(yearLast, 1));
            LocalDate monthFirst = dateOrNull(year, number(yearLast, 1), number(yearLast, 2));
            boolean readable = dayFirst != null || monthFirst != null;
            return new TimeText(dayFirst, monthFirst, time, offset, readable);
        }
        Matcher named = NAMED.matcher(text);
        if (named.matches()) {
            boolean dayLeads = named.group(1) != null;
            String name = named.group(dayLeads ? 2 : 3).substring(0, 3).toLowerCase(Locale.ROOT);
            LocalDate date = LocalDate.of(year(number(named, 5)), MONTHS.indexOf(name) + 1, number(named, dayLeads ? 1 : 4));
            return new TimeText(date, date, time, offset, true);
        }
        return UNREADABLE;
    }

    private static LocalDate dateOrNull(int year, int month, int day) {
        try {
            return LocalDate.of(year, month, day);
        } catch (DateTimeException impossible) {
            return null;
        }
    }

    private static LocalTime time(Matcher clock) {
        int hour = number(clock, 1);
        if (clock.group(5) != null) {
            if (hour < 1 || hour > 12) {
                throw new DateTimeException("no hour of a half day");
            }
            hour = hour % 12 + (Character.toLowerCase(clock.group(5).charAt(0)) == 'p' ? 12 : 0);
        }
        int second = clock.group(3) == null ? 0 : number(clock, 3);
        String fraction = clock.group(4) == null ? "" : clock.group(4);
        int nanos = fraction.isEmpty() ? 0 : Integer.parseInt((fraction + "000000000").substring(0, 9));
        return LocalTime.of(hour, number(clock, 2), second, nanos);
    }

    private static int number(Matcher matcher, int group) {
        return Integer.parseInt(matcher.group(group));
    }

    private static int year(int written) {
        return written < 100 ? CENTURY + written : written;
    }

    boolean hasDate() {
        return dayFirst != null || monthFirst != null;
    }

    /** Whether only the order of day and month says which day this is. */
    boolean isEither() {
        return dayFirst != null && monthFirst != null && !dayFirst.equals(monthFirst);
    }

    /** Whether this date can only have the day first. */
    boolean showsDayFirst() {
        return dayFirst != null && monthFirst == null;
    }

    /** Whether this date can only have the month first. */
    boolean showsMonthFirst() {
        return dayFirst == null && monthFirst != null;
    }

    /** The day; null where there is none or where it is still open. */
    LocalDate date(Boolean dayComesFirst) {
        if (!isEither()) {
            return dayFirst != null ? dayFirst : monthFirst;
        }
        return dayComesFirst == null ? null : dayComesFirst ? dayFirst : monthFirst;
    }

    /** The instant of a time on a day; null where one of the two is missing. */
    static Instant instant(LocalDate date, LocalTime time, ZoneOffset offset, ZoneId zone) {
        if (date == null || time == null) {
            return null;
        }
        return date.atTime(time).atZone(offset != null ? offset : zone).toInstant();
    }
}
