package gripwright.statistics;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * The distribution tables that fits with equal degrees of freedom share: each is a pure function of its key, so that it
 * does not matter which fit asked first. Safe for use by several threads.
 */
final class TailTables {

    /** Enough for every metric of a large comparison to have its own degrees of freedom. */
    private static final int MOST_KEPT = 256;

    private record RangeKey(int groups, double degreesOfFreedom) {
    }

    private final Map<Double, StudentTail> students = new ConcurrentHashMap<>();
    private final Map<Double, ChiScores> chis = new ConcurrentHashMap<>();
    private final Map<Integer, StudentizedRangeFamily> families = new ConcurrentHashMap<>();
    private final Map<RangeKey, StudentizedRangeInterpolant> ranges = new ConcurrentHashMap<>();

    StudentTail student(double degreesOfFreedom) {
        return kept(students, degreesOfFreedom, StudentTail::new);
    }

    ChiScores chi(double degreesOfFreedom) {
        return kept(chis, degreesOfFreedom, ChiScores::new);
    }

    /** The upper tail of the studentized range; for two groups by its identity with Student's t. */
    ContrastPosterior.FamilyTail range(int groups, double degreesOfFreedom) {
        if (groups == 2) {
            StudentTail student = student(degreesOfFreedom);
            return q -> 2 * student.upper(q / Math.sqrt(2));
        }
        return kept(ranges, new RangeKey(groups, degreesOfFreedom),
            key -> kept(families, groups, StudentizedRangeFamily::new).interpolated(degreesOfFreedom))::upperTail;
    }

    private static <K, V> V kept(Map<K, V> map, K key, Function<K, V> maker) {
        V known = map.get(key);
        if (known != null) {
            return known;
        }
        if (map.size() >= MOST_KEPT) {
            map.clear();
        }
        V made = maker.apply(key);
        map.put(key, made);
        return made;
    }
}
