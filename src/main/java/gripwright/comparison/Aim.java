package gripwright.comparison;

import gripwright.model.ClubKind;
import gripwright.model.Direction;
import gripwright.model.Goal;
import gripwright.model.Guardrail;
import gripwright.model.Metric;
import gripwright.model.PrimaryMetric;
import gripwright.model.SignConvention;

/**
 * Which way a metric serves this player: by the goal, else a guardrail, else by custom.
 *
 * @param direction which way; not scored where a target is needed and none is known
 * @param target value to be near; null where the direction needs none
 * @param primary whether the goal names the metric's mean
 * @param targetMissing whether it isn't scored only because nobody said which number to be near
 */
record Aim(Direction direction, Double target, boolean primary, boolean targetMissing) {

    static Aim of(Metric metric, Goal goal, ClubKind club) {
        for (PrimaryMetric primary : goal.primaries()) {
            if (primary.metric() == metric && primary.aspect() == PrimaryMetric.Aspect.MEAN) {
                return of(metric, primary.direction(), primary.target(), true);
            }
        }
        for (Guardrail guardrail : goal.guardrails()) {
            if (guardrail.metric() == metric && !guardrail.isOnSpread()) {
                return of(metric, guardrail.direction(), guardrail.target(), false);
            }
        }
        return of(metric, metric.defaultDirection(club), null, false);
    }

    static Aim of(Metric metric, Direction direction, Double target, boolean primary) {
        if (direction != Direction.NEAR_TARGET) {
            return new Aim(direction, null, primary, false);
        }
        if (target != null) {
            return new Aim(direction, target, primary, false);
        }
        // Nought is a natural target only for what has two sides; nobody wants a carry of nought.
        return metric.sign() == SignConvention.UNSIGNED || metric.sign() == SignConvention.CLOSING
                ? new Aim(Direction.NOT_SCORED, null, primary, true)
                : new Aim(direction, 0.0, primary, false);
    }

    boolean isScored() {
        return direction != Direction.NOT_SCORED;
    }

    /** What a difference is worth: reference and value of the metric to gain; 0 where it isn't scored. */
    double gain(double of, double against) {
        return switch (direction) {
            case HIGHER -> of - against;
            case LOWER -> against - of;
            case NEAR_TARGET -> Math.abs(against - target) - Math.abs(of - target);
            case NOT_SCORED -> 0;
        };
    }
}
