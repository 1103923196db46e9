package gripwright.statistics;

import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * A figure that the data may or may not be able to give: either a value or the reason why there is none. No figure of
 * the classical part is ever NaN; it is absent here instead.
 *
 * @param value     the value, null where there is none
 * @param shortfall why there is none, null where there is a value
 * @param <T>       what the figure is
 */
public record Figure<T>(T value, Shortfall shortfall) {

    /** Exactly one of the two is there. */
    public Figure {
        if ((value == null) == (shortfall == null)) {
            throw new IllegalArgumentException("A figure has either a value or a shortfall");
        }
    }

    /** A figure that is there. */
    public static <T> Figure<T> of(T value) {
        return new Figure<>(Objects.requireNonNull(value), null);
    }

    /** A figure that can't be given. */
    public static <T> Figure<T> none(Shortfall why) {
        return new Figure<>(null, Objects.requireNonNull(why));
    }

    /** Whether there is a value. */
    public boolean isAvailable() {
        return value != null;
    }

    /**
     * The value.
     *
     * @return the value
     * @throws NoSuchElementException if there is none, naming the shortfall
     */
    public T get() {
        if (value == null) {
            throw new NoSuchElementException("Not available: " + shortfall);
        }
        return value;
    }

    /** The value as an optional. */
    public Optional<T> toOptional() {
        return Optional.ofNullable(value);
    }

    /** The same figure seen through a function; a shortfall stays. */
    public <U> Figure<U> map(Function<? super T, ? extends U> function) {
        return value == null ? none(shortfall) : of(function.apply(value));
    }
}
