package gripwright.comparison;

import java.util.Objects;

/**
 * A figure with the range it is known to.
 *
 * @param value the best guess
 * @param interval where the truth should lie with 95 % probability
 */
public record Estimate(double value, Interval interval) {

    public Estimate {
        Objects.requireNonNull(interval, "interval of an estimate");
    }

    /** The estimate of the opposite. */
    public Estimate negated() {
        return new Estimate(0 - value, interval.negated());
    }
}
