package gripwright.model;

/**
 * What the player felt over a stint; every answer may be skipped.
 *
 * @param comfort 1 to 7
 * @param control 1 to 7
 * @param confidence 1 to 7
 * @param headWeight −3 (much too light) over 0 (right) to 3 (much too heavy)
 * @param size −3 (much too thin) over 0 (right) to 3 (much too thick)
 * @param wouldPlay 'would you play it?'
 * @param word a word of the player's
 */
public record Feel(Integer comfort, Integer control, Integer confidence, Integer headWeight, Integer size,
        WouldPlay wouldPlay, String word) {

    /** The answer to 'would you play it?'. */
    public enum WouldPlay {
        YES,
        NO,
        UNSURE
    }

    /** Nothing asked, or everything skipped. */
    public static Feel unanswered() {
        return new Feel(null, null, null, null, null, null, "");
    }

    public Feel {
        Check.optionalBetween(comfort, 1, 7, "comfort");
        Check.optionalBetween(control, 1, 7, "control");
        Check.optionalBetween(confidence, 1, 7, "confidence");
        Check.optionalBetween(headWeight, -3, 3, "answer about the head's weight");
        Check.optionalBetween(size, -3, 3, "answer about the size");
        word = Check.orEmpty(word);
    }

    public boolean isUnanswered() {
        return equals(unanswered());
    }

    public Feel withComfort(Integer comfort) {
        return new Feel(comfort, control, confidence, headWeight, size, wouldPlay, word);
    }

    public Feel withControl(Integer control) {
        return new Feel(comfort, control, confidence, headWeight, size, wouldPlay, word);
    }

    public Feel withConfidence(Integer confidence) {
        return new Feel(comfort, control, confidence, headWeight, size, wouldPlay, word);
    }

    public Feel withHeadWeight(Integer headWeight) {
        return new Feel(comfort, control, confidence, headWeight, size, wouldPlay, word);
    }

    public Feel withSize(Integer size) {
        return new Feel(comfort, control, confidence, headWeight, size, wouldPlay, word);
    }

    public Feel withWouldPlay(WouldPlay wouldPlay) {
        return new Feel(comfort, control, confidence, headWeight, size, wouldPlay, word);
    }

    public Feel withWord(String word) {
        return new Feel(comfort, control, confidence, headWeight, size, wouldPlay, word);
    }
}
