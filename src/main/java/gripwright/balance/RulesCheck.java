package gripwright.balance;

import gripwright.model.ClubKind;
import gripwright.model.Configuration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The grip beside section 3 of Part 2 of the Equipment Rules (R&amp;A and USGA, 2019; later printings may number it 2.3):
 * a warning, not a ruling.
 *
 * <p>Straight and plain in form, at least 7 in (177.8 mm) long, circular but for a slightly raised straight full-length
 * rib, without bulge or waist, nowhere over 1.75 in (44.45 mm). From which rise a caliper sees a bulge or waist (0.1 mm),
 * and from which it is called one (1 mm), is our judgement; the rule gives no figure.
 *
 * @param label the configuration
 * @param findings one per point of the section
 */
public record RulesCheck(String label, List<Finding> findings) {

    /** The section that is looked at. */
    public static final String SECTION = "Equipment Rules (2019), Part 2, section 3";
    /** Least length, 7 in. */
    public static final double LEAST_LENGTH_MM = 177.8;
    /** Largest dimension, 1.75 in. */
    public static final double LARGEST_MM = 44.45;

    /** The point of the length. */
    public static final String LENGTH = "length";
    /** The point of the largest dimension. */
    public static final String DIMENSION = "largest dimension";
    /** The point of bulge and waist. */
    public static final String FORM = "bulge or waist";

    private static final double SEEN_MM = 0.1;
    private static final double CALLED_MM = 1;
    private static final double STEP_MM = 0.5;

    /** What a point comes to. */
    public enum Outcome {
        CONFORMS("conforms"),
        BY_EYE("for the eye"),
        LOOK("look at this"),
        BREAKS("breaks it");

        private final String text;

        Outcome(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    /**
     * One point.
     *
     * @param outcome what it comes to
     * @param point what was looked at
     * @param measuredMm the figure it rests on, mm; null where there is none
     * @param sentence with the numbers
     */
    public record Finding(Outcome outcome, String point, Double measuredMm, String sentence) {
    }

    public RulesCheck {
        findings = List.copyOf(findings);
    }

    /** Looks at a configuration's grip as it is fitted. */
    public static RulesCheck of(ClubKind kind, Configuration configuration, GripShape shape) {
        List<Finding> findings = new ArrayList<>();
        if (kind == ClubKind.PUTTER) {
            findings.add(new Finding(Outcome.BY_EYE, "putter", null, "A putter's grip follows rules of its own."));
            return new RulesCheck(configuration.label(), findings);
        }
        findings.add(length(shape.profile().lengthMm()));
        Outline outline = shape.profile().known() ? Outline.of(shape.profile()) : null;
        if (outline == null) {
            findings.add(new Finding(Outcome.LOOK, "dimension, bulge and waist", null,
                    "The outside was not measured; measure it to have it looked at."));
        } else {
            findings.add(dimension(outline.largest));
            findings.add(form(outline));
        }
        findings.add(section(configuration));
        findings.add(new Finding(Outcome.BY_EYE, "form", null, "Straight and plain, not moulded for the hands, to the end of the"
                + " shaft, its axis that of the shaft: look at it, the numbers don't show it."));
        return new RulesCheck(configuration.label(), findings);
    }

    private static Finding length(double lengthMm) {
        String text = String.format(Locale.ROOT, "%.1f mm long, at least %.1f mm (7 in) wanted.", lengthMm,
                LEAST_LENGTH_MM);
        return new Finding(lengthMm >= LEAST_LENGTH_MM ? Outcome.CONFORMS : Outcome.BREAKS, LENGTH, lengthMm, text);
    }

    private static Finding dimension(double largestMm) {
        String text = String.format(Locale.ROOT, "%.2f mm at the thickest, at most %.2f mm (1.75 in) allowed.", largestMm,
                LARGEST_MM);
        return new Finding(largestMm <= LARGEST_MM ? Outcome.CONFORMS : Outcome.BREAKS, DIMENSION, largestMm, text);
    }

    private static Finding form(Outline outline) {
        double most = Math.max(outline.bulge, outline.waist);
        if (most <= SEEN_MM) {
            return new Finding(Outcome.CONFORMS, FORM, most, "Neither bulge nor waist.");
        }
        boolean bulge = outline.bulge > outline.waist;
        String text = String.format(Locale.ROOT, "A %s of %.2f mm on the diameter at %.0f mm from the cap.",
                bulge ? "bulge" : "waist", most, bulge ? outline.bulgeAt : outline.waistAt);
        return new Finding(most > CALLED_MM ? Outcome.BREAKS : Outcome.LOOK, FORM, most, text);
    }

    private static Finding section(Configuration configuration) {
        if (configuration.grip().ribbed()) {
            return new Finding(Outcome.CONFORMS, "section", null,
                    "Ribbed: allowed where the rib is slightly raised, straight and full length.");
        }
        return new Finding(Outcome.CONFORMS, "section", null, "Round.");
    }

    /** What was found on a point; empty where it was not looked at. */
    public Optional<Finding> on(String point) {
        return findings.stream().filter(finding -> finding.point().equals(point)).findFirst();
    }

    /** The worst that was found; a point for the eye does not count. */
    public Outcome outcome() {
        return findings.stream().map(Finding::outcome).filter(outcome -> outcome != Outcome.BY_EYE)
                .max(Enum::compareTo).orElse(Outcome.BY_EYE);
    }

    /** The outside sampled along the grip: its thickest place, deepest waist and highest bulge. */
    private static final class Outline {
        private double largest;
        private double bulge;
        private double bulgeAt;
        private double waist;
        private double waistAt;

        static Outline of(GripProfile profile) {
            int samples = (int) Math.floor(profile.lengthMm() / STEP_MM) + 1;
            double[] diameter = new double[samples];
            for (int index = 0; index < samples; index++) {
                diameter[index] = profile.at(index * STEP_MM);
            }
            double[] thickestBelow = new double[samples];
            double[] thinnestBelow = new double[samples];
            thickestBelow[samples - 1] = diameter[samples - 1];
            thinnestBelow[samples - 1] = diameter[samples - 1];
            for (int index = samples - 2; index >= 0; index--) {
                thickestBelow[index] = Math.max(diameter[index], thickestBelow[index + 1]);
                thinnestBelow[index] = Math.min(diameter[index], thinnestBelow[index + 1]);
            }
            Outline outline = new Outline();
            double thickestAbove = diameter[0];
            double thinnestAbove = diameter[0];
            for (int index = 0; index < samples; index++) {
                thickestAbove = Math.max(thickestAbove, diameter[index]);
                thinnestAbove = Math.min(thinnestAbove, diameter[index]);
                outline.take(index * STEP_MM, Math.min(diameter[index] - thinnestAbove,
                        diameter[index] - thinnestBelow[index]), Math.min(thickestAbove - diameter[index],
                        thickestBelow[index] - diameter[index]));
            }
            outline.largest = thickestAbove;
            return outline;
        }

        private void take(double place, double rise, double dip) {
            if (rise > bulge) {
                bulge = rise;
                bulgeAt = place;
            }
            if (dip > waist) {
                waist = dip;
                waistAt = place;
            }
        }
    }
}
