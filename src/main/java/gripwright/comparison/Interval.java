package gripwright.comparison;

/**
 * A range that should hold the truth with 95 % probability, internal units of its metric.
 *
 * @param low lower end; may be negative infinity where it is unbounded
 * @param high upper end, at least {@code low}; may be infinity where it is unbounded
 */
public record Interval(double low, double high) {

    public Interval {
        if (!(low <= high)) {
            throw new IllegalArgumentException("An interval runs from its low to its high end, but this one from "
                    + low + " to " + high + ".");
        }
    }

    /** Whether both ends are finite. */
    public boolean isBounded() {
        return Double.isFinite(low) && Double.isFinite(high);
    }

    public boolean contains(double value) {
        return value >= low && value <= high;
    }

    /** Half of the width; infinite where the interval is unbounded. */
    public double halfWidth() {
        return (high - low) / 2;
    }

    /** The interval of the opposite: from −high to −low. */
    public Interval negated() {
        return new Interval(-high, -low);
    }
}
