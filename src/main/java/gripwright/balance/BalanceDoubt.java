package gripwright.balance;

import java.util.List;

/**
 * How far the figures from parts may be off, from how well a bench weighs and measures.
 *
 * <p>Each part's mass and place is taken as independently off by the standard deviations below (our judgement, no
 * source); first-order propagation: var F = Σ (∂F/∂m)² s_m² + (∂F/∂x)² s_x². ∂M/∂m = x − f, ∂M/∂x = m; ∂b/∂m = (x − b)/Σm,
 * ∂b/∂x = m/Σm; ∂I/∂m = x² + J/m, ∂I/∂x = 2mx.
 */
final class BalanceDoubt {

    /** A bench scale that reads to a gram or a half. */
    static final double WEIGHED_GRAMS = 0.5;
    /** Grips of one model and label differ by a quarter to half a point and more, hence about 2 g. */
    static final double LABEL_GRAMS = 2;
    /** A balance point found on an edge. */
    static final double MEASURED_MM = 1;
    private static final double SMALL_PART_GRAMS = 0.3;
    private static final double PLACE_MM = 2;

    private final double gripMassSd;
    private final double gripPlaceSd;

    /** For a grip of this standing; {@code usualPlaceSdMm} is the doubt of a grip's place that was not measured. */
    BalanceDoubt(GripEnd grip, double usualPlaceSdMm) {
        gripMassSd = gripMassSd(grip);
        gripPlaceSd = grip.balanceMeasured() ? MEASURED_MM : usualPlaceSdMm;
    }

    static double gripMassSd(GripEnd grip) {
        return grip.massMeasured() ? WEIGHED_GRAMS : LABEL_GRAMS;
    }

    private double massSd(Body body) {
        return switch (body.role()) {
            case GRIP -> gripMassSd;
            case HEAD, SHAFT -> WEIGHED_GRAMS;
            default -> SMALL_PART_GRAMS;
        };
    }

    private double placeSd(Body body) {
        return body.role() == Body.Role.GRIP ? gripPlaceSd : PLACE_MM;
    }

    /** SD of the total mass, g. */
    double massGrams(ClubBalance club) {
        return root(club.bodies(), body -> 1, body -> 0);
    }

    /** SD of the moment about the fulcrum, g·mm. */
    double momentGramMm(ClubBalance club) {
        return root(club.bodies(), body -> body.positionMm() - club.scale().fulcrumMm(), Body::massGrams);
    }

    /** SD of the balance point, mm. */
    double balancePointMm(ClubBalance club) {
        return root(club.bodies(), body -> (body.positionMm() - club.balancePointMm()) / club.massGrams(),
                body -> body.massGrams() / club.massGrams());
    }

    /** SD of the inertia about the butt, kg·cm². */
    double inertiaKgCm2(ClubBalance club) {
        return root(club.bodies(),
                body -> body.massGrams() > 0 ? body.inertiaAboutButtKgCm2() / body.massGrams() : 0,
                body -> 2 * body.massGrams() * body.positionMm() / Body.GRAM_MM2_PER_KG_CM2);
    }

    private double root(List<Body> bodies, java.util.function.ToDoubleFunction<Body> byMass,
            java.util.function.ToDoubleFunction<Body> byPlace) {
        double variance = 0;
        for (Body body : bodies) {
            variance += Math.pow(byMass.applyAsDouble(body) * massSd(body), 2)
                    + Math.pow(byPlace.applyAsDouble(body) * placeSd(body), 2);
        }
        return Math.sqrt(variance);
    }
}
