package gripwright.model;

/**
 * What the player will not give up: 'lose no more than 2 yd of carry'.
 *
 * @param metric which
 * @param direction which way it serves
 * @param target the value to be near, for {@link Direction#NEAR_TARGET}; null for 0
 * @param mostLoss the largest loss that is accepted, internal units, not negative
 */
public record Guardrail(Metric metric, Direction direction, Double target, double mostLoss) {

    public Guardrail {
        Check.present(metric, "metric of a guardrail");
        Check.present(direction, "direction of a guardrail");
        Check.optionalFinite(target, "target of a guardrail");
        Check.notNegative(mostLoss, "loss that a guardrail accepts");
    }

    public Guardrail withMetric(Metric metric) {
        return new Guardrail(metric, direction, target, mostLoss);
    }

    public Guardrail withDirection(Direction direction) {
        return new Guardrail(metric, direction, target, mostLoss);
    }

    public Guardrail withTarget(Double target) {
        return new Guardrail(metric, direction, target, mostLoss);
    }

    public Guardrail withMostLoss(double mostLoss) {
        return new Guardrail(metric, direction, target, mostLoss);
    }
}
