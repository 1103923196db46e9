package gripwright.model;

/** How worn a grip is; a worn grip is slick and thinner than its label. */
public enum GripCondition {
    FRESH,
    USED,
    WORN
}
