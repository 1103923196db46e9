package gripwright.model;

/**
 * What the player will not give up: 'lose no more than 2 yd of carry', or 'scatter no more than 0.5 degrees wider'.
 *
 * @param metric which
 * @param aspect its mean or its spread; null, as in files before there was a choice, for the mean
 * @param direction which way it serves; for spread, smaller always serves
 * @param target the value to be near, for {@link Direction#NEAR_TARGET}; null for 0
 * @param mostLoss the largest loss that is accepted, internal units, not negative
 */
public record Guardrail(Metric metric, PrimaryMetric.Aspect aspect, Direction direction, Double target,
        double mostLoss) {

    /** A guardrail on the mean of a metric. */
    public static Guardrail mean(Metric metric, Direction direction, Double target, double mostLoss) {
        return new Guardrail(metric, PrimaryMetric.Aspect.MEAN, direction, target, mostLoss);
    }

    /** A guardrail on the spread of a metric: its standard deviation may grow by so much, internal units. */
    public static Guardrail spread(Metric metric, double mostLoss) {
        return new Guardrail(metric, PrimaryMetric.Aspect.SPREAD, Direction.LOWER, null, mostLoss);
    }

    public Guardrail {
        Check.present(metric, "metric of a guardrail");
        aspect = aspect == null ? PrimaryMetric.Aspect.MEAN : aspect;
        Check.present(direction, "direction of a guardrail");
        Check.optionalFinite(target, "target of a guardrail");
        Check.notNegative(mostLoss, "loss that a guardrail accepts");
    }

    public Guardrail withMetric(Metric metric) {
        return new Guardrail(metric, aspect, direction, target, mostLoss);
    }

    public Guardrail withAspect(PrimaryMetric.Aspect aspect) {
        return new Guardrail(metric, aspect, direction, target, mostLoss);
    }

    /** Whether its spread is meant. */
    public boolean isOnSpread() {
        return aspect == PrimaryMetric.Aspect.SPREAD;
    }

    public Guardrail withDirection(Direction direction) {
        return new Guardrail(metric, aspect, direction, target, mostLoss);
    }

    public Guardrail withTarget(Double target) {
        return new Guardrail(metric, aspect, direction, target, mostLoss);
    }

    public Guardrail withMostLoss(double mostLoss) {
        return new Guardrail(metric, aspect, direction, target, mostLoss);
    }
}
