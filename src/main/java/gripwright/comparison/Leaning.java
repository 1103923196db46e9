package gripwright.comparison;

/** Which way a verdict that is not settled leans; no claim. */
public enum Leaning {
    TOWARDS_BETTER("better"),
    TOWARDS_WORSE("worse"),
    NONE("none");

    private final String wire;

    Leaning(String wire) {
        this.wire = wire;
    }

    /** The spelling in JSON. */
    public String wire() {
        return wire;
    }

    /** The leaning with the two sides swapped. */
    public Leaning reversed() {
        return switch (this) {
            case TOWARDS_BETTER -> TOWARDS_WORSE;
            case TOWARDS_WORSE -> TOWARDS_BETTER;
            case NONE -> NONE;
        };
    }
}
