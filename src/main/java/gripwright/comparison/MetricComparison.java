package gripwright.comparison;

import gripwright.model.Direction;
import gripwright.model.Metric;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One metric over all configurations of a test.
 *
 * @param metric which
 * @param direction which way it serves this player
 * @param target the value to be near, internal units; null where the direction needs none
 * @param smallestDifference the smallest difference that matters as the verdicts used it: the session's or the shop's,
 *     but at least the set share of the noise; internal units
 * @param smallestDifferenceRaised whether the noise raised it
 * @param primary whether the goal names its mean; the others are description
 * @param modelled whether the source works it out of a model and does not measure it
 * @param configurations in the order of the test, also those without a reading
 * @param model what the model says beyond the configurations
 * @param differences all pairs once: against the reference where it is one of the two, else against the earlier one
 * @param classical the textbook figures beside it
 * @param sentences what can't be told, and why
 */
public record MetricComparison(Metric metric, Direction direction, Double target, double smallestDifference,
        boolean smallestDifferenceRaised, boolean primary, boolean modelled, List<ConfigurationFigures> configurations,
        MetricModel model, List<Difference> differences, ClassicalFigures classical, List<String> sentences) {

    public MetricComparison {
        Objects.requireNonNull(metric, "metric");
        Objects.requireNonNull(direction, "direction");
        Objects.requireNonNull(model, "model");
        Objects.requireNonNull(classical, "classical figures");
        configurations = List.copyOf(configurations);
        differences = List.copyOf(differences);
        sentences = List.copyOf(sentences);
    }

    /** The figures of this configuration. */
    public Optional<ConfigurationFigures> configuration(String configurationId) {
        return configurations.stream().filter(c -> c.configurationId().equals(configurationId)).findFirst();
    }

    /** The difference of these two, whichever way round it is kept; empty for the same or an unknown one. */
    public Optional<Difference> difference(String of, String against) {
        for (Difference difference : differences) {
            if (difference.of().equals(of) && difference.against().equals(against)) {
                return Optional.of(difference);
            }
            if (difference.of().equals(against) && difference.against().equals(of)) {
                return Optional.of(difference.reversed());
            }
        }
        return Optional.empty();
    }

    /** Whether it is scored, that is, whether one value serves the player more than another. */
    public boolean isScored() {
        return direction != Direction.NOT_SCORED;
    }
}
