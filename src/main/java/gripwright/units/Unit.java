package gripwright.units;

/**
 * A unit of measurement that people read and write; one unit is {@code factor} internal units of its dimension.
 *
 * <p>Factors are exact by definition: the international yard is 0.9144 m (international yard and pound agreement,
 * 1959; NIST Special Publication 811, appendix B), the avoirdupois ounce 28.349523125 g (same agreement), the mile
 * 1609.344 m, hence 1 mph = 0.44704 m/s.
 */
public enum Unit {
    METRES_PER_SECOND(Dimension.SPEED, "m/s", 1),
    KILOMETRES_PER_HOUR(Dimension.SPEED, "km/h", 1 / 3.6),
    MILES_PER_HOUR(Dimension.SPEED, "mph", 0.44704),
    METRE(Dimension.DISTANCE, "m", 1),
    YARD(Dimension.DISTANCE, "yd", 0.9144),
    FOOT(Dimension.DISTANCE, "ft", 0.3048),
    METRE_HIGH(Dimension.HEIGHT, "m", 1),
    FOOT_HIGH(Dimension.HEIGHT, "ft", 0.3048),
    YARD_HIGH(Dimension.HEIGHT, "yd", 0.9144),
    MILLIMETRE(Dimension.LENGTH, "mm", 1),
    CENTIMETRE(Dimension.LENGTH, "cm", 10),
    INCH(Dimension.LENGTH, "in", 25.4),
    DEGREE(Dimension.ANGLE, "°", 1),
    DEGREE_PER_SECOND(Dimension.ANGULAR_RATE, "°/s", 1),
    RADIAN_PER_SECOND(Dimension.ANGULAR_RATE, "rad/s", 180 / Math.PI),
    GRAM(Dimension.MASS, "g", 1),
    OUNCE(Dimension.MASS, "oz", 28.349523125),
    REVOLUTION_PER_MINUTE(Dimension.SPIN, "rpm", 1),
    SECOND(Dimension.TIME, "s", 1),
    NONE(Dimension.RATIO, "", 1);

    private final Dimension dimension;
    private final String symbol;
    private final double factor;

    Unit(Dimension dimension, String symbol, double factor) {
        this.dimension = dimension;
        this.symbol = symbol;
        this.factor = factor;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** The symbol as it stands in a heading; empty for a plain number. */
    public String symbol() {
        return symbol;
    }

    /** {@code value} of this unit in internal units: value × factor. NaN stays NaN. */
    public double toInternal(double value) {
        return value * factor;
    }

    /** {@code internal} internal units in this unit: internal ÷ factor. NaN stays NaN. */
    public double fromInternal(double internal) {
        return internal / factor;
    }
}
