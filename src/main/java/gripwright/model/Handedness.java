package gripwright.model;

/** Which way a player stands to the ball. */
public enum Handedness {
    RIGHT,
    LEFT;

    /** 'right-handed' or 'left-handed'. */
    public String text() {
        return this == RIGHT ? "right-handed" : "left-handed";
    }
}
