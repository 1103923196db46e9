package gripwright.balance;

import gripwright.units.Swingweight;
import gripwright.units.Unit;
import java.util.List;

/**
 * The balance of one configuration: each figure with its doubt, or null where it can't be known, and then a sentence that
 * says what to measure.
 *
 * @param configurationId the configuration
 * @param label its label
 * @param gamer whether it is what the player plays now
 * @param gripEnd what it puts on the butt
 * @param shape the grip as a shape; null where its diameters can't be
 * @param rules the grip beside the Equipment Rules; null where its diameters can't be
 * @param headPlaceMm where the head's centre lies, mm from the butt end, cap included; null where it can't be known
 * @param club the club added up from its parts; null where the parts are not known
 * @param totalMass g
 * @param balancePoint mm from the butt end, cap included
 * @param moment about the fulcrum, g·in
 * @param swingweightPoints points above A0
 * @param inertia about the butt, kg·cm²
 * @param swingweightRead off the shop's scale with this configuration; null where not read
 * @param misfitPoints read − predicted; null where not read
 * @param totalMassReadGrams off the scale; null where not weighed
 * @param sentences what to measure to know more
 * @param warnings what is unusual
 */
public record ConfigurationBalance(String configurationId, String label, boolean gamer, GripEnd gripEnd,
        GripShape shape, RulesCheck rules, Double headPlaceMm, ClubBalance club, Estimate totalMass,
        Estimate balancePoint, Estimate moment, Estimate swingweightPoints, Estimate inertia, Swingweight swingweightRead, Double misfitPoints, Double totalMassReadGrams,
        List<String> sentences, List<String> warnings) {

    public ConfigurationBalance {
        sentences = List.copyOf(sentences);
        warnings = List.copyOf(warnings);
    }

    /** Total mass, g; null where it can't be known. */
    public Double totalMassGrams() {
        return Estimate.valueOrNull(totalMass);
    }

    /** Balance point from the butt end, cap included, mm; null where it can't be known. */
    public Double balancePointMm() {
        return Estimate.valueOrNull(balancePoint);
    }

    /** Moment about the fulcrum (14 in), g·in; null where it can't be known. */
    public Double momentGramInches() {
        return Estimate.valueOrNull(moment);
    }

    /** Moment about 12 in, g·in; null where it can't be known. */
    public Double moment12GramInches() {
        if (totalMass == null || balancePoint == null) {
            return null;
        }
        return Unit.INCH.fromInternal(
                totalMass.value() * (balancePoint.value() - SwingweightScale.OLD_FULCRUM_MM));
    }

    /** Predicted swingweight; null where it can't be known. */
    public Swingweight swingweight() {
        return swingweightPoints == null ? null : new Swingweight(swingweightPoints.value());
    }

    /** Doubt of the predicted swingweight, one SD in points; null where there is none. */
    public Double swingweightSdPoints() {
        return swingweightPoints == null ? null : Double.valueOf(swingweightPoints.standardDeviation());
    }

    /** Inertia about the butt end, kg·cm²; null where it can't be known. */
    public Double inertiaKgCm2() {
        return Estimate.valueOrNull(inertia);
    }

    /** Inertia about the balance point, kg·cm²; null where the parts are not known. */
    public Double inertiaAboutBalancePointKgCm2() {
        return club == null ? null : Double.valueOf(club.inertiaAboutBalancePointKgCm2());
    }

    /** The figures without their doubt. */
    public LeverFigures figures() {
        return new LeverFigures(totalMassGrams(), balancePointMm(), momentGramInches(), swingweight(), inertiaKgCm2());
    }

    /** What each part adds; empty where the parts are not known. */
    public List<ClubBalance.Share> shares() {
        return club == null ? List.of() : club.shares();
    }
}
