package gripwright.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A stripped club rebuilt as head and shaft from its mass, its moment and its length, so that an inertia can be told
 * without taking it apart.
 *
 * <p>Head mass h at x_h and shaft mass s balancing at x_s solve h + s = B and h x_h + s x_s = B b: two equations, exact where
 * the places are. Taking the head for a point and the shaft for a uniform rod leaves about a hundredth of the inertia in
 * doubt; ferrule and epoxy are counted to head and shaft.
 */
final class EstimatedClub {

    private static final double LEAST_HEAD_GRAMS = 100;
    private static final double LEAST_SHAFT_GRAMS = 25;

    private EstimatedClub() {
    }

    /**
     * The two bodies, placed with a cap.
     *
     * @param bareGrams mass of the stripped club
     * @param firstMomentGramMm its moment about its butt end, g·mm
     * @param headPlaceMm the head's centre from the shaft's butt end
     * @param shaftLengthMm the shaft's length
     * @param shaftShare where the shaft balances, as a share of its length
     * @return empty where these figures don't go together
     */
    static Optional<List<Body>> of(double bareGrams, double firstMomentGramMm, double headPlaceMm, double shaftLengthMm,
            double shaftShare, double capMm) {
        double shaftPlace = shaftShare * shaftLengthMm;
        double head = (firstMomentGramMm - bareGrams * shaftPlace) / (headPlaceMm - shaftPlace);
        double shaft = bareGrams - head;
        if (!(head >= LEAST_HEAD_GRAMS && shaft >= LEAST_SHAFT_GRAMS)) {
            return Optional.empty();
        }
        List<Body> bodies = new ArrayList<>();
        bodies.add(Body.point(Body.Role.HEAD, "", head, headPlaceMm + capMm));
        bodies.add(Body.rod(Body.Role.SHAFT, "", shaft, shaftPlace + capMm, shaftLengthMm));
        return Optional.of(bodies);
    }
}
