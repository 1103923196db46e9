package gripwright.model;

/** The families of clubs that a set is made of. */
public enum ClubKind {
    DRIVER("driver"),
    FAIRWAY_WOOD("fairway wood"),
    HYBRID("hybrid"),
    IRON("iron"),
    WEDGE("wedge"),
    PUTTER("putter");

    private final String text;

    ClubKind(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
