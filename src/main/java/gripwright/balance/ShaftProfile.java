package gripwright.balance;

import gripwright.model.Diameter;
import java.util.Comparator;
import java.util.List;

/**
 * The outside of a shaft from the butt end down: straight between the measured places, held beyond them.
 *
 * @param diameters by position from the butt end; may be empty where nothing was measured
 */
public record ShaftProfile(List<Diameter> diameters) {

    /** The butt that is taken where none was measured, 0.600 in: common practice, no source. */
    public static final double USUAL_BUTT_MM = 15.24;

    public ShaftProfile {
        diameters = diameters.stream().sorted(Comparator.comparingDouble(Diameter::positionMm)).toList();
        for (int index = 1; index < diameters.size(); index++) {
            if (diameters.get(index).positionMm() == diameters.get(index - 1).positionMm()) {
                throw new IllegalArgumentException("The shaft has two diameters at "
                        + diameters.get(index).positionMm() + " mm from the butt end; keep one.");
            }
        }
    }

    /** Whether anything was measured. */
    public boolean measured() {
        return !diameters.isEmpty();
    }

    /** The diameter, mm, at a place, mm from the shaft's butt end; where nothing was measured the usual butt. */
    public double at(double positionMm) {
        if (diameters.isEmpty()) {
            return USUAL_BUTT_MM;
        }
        Diameter before = diameters.get(0);
        for (Diameter next : diameters) {
            if (next.positionMm() >= positionMm) {
                double span = next.positionMm() - before.positionMm();
                double share = span > 0 ? Math.max(0, positionMm - before.positionMm()) / span : 0;
                return before.diameterMm() + share * (next.diameterMm() - before.diameterMm());
            }
            before = next;
        }
        return before.diameterMm();
    }

    /** The diameter at the butt end, mm. */
    public double buttMm() {
        return at(0);
    }
}
