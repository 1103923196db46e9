package gripwright.desktop.bay;

import gripwright.model.Metric;
import gripwright.model.ReadingText;
import gripwright.model.Shot;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The last shot's chosen readings, large.
 *
 * @param shotId which shot; null before the first
 * @param title 'last shot', 'settling swing', 'set aside: mishit'
 * @param readings one a chosen metric, in order; the same metrics always, so that nothing jumps
 */
public record LastShot(String shotId, String title, List<Big> readings) {

    /**
     * One large reading.
     *
     * @param name the metric
     * @param number the number, or an en dash where it was not read
     * @param word the word of its sign, else its unit; may be empty
     * @param unusual whether it lies outside the sensible range
     */
    public record Big(String name, String number, String word, boolean unusual) {
    }

    public LastShot {
        readings = List.copyOf(readings);
    }

    /** The readings of a shot; of null, dashes. */
    static LastShot of(Shot shot, String title, List<Metric> chosen, ReadingText text) {
        return new LastShot(shot == null ? null : shot.id(), title,
                chosen.stream().map(metric -> big(shot, metric, text)).toList());
    }

    private static Big big(Shot shot, Metric metric, ReadingText text) {
        OptionalDouble value = shot == null ? OptionalDouble.empty() : shot.readings().value(metric);
        String unit = text.unit(metric).symbol();
        if (value.isEmpty()) {
            return new Big(metric.text(), "\u2013", unit, false);
        }
        double read = value.getAsDouble();
        String word = word(metric, read, text);
        return word.isEmpty()
                ? new Big(metric.text(), text.number(metric, read), unit, !metric.isSensible(read))
                : new Big(metric.text(), text.number(metric, Math.abs(read)), word, !metric.isSensible(read));
    }

    /** The word of the sign, as short as it is clear; a closure rate that closes is the usual case and keeps its unit. */
    private static String word(Metric metric, double read, ReadingText text) {
        boolean usual = metric == Metric.CLOSURE_RATE && read > 0;
        return usual ? "" : text.word(metric, read).replace(" to path", "");
    }
}
