package gripwright.balance;

import gripwright.model.BuildUp;
import java.util.ArrayList;
import java.util.List;

/**
 * Wraps of tape under a part of the grip.
 *
 * @param wraps how many; the double-sided layer that holds the grip is not counted
 * @param fromMm where they begin, mm from the cap's edge
 * @param toMm where they end
 * @param perWrapMm what each adds to the diameter beneath the grip, mm
 * @param arealMassGramsPerSquareMetre mass of the tape by area, g/m²
 */
public record TapeLayer(int wraps, double fromMm, double toMm, double perWrapMm,
        double arealMassGramsPerSquareMetre) {

    /** Where lower-hand wraps are taken to begin when nobody said, mm (4 in): common practice, no source. */
    static final double USUAL_LOWER_FROM_MM = 101.6;

    /** The layers of a build-up under a grip of this fitted length (without the cap). */
    public static List<TapeLayer> of(BuildUp buildUp, double gripLengthMm) {
        List<TapeLayer> layers = new ArrayList<>();
        if (buildUp.tape() == null) {
            return layers;
        }
        double perWrap = buildUp.tape().perWrapMm();
        double areal = buildUp.tape().arealMassGramsPerSquareMetre();
        if (buildUp.fullWraps() > 0) {
            layers.add(new TapeLayer(buildUp.fullWraps(), 0, gripLengthMm, perWrap, areal));
        }
        if (buildUp.lowerWraps() > 0) {
            double from = buildUp.lowerFromMm() == null ? USUAL_LOWER_FROM_MM : buildUp.lowerFromMm();
            double to = buildUp.lowerToMm() == null ? gripLengthMm : buildUp.lowerToMm();
            layers.add(new TapeLayer(buildUp.lowerWraps(), from, Math.max(from, Math.min(to, gripLengthMm)), perWrap,
                    areal));
        }
        return layers;
    }

    /** Whether the tape lies under this place. */
    public boolean covers(double positionMm) {
        return positionMm >= fromMm && positionMm <= toMm;
    }

    /** What it adds to the diameter beneath the grip, mm: wraps × build-up per wrap. */
    public double thicknessMm() {
        return wraps * perWrapMm;
    }

    /**
     * Its mass, g: areal mass × Σ over wraps of π × mean diameter of the wrap × length, the mean diameter being the
     * shaft's in the middle of the layer plus the tape already under the wrap.
     *
     * @param underneathMm what lies between shaft and this layer on the diameter, mm
     */
    public double massGrams(ShaftProfile shaft, double underneathMm) {
        double diameter = shaft.at((fromMm + toMm) / 2) + underneathMm;
        double meanDiameter = diameter + (wraps - 1) * perWrapMm / 2;
        double areaMm2 = wraps * Math.PI * meanDiameter * (toMm - fromMm);
        return areaMm2 * arealMassGramsPerSquareMetre / 1e6;
    }

    /** The layer as a body of the club; its middle from the butt end, cap included. */
    Body body(ShaftProfile shaft, double underneathMm, double capMm) {
        return Body.rod(Body.Role.TAPE, wraps == 1 ? "1 wrap" : wraps + " wraps", massGrams(shaft, underneathMm),
                capMm + (fromMm + toMm) / 2, toMm - fromMm);
    }
}
