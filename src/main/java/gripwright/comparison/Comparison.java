package gripwright.comparison;

import gripwright.model.Handedness;
import gripwright.model.Metric;
import gripwright.model.VerdictSettings;
import java.util.List;
import java.util.Optional;

/**
 * Everything that one test says about its configurations; the same session always gives the same one.
 *
 * @param testId which test
 * @param clubName its club
 * @param hand the player's hand, for the words
 * @param referenceId configuration that the others are compared with; null where there is no configuration
 * @param settings thresholds and priors that were used
 * @param configurations how much was hit with each
 * @param metrics metrics with at least one scored reading, in the order of the catalogue
 * @param spread repeatability of the metrics with enough shots
 * @param mishitRates how often each configuration was mishit
 * @param patterns carry and offline of each configuration that has both
 * @param patternDifferences centres of the patterns, pair by pair
 * @param overall standing of each configuration, for choosing
 * @param advice what is advised today
 * @param flags shots that look like mishits and aren't set aside
 * @param sizeResponses how metrics answer to size
 * @param sentences what can't be told, and why
 */
public record Comparison(String testId, String clubName, Handedness hand, String referenceId,
        VerdictSettings settings, List<ComparedConfiguration> configurations, List<MetricComparison> metrics,
        List<SpreadComparison> spread, List<MishitRate> mishitRates, List<ShotPattern> patterns,
        List<PatternDifference> patternDifferences, List<Standing> overall, Advice advice, List<MishitFlag> flags,
        List<SizeResponse> sizeResponses, List<String> sentences) {

    public Comparison {
        configurations = List.copyOf(configurations);
        metrics = List.copyOf(metrics);
        spread = List.copyOf(spread);
        mishitRates = List.copyOf(mishitRates);
        patterns = List.copyOf(patterns);
        patternDifferences = List.copyOf(patternDifferences);
        overall = List.copyOf(overall);
        flags = List.copyOf(flags);
        sizeResponses = List.copyOf(sizeResponses);
        sentences = List.copyOf(sentences);
    }

    /** The comparison of this metric; empty where nobody read it. */
    public Optional<MetricComparison> metric(Metric metric) {
        return metrics.stream().filter(m -> m.metric() == metric).findFirst();
    }

    /** The spread of this metric; empty where it can't be had. */
    public Optional<SpreadComparison> spread(Metric metric) {
        return spread.stream().filter(m -> m.metric() == metric).findFirst();
    }

    /** The metrics that the goal names. */
    public List<MetricComparison> primaryMetrics() {
        return metrics.stream().filter(MetricComparison::primary).toList();
    }

    /** The label of a configuration; the identity itself where it is unknown. */
    public String label(String configurationId) {
        return configurations.stream().filter(c -> c.configurationId().equals(configurationId)).findFirst()
                .map(ComparedConfiguration::label).orElse(configurationId);
    }

    /** Whether this shot looks like a mishit. */
    public Optional<MishitFlag> flag(String shotId) {
        return flags.stream().filter(f -> f.shotId().equals(shotId)).findFirst();
    }
}
