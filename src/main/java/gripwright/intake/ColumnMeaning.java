package gripwright.intake;

import gripwright.model.Metric;
import gripwright.units.Unit;
import java.util.List;
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

    /** The symbols of the units its numbers can be in, the internal one first; empty where they have none. */
    public List<String> units() {
        return metric == null ? List.of() : UnitWords.choices(metric.dimension()).stream().map(Unit::symbol)
                .filter(symbol -> !symbol.isEmpty()).toList();
    }

    /**
     * The words that a number without a minus can mean: first the one that is positive in this program for everybody, then
     * its opposite, then the two that depend on the player's hand; empty where there is no sign.
     */
    public List<String> sides() {
        return metric == null ? List.of() : switch (metric.sign()) {
            case UNSIGNED -> List.of();
            case FACE, FACE_TO_PATH -> List.of("right", "left", "open", "closed");
            case PATH -> List.of("right", "left", "in to out", "out to in");
            case RIGHT -> List.of("right", "left");
            case SPIN_AXIS -> List.of("right", "left", "fade", "draw");
            case UP -> List.of("up", "down");
            case TOE_UP -> List.of("toe up", "toe down");
            case TOWARDS_TOE -> List.of("toe", "heel");
            case CLOSING -> List.of("closing", "opening");
        };
    }
}
