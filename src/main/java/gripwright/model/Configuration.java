package gripwright.model;

import gripwright.units.Swingweight;
import java.util.List;

/**
 * One column of the test matrix: a grip with its build-up (and head mass) on a physical club.
 *
 * @param id unique in its test
 * @param label short label, 'A'; unique in its test
 * @param grip the grip as it was when the test was planned
 * @param buildUp what is under it and in the butt
 * @param headMassAddedGrams mass added at the head for this configuration, g
 * @param physicalClubId which physical club it is on; null where not said
 * @param gamer whether this is what the player plays now
 * @param colourIndex its colour, an index into the published Okabe-Ito set
 * @param marker its marker shape
 * @param fittedDiameters outside diameters measured as fitted; where given they win over the prediction
 * @param swingweightRead swingweight off the shop's scale with this configuration; null where not read
 * @param totalMassReadGrams mass of the whole club off the scale; null where not weighed
 * @param note free text
 */
public record Configuration(String id, String label, Grip grip, BuildUp buildUp, double headMassAddedGrams,
        String physicalClubId, boolean gamer, int colourIndex, MarkerShape marker, List<Diameter> fittedDiameters,
        Swingweight swingweightRead, Double totalMassReadGrams, String note) {

    /** Colours there are to choose from; shapes go round with them. */
    public static final int COLOURS = 8;

    /** The n-th configuration of a test (from 0), with the colour and marker that go with its place. */
    public static Configuration ofIndex(int index, String id, String label, Grip grip, BuildUp buildUp) {
        MarkerShape[] shapes = MarkerShape.values();
        return new Configuration(id, label, grip, buildUp, 0, null, false, index % COLOURS,
                shapes[index % shapes.length], List.of(), null, null, "");
    }

    public Configuration {
        Check.text(id, "identity of a configuration");
        Check.text(label, "label of a configuration");
        Check.present(grip, "grip of configuration " + label);
        Check.present(buildUp, "build-up of configuration " + label);
        Check.notNegative(headMassAddedGrams, "head mass added to configuration " + label);
        if (colourIndex < 0 || colourIndex >= COLOURS) {
            throw new IllegalArgumentException("The colour of configuration " + label + " must be 0 to "
                    + (COLOURS - 1) + ", but is " + colourIndex + ".");
        }
        Check.present(marker, "marker of configuration " + label);
        fittedDiameters = Check.list(fittedDiameters);
        Check.optionalPositive(totalMassReadGrams, "total mass of configuration " + label);
        note = Check.orEmpty(note);
    }

    public Configuration withId(String id) {
        return new Configuration(id, label, grip, buildUp, headMassAddedGrams, physicalClubId, gamer, colourIndex,
                marker, fittedDiameters, swingweightRead, totalMassReadGrams, note);
    }

    public Configuration withLabel(String label) {
        return new Configuration(id, label, grip, buildUp, headMassAddedGrams, physicalClubId, gamer, colourIndex,
                marker, fittedDiameters, swingweightRead, totalMassReadGrams, note);
    }

    public Configuration withGrip(Grip grip) {
        return new Configuration(id, label, grip, buildUp, headMassAddedGrams, physicalClubId, gamer, colourIndex,
                marker, fittedDiameters, swingweightRead, totalMassReadGrams, note);
    }

    public Configuration withBuildUp(BuildUp buildUp) {
        return new Configuration(id, label, grip, buildUp, headMassAddedGrams, physicalClubId, gamer, colourIndex,
                marker, fittedDiameters, swingweightRead, totalMassReadGrams, note);
    }

    public Configuration withHeadMassAddedGrams(double headMassAddedGrams) {
        return new Configuration(id, label, grip, buildUp, headMassAddedGrams, physicalClubId, gamer, colourIndex,
                marker, fittedDiameters, swingweightRead, totalMassReadGrams, note);
    }

    public Configuration withPhysicalClubId(String physicalClubId) {
        return new Configuration(id, label, grip, buildUp, headMassAddedGrams, physicalClubId, gamer, colourIndex,
                marker, fittedDiameters, swingweightRead, totalMassReadGrams, note);
    }

    public Configuration withGamer(boolean gamer) {
        return new Configuration(id, label, grip, buildUp, headMassAddedGrams, physicalClubId, gamer, colourIndex,
                marker, fittedDiameters, swingweightRead, totalMassReadGrams, note);
    }

    public Configuration withColourIndex(int colourIndex) {
        return new Configuration(id, label, grip, buildUp, headMassAddedGrams, physicalClubId, gamer, colourIndex,
                marker, fittedDiameters, swingweightRead, totalMassReadGrams, note);
    }

    public Configuration withMarker(MarkerShape marker) {
        return new Configuration(id, label, grip, buildUp, headMassAddedGrams, physicalClubId, gamer, colourIndex,
                marker, fittedDiameters, swingweightRead, totalMassReadGrams, note);
    }

    public Configuration withFittedDiameters(List<Diameter> fittedDiameters) {
        return new Configuration(id, label, grip, buildUp, headMassAddedGrams, physicalClubId, gamer, colourIndex,
                marker, fittedDiameters, swingweightRead, totalMassReadGrams, note);
    }

    public Configuration withSwingweightRead(Swingweight swingweightRead) {
        return new Configuration(id, label, grip, buildUp, headMassAddedGrams, physicalClubId, gamer, colourIndex,
                marker, fittedDiameters, swingweightRead, totalMassReadGrams, note);
    }

    public Configuration withTotalMassReadGrams(Double totalMassReadGrams) {
        return new Configuration(id, label, grip, buildUp, headMassAddedGrams, physicalClubId, gamer, colourIndex,
                marker, fittedDiameters, swingweightRead, totalMassReadGrams, note);
    }

    public Configuration withNote(String note) {
        return new Configuration(id, label, grip, buildUp, headMassAddedGrams, physicalClubId, gamer, colourIndex,
                marker, fittedDiameters, swingweightRead, totalMassReadGrams, note);
    }
}
