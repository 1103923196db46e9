package gripwright.intake;

import gripwright.model.Metric;
import java.util.Optional;

/**
 * What a column holds: a reading of one metric, or one of the other things a row can say.
 *
 * @param metric the metric; null for another thing
 * @param role the other thing; null for a metric
 */
public record ColumnMeaning(Metric metric, ColumnRole role) {

    public ColumnMeaning {
        if ((metric == null) == (role == null)) {
            throw new IllegalArgumentException("A column holds a metric or another thing, one of the two.");
        }
    }

    public static ColumnMeaning of(Metric metric) {
        return new ColumnMeaning(metric, null);
    }

    public static ColumnMeaning of(ColumnRole role) {
        return new ColumnMeaning(null, role);
    }

    /** The meaning with this key, a metric's or a role's. */
    public static Optional<ColumnMeaning> ofKey(String key) {
        return Metric.ofKey(key).map(ColumnMeaning::of).or(() -> ColumnRole.ofKey(key).map(ColumnMeaning::of));
    }

    /** The name in saved mappings and answers. */
    public String key() {
        return metric != null ? metric.key() : role.key();
    }

    /** The name for people. */
    public String text() {
        return metric != null ? metric.text() : role.text();
    }
}
