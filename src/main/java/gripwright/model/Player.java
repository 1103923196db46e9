package gripwright.model;

/**
 * The player of a session.
 *
 * @param label what the shop calls the player; no more than it needs
 * @param hand which way the player stands
 * @param handLengthMm wrist crease to fingertip, mm; null where not measured
 * @param longestFingerMm null where not measured
 * @param gloveSize as the glove says; may be empty
 * @param currentGrip what the player plays now, in words
 * @param currentWraps wraps under it; null where not known
 * @param painSites where hands hurt; private: never on work orders or anonymous copies
 * @param note free text
 */
public record Player(String label, Handedness hand, Double handLengthMm, Double longestFingerMm, String gloveSize,
        String currentGrip, Integer currentWraps, String painSites, String note) {

    /** A player of whom only the label and the hand are known. */
    public static Player named(String label, Handedness hand) {
        return new Player(label, hand, null, null, "", "", null, "", "");
    }

    public Player {
        label = Check.orEmpty(label);
        Check.present(hand, "handedness of the player");
        Check.optionalPositive(handLengthMm, "hand length");
        Check.optionalPositive(longestFingerMm, "length of the longest finger");
        gloveSize = Check.orEmpty(gloveSize);
        currentGrip = Check.orEmpty(currentGrip);
        if (currentWraps != null) {
            Check.atLeast(currentWraps, 0, "number of wraps under the current grip");
        }
        painSites = Check.orEmpty(painSites);
        note = Check.orEmpty(note);
    }

    public Player withLabel(String label) {
        return new Player(label, hand, handLengthMm, longestFingerMm, gloveSize, currentGrip, currentWraps,
                painSites, note);
    }

    public Player withHand(Handedness hand) {
        return new Player(label, hand, handLengthMm, longestFingerMm, gloveSize, currentGrip, currentWraps,
                painSites, note);
    }

    public Player withHandLengthMm(Double handLengthMm) {
        return new Player(label, hand, handLengthMm, longestFingerMm, gloveSize, currentGrip, currentWraps,
                painSites, note);
    }

    public Player withLongestFingerMm(Double longestFingerMm) {
        return new Player(label, hand, handLengthMm, longestFingerMm, gloveSize, currentGrip, currentWraps,
                painSites, note);
    }

    public Player withGloveSize(String gloveSize) {
        return new Player(label, hand, handLengthMm, longestFingerMm, gloveSize, currentGrip, currentWraps,
                painSites, note);
    }

    public Player withCurrentGrip(String currentGrip) {
        return new Player(label, hand, handLengthMm, longestFingerMm, gloveSize, currentGrip, currentWraps,
                painSites, note);
    }

    public Player withCurrentWraps(Integer currentWraps) {
        return new Player(label, hand, handLengthMm, longestFingerMm, gloveSize, currentGrip, currentWraps,
                painSites, note);
    }

    public Player withPainSites(String painSites) {
        return new Player(label, hand, handLengthMm, longestFingerMm, gloveSize, currentGrip, currentWraps,
                painSites, note);
    }

    public Player withNote(String note) {
        return new Player(label, hand, handLengthMm, longestFingerMm, gloveSize, currentGrip, currentWraps,
                painSites, note);
    }
}
