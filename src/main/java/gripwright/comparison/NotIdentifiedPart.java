package gripwright.comparison;

/** What this session can't tell, so that a usual figure (a prior) stands in or nothing can be said yet. */
public enum NotIdentifiedPart {
    STINT_VARIATION("stint-variation", false,
            "Stint-to-stint variation can't be told from this session; the shop's usual figure is used."),
    DRIFT("drift", false, "Warming up or tiring can't be told from the configurations in this order; the shop's usual "
            + "figure for drift is used. Hit the first configuration again to tell them apart."),
    WIDE("wide", false, "So few shots are left over to tell the noise that the intervals are very wide."),
    TOO_FEW_SHOTS("too-few-shots", true,
            "Too few shots to tell how much single shots vary, so nothing can be said of differences yet; hit more."),
    ALL_EQUAL("all-equal", true,
            "All readings are the same number, so there is no variation to judge a difference by; look at the source."),
    NO_VARIATION_IN_STINTS("no-variation-in-stints", true, "Readings don't vary within stints, so there is no noise to "
            + "judge a difference by; look at the source.");

    private final String wire;
    private final boolean prevents;
    private final String sentence;

    NotIdentifiedPart(String wire, boolean prevents, String sentence) {
        this.wire = wire;
        this.prevents = prevents;
        this.sentence = sentence;
    }

    /** The spelling in JSON. */
    public String wire() {
        return wire;
    }

    /** Whether no verdict is possible because of it. */
    public boolean prevents() {
        return prevents;
    }

    /** The sentence for people. */
    public String sentence() {
        return sentence;
    }
}
