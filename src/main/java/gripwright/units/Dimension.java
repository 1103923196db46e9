package gripwright.units;

/** What kind of quantity a number is; each has one internal {@link Unit} that everything is stored and computed in. */
public enum Dimension {
    /** Club and ball speed; internally m/s. */
    SPEED,
    /** How far a ball goes or misses; internally m. */
    DISTANCE,
    /** How high a ball goes; internally m. */
    HEIGHT,
    /** Lengths on a club, a grip or a clubface; internally mm. */
    LENGTH,
    /** Angles; internally degrees. */
    ANGLE,
    /** How fast an angle changes; internally degrees per second. */
    ANGULAR_RATE,
    /** Masses of clubs and their parts; internally g. */
    MASS,
    /** Spin of the ball; internally revolutions per minute. */
    SPIN,
    /** Time; internally s. */
    TIME,
    /** A plain number. */
    RATIO;

    /** The unit that numbers of this dimension are stored and computed in. */
    public Unit internalUnit() {
        return switch (this) {
            case SPEED -> Unit.METRES_PER_SECOND;
            case DISTANCE -> Unit.METRE;
            case HEIGHT -> Unit.METRE_HIGH;
            case LENGTH -> Unit.MILLIMETRE;
            case ANGLE -> Unit.DEGREE;
            case ANGULAR_RATE -> Unit.DEGREE_PER_SECOND;
            case MASS -> Unit.GRAM;
            case SPIN -> Unit.REVOLUTION_PER_MINUTE;
            case TIME -> Unit.SECOND;
            case RATIO -> Unit.NONE;
        };
    }
}
