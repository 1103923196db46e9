package gripwright.balance;

import gripwright.units.Swingweight;
import gripwright.units.Unit;

/**
 * The five figures of a club as a lever; null where one can't be known.
 *
 * @param massGrams total mass, g
 * @param balancePointMm mm from the butt end, cap included
 * @param momentGramInches about the fulcrum, g·in
 * @param swingweight on the shop's scale
 * @param inertiaKgCm2 about the butt end, kg·cm²
 */
public record LeverFigures(Double massGrams, Double balancePointMm, Double momentGramInches, Swingweight swingweight,
        Double inertiaKgCm2) {

    /** The figures of a club from parts. */
    public static LeverFigures of(ClubBalance club) {
        return new LeverFigures(club.massGrams(), club.balancePointMm(), club.momentGramInches(), club.swingweight(),
                club.inertiaAboutButtKgCm2());
    }

    /**
     * The figures with a mass at a place more (or, negative, less): m + Δ, (m b + Δ x)/(m + Δ), M + Δ (x − f),
     * points + Δ (x − f)/p, I + Δ x². What is null stays null.
     *
     * @param grams Δ, g
     * @param positionMm x, mm from the butt end, cap included
     * @param scale whose fulcrum and point are used
     */
    public LeverFigures plus(double grams, double positionMm, SwingweightScale scale) {
        Double mass = massGrams == null ? null : Double.valueOf(massGrams + grams);
        Double balance = mass == null || balancePointMm == null ? null
                : Double.valueOf((massGrams * balancePointMm + grams * positionMm) / mass);
        Double moment = momentGramInches == null ? null : Double.valueOf(
                momentGramInches + Unit.INCH.fromInternal(scale.momentGramMm(grams, positionMm)));
        Double inertia = inertiaKgCm2 == null ? null : Double.valueOf(
                inertiaKgCm2 + grams * positionMm * positionMm / Body.GRAM_MM2_PER_KG_CM2);
        return new LeverFigures(mass, balance, moment,
                swingweight == null ? null : swingweight.plus(scale.points(grams, positionMm)), inertia);
    }

    /** The same with another swingweight, for a scale that was anchored to a reading. */
    LeverFigures reading(Swingweight other) {
        return new LeverFigures(massGrams, balancePointMm, momentGramInches, other, inertiaKgCm2);
    }
}
