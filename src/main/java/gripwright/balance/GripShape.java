package gripwright.balance;

import gripwright.model.Configuration;
import gripwright.model.ShopSettings;
import java.util.ArrayList;
import java.util.List;

/**
 * The grip of a configuration as a shape: diameters where the shop measures, size, taper and build-up.
 *
 * @param profile the outside along the grip
 * @param atRuler diameters at the shop's measuring places; empty where nothing is known
 * @param size at the size position; null where nothing is known
 * @param taper how much thinner per mm between the first and the last measuring place; null with fewer than two
 * @param tapeGrams mass of the wraps, g
 * @param underButtMm what the grip is pulled over at the butt: shaft and full wraps, mm
 * @param sentences what to measure
 */
public record GripShape(GripProfile profile, List<At> atRuler, SizeReading size, Double taper, double tapeGrams,
        double underButtMm, List<String> sentences) {

    /**
     * A diameter at a measuring place.
     *
     * @param positionMm mm from the cap's edge
     * @param diameterMm mm
     * @param source how it is known
     */
    public record At(double positionMm, double diameterMm, GripProfile.Source source) {
    }

    public GripShape {
        atRuler = List.copyOf(atRuler);
        sentences = List.copyOf(sentences);
    }

    /** The shape of a configuration on this shaft. */
    public static GripShape of(Configuration configuration, ShaftProfile shaft, ShopSettings settings) {
        GripProfile profile = GripProfile.of(configuration, shaft, settings);
        List<At> atRuler = new ArrayList<>();
        if (profile.known()) {
            settings.rulerPositionsMm().stream().sorted().filter(place -> place <= profile.lengthMm())
                    .forEach(place -> atRuler.add(new At(place, profile.at(place), profile.sourceAt(place))));
        }
        SizeReading size = profile.known()
                ? SizeReading.of(profile.at(settings.balance().sizePositionMm()), settings.balance()) : null;
        double tape = TapeLayer.of(configuration.buildUp(), profile.lengthMm()).isEmpty() ? 0
                : GripEnd.of(configuration, shaft, settings).tapeGrams();
        return new GripShape(profile, atRuler, size, taper(atRuler), tape, profile.underAt(0),
                sentences(configuration, shaft, profile));
    }

    private static Double taper(List<At> atRuler) {
        if (atRuler.size() < 2) {
            return null;
        }
        At first = atRuler.get(0);
        At last = atRuler.get(atRuler.size() - 1);
        return (first.diameterMm() - last.diameterMm()) / (last.positionMm() - first.positionMm());
    }

    private static List<String> sentences(Configuration configuration, ShaftProfile shaft, GripProfile profile) {
        List<String> sentences = new ArrayList<>();
        String label = configuration.label();
        if (!profile.known()) {
            sentences.add("Measure the outside of " + label
                    + " at 2, 3, 4, 5 and 6 in from the cap: its shape is blank without it.");
            return sentences;
        }
        if (configuration.fittedDiameters().isEmpty()) {
            if (!shaft.measured()) {
                sentences.add("Measure the shaft at the butt, 3, 6 and 9 in: " + label
                        + " is drawn as on a shaft that matches its core.");
            } else if (configuration.grip().coreMm() == null) {
                sentences.add("Write down the core of " + label + ": it is taken to match the shaft.");
            }
        }
        return sentences;
    }

    /** Whether any diameter was measured on the finished club. */
    public boolean measuredAsFitted() {
        return atRuler.stream().anyMatch(at -> at.source() == GripProfile.Source.MEASURED_AS_FITTED);
    }
}
