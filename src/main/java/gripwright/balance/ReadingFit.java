package gripwright.balance;

import gripwright.units.Swingweight;
import java.util.List;

/**
 * What the readings of one club say: the bare club's swingweight and the grips' effective balance point, how far each
 * reading is off, and the swingweight of the club with any other load.
 *
 * @param bare swingweight of the bare club without cap, in points above A0
 * @param gripBalancePointMm effective balance point of the grips that have none measured, mm from the cap's face
 * @param covariance of the two, points·mm
 * @param residuals one per reading, in their order
 * @param bareMass mass of the bare club that the cap's lever acts on, g
 * @param referenceCapMm the cap at which the bare club was estimated, mm
 * @param scale the scale
 */
public record ReadingFit(Estimate bare, Estimate gripBalancePointMm, double covariance, List<Residual> residuals,
        Estimate bareMass, double referenceCapMm, SwingweightScale scale) {

    public ReadingFit {
        residuals = List.copyOf(residuals);
    }

    /**
     * One reading beside what was expected.
     *
     * @param reading the reading
     * @param fitted what the model says, in points above A0
     * @param misfitPoints read − fitted
     * @param flagged whether it can't be right, given the rest; then it is left out of the fit
     * @param fromTheRest what the other readings predict for it, in points; null with fewer than two readings
     * @param sentence what to do about it; empty where nothing
     */
    public record Residual(ScaleReading reading, double fitted, double misfitPoints, boolean flagged,
            Estimate fromTheRest, String sentence) {

        /** What the model says. */
        public Swingweight fittedSwingweight() {
            return new Swingweight(fitted);
        }
    }

    /**
     * The swingweight of the club with this load, in points above A0, with its doubt.
     *
     * <p>y = b + (K + g (x − f) + B (c − c₀)) / p, b the bare club's points, K the moment whose place is known, g the mass
     * at the effective balance point x, B the bare mass, c and c₀ the cap and the reference cap. The variance adds that of
     * b and x (with their covariance), of B and of the load itself; it is the doubt of the true value, without the noise
     * of a new reading.
     */
    public Estimate predict(ScaleReading.Load load) {
        double point = scale.pointGramMm();
        double lever = load.gripGrams() / point;
        double cap = (load.capMm() - referenceCapMm) / point;
        double value = bare.value() + load.knownMomentGramMm() / point
                + lever * (gripBalancePointMm.value() - scale.fulcrumMm()) + cap * bareMass.value();
        double variance = Math.pow(bare.standardDeviation(), 2) + 2 * lever * covariance
                + Math.pow(lever * gripBalancePointMm.standardDeviation(), 2)
                + Math.pow(cap * bareMass.standardDeviation(), 2) + Math.pow(load.pointsSd(), 2);
        return new Estimate(value, Math.sqrt(Math.max(0, variance)));
    }

    /** The bare club as it would read on the scale, without cap, grip and wraps; with the holding layer among its parts. */
    public Estimate bareSwingweight() {
        return predict(ScaleReading.Load.bare());
    }

    /** Whether a reading was flagged. */
    public boolean hasFlagged() {
        return residuals.stream().anyMatch(Residual::flagged);
    }
}
