package gripwright.comparison;

/** What this session can't tell apart, so that a usual figure (a prior) stands in and the intervals are wider. */
public enum NotIdentifiedPart {
    STINT_VARIATION("stint-variation",
            "Stint-to-stint variation can't be told from this session; the shop's usual figure is used."),
    DRIFT("drift", "Warming up or tiring can't be told from the configurations in this order; the shop's usual figure "
            + "for drift is used. Hit the first configuration again to tell them apart."),
    NOISE("noise", "Too few shots to tell how much single shots vary; no verdict is possible yet.");

    private final String wire;
    private final String sentence;

    NotIdentifiedPart(String wire, String sentence) {
        this.wire = wire;
        this.sentence = sentence;
    }

    /** The spelling in JSON. */
    public String wire() {
        return wire;
    }

    /** The sentence for people. */
    public String sentence() {
        return sentence;
    }
}
