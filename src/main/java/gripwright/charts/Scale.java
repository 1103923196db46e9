package gripwright.charts;

import java.util.ArrayList;
import java.util.List;

/**
 * A linear axis from {@code low} to {@code high} with round ticks.
 *
 * @param low left or lower end, in the unit shown
 * @param high the other end, above {@code low}
 * @param step distance of the ticks: 1, 2 or 5 times a power of ten
 */
public record Scale(double low, double high, double step) {

    private static final double MARGIN = 0.06;

    public Scale {
        if (!(high > low) || !(step > 0)) {
            throw new IllegalArgumentException("An axis runs upwards with a step above zero.");
        }
    }

    /**
     * A scale that holds all finite values with a little air and about {@code ticks} ticks; without a finite value from
     * −1 to 1; around a single value half a unit to each side, or a tenth of the value if that is more.
     */
    public static Scale covering(double[] values, int ticks) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            if (Double.isFinite(value)) {
                least = Math.min(least, value);
                most = Math.max(most, value);
            }
        }
        if (least > most) {
            return new Scale(-1, 1, 0.5);
        }
        if (least == most) {
            double air = Math.max(0.5, Math.abs(least) * 0.1);
            least -= air;
            most += air;
        }
        double air = (most - least) * MARGIN;
        double step = roundStep((most - least + 2 * air) / Math.max(2, ticks));
        return new Scale(least - air, most + air, step);
    }

    private static double roundStep(double raw) {
        double power = Math.pow(10, Math.floor(Math.log10(raw)));
        double mantissa = raw / power;
        if (mantissa <= 1) {
            return power;
        }
        if (mantissa <= 2) {
            return 2 * power;
        }
        return mantissa <= 5 ? 5 * power : 10 * power;
    }

    /** The ticks inside the axis. */
    public List<Double> ticks() {
        List<Double> ticks = new ArrayList<>();
        long first = (long) Math.ceil(low / step - 1e-9);
        long last = (long) Math.floor(high / step + 1e-9);
        for (long at = first; at <= last; at++) {
            ticks.add(at * step);
        }
        return ticks;
    }

    /** Decimals that the ticks need. */
    public int decimals() {
        return Math.max(0, (int) -Math.floor(Math.log10(step) + 1e-9));
    }

    /** Where a value lies on a line from {@code from} to {@code to}. */
    public double place(double value, double from, double to) {
        return from + (value - low) / (high - low) * (to - from);
    }
}
