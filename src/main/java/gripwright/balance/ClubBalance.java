package gripwright.balance;

import gripwright.units.Swingweight;
import gripwright.units.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * The finished club as a lever: what its parts make together.
 *
 * <p>Symbols: m the mass of a part (g), x its balance point from the butt end with the cap (mm), f the fulcrum (mm),
 * J its inertia about its own balance point. Mass = Σm; balance point b = Σmx / Σm; moment about the fulcrum
 * M = Σm(x − f); about the old 12-inch fulcrum the same with its place; inertia about the butt I = Σ(J + mx²); about the
 * balance point I − (Σm) b². Exact mechanics, no source needed.
 *
 * @param bodies the parts
 * @param scale the scale that names the swingweight
 * @param massGrams total mass, g
 * @param balancePointMm mm from the butt end, cap included
 * @param momentGramMm moment about the fulcrum, g·mm
 * @param inertiaAboutButtKgCm2 kg·cm²
 */
public record ClubBalance(List<Body> bodies, SwingweightScale scale, double massGrams, double balancePointMm,
        double momentGramMm, double inertiaAboutButtKgCm2) {

    public ClubBalance {
        bodies = List.copyOf(bodies);
    }

    /**
     * Adds the parts up.
     *
     * @param bodies at least one with mass
     * @param scale the swingweight scale
     * @throws IllegalArgumentException with a sentence when there is no mass or the fulcrum lies beyond the club
     */
    public static ClubBalance of(List<Body> bodies, SwingweightScale scale) {
        double mass = bodies.stream().mapToDouble(Body::massGrams).sum();
        if (!(mass > 0)) {
            throw new IllegalArgumentException("A club without mass has no balance; weigh its parts.");
        }
        double end = bodies.stream().mapToDouble(body -> body.positionMm() + body.lengthMm() / 2).max().orElse(0);
        if (scale.fulcrumMm() >= end) {
            throw new IllegalArgumentException("The fulcrum at " + Math.round(scale.fulcrumMm())
                    + " mm lies beyond the club, whose last part ends at " + Math.round(end)
                    + " mm; check the places of the parts, or the fulcrum in the settings.");
        }
        double first = bodies.stream().mapToDouble(body -> body.massGrams() * body.positionMm()).sum();
        double moment = bodies.stream()
                .mapToDouble(body -> scale.momentGramMm(body.massGrams(), body.positionMm())).sum();
        double inertia = bodies.stream().mapToDouble(Body::inertiaAboutButtKgCm2).sum();
        return new ClubBalance(bodies, scale, mass, first / mass, moment, inertia);
    }

    /** Moment about the fulcrum in g·in, as the bench writes it. */
    public double momentGramInches() {
        return Unit.INCH.fromInternal(momentGramMm);
    }

    /** Moment about the old 12-inch fulcrum, g·in: with the usual fulcrum M14 + 2 in × mass. */
    public double moment12GramInches() {
        return Unit.INCH.fromInternal(massGrams * (balancePointMm - SwingweightScale.OLD_FULCRUM_MM));
    }

    /** What the scale reads. */
    public Swingweight swingweight() {
        return scale.of(momentGramMm);
    }

    /** Inertia about the balance point, kg·cm²: I − m b² (parallel axes). */
    public double inertiaAboutBalancePointKgCm2() {
        return inertiaAboutButtKgCm2 - massGrams * balancePointMm * balancePointMm / Body.GRAM_MM2_PER_KG_CM2;
    }

    /** What each part adds, in the order of the parts. */
    public List<Share> shares() {
        return bodies.stream().map(body -> Share.of(body, this)).toList();
    }

    /** This club with one more body. */
    public ClubBalance with(Body more) {
        List<Body> all = new ArrayList<>(bodies);
        all.add(more);
        return of(all, scale);
    }

    /**
     * What one part adds to the figures of the club.
     *
     * @param body the part
     * @param massShare its share of the mass, 0 to 1
     * @param momentGramInches its moment about the fulcrum, g·in; negative on the butt's side
     * @param points the same in points of swingweight
     * @param inertiaKgCm2 its inertia about the butt, kg·cm²
     * @param inertiaShare its share of that inertia, 0 to 1; 0 where the club has none
     */
    public record Share(Body body, double massShare, double momentGramInches, double points, double inertiaKgCm2,
            double inertiaShare) {

        static Share of(Body body, ClubBalance club) {
            double moment = club.scale.momentGramMm(body.massGrams(), body.positionMm());
            double inertia = body.inertiaAboutButtKgCm2();
            double whole = club.inertiaAboutButtKgCm2;
            return new Share(body, body.massGrams() / club.massGrams, Unit.INCH.fromInternal(moment),
                    moment / club.scale.pointGramMm(), inertia, whole > 0 ? inertia / whole : 0);
        }
    }
}
