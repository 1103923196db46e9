package gripwright.balance;

import gripwright.model.BalanceSettings;
import gripwright.units.Swingweight;
import gripwright.units.Unit;

/**
 * A swingweight scale: where it carries the club, what a point is, and which moment it calls A0.
 *
 * <p>Symbols: f the fulcrum (mm from the butt end, cap included), M = m (x − f) the moment of a mass m at x (g·mm),
 * p the moment of one point, z the points of a zero moment. Points above A0 = M / p − z. The fulcrum of 14 in is that of
 * US patent 1,953,916 (1934). The point of 1.75 in·oz and the A0 of 161 in·oz are common practice from memory, without a
 * citable source; a difference between two grips does not depend on the zero.
 *
 * @param fulcrumMm mm from the butt end, cap included; above zero
 * @param pointInchOunces one point, in·oz; above zero
 * @param zeroInchOunces the moment called A0, in·oz; finite
 */
public record SwingweightScale(double fulcrumMm, double pointInchOunces, double zeroInchOunces) {

    /** One inch-ounce in g·mm: 28.349523125 g (exact) times 25.4 mm (exact). */
    public static final double GRAM_MM_PER_INCH_OUNCE = Unit.OUNCE.toInternal(1) * Unit.INCH.toInternal(1);

    /** The old scale's fulcrum, 12 in. */
    public static final double OLD_FULCRUM_MM = Unit.INCH.toInternal(12);

    /** The 14-inch scale with 1.75 in·oz a point and A0 at 161 in·oz. */
    public static SwingweightScale usual() {
        return of(BalanceSettings.usual());
    }

    /** The scale that a shop has set. */
    public static SwingweightScale of(BalanceSettings settings) {
        return new SwingweightScale(settings.fulcrumMm(), settings.pointInchOunces(), settings.zeroInchOunces());
    }

    public SwingweightScale {
        if (!(fulcrumMm > 0) || !Double.isFinite(fulcrumMm)) {
            throw new IllegalArgumentException("The fulcrum of a swingweight scale lies in front of the butt end, not at "
                    + fulcrumMm + " mm.");
        }
        if (!(pointInchOunces > 0) || !Double.isFinite(pointInchOunces)) {
            throw new IllegalArgumentException("One point of a swingweight scale is a moment above zero, not "
                    + pointInchOunces + " in·oz.");
        }
        if (!Double.isFinite(zeroInchOunces)) {
            throw new IllegalArgumentException("The zero of a swingweight scale must be a number of inch-ounces.");
        }
    }

    /** One point in g·mm. */
    public double pointGramMm() {
        return pointInchOunces * GRAM_MM_PER_INCH_OUNCE;
    }

    /** One point in g·in; 49.612 on the usual scale. */
    public double pointGramInches() {
        return Unit.INCH.fromInternal(pointGramMm());
    }

    /** The moment of a mass about the fulcrum, g·mm: m (x − f); negative on the butt's side. NaN gives NaN. */
    public double momentGramMm(double massGrams, double positionMm) {
        return massGrams * (positionMm - fulcrumMm);
    }

    /**
     * How many points a mass at a place makes: m (x − f) / p; negative on the butt's side, none at the fulcrum.
     *
     * @param massGrams g
     * @param positionMm mm from the butt end, cap included
     */
    public double points(double massGrams, double positionMm) {
        return momentGramMm(massGrams, positionMm) / pointGramMm();
    }

    /** The swingweight of a moment: M / p less the points of the zero; refuses a moment that is not finite. */
    public Swingweight of(double momentGramMm) {
        return new Swingweight(momentGramMm / pointGramMm() - zeroInchOunces / pointInchOunces);
    }

    /** The moment of a swingweight, g·mm; undoes {@link #of(double)}. */
    public double momentGramMm(Swingweight swingweight) {
        return swingweight.points() * pointGramMm() + zeroInchOunces * GRAM_MM_PER_INCH_OUNCE;
    }

    /** This scale with its zero moved so that a club of this moment reads as it was read on the shop's own. */
    public SwingweightScale anchoredAt(Swingweight read, double momentGramMm) {
        double momentInchOunces = momentGramMm / GRAM_MM_PER_INCH_OUNCE;
        return new SwingweightScale(fulcrumMm, pointInchOunces, momentInchOunces - read.points() * pointInchOunces);
    }
}
