package gripwright.statistics;

/**
 * A range of values for something estimated, both ends included.
 *
 * @param lower the lower end, perhaps negative infinity, NaN where there is no interval
 * @param upper the upper end, perhaps positive infinity, NaN where there is no interval
 */
public record Interval(double lower, double upper) {

    /** What stands where nothing can be said. */
    public static final Interval UNDEFINED = new Interval(Double.NaN, Double.NaN);

    /** Whether the value lies in the interval, its ends included. */
    public boolean contains(double value) {
        return value >= lower && value <= upper;
    }

    /** Upper less lower end. */
    public double width() {
        return upper - lower;
    }
}
