package gripwright.report;

import gripwright.comparison.FeelFigures;
import gripwright.model.ClubTest;
import gripwright.model.Feel;
import gripwright.model.Stint;
import java.util.stream.Collectors;

/** The player's answers in words. */
public final class FeelWords {

    private static final double RIGHT = 0.5;
    private static final double MUCH = 2;

    private FeelWords() {
    }

    /** 'right', 'a little too thin', 'much too heavy'; an en dash where not answered. */
    public static String side(Double value, String below, String above) {
        if (value == null) {
            return "\u2013";
        }
        if (Math.abs(value) < RIGHT) {
            return "right";
        }
        String side = value < 0 ? below : above;
        return Math.abs(value) >= MUCH ? "much " + side : "a little " + side;
    }

    /** 'yes', 'no', 'unsure', 'yes 1, no 1'; an en dash where not asked. */
    public static String wouldPlay(FeelFigures feel) {
        if (feel.wouldPlay() > 0 && feel.wouldNotPlay() > 0) {
            return "yes " + feel.wouldPlay() + ", no " + feel.wouldNotPlay();
        }
        if (feel.wouldPlay() > 0) {
            return "yes";
        }
        return feel.wouldNotPlay() > 0 ? "no" : "\u2013";
    }

    /** The player's own words over all stints with this configuration. */
    public static String words(ClubTest test, String configurationId) {
        return test.stints().stream().filter(s -> s.configurationId().equals(configurationId)).map(Stint::feel)
                .map(Feel::word).filter(word -> !word.isBlank()).distinct().collect(Collectors.joining("; "));
    }
}
