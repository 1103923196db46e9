package gripwright.comparison;

import java.util.List;

/**
 * Where one configuration stands overall, for choosing: no claim.
 *
 * @param configurationId which configuration
 * @param label its label
 * @param probabilityBest probability that it is the best choice by the goal's primary metrics, guardrails and feel; null
 *     where the goal scores nothing or there is no model
 * @param expectedGain expected gain over the reference in smallest differences that matter, the primary metrics' weighted
 *     gains and feel added up; null as above
 * @param probabilityWorthIt probability that the gain over the reference is above one smallest difference; null as
 *     above, and for the reference
 * @param parts what each primary metric contributes
 * @param guardrails whether what must not be lost is kept
 * @param feel the player's answers for it, averaged over its stints; null where nothing was answered
 */
public record Standing(String configurationId, String label, Double probabilityBest, Double expectedGain,
        Double probabilityWorthIt, List<Part> parts, List<GuardrailCheck> guardrails, FeelFigures feel) {

    /**
     * The contribution of one primary metric.
     *
     * @param name 'club speed', 'spread of face angle'
     * @param metricKey key of the metric
     * @param spread whether its spread is meant
     * @param weight its weight against the weightiest primary metric, 0 to 1
     * @param expectedGain expected gain over the reference, in units of its smallest difference
     * @param probabilityBest probability that it is best in this metric
     */
    public record Part(String name, String metricKey, boolean spread, double weight, double expectedGain,
            double probabilityBest) {
    }

    /**
     * Whether a guardrail is kept.
     *
     * @param sentence the guardrail in words
     * @param metricKey key of the metric
     * @param spread whether its spread is meant
     * @param probabilityKept probability that no more than the accepted loss is lost
     */
    public record GuardrailCheck(String sentence, String metricKey, boolean spread, double probabilityKept) {
    }

    public Standing {
        parts = List.copyOf(parts);
        guardrails = List.copyOf(guardrails);
    }
}
