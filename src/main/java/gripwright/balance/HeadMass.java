package gripwright.balance;

import gripwright.model.ShopSettings;

/**
 * How a mass is brought to a head: tape up to the shop's limit, then a screw where the head has one, or a tip weight.
 *
 * <p>Common practice, no source: the limit of tape (about 6 g, and it shows) is a setting; from 15 g on it is no
 * correction any more.
 *
 * @param grams what to add; negative to take off
 * @param way how
 * @param feasible whether it can be done
 * @param sentence for the bench
 */
public record HeadMass(double grams, Way way, boolean feasible, String sentence) {

    /** Below this nothing is worth doing: a quarter of a point. */
    static final double NOTHING_GRAMS = 0.5;
    private static final double HEAVIER_HEAD_GRAMS = 15;
    private static final double MOST_GRAMS = 40;

    /** How a mass comes to the head. */
    public enum Way {
        NOTHING("nothing"),
        TAPE("tape on the head"),
        SCREW_OR_TIP("screw, or tip weight in the shaft"),
        HEAVIER_HEAD("heavier head", "More than a correction: look for a heavier head."),
        TAKE_OFF("take off"),
        LIGHTER_HEAD("lighter head", "The head would have to lose mass, which is not done at this bench: a lighter screw where the head has one, a heavier grip or a butt"
                + " weight goes that way.");

        private final String text;
        private final String cure;

        Way(String text) {
            this(text, "");
        }

        Way(String text, String cure) {
            this.text = text;
            this.cure = cure;
        }

        public String text() {
            return text;
        }

        /** What to do instead where the bench can't do it, the same for any mass; else empty. */
        public String cure() {
            return cure;
        }
    }

    /**
     * The way for this mass.
     *
     * @param grams finite
     * @param alreadyGrams head mass that was added before and can come off again
     * @param settings the shop's, with the most that it adds with tape
     */
    public static HeadMass of(double grams, double alreadyGrams, ShopSettings settings) {
        Wording wording = Wording.of(settings);
        double tapeLimitGrams = settings.headTapeLimitGrams();
        if (Math.abs(grams) < NOTHING_GRAMS) {
            return new HeadMass(grams, Way.NOTHING, true, "Nothing to do at the head.");
        }
        if (grams < 0) {
            return lighter(grams, alreadyGrams, wording);
        }
        if (grams <= tapeLimitGrams) {
            return new HeadMass(grams, Way.TAPE, true, wording.format("%.1f g of tape on the head.", grams));
        }
        if (grams <= HEAVIER_HEAD_GRAMS) {
            return new HeadMass(grams, Way.SCREW_OR_TIP, true, wording.format("%.1f g, over the %.0f g that"
                    + " tape is good for: a heavier screw where the head has one, else a tip weight (the head comes off).",
                    grams, tapeLimitGrams));
        }
        return new HeadMass(grams, Way.HEAVIER_HEAD, grams <= MOST_GRAMS,
                wording.format("%.1f g is more than a correction: look for a heavier head.", grams));
    }

    private static HeadMass lighter(double grams, double alreadyGrams, Wording wording) {
        if (-grams <= alreadyGrams) {
            return new HeadMass(grams, Way.TAKE_OFF, true,
                    wording.format("Take %.1f g of the added head mass off again.", -grams));
        }
        return new HeadMass(grams, Way.LIGHTER_HEAD, false,
                wording.format("The head would have to lose %.1f g: not at this bench. A lighter screw where it has one, a heavier"
                        + " grip or a butt weight goes that way.", -grams));
    }
}
