package gripwright.intake;

import gripwright.model.Metric;
import gripwright.units.Unit;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;

/**
 * Reads what stands before and after the numbers of one file: units, directions, both or neither; the same few texts come
 * again and again, so each is worked out once.
 */
final class Surroundings {

    /** A file with more different texts than this repeats none. */
    private static final int MOST_KEPT = 500;
    private static final Meant NOTHING = new Meant(null, null);
    private static final Meant NEITHER = new Meant(null, null);

    private final Map<Metric, Map<String, Meant>> known = new EnumMap<>(Metric.class);

    /**
     * What a text beside a number means.
     *
     * @param unit null where it has none
     * @param way null where it has none
     */
    record Meant(Unit unit, DirectionWords.Way way) {
    }

    /** What the text means; null where it is neither a unit of this metric nor a direction. */
    Meant of(String text, Metric metric) {
        if (text.isEmpty()) {
            return NOTHING;
        }
        Map<String, Meant> texts = known.computeIfAbsent(metric, m -> new HashMap<>());
        Meant meant = texts.get(text);
        if (meant == null) {
            meant = worked(text, metric);
            if (texts.size() < MOST_KEPT) {
                texts.put(text, meant);
            }
        }
        return meant == NEITHER ? null : meant;
    }

    private static Meant worked(String text, Metric metric) {
        DirectionWords.Way whole = DirectionWords.of(metric, text);
        if (whole != null) {
            return new Meant(null, whole);
        }
        Unit unit = UnitWords.unit(text, metric.dimension()).orElse(null);
        if (unit != null) {
            return new Meant(unit, null);
        }
        for (int cut = 1; cut < text.length(); cut++) {
            String head = text.substring(0, cut);
            String rest = text.substring(cut);
            Meant both = both(head, rest, metric);
            if (both == null) {
                both = both(rest, head, metric);
            }
            if (both != null) {
                return both;
            }
        }
        return NEITHER;
    }

    private static Meant both(String unitText, String wayText, Metric metric) {
        Unit unit = UnitWords.unit(unitText, metric.dimension()).orElse(null);
        DirectionWords.Way way = unit == null ? null : DirectionWords.of(metric, wayText);
        return way == null ? null : new Meant(unit, way);
    }
}
