package gripwright.model;

/**
 * What a metric's sign says.
 *
 * <p>What points in space is positive to the right of the target for everybody; what belongs to the club or the body is
 * the same for both hands. Words such as 'open' and 'in to out' depend on the hand and are only words on the screen.
 */
public enum SignConvention {
    /** A size without a sign. */
    UNSIGNED,
    /** Face angle: positive points right of the target; open for a right-handed player, closed for a left-handed one. */
    FACE,
    /** Club path: positive swings to the right; in to out for a right-handed player, out to in for a left-handed one. */
    PATH,
    /** Face to path: positive means the face points right of the path; open to the path for a right-handed player. */
    FACE_TO_PATH,
    /** Start direction and offline: positive is right of the target. */
    RIGHT,
    /** Spin axis: positive tilts right; a fade for a right-handed player, a draw for a left-handed one. */
    SPIN_AXIS,
    /** Attack angle and strike height: positive is up. */
    UP,
    /** Dynamic lie: positive is toe up. */
    TOE_UP,
    /** Strike point: positive is towards the toe. */
    TOWARDS_TOE,
    /** Closure rate: positive is closing. */
    CLOSING;

    /** The word for a positive value as this player says it; empty where there is no sign. */
    public String positiveWord(Handedness hand) {
        boolean right = hand == Handedness.RIGHT;
        return switch (this) {
            case UNSIGNED -> "";
            case FACE -> right ? "open" : "closed";
            case PATH -> right ? "in to out" : "out to in";
            case FACE_TO_PATH -> right ? "open to path" : "closed to path";
            case RIGHT -> "right";
            case SPIN_AXIS -> right ? "fade" : "draw";
            case UP -> "up";
            case TOE_UP -> "toe up";
            case TOWARDS_TOE -> "toe";
            case CLOSING -> "closing";
        };
    }

    /** The word for a negative value as this player says it; empty where there is no sign. */
    public String negativeWord(Handedness hand) {
        Handedness other = hand == Handedness.RIGHT ? Handedness.LEFT : Handedness.RIGHT;
        return switch (this) {
            case UNSIGNED -> "";
            case FACE, PATH, FACE_TO_PATH, SPIN_AXIS -> positiveWord(other);
            case RIGHT -> "left";
            case UP -> "down";
            case TOE_UP -> "toe down";
            case TOWARDS_TOE -> "heel";
            case CLOSING -> "opening";
        };
    }

    /** The word for this value's sign; empty for zero and where there is no sign. */
    public String word(double value, Handedness hand) {
        if (value == 0 || Double.isNaN(value)) {
            return "";
        }
        return value > 0 ? positiveWord(hand) : negativeWord(hand);
    }
}
