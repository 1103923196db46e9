package gripwright.comparison;

import gripwright.model.Metric;
import java.util.List;

/**
 * A shot that looks like a mishit; only the fitter sets aside.
 *
 * @param shotId which shot
 * @param stintId its stint
 * @param configurationId its configuration
 * @param metrics readings that tell it
 * @param sentence why, in words
 */
public record MishitFlag(String shotId, String stintId, String configurationId, List<Metric> metrics,
        String sentence) {

    public MishitFlag {
        metrics = List.copyOf(metrics);
    }
}
