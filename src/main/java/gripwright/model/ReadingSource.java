package gripwright.model;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * Where readings come from and what is to be known of them.
 *
 * @param name the shop's name for it
 * @param closureAxis about which axis its closure rate is taken; values of different axes never meet
 * @param modelled metrics that it works out of a model and does not measure
 */
public record ReadingSource(String name, ClosureAxis closureAxis, Set<Metric> modelled) {

    /** The axis a closure rate is taken about. */
    public enum ClosureAxis {
        NOT_SAID,
        SHAFT,
        TARGET_LINE
    }

    /** Indoors total and apex come from a model. */
    public static ReadingSource usual() {
        return new ReadingSource("", ClosureAxis.NOT_SAID, EnumSet.of(Metric.TOTAL, Metric.APEX));
    }

    public ReadingSource {
        name = Check.orEmpty(name);
        Check.present(closureAxis, "axis of the closure rate");
        EnumSet<Metric> copy = EnumSet.noneOf(Metric.class);
        copy.addAll(modelled);
        modelled = Collections.unmodifiableSet(copy);
    }

    public ReadingSource withName(String name) {
        return new ReadingSource(name, closureAxis, modelled);
    }

    public ReadingSource withClosureAxis(ClosureAxis closureAxis) {
        return new ReadingSource(name, closureAxis, modelled);
    }

    public ReadingSource withModelled(Set<Metric> modelled) {
        return new ReadingSource(name, closureAxis, modelled);
    }
}
