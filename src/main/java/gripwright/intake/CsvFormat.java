package gripwright.intake;

import gripwright.model.Handedness;
import gripwright.model.Metric;
import gripwright.units.Dimension;
import gripwright.units.UnitChoice;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * How a CSV file is written: encoding, marks, units, signs and what stands around the table.
 *
 * @param charset encoding
 * @param byteOrderMark whether the file begins with a byte order mark
 * @param delimiter between cells
 * @param decimalMark '.' or ','
 * @param thousands separator of groups of three digits; null for none
 * @param minus the sign before negative numbers, '-' or a typographic one
 * @param units the units numbers are written in
 * @param unitPlace where the units stand
 * @param signs how directions are written
 * @param hand the player's hand, for words such as 'open'; may be null where no words are written
 * @param blank what stands where nothing was measured
 * @param lineEnd between lines
 * @param titles lines before the headings
 * @param summaries whether averages and extremes stand below the shots
 * @param moreDecimals decimals beyond the usual ones of each reading
 * @param headings headings other than the metric's own names
 */
public record CsvFormat(Charset charset, boolean byteOrderMark, char delimiter, char decimalMark, Character thousands,
        String minus, UnitChoice units, UnitPlace unitPlace, Signs signs, Handedness hand, String blank,
        String lineEnd, List<String> titles, boolean summaries, int moreDecimals, Map<Metric, String> headings) {

    /** Where the units stand. */
    public enum UnitPlace {
        BRACKETS,
        PARENTHESES,
        LINE_BELOW,
        CELLS
    }

    /** How a direction is written. */
    public enum Signs {
        PLAIN,
        LETTER_BEFORE,
        LETTER_AFTER,
        WORD_AFTER
    }

    /** Comma, dot, UTF-8, units in brackets, plain signs: what this program exports. */
    public static CsvFormat usual(UnitChoice units) {
        return new CsvFormat(StandardCharsets.UTF_8, false, ',', '.', null, "-", units, UnitPlace.BRACKETS, Signs.PLAIN,
                null, "", "\n", List.of(), false, 0, Map.of());
    }

    /** Semicolon and decimal comma, with a byte order mark so that spreadsheets read it rightly. */
    public static CsvFormat ofLocale(Locale locale, UnitChoice units) {
        char mark = java.text.DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
        CsvFormat usual = usual(units);
        return mark == ',' ? usual.withMarks(';', ',', null).withEncoding(StandardCharsets.UTF_8, true) : usual;
    }

    public CsvFormat {
        titles = List.copyOf(titles);
        headings = Map.copyOf(headings);
        if (decimalMark == delimiter && delimiter != ',') {
            throw new IllegalArgumentException("Cells can't be parted by the decimal mark.");
        }
    }

    /** Decimals that a reading of this dimension is written with; speeds and distances to a tenth. */
    int decimals(Dimension dimension) {
        int usual = switch (dimension) {
            case SPIN, ANGULAR_RATE -> 0;
            case RATIO -> 2;
            case ANGLE, SPEED, DISTANCE, HEIGHT, LENGTH, MASS, TIME -> 1;
        };
        return usual + moreDecimals;
    }

    public CsvFormat withEncoding(Charset charset, boolean byteOrderMark) {
        return new CsvFormat(charset, byteOrderMark, delimiter, decimalMark, thousands, minus, units, unitPlace, signs,
                hand, blank, lineEnd, titles, summaries, moreDecimals, headings);
    }

    public CsvFormat withMarks(char delimiter, char decimalMark, Character thousands) {
        return new CsvFormat(charset, byteOrderMark, delimiter, decimalMark, thousands, minus, units, unitPlace, signs,
                hand, blank, lineEnd, titles, summaries, moreDecimals, headings);
    }

    public CsvFormat withMinus(String minus) {
        return new CsvFormat(charset, byteOrderMark, delimiter, decimalMark, thousands, minus, units, unitPlace, signs,
                hand, blank, lineEnd, titles, summaries, moreDecimals, headings);
    }

    public CsvFormat withUnits(UnitPlace unitPlace) {
        return new CsvFormat(charset, byteOrderMark, delimiter, decimalMark, thousands, minus, units, unitPlace, signs,
                hand, blank, lineEnd, titles, summaries, moreDecimals, headings);
    }

    public CsvFormat withSigns(Signs signs, Handedness hand) {
        return new CsvFormat(charset, byteOrderMark, delimiter, decimalMark, thousands, minus, units, unitPlace, signs,
                hand, blank, lineEnd, titles, summaries, moreDecimals, headings);
    }

    public CsvFormat withBlank(String blank) {
        return new CsvFormat(charset, byteOrderMark, delimiter, decimalMark, thousands, minus, units, unitPlace, signs,
                hand, blank, lineEnd, titles, summaries, moreDecimals, headings);
    }

    public CsvFormat withLineEnd(String lineEnd) {
        return new CsvFormat(charset, byteOrderMark, delimiter, decimalMark, thousands, minus, units, unitPlace, signs,
                hand, blank, lineEnd, titles, summaries, moreDecimals, headings);
    }

    public CsvFormat withTitles(List<String> titles) {
        return new CsvFormat(charset, byteOrderMark, delimiter, decimalMark, thousands, minus, units, unitPlace, signs,
                hand, blank, lineEnd, titles, summaries, moreDecimals, headings);
    }

    public CsvFormat withSummaries(boolean summaries) {
        return new CsvFormat(charset, byteOrderMark, delimiter, decimalMark, thousands, minus, units, unitPlace, signs,
                hand, blank, lineEnd, titles, summaries, moreDecimals, headings);
    }

    public CsvFormat withMoreDecimals(int moreDecimals) {
        return new CsvFormat(charset, byteOrderMark, delimiter, decimalMark, thousands, minus, units, unitPlace, signs,
                hand, blank, lineEnd, titles, summaries, moreDecimals, headings);
    }

    public CsvFormat withHeadings(Map<Metric, String> headings) {
        return new CsvFormat(charset, byteOrderMark, delimiter, decimalMark, thousands, minus, units, unitPlace, signs,
                hand, blank, lineEnd, titles, summaries, moreDecimals, headings);
    }
}
