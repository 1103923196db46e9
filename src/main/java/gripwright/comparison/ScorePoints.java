package gripwright.comparison;

import gripwright.statistics.QuasiRandomNormals;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The quasi-random points that all draws come from: fixed seed, so that the same session always gives the same answer,
 * and made once for each size since they depend on nothing else.
 */
final class ScorePoints {

    /** Draws for choosing and for gains near a target; a power of two, as such sequences want. */
    static final int DRAWS = 4096;
    /** Any fixed number would do. */
    private static final long SEED = 20_260_101L;

    private final Map<Integer, double[][]> made = new ConcurrentHashMap<>();

    /** Draws x dimensions standard normal scores; shared, so not to be written to. */
    double[][] of(int dimensions) {
        return made.computeIfAbsent(dimensions, d -> QuasiRandomNormals.points(DRAWS, d, SEED));
    }
}
