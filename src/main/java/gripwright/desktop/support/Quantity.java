package gripwright.desktop.support;

import gripwright.model.Metric;
import gripwright.units.Dimension;
import gripwright.units.Unit;

/**
 * A kind of number that is typed: its dimension and how many decimals it is shown with in each unit.
 *
 * <p>Decimals are a matter of the instruments of the trade (a caliper reads 0.001 in, a scale 0.1 g); common practice, no
 * source. What is typed finer than that is kept as typed. What instruments of the shop read is always shown to the same
 * decimals, so that rows and columns can be compared; other numbers are shown as fine as they were typed.
 */
public enum Quantity {
    /** Club speeds and ball speeds. */
    SPEED(Dimension.SPEED),
    /** Carry, offline, total. */
    DISTANCE(Dimension.DISTANCE),
    HEIGHT(Dimension.HEIGHT),
    /** Lengths of clubs, hands and fingers, and places along a club. */
    LENGTH(Dimension.LENGTH),
    /** Diameters, wraps, caps: what a caliper reads. */
    DIAMETER(Dimension.LENGTH),
    ANGLE(Dimension.ANGLE),
    ANGULAR_RATE(Dimension.ANGULAR_RATE),
    MASS(Dimension.MASS),
    SPIN(Dimension.SPIN),
    RATIO(Dimension.RATIO),
    /** Shares and weights from 0 to 1, prices, and whatever else has no unit. */
    PLAIN(Dimension.RATIO),
    /** Whole numbers. */
    COUNT(Dimension.RATIO);

    private final Dimension dimension;

    Quantity(Dimension dimension) {
        this.dimension = dimension;
    }

    /** The quantity that a metric is read in. */
    public static Quantity of(Metric metric) {
        return switch (metric.dimension()) {
            case SPEED -> SPEED;
            case DISTANCE -> DISTANCE;
            case HEIGHT -> HEIGHT;
            case LENGTH -> LENGTH;
            case ANGLE -> ANGLE;
            case ANGULAR_RATE -> ANGULAR_RATE;
            case MASS -> MASS;
            case SPIN -> SPIN;
            case TIME, RATIO -> RATIO;
        };
    }

    public Dimension dimension() {
        return dimension;
    }

    /** Decimals that are always shown in this unit. */
    public int decimals(Unit unit) {
        return switch (this) {
            case DIAMETER -> unit == Unit.INCH ? 3 : 2;
            case LENGTH -> unit == Unit.MILLIMETRE ? 1 : 2;
            case MASS -> unit == Unit.OUNCE ? 3 : 1;
            case SPEED, DISTANCE, HEIGHT, ANGLE -> 1;
            case ANGULAR_RATE -> unit == Unit.RADIAN_PER_SECOND ? 1 : 0;
            case RATIO -> 2;
            case SPIN, PLAIN, COUNT -> 0;
        };
    }

    /** The most decimals that are shown in this unit, where a number was typed that fine. */
    public int mostDecimals(Unit unit) {
        return switch (this) {
            case COUNT, LENGTH, DIAMETER, MASS -> decimals(unit);
            case PLAIN -> decimals(unit) + 2;
            default -> decimals(unit) + 1;
        };
    }
}
