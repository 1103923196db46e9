package gripwright.model;

/**
 * What is under a grip and in the butt: wraps full length, wraps under the lower hand only, stretch, ballast.
 *
 * @param fullWraps wraps under the whole grip, the double-sided layer not counted
 * @param lowerWraps further wraps under the lower hand only
 * @param lowerFromMm where the lower wraps begin, mm from the cap's edge; null where there are none
 * @param lowerToMm where they end, mm from the cap's edge; null for the end of the grip
 * @param tape the tape; null where there are no wraps
 * @param stretchMm how much longer the grip was pulled than it is moulded, mm
 * @param ballastGrams mass put inside the butt, g
 * @param ballastPositionMm its centre, mm from the butt end of the shaft; null where there is none
 */
public record BuildUp(int fullWraps, int lowerWraps, Double lowerFromMm, Double lowerToMm, Tape tape,
        double stretchMm, double ballastGrams, Double ballastPositionMm) {

    /** Nothing but the layer that holds the grip. */
    public static BuildUp none() {
        return new BuildUp(0, 0, null, null, null, 0, 0, null);
    }

    public BuildUp {
        Check.atLeast(fullWraps, 0, "number of full-length wraps");
        Check.atLeast(lowerWraps, 0, "number of lower-hand wraps");
        Check.optionalNotNegative(lowerFromMm, "start of the lower wraps");
        Check.optionalNotNegative(lowerToMm, "end of the lower wraps");
        if (lowerFromMm != null && lowerToMm != null && lowerToMm <= lowerFromMm) {
            throw new IllegalArgumentException("The lower wraps end at " + lowerToMm + " mm, before they begin at "
                    + lowerFromMm + " mm.");
        }
        Check.notNegative(stretchMm, "stretch of a grip");
        Check.notNegative(ballastGrams, "mass of the ballast");
        Check.optionalNotNegative(ballastPositionMm, "position of the ballast");
        if (ballastGrams > 0 && ballastPositionMm == null) {
            throw new IllegalArgumentException("Say where the ballast sits: its distance from the butt end.");
        }
    }

    public BuildUp withFullWraps(int fullWraps) {
        return new BuildUp(fullWraps, lowerWraps, lowerFromMm, lowerToMm, tape, stretchMm, ballastGrams,
                ballastPositionMm);
    }

    public BuildUp withLowerWraps(int lowerWraps) {
        return new BuildUp(fullWraps, lowerWraps, lowerFromMm, lowerToMm, tape, stretchMm, ballastGrams,
                ballastPositionMm);
    }

    public BuildUp withLowerFromMm(Double lowerFromMm) {
        return new BuildUp(fullWraps, lowerWraps, lowerFromMm, lowerToMm, tape, stretchMm, ballastGrams,
                ballastPositionMm);
    }

    public BuildUp withLowerToMm(Double lowerToMm) {
        return new BuildUp(fullWraps, lowerWraps, lowerFromMm, lowerToMm, tape, stretchMm, ballastGrams,
                ballastPositionMm);
    }

    public BuildUp withTape(Tape tape) {
        return new BuildUp(fullWraps, lowerWraps, lowerFromMm, lowerToMm, tape, stretchMm, ballastGrams,
                ballastPositionMm);
    }

    public BuildUp withStretchMm(double stretchMm) {
        return new BuildUp(fullWraps, lowerWraps, lowerFromMm, lowerToMm, tape, stretchMm, ballastGrams,
                ballastPositionMm);
    }

    public BuildUp withBallastGrams(double ballastGrams) {
        return new BuildUp(fullWraps, lowerWraps, lowerFromMm, lowerToMm, tape, stretchMm, ballastGrams,
                ballastPositionMm);
    }

    public BuildUp withBallastPositionMm(Double ballastPositionMm) {
        return new BuildUp(fullWraps, lowerWraps, lowerFromMm, lowerToMm, tape, stretchMm, ballastGrams,
                ballastPositionMm);
    }
}
