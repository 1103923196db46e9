package gripwright.model;

/** Which way a metric serves a player. */
public enum Direction {
    HIGHER,
    LOWER,
    /** Near a target value of this player's. */
    NEAR_TARGET,
    /** Shown, not scored. */
    NOT_SCORED
}
