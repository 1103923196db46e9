package gripwright.balance;

import gripwright.model.BuildUp;
import gripwright.model.Configuration;
import gripwright.model.Grip;
import gripwright.model.ShopSettings;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What a configuration puts on the butt of a club: grip, build-up and ballast, as bodies where they stand.
 *
 * @param label the configuration's label
 * @param grip the grip as a body; null where its mass is not known
 * @param massMeasured whether the grip was weighed (else the label's mass is taken)
 * @param balanceMeasured whether the grip's own balance point was measured (else the usual one is taken)
 * @param capMm thickness of the cap, mm; everything else of the club stands that much further from the butt end
 * @param lengthMm fitted length without the cap, stretch included, mm
 * @param tape the wraps as bodies
 * @param ballast the ballast in the butt; null where there is none
 * @param sentences what to measure
 * @param warnings what is unusual
 */
public record GripEnd(String label, Body grip, boolean massMeasured, boolean balanceMeasured, double capMm,
        double lengthMm, List<Body> tape, Body ballast, List<String> sentences, List<String> warnings) {

    private static final double LIGHTEST_USUAL_GRAMS = 20;
    private static final double HEAVIEST_USUAL_GRAMS = 130;
    private static final double SHORT_GRIP_SHARE = 0.4;

    public GripEnd {
        tape = List.copyOf(tape);
        sentences = List.copyOf(sentences);
        warnings = List.copyOf(warnings);
    }

    /** The butt end of a configuration on this shaft. */
    public static GripEnd of(Configuration configuration, ShaftProfile shaft, ShopSettings settings) {
        Grip grip = configuration.grip();
        BuildUp buildUp = configuration.buildUp();
        double fitted = grip.lengthMm() + buildUp.stretchMm();
        List<Body> tape = new ArrayList<>();
        double under = 0;
        for (TapeLayer layer : TapeLayer.of(buildUp, fitted)) {
            tape.add(layer.body(shaft, under, grip.capThicknessMm()));
            under += layer.thicknessMm();
        }
        Body ballast = buildUp.ballastGrams() > 0
                ? Body.point(Body.Role.BALLAST, "", buildUp.ballastGrams(),
                        buildUp.ballastPositionMm() + grip.capThicknessMm())
                : null;
        return new GripEnd(configuration.label(), gripBody(grip, buildUp, settings), grip.measuredMassGrams() != null,
                grip.balancePointMm() != null, grip.capThicknessMm(), fitted, tape, ballast,
                sentences(configuration), warnings(configuration));
    }

    private static Body gripBody(Grip grip, BuildUp buildUp, ShopSettings settings) {
        if (grip.massGrams() == null) {
            return null;
        }
        return Body.rod(Body.Role.GRIP, grip.name(), grip.massGrams(), balancePoint(grip, buildUp, settings),
                grip.lengthMm() + buildUp.stretchMm() + grip.capThicknessMm());
    }

    /** From the cap's face; a stretch carries it along in proportion. */
    private static double balancePoint(Grip grip, BuildUp buildUp, ShopSettings settings) {
        double whole = grip.lengthMm() + grip.capThicknessMm();
        double usual = settings.gripBalancePointMm() < whole ? settings.gripBalancePointMm()
                : SHORT_GRIP_SHARE * whole;
        double own = grip.balancePointMm() == null ? usual : grip.balancePointMm();
        double rubber = Math.max(0, own - grip.capThicknessMm());
        return own + rubber * buildUp.stretchMm() / grip.lengthMm();
    }

    private static List<String> sentences(Configuration configuration) {
        List<String> sentences = new ArrayList<>();
        Grip grip = configuration.grip();
        if (grip.massGrams() == null) {
            sentences.add("Weigh the grip of " + configuration.label() + " ('" + grip.name()
                    + "'): without its mass nothing of this configuration can be computed.");
        } else if (grip.measuredMassGrams() == null) {
            sentences.add("Weigh the grip of " + configuration.label()
                    + ": the mass on its label is taken, and labels are off by a quarter to half a point or more.");
        }
        if (configuration.buildUp().tape() == null
                && configuration.buildUp().fullWraps() + configuration.buildUp().lowerWraps() > 0) {
            sentences.add("Say which tape the wraps of " + configuration.label()
                    + " are: without it neither their mass nor their build-up is counted.");
        }
        return sentences;
    }

    private static List<String> warnings(Configuration configuration) {
        List<String> warnings = new ArrayList<>();
        Grip grip = configuration.grip();
        Double mass = grip.massGrams();
        if (mass != null && (mass < LIGHTEST_USUAL_GRAMS || mass > HEAVIEST_USUAL_GRAMS)) {
            warnings.add(String.format(Locale.ROOT, "A grip of %.0f g is unusual (%.0f to %.0f g); weigh it again.", mass,
                    LIGHTEST_USUAL_GRAMS, HEAVIEST_USUAL_GRAMS));
        }
        Double from = configuration.buildUp().lowerFromMm();
        if (from == null && configuration.buildUp().lowerWraps() > 0) {
            warnings.add("The lower wraps of " + configuration.label()
                    + " are taken to begin 4 in from the cap; say where they do.");
        } else if (from != null && from >= grip.lengthMm() + configuration.buildUp().stretchMm()) {
            warnings.add("The lower wraps of " + configuration.label() + " begin beyond the end of the grip.");
        }
        return warnings;
    }

    /** Whether the mass is known. */
    public boolean weighed() {
        return grip != null;
    }

    /** All bodies, the grip first; without it where its mass is not known. */
    public List<Body> bodies() {
        List<Body> bodies = new ArrayList<>();
        if (grip != null) {
            bodies.add(grip);
        }
        bodies.addAll(tape);
        if (ballast != null) {
            bodies.add(ballast);
        }
        return bodies;
    }

    /** Mass of grip, wraps and ballast, g; null where the grip's is not known. */
    public Double massGrams() {
        return grip == null ? null : bodies().stream().mapToDouble(Body::massGrams).sum();
    }

    /** Mass of the wraps, g. */
    public double tapeGrams() {
        return tape.stream().mapToDouble(Body::massGrams).sum();
    }
}
