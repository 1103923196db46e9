package gripwright.balance;

import gripwright.model.ShopSettings;
import gripwright.units.Dimension;
import gripwright.units.NumberText;
import gripwright.units.Unit;
import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * From a wanted figure back to what brings a club there: head mass, butt weight or length, each with what it does to the
 * other figures: {@code BackwardSolver.with(settings).solve(configurationBalance, wanted)}.
 *
 * <p>A mass Δ at x: for a swingweight Δ = (S_wanted − S) p / (x − f); for an inertia Δ = (I_wanted − I) / x²; for a
 * balance point Δ = m (b_wanted − b) / (x − b_wanted). Length by Brent's method within 100 mm. What can't be done is said,
 * with the amount it would take; nothing is clipped.
 */
public final class BackwardSolver {

    private static final double MOST_BUTT_GRAMS = 100;
    private static final double MOST_LENGTH_MM = 100;
    private static final double UNUSUAL_LENGTH_MM = 25.4;
    private static final double LENGTH_ACCURACY = 1e-9;
    private static final int EVALUATIONS = 200;

    private final ShopSettings settings;

    private BackwardSolver(ShopSettings settings) {
        this.settings = settings;
    }

    public static BackwardSolver with(ShopSettings settings) {
        return new BackwardSolver(settings);
    }

    /** The three ways for this configuration, with the shop's place of a butt weight. */
    public List<Remedy> solve(ConfigurationBalance balance, Wanted wanted) {
        return solve(balance, wanted, settings.balance().buttWeightMm());
    }

    /**
     * The three ways for this configuration: head mass, butt weight, length.
     *
     * @param buttWeightMm where the butt weight's centre goes, mm from the shaft's butt end
     */
    public List<Remedy> solve(ConfigurationBalance balance, Wanted wanted, double buttWeightMm) {
        return List.of(head(balance, wanted), butt(balance, wanted, buttWeightMm), length(balance, wanted));
    }

    private SwingweightScale scale() {
        return SwingweightScale.of(settings.balance());
    }

    /** Head mass for a wanted figure. */
    public Remedy head(ConfigurationBalance balance, Wanted wanted) {
        Double place = balance.headPlaceMm();
        if (place == null) {
            return Remedy.unknown(Remedy.Means.HEAD_MASS,
                    "Measure the length of the club, or the head's balance point: its lever is not known.");
        }
        Double grams = wanted.grams(balance.figures(), place, scale());
        if (grams == null) {
            return Remedy.unknown(Remedy.Means.HEAD_MASS, wanted.measureFirst());
        }
        if (wanted instanceof Wanted.AtBalancePoint point && point.mm() >= place) {
            return new Remedy(Remedy.Means.HEAD_MASS, null, place, false, null,
                    "No head mass brings the balance point to the head or beyond it.");
        }
        double already = balance.club() == null ? 0 : balance.club().bodies().stream()
                .filter(body -> body.role() == Body.Role.HEAD_WEIGHT).mapToDouble(Body::massGrams).sum();
        HeadMass way = HeadMass.of(grams, already, settings);
        return new Remedy(Remedy.Means.HEAD_MASS, grams, place, way.feasible(),
                balance.figures().plus(grams, place, scale()), way.sentence() + (way.feasible() ? sideEffect(balance, grams, place) : ""));
    }

    private String sideEffect(ConfigurationBalance balance, double grams, double place) {
        if (balance.inertiaKgCm2() == null || Math.abs(grams) < HeadMass.NOTHING_GRAMS) {
            return "";
        }
        double inertia = grams * place * place / Body.GRAM_MM2_PER_KG_CM2;
        return Wording.of(settings).format(" It %s the inertia by %.0f kg·cm².", inertia > 0 ? "raises" : "lowers",
                Math.abs(inertia));
    }

    /** A butt weight for a wanted figure, its centre at a place from the shaft's butt end. */
    public Remedy butt(ConfigurationBalance balance, Wanted wanted, double buttWeightMm) {
        double place = buttWeightMm + balance.gripEnd().capMm();
        Double grams = wanted.grams(balance.figures(), place, scale());
        if (grams == null) {
            return Remedy.unknown(Remedy.Means.BUTT_WEIGHT, wanted.measureFirst());
        }
        if (!Double.isFinite(grams)) {
            return new Remedy(Remedy.Means.BUTT_WEIGHT, null, place, false, null,
                    "A weight at this very place does not move that figure.");
        }
        boolean feasible = grams >= 0 && grams <= MOST_BUTT_GRAMS;
        return new Remedy(Remedy.Means.BUTT_WEIGHT, grams, place, feasible,
                balance.figures().plus(grams, place, scale()),
                buttSentence(wanted, grams, place, balance.gripEnd().capMm()));
    }

    private String buttSentence(Wanted wanted, double grams, double place, double cap) {
        if (grams < 0) {
            String way = wanted instanceof Wanted.AtInertia ? "raises the inertia"
                    : place < settings.balance().fulcrumMm() ? "lowers swingweight and balance point further"
                            : "raises the swingweight";
            return Wording.of(settings).format(
                    "The wrong way: a butt weight %s; %.1f g would have to come out of the butt.", way, -grams);
        }
        if (grams > MOST_BUTT_GRAMS) {
            return Wording.of(settings).format("It would take %.0f g, more than a butt holds.", grams);
        }
        return grams < HeadMass.NOTHING_GRAMS ? "Nothing to do in the butt."
                : Wording.of(settings).format("%.1f g in the butt, its centre %s from the shaft's butt end.",
                        grams, length(place - cap));
    }

    /** Length for a wanted figure, with the same kind of shaft cut longer or shorter. */
    public Remedy length(ConfigurationBalance balance, Wanted wanted) {
        if (balance.club() == null || balance.swingweight() == null) {
            return Remedy.unknown(Remedy.Means.LENGTH, "What length does needs the parts of the club: weigh them.");
        }
        double offset = balance.swingweight().points() - balance.club().swingweight().points();
        double cap = balance.gripEnd().capMm();
        UnivariateFunction miss = mm -> {
            ClubBalance changed = ClubLength.changed(balance.club(), cap, mm);
            return wanted.missing(LeverFigures.of(changed).reading(changed.swingweight().plus(offset)));
        };
        if (miss.value(-MOST_LENGTH_MM) * miss.value(MOST_LENGTH_MM) > 0) {
            return Remedy.unknown(Remedy.Means.LENGTH, "No change of length within 100 mm gets there.");
        }
        double mm = new BrentSolver(LENGTH_ACCURACY).solve(EVALUATIONS, miss, -MOST_LENGTH_MM, MOST_LENGTH_MM, 0);
        ClubBalance after = ClubLength.changed(balance.club(), cap, mm);
        LeverFigures figures = LeverFigures.of(after).reading(after.swingweight().plus(offset));
        return new Remedy(Remedy.Means.LENGTH, mm, null, Math.abs(mm) <= UNUSUAL_LENGTH_MM, figures,
                lengthSentence(mm));
    }

    private String lengthSentence(double mm) {
        String sentence = length(Math.abs(mm)) + (mm < 0 ? " shorter." : " longer.");
        if (Math.abs(mm) > UNUSUAL_LENGTH_MM) {
            return sentence + " More than an inch makes another club of it.";
        }
        return sentence + " Length is no cure for swingweight: it moves lie, flex and the strike.";
    }

    /** A length in the shop's unit. */
    private String length(double mm) {
        Unit unit = settings.units().of(Dimension.LENGTH);
        return NumberText.withDecimalMark(settings.decimalMark()).format(unit.fromInternal(mm),
                unit == Unit.MILLIMETRE ? 1 : 2) + " " + unit.symbol();
    }
}
