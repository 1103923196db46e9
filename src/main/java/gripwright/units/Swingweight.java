package gripwright.units;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A reading of the 14-inch swingweight scale, kept as points above A0: ten points a letter, so D2 is 32.
 *
 * <p>Only the notation is here; what a point is in gram-inches belongs to the balance of the club.
 *
 * @param points points above A0; below A0 negative; must be finite
 */
public record Swingweight(double points) implements Comparable<Swingweight> {

    private static final Pattern NOTATION =
            Pattern.compile("\\s*([A-Ga-g])\\s*[-\\u2212]?\\s*(\\d{1,2}(?:[.,]\\d+)?)\\s*");
    private static final int POINTS_PER_LETTER = 10;
    private static final int LETTERS = 7;

    public Swingweight {
        if (!Double.isFinite(points)) {
            throw new IllegalArgumentException("A swingweight must be a finite number of points, not " + points + ".");
        }
    }

    /**
     * Reads 'D2', 'd 2.5', 'C8,75' or 'G10'; the number runs from 0 up to, but not including, 10, save for G10, which
     * closes the scale.
     *
     * @return empty when the text is not a swingweight
     */
    public static Optional<Swingweight> parse(String text) {
        Matcher matcher = NOTATION.matcher(text);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        int letter = Character.toUpperCase(matcher.group(1).charAt(0)) - 'A';
        double number = Double.parseDouble(matcher.group(2).replace(',', '.'));
        boolean top = letter == LETTERS - 1 && number == POINTS_PER_LETTER;
        if (number >= POINTS_PER_LETTER && !top) {
            return Optional.empty();
        }
        return Optional.of(new Swingweight(letter * (double) POINTS_PER_LETTER + number));
    }

    /** Letter, number and one decimal, 'D2.0'; off the lettered scale the points beyond its end, 'A0 − 3.1'. */
    public String text() {
        return text(1);
    }

    /** As {@link #text()} with a chosen number of decimals. */
    public String text(int decimals) {
        double scale = Math.pow(10, decimals);
        double rounded = Math.round(points * scale) / scale;
        String pattern = "%." + decimals + "f";
        if (rounded < 0) {
            return "A0 \u2212 " + String.format(Locale.ROOT, pattern, -rounded);
        }
        if (rounded > LETTERS * POINTS_PER_LETTER) {
            return "G10 + " + String.format(Locale.ROOT, pattern, rounded - LETTERS * POINTS_PER_LETTER);
        }
        int letter = Math.min(LETTERS - 1, (int) Math.floor(rounded / POINTS_PER_LETTER));
        return (char) ('A' + letter)
                + String.format(Locale.ROOT, pattern, rounded - letter * (double) POINTS_PER_LETTER);
    }

    /** This swingweight moved by some points. */
    public Swingweight plus(double morePoints) {
        return new Swingweight(points + morePoints);
    }

    @Override
    public int compareTo(Swingweight other) {
        return Double.compare(points, other.points);
    }

    @Override
    public String toString() {
        return text();
    }
}
