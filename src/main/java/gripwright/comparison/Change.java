package gripwright.comparison;

/**
 * What may be said of the signed difference itself, whichever way it serves: the same thresholds as the verdicts', on
 * the difference instead of the gain. It carries the words 'probably faster' and 'leans closed'.
 */
public enum Change {
    HIGHER("higher"),
    PROBABLY_HIGHER("probably-higher"),
    LEANS_HIGHER("leans-higher"),
    SAME("same"),
    LEANS_LOWER("leans-lower"),
    PROBABLY_LOWER("probably-lower"),
    LOWER("lower"),
    NOT_SETTLED("not-settled");

    private final String wire;

    Change(String wire) {
        this.wire = wire;
    }

    /** The spelling in JSON. */
    public String wire() {
        return wire;
    }

    /** The change with the two sides swapped. */
    public Change reversed() {
        return switch (this) {
            case HIGHER -> LOWER;
            case PROBABLY_HIGHER -> PROBABLY_LOWER;
            case LEANS_HIGHER -> LEANS_LOWER;
            case LEANS_LOWER -> LEANS_HIGHER;
            case PROBABLY_LOWER -> PROBABLY_HIGHER;
            case LOWER -> HIGHER;
            case SAME, NOT_SETTLED -> this;
        };
    }

    /** +1 for the changes upwards, −1 for those downwards, 0 else. */
    public int side() {
        return switch (this) {
            case HIGHER, PROBABLY_HIGHER, LEANS_HIGHER -> 1;
            case LOWER, PROBABLY_LOWER, LEANS_LOWER -> -1;
            case SAME, NOT_SETTLED -> 0;
        };
    }
}
