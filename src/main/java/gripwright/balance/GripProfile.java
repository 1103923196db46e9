package gripwright.balance;

import gripwright.model.Configuration;
import gripwright.model.Diameter;
import gripwright.model.Grip;
import gripwright.model.ShopSettings;
import java.util.Comparator;
import java.util.List;

/**
 * The outside diameter of a grip as fitted, at every place from the cap's edge down.
 *
 * <p>Moulded diameters (monotone interpolation, moved along by a stretch), plus what core mismatch and wraps at that place
 * send through the wall, less the stretch. Diameters measured as fitted win: between them the curve runs through them,
 * beyond them the prediction is moved to meet the nearest. Beyond the last moulded place the diameter there is held.
 */
public final class GripProfile {

    private final Grip grip;
    private final double stretchMm;
    private final MonotoneCurve moulded;
    private final MonotoneCurve fitted;
    private final ShaftProfile shaft;
    private final List<TapeLayer> layers;
    private final double transferFactor;
    private final double matchingTaper;

    private GripProfile(Configuration configuration, ShaftProfile shaft, ShopSettings settings) {
        grip = configuration.grip();
        stretchMm = configuration.buildUp().stretchMm();
        moulded = curve(grip.diameters(), 1 + stretchMm / grip.lengthMm());
        fitted = curve(configuration.fittedDiameters(), 1);
        this.shaft = shaft;
        layers = TapeLayer.of(configuration.buildUp(), lengthMm());
        transferFactor = grip.transferFactor() == null ? settings.transferFactor() : grip.transferFactor();
        matchingTaper = settings.balance().matchingTaper();
        check();
    }

    private static MonotoneCurve curve(List<Diameter> diameters, double stretch) {
        if (diameters.isEmpty()) {
            return null;
        }
        List<Diameter> sorted = diameters.stream().sorted(Comparator.comparingDouble(Diameter::positionMm)).toList();
        return MonotoneCurve.through(sorted.stream().mapToDouble(d -> d.positionMm() * stretch).toArray(),
                sorted.stream().mapToDouble(Diameter::diameterMm).toArray());
    }

    private void check() {
        for (Diameter diameter : grip.diameters()) {
            if (diameter.positionMm() > grip.lengthMm()) {
                throw new IllegalArgumentException("The grip '" + grip.name() + "' has a diameter at "
                        + diameter.positionMm() + " mm, beyond its length of " + grip.lengthMm() + " mm.");
            }
            if (grip.coreMm() != null && grip.coreMm() >= diameter.diameterMm()) {
                throw new IllegalArgumentException("The core of the grip '" + grip.name() + "' (" + grip.coreMm()
                        + " mm) is not thinner than its outside at " + diameter.positionMm() + " mm ("
                        + diameter.diameterMm() + " mm); check both.");
            }
        }
    }

    /** The profile of a configuration on this shaft; refuses diameters that can't be with a sentence. */
    public static GripProfile of(Configuration configuration, ShaftProfile shaft, ShopSettings settings) {
        return new GripProfile(configuration, shaft, settings);
    }

    /** Whether anything is known of the outside. */
    public boolean known() {
        return moulded != null || fitted != null;
    }

    /** Length as fitted without the cap, mm. */
    public double lengthMm() {
        return grip.lengthMm() + stretchMm;
    }

    /** The outside diameter, mm, at a place, mm from the cap's edge, measured where it was; NaN where nothing is known. */
    public double at(double positionMm) {
        if (fitted == null) {
            return predicted(positionMm);
        }
        double meet = Math.max(fitted.from(), Math.min(fitted.to(), positionMm));
        if (moulded == null || meet == positionMm) {
            return fitted.at(positionMm);
        }
        return fitted.at(meet) + predicted(positionMm) - predicted(meet);
    }

    /** The outside diameter without regard to what was measured as fitted, mm; NaN where nothing was moulded. */
    public double predicted(double positionMm) {
        if (moulded == null) {
            return Double.NaN;
        }
        double outside = moulded.at(positionMm);
        double core = coreAt(positionMm);
        double under = underAt(positionMm);
        if (core < outside) {
            outside = GripWall.outsideMm(outside, core, under, transferFactor);
        }
        return stretchMm > 0 ? GripWall.stretchedMm(outside, under, grip.lengthMm(), stretchMm) : outside;
    }

    /** What the grip is pulled over at a place, mm from the cap's edge: the shaft there and the wraps that cover the place, mm. */
    public double underAt(double positionMm) {
        double bare = shaft.measured() || grip.coreMm() == null ? shaft.at(positionMm) : coreAt(positionMm);
        return bare + layers.stream().filter(layer -> layer.covers(positionMm))
                .mapToDouble(TapeLayer::thicknessMm).sum();
    }

    /** The shaft on which the grip shows its marked diameter; where no core is marked, the shaft it is on. */
    private double coreAt(double positionMm) {
        return grip.coreMm() == null ? shaft.at(positionMm) : grip.coreMm() - matchingTaper * positionMm;
    }

    /** How this place is known. */
    public Source sourceAt(double positionMm) {
        if (fitted != null && positionMm >= fitted.from() && positionMm <= fitted.to()) {
            return Source.MEASURED_AS_FITTED;
        }
        if (moulded != null && positionMm >= moulded.from() && positionMm <= moulded.to()) {
            return Source.PREDICTED;
        }
        return known() ? Source.HELD : Source.UNKNOWN;
    }

    /** How a diameter is known. */
    public enum Source {
        /** Measured on the finished club, or between two such places. */
        MEASURED_AS_FITTED,
        /** From the moulded diameters and what is under them. */
        PREDICTED,
        /** Beyond the last measured place, whose diameter is held. */
        HELD,
        /** Nothing was measured. */
        UNKNOWN
    }
}
