package gripwright.comparison;

import gripwright.model.Direction;
import gripwright.model.Handedness;
import gripwright.model.Metric;
import gripwright.model.SignConvention;

/** Verdicts as people say them: 'probably faster', 'not settled, leans closed', 'no practical difference'. */
public final class VerdictWords {

    private final Handedness hand;

    private VerdictWords(Handedness hand) {
        this.hand = hand;
    }

    /** Words for a player of this hand. */
    public static VerdictWords forHand(Handedness hand) {
        return new VerdictWords(hand);
    }

    /**
     * The verdict in a few words. A metric that serves one way says it by its own word ('faster'), one that serves near
     * a target by nearness with the way in brackets, one that isn't scored by the change alone.
     */
    public String of(MetricComparison metric, Difference difference) {
        return of(metric.metric(), metric.direction(), difference);
    }

    /** As {@link #of(MetricComparison, Difference)} without the whole comparison at hand. */
    public String of(Metric metric, Direction direction, Difference difference) {
        if (difference.estimate() == null) {
            return "not measured";
        }
        if (direction == Direction.NOT_SCORED) {
            return change(metric, difference);
        }
        String better = betterWord(metric, direction);
        String worse = worseWord(metric, direction);
        return switch (difference.verdict()) {
            case BETTER -> better;
            case PROBABLY_BETTER -> "probably " + better;
            case SAME -> "no practical difference";
            case PROBABLY_WORSE -> "probably " + worse;
            case WORSE -> worse;
            case NOT_SETTLED -> notSettled(metric, direction, difference);
        };
    }

    private String notSettled(Metric metric, Direction direction, Difference difference) {
        if (direction == Direction.NEAR_TARGET) {
            return nearness(metric, difference.change());
        }
        return switch (difference.leaning()) {
            case TOWARDS_BETTER -> "not settled, leans " + betterWord(metric, direction);
            case TOWARDS_WORSE -> "not settled, leans " + worseWord(metric, direction);
            case NONE -> "not settled";
        };
    }

    /** Two that surely differ can be equally near a target, so that the side is told beside what is open. */
    private String nearness(Metric metric, Change change) {
        return switch (change) {
            case HIGHER, LOWER -> "not settled, but " + changeWord(metric, change.side() > 0);
            case PROBABLY_HIGHER, PROBABLY_LOWER -> "not settled, but probably " + changeWord(metric, change.side() > 0);
            case LEANS_HIGHER, LEANS_LOWER -> "not settled, leans " + leaningWord(metric, change.side() > 0);
            case SAME, NOT_SETTLED -> "not settled";
        };
    }

    /** What may be said of the signed difference, whichever way it serves. */
    public String change(Metric metric, Difference difference) {
        if (difference.estimate() == null) {
            return "not measured";
        }
        return switch (difference.change()) {
            case HIGHER -> changeWord(metric, true);
            case PROBABLY_HIGHER -> "probably " + changeWord(metric, true);
            case LEANS_HIGHER -> "not settled, leans " + leaningWord(metric, true);
            case SAME -> "no practical difference";
            case LEANS_LOWER -> "not settled, leans " + leaningWord(metric, false);
            case PROBABLY_LOWER -> "probably " + changeWord(metric, false);
            case LOWER -> changeWord(metric, false);
            case NOT_SETTLED -> "not settled";
        };
    }

    /** 'steadier', 'probably steadier', 'not settled, leans steadier', 'no practical difference', 'less steady'. */
    public String ofSpread(SpreadComparison.SpreadRatio ratio) {
        return switch (ratio.verdict()) {
            case BETTER -> "steadier";
            case PROBABLY_BETTER -> "probably steadier";
            case SAME -> "no practical difference";
            case PROBABLY_WORSE -> "probably less steady";
            case WORSE -> "less steady";
            case NOT_SETTLED -> switch (ratio.leaning()) {
                case TOWARDS_BETTER -> "not settled, leans steadier";
                case TOWARDS_WORSE -> "not settled, leans less steady";
                case NONE -> "not settled";
            };
        };
    }

    private String betterWord(Metric metric, Direction direction) {
        return switch (direction) {
            case HIGHER -> changeWord(metric, true);
            case LOWER -> changeWord(metric, false);
            case NEAR_TARGET -> "nearer the target";
            case NOT_SCORED -> "better";
        };
    }

    private String worseWord(Metric metric, Direction direction) {
        return switch (direction) {
            case HIGHER -> changeWord(metric, false);
            case LOWER -> changeWord(metric, true);
            case NEAR_TARGET -> "further from the target";
            case NOT_SCORED -> "worse";
        };
    }

    /** 'faster', 'more open', 'further right', 'longer', 'more spin'. */
    public String changeWord(Metric metric, boolean higher) {
        return switch (metric) {
            case CLUB_SPEED, BALL_SPEED -> higher ? "faster" : "slower";
            case CARRY, TOTAL -> higher ? "longer" : "shorter";
            case SPIN_RATE -> higher ? "more spin" : "less spin";
            case CLOSURE_RATE -> higher ? "closing faster" : "closing slower";
            case APEX -> higher ? "flying higher" : "flying lower";
            case LAUNCH_ANGLE -> higher ? "launching higher" : "launching lower";
            case DESCENT_ANGLE -> higher ? "landing steeper" : "landing flatter";
            case DYNAMIC_LOFT -> higher ? "more loft" : "less loft";
            case ATTACK_ANGLE -> higher ? "more upwards" : "more downwards";
            case STRIKE_UP -> higher ? "higher on the face" : "lower on the face";
            case STRIKE_SIDEWAYS -> higher ? "more towards the toe" : "more towards the heel";
            case OFFLINE, START_DIRECTION -> higher ? "further right" : "further left";
            case SPEED_RATIO -> higher ? "higher" : "lower";
            case FACE_ANGLE, CLUB_PATH, FACE_TO_PATH, SPIN_AXIS, DYNAMIC_LIE -> "more " + leaningWord(metric, higher);
        };
    }

    /** The word after 'leans': 'closed' and not 'more closed' where the sign has a word of its own. */
    public String leaningWord(Metric metric, boolean higher) {
        return switch (metric) {
            case FACE_ANGLE, CLUB_PATH, FACE_TO_PATH, SPIN_AXIS, DYNAMIC_LIE, OFFLINE, START_DIRECTION -> {
                SignConvention sign = metric.sign();
                yield higher ? sign.positiveWord(hand) : sign.negativeWord(hand);
            }
            default -> changeWord(metric, higher);
        };
    }
}
