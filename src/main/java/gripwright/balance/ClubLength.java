package gripwright.balance;

import java.util.List;

/**
 * A club made longer or shorter with the same kind of shaft.
 *
 * <p>The head, what is fixed to it and its weights move by Δ. A shaft of length L is cut longer: with the same mass per
 * length and the same share of its length before the balance point, its mass grows by (L + Δ)/L, its place from its butt
 * end likewise, its own inertia by the cube. Grip, tape and what is in the butt stay. A shaft without a length moves by
 * Δ/2. An extension plugged into the butt moves the whole shaft instead and gives some 0.4 points more for half an inch.
 */
final class ClubLength {

    private ClubLength() {
    }

    static ClubBalance changed(ClubBalance club, double capMm, double byMm) {
        List<Body> bodies = club.bodies().stream().map(body -> changed(body, club, capMm, byMm)).toList();
        return ClubBalance.of(bodies, club.scale());
    }

    private static Body changed(Body body, ClubBalance club, double capMm, double byMm) {
        if (body.role().atHead() || body.role() == Body.Role.OTHER && body.positionMm() > club.balancePointMm()) {
            return body.movedBy(byMm);
        }
        if (body.role() != Body.Role.SHAFT) {
            return body;
        }
        if (body.lengthMm() == 0) {
            return body.movedBy(byMm / 2);
        }
        double grown = 1 + byMm / body.lengthMm();
        return new Body(body.role(), body.name(), body.massGrams() * grown, capMm + (body.positionMm() - capMm) * grown,
                body.lengthMm() * grown, body.ownInertiaKgCm2() * grown * grown * grown);
    }
}
