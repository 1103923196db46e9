package gripwright.model;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What was read of one shot: any subset of the metrics, in internal units; what is missing stays missing.
 *
 * @param values finite values only, none beyond {@link #MOST} either way
 */
public record Readings(Map<Metric, Double> values) {

    /** Nothing that a club or a ball does is a billion of anything; past it the sums of squares run over. */
    public static final double MOST = 1e9;

    /** No reading at all. */
    public static Readings none() {
        return new Readings(Map.of());
    }

    /** One reading; more with {@link #with}. */
    public static Readings of(Metric metric, double value) {
        return none().with(metric, value);
    }

    public Readings {
        Map<Metric, Double> copy = new EnumMap<>(Metric.class);
        values.forEach((metric, value) -> {
            Check.finite(Check.present(value, metric.text()), metric.text());
            if (Math.abs(value) > MOST) {
                throw new IllegalArgumentException("The " + metric.text() + " of " + value + " can't be a reading: it is"
                        + " beyond a billion. Correct it, or leave it out.");
            }
            copy.put(metric, value);
        });
        values = Collections.unmodifiableMap(copy);
    }

    /** The reading as it was taken; empty where it wasn't. */
    public OptionalDouble given(Metric metric) {
        Double value = values.get(metric);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /**
     * The reading as taken, or worked out where it can be: speed ratio = ball speed / club speed, face to path = face
     * angle − club path. Empty where neither is possible.
     */
    public OptionalDouble value(Metric metric) {
        OptionalDouble given = given(metric);
        if (given.isPresent()) {
            return given;
        }
        return switch (metric) {
            case SPEED_RATIO -> ratio();
            case FACE_TO_PATH -> faceToPath();
            default -> OptionalDouble.empty();
        };
    }

    private OptionalDouble ratio() {
        Double ball = values.get(Metric.BALL_SPEED);
        Double club = values.get(Metric.CLUB_SPEED);
        return ball == null || club == null || club <= 0 || ball / club > MOST ? OptionalDouble.empty()
                : OptionalDouble.of(ball / club);
    }

    private OptionalDouble faceToPath() {
        Double face = values.get(Metric.FACE_ANGLE);
        Double path = values.get(Metric.CLUB_PATH);
        return face == null || path == null ? OptionalDouble.empty() : OptionalDouble.of(face - path);
    }

    /** These readings with one more or another. */
    public Readings with(Metric metric, double value) {
        Map<Metric, Double> changed = new EnumMap<>(Metric.class);
        changed.putAll(values);
        changed.put(metric, value);
        return new Readings(changed);
    }

    /** These readings without one. */
    public Readings without(Metric metric) {
        Map<Metric, Double> changed = new EnumMap<>(Metric.class);
        changed.putAll(values);
        changed.remove(metric);
        return new Readings(changed);
    }

    public boolean isEmpty() {
        return values.isEmpty();
    }
}
