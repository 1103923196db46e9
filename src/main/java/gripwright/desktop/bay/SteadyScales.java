package gripwright.desktop.bay;

import gripwright.charts.Scale;
import gripwright.charts.Strip;
import java.util.HashMap;
import java.util.Map;

/** Keeps each strip's axis where it was as long as the shots fit, and then only widens it, so that nothing jumps. */
final class SteadyScales {

    private static final int TICKS = 7;

    private final Map<String, Scale> scales = new HashMap<>();

    /** The strip on its steady axis; strips are told apart by the key and their title with its unit. */
    Strip steady(String key, Strip strip) {
        Scale wanted = strip.scale();
        Scale kept = scales.merge(key + strip.title(), wanted, SteadyScales::widened);
        return new Strip(strip.title(), strip.leftWord(), strip.rightWord(), kept, strip.band(), strip.rows(),
                strip.decimalMark());
    }

    private static Scale widened(Scale kept, Scale wanted) {
        if (wanted.low() >= kept.low() && wanted.high() <= kept.high()) {
            return kept;
        }
        return Scale.covering(new double[] {kept.low(), kept.high(), wanted.low(), wanted.high()}, TICKS);
    }
}
