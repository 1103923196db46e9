package gripwright.planning;

import gripwright.model.ClubKind;
import gripwright.model.Direction;
import gripwright.model.Goal;
import gripwright.model.Guardrail;
import gripwright.model.Metric;
import gripwright.model.PrimaryMetric;
import java.util.List;

/**
 * A goal in a ready sentence, with the primary metrics and guardrails that it usually means; a beginning to be changed.
 *
 * <p>Which metrics a sentence stands for is our judgement, no source.
 */
public enum ReadyGoal {
    TAKE_OUT_THE_LEFT("Take out the left"),
    TAKE_OUT_THE_RIGHT("Take out the right"),
    BIGGER_MISSES_BACK_IN("Bigger misses back in"),
    AS_FAST_BUT_STEADIER("As fast as the gamer, steadier"),
    FASTER("Faster, without giving up direction"),
    COMFORT_FIRST("Hands hurt: comfort first");

    private static final double USUAL_FEEL = 0.25;
    private static final double FEEL_WHERE_HANDS_HURT = 0.6;
    private static final double TWO_YARDS_M = 1.8288;

    private final String sentence;

    ReadyGoal(String sentence) {
        this.sentence = sentence;
    }

    public String sentence() {
        return sentence;
    }

    /** The goal as it is usually meant with a club of this kind. */
    public Goal with(ClubKind club) {
        return switch (this) {
            case TAKE_OUT_THE_LEFT, TAKE_OUT_THE_RIGHT -> goal(List.of(near(Metric.FACE_ANGLE), near(Metric.OFFLINE)),
                    List.of(loses(Metric.CARRY, TWO_YARDS_M)), USUAL_FEEL);
            case BIGGER_MISSES_BACK_IN -> goal(List.of(spread(Metric.OFFLINE), spread(Metric.FACE_ANGLE)),
                    List.of(loses(Metric.CARRY, TWO_YARDS_M)), USUAL_FEEL);
            case AS_FAST_BUT_STEADIER -> goal(List.of(spread(Metric.FACE_ANGLE), spread(Metric.CARRY)),
                    List.of(loses(Metric.CLUB_SPEED, Metric.CLUB_SPEED.defaultSmallestDifference())), USUAL_FEEL);
            case FASTER -> goal(List.of(PrimaryMetric.mean(fastest(club), Direction.HIGHER)),
                    List.of(Guardrail.mean(Metric.FACE_ANGLE, Direction.NEAR_TARGET, null,
                            Metric.FACE_ANGLE.defaultSmallestDifference()), holds(Metric.FACE_ANGLE),
                            holds(Metric.STRIKE_SIDEWAYS)), USUAL_FEEL);
            case COMFORT_FIRST -> new Goal(sentence, List.of(), List.of(loses(Metric.CARRY, TWO_YARDS_M)),
                    FEEL_WHERE_HANDS_HURT, true);
        };
    }

    /** With a driver what counts is the ball's speed, with the others the club's. */
    private static Metric fastest(ClubKind club) {
        return club == ClubKind.DRIVER ? Metric.BALL_SPEED : Metric.CLUB_SPEED;
    }

    private Goal goal(List<PrimaryMetric> primaries, List<Guardrail> guardrails, double feel) {
        return new Goal(sentence, primaries, guardrails, feel, false);
    }

    private static PrimaryMetric near(Metric metric) {
        return PrimaryMetric.mean(metric, Direction.NEAR_TARGET);
    }

    private static PrimaryMetric spread(Metric metric) {
        return new PrimaryMetric(metric, PrimaryMetric.Aspect.SPREAD, Direction.LOWER, null, 1);
    }

    /** Its spread may grow by half of what is typical; our judgement: less, a dozen shots can't rule out. */
    private static Guardrail holds(Metric metric) {
        return Guardrail.spread(metric, DetectableDifference.typicalNoise(metric) / 2);
    }

    private static Guardrail loses(Metric metric, double mostLoss) {
        return Guardrail.mean(metric, Direction.HIGHER, null, mostLoss);
    }
}
