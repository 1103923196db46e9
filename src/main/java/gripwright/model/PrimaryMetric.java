package gripwright.model;

/**
 * A metric that the goal names before the test.
 *
 * @param metric which
 * @param aspect its mean or its spread
 * @param direction which way it serves; for spread, smaller always serves
 * @param target the value to be near, internal units; null for 0 where the direction needs one
 * @param weight its share in the overall result against the other primary metrics, above zero
 */
public record PrimaryMetric(Metric metric, Aspect aspect, Direction direction, Double target, double weight) {

    /** What of a metric is meant. */
    public enum Aspect {
        MEAN,
        SPREAD
    }

    /** The mean of a metric in a direction, weight 1, target 0 where one is needed. */
    public static PrimaryMetric mean(Metric metric, Direction direction) {
        return new PrimaryMetric(metric, Aspect.MEAN, direction, null, 1);
    }

    public PrimaryMetric {
        Check.present(metric, "metric of the goal");
        Check.present(aspect, "aspect of the goal");
        Check.present(direction, "direction of the goal");
        Check.optionalFinite(target, "target of the goal");
        Check.positive(weight, "weight of a primary metric");
    }

    public PrimaryMetric withMetric(Metric metric) {
        return new PrimaryMetric(metric, aspect, direction, target, weight);
    }

    public PrimaryMetric withAspect(Aspect aspect) {
        return new PrimaryMetric(metric, aspect, direction, target, weight);
    }

    public PrimaryMetric withDirection(Direction direction) {
        return new PrimaryMetric(metric, aspect, direction, target, weight);
    }

    public PrimaryMetric withTarget(Double target) {
        return new PrimaryMetric(metric, aspect, direction, target, weight);
    }

    public PrimaryMetric withWeight(double weight) {
        return new PrimaryMetric(metric, aspect, direction, target, weight);
    }
}
