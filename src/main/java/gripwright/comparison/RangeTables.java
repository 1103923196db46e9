package gripwright.comparison;

import gripwright.statistics.StudentizedRangeFamily;
import gripwright.statistics.StudentizedRangeInterpolant;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.commons.math3.distribution.TDistribution;

/** Tables of distributions that all comparisons share: pure functions of their keys, kept since they cost time. */
final class RangeTables {

    private static final double UPPER = 0.975;

    private final Map<Integer, StudentizedRangeFamily> families = new ConcurrentHashMap<>();
    private final Map<Integer, StudentizedRangeInterpolant> normals = new ConcurrentHashMap<>();
    private final Map<Integer, Double> criticals = new ConcurrentHashMap<>();

    /** The studentized range of so many configurations; null below two. */
    StudentizedRangeFamily family(int count) {
        return count < 2 ? null : families.computeIfAbsent(count, StudentizedRangeFamily::new);
    }

    /** The same with infinite degrees of freedom. */
    StudentizedRangeInterpolant normal(int count) {
        return normals.computeIfAbsent(count, k -> family(k).interpolated(Double.POSITIVE_INFINITY));
    }

    /** Student's t that leaves 2.5 % above. */
    double criticalT(int degreesOfFreedom) {
        return criticals.computeIfAbsent(degreesOfFreedom,
                df -> new TDistribution(null, df).inverseCumulativeProbability(UPPER));
    }
}
