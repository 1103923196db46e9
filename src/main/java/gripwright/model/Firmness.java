package gripwright.model;

/** How firm a grip is to the hand. */
public enum Firmness {
    SOFT,
    MEDIUM,
    FIRM
}
