package gripwright.model;

import gripwright.units.Dimension;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The catalogue of readings: what each is called, measured in, what its sign says, which way it serves by default, how
 * small a difference nobody should care about and what is a sensible reading.
 *
 * <p>The smallest differences are editable starting values (common practice, no source); the sensible ranges lead to
 * warnings, never to refusal.
 */
public enum Metric {
    CLUB_SPEED("clubSpeed", "club speed", Dimension.SPEED, SignConvention.UNSIGNED, Phase.DELIVERY, 0.45, 15, 70),
    BALL_SPEED("ballSpeed", "ball speed", Dimension.SPEED, SignConvention.UNSIGNED, Phase.FLIGHT, 0.6, 15, 95),
    SPEED_RATIO("speedRatio", "ball-to-club speed ratio", Dimension.RATIO, SignConvention.UNSIGNED, Phase.FLIGHT,
            0.01, 0.8, 1.6),
    CLUB_PATH("clubPath", "club path", Dimension.ANGLE, SignConvention.PATH, Phase.DELIVERY, 0.7, -20, 20),
    FACE_ANGLE("faceAngle", "face angle", Dimension.ANGLE, SignConvention.FACE, Phase.DELIVERY, 0.7, -20, 20),
    FACE_TO_PATH("faceToPath", "face to path", Dimension.ANGLE, SignConvention.FACE_TO_PATH, Phase.DELIVERY,
            0.7, -25, 25),
    START_DIRECTION("startDirection", "start direction", Dimension.ANGLE, SignConvention.RIGHT, Phase.FLIGHT,
            0.7, -25, 25),
    ATTACK_ANGLE("attackAngle", "attack angle", Dimension.ANGLE, SignConvention.UP, Phase.DELIVERY, 0.6, -15, 15),
    DYNAMIC_LOFT("dynamicLoft", "dynamic loft", Dimension.ANGLE, SignConvention.UNSIGNED, Phase.DELIVERY, 0.8, 0, 70),
    LAUNCH_ANGLE("launchAngle", "launch angle", Dimension.ANGLE, SignConvention.UP, Phase.FLIGHT, 0.8, -5, 65),
    APEX("apex", "apex", Dimension.HEIGHT, SignConvention.UNSIGNED, Phase.FLIGHT, 1.5, 0, 70),
    DESCENT_ANGLE("descentAngle", "descent angle", Dimension.ANGLE, SignConvention.UNSIGNED, Phase.FLIGHT, 1.5, 0, 80),
    DYNAMIC_LIE("dynamicLie", "dynamic lie", Dimension.ANGLE, SignConvention.TOE_UP, Phase.DELIVERY, 0.7, -15, 15),
    CLOSURE_RATE("closureRate", "closure rate", Dimension.ANGULAR_RATE, SignConvention.CLOSING, Phase.DELIVERY,
            100, 100, 6000),
    STRIKE_SIDEWAYS("strikeSideways", "strike, heel to toe", Dimension.LENGTH, SignConvention.TOWARDS_TOE,
            Phase.DELIVERY, 2.5, -40, 40),
    STRIKE_UP("strikeUp", "strike, low to high", Dimension.LENGTH, SignConvention.UP, Phase.DELIVERY, 2, -35, 35),
    SPIN_RATE("spinRate", "spin rate", Dimension.SPIN, SignConvention.UNSIGNED, Phase.FLIGHT, 250, 0, 15000),
    SPIN_AXIS("spinAxis", "spin axis tilt", Dimension.ANGLE, SignConvention.SPIN_AXIS, Phase.FLIGHT, 1.5, -45, 45),
    CARRY("carry", "carry", Dimension.DISTANCE, SignConvention.UNSIGNED, Phase.FLIGHT, 2, 5, 320),
    OFFLINE("offline", "offline", Dimension.DISTANCE, SignConvention.RIGHT, Phase.FLIGHT, 2, -120, 120),
    TOTAL("total", "total", Dimension.DISTANCE, SignConvention.UNSIGNED, Phase.FLIGHT, 2.5, 5, 360);

    /** Whether a metric says what the club did or what the ball did. */
    public enum Phase {
        DELIVERY,
        FLIGHT
    }

    private static final Map<String, Metric> BY_KEY =
            Stream.of(values()).collect(Collectors.toUnmodifiableMap(Metric::key, Function.identity()));

    private final String key;
    private final String text;
    private final Dimension dimension;
    private final SignConvention sign;
    private final Phase phase;
    private final double smallestDifference;
    private final double sensibleLow;
    private final double sensibleHigh;

    Metric(String key, String text, Dimension dimension, SignConvention sign, Phase phase,
            double smallestDifference, double sensibleLow, double sensibleHigh) {
        this.key = key;
        this.text = text;
        this.dimension = dimension;
        this.sign = sign;
        this.phase = phase;
        this.smallestDifference = smallestDifference;
        this.sensibleLow = sensibleLow;
        this.sensibleHigh = sensibleHigh;
    }

    /** The metric with this key, as files spell it. */
    public static Optional<Metric> ofKey(String key) {
        return Optional.ofNullable(BY_KEY.get(key));
    }

    /** The name in files and in JSON, 'clubSpeed'. */
    public String key() {
        return key;
    }

    /** The name for people, in lower case, 'club speed'. */
    public String text() {
        return text;
    }

    public Dimension dimension() {
        return dimension;
    }

    public SignConvention sign() {
        return sign;
    }

    public Phase phase() {
        return phase;
    }

    /** The starting value of the smallest difference that matters, internal units. */
    public double defaultSmallestDifference() {
        return smallestDifference;
    }

    /** Whether a reading lies in the range that raises no question; internal units. */
    public boolean isSensible(double value) {
        return value >= sensibleLow && value <= sensibleHigh;
    }

    /** Lower end of the sensible range, internal units. */
    public double sensibleLow() {
        return sensibleLow;
    }

    /** Upper end of the sensible range, internal units. */
    public double sensibleHigh() {
        return sensibleHigh;
    }

    /** Whether this reading can be worked out of others where it isn't given. */
    public boolean isDerivable() {
        return this == SPEED_RATIO || this == FACE_TO_PATH;
    }

    /** Whether an odd value of this reading tells a mishit: strike point, speed ratio, ball speed, carry. */
    public boolean tellsMishit() {
        return switch (this) {
            case SPEED_RATIO, BALL_SPEED, CARRY, STRIKE_SIDEWAYS, STRIKE_UP, LAUNCH_ANGLE -> true;
            default -> false;
        };
    }

    /** Which way this metric serves a player by default with a club of this kind, before a goal says otherwise. */
    public Direction defaultDirection(ClubKind club) {
        boolean driver = club == ClubKind.DRIVER;
        return switch (this) {
            case FACE_ANGLE, CLUB_PATH, FACE_TO_PATH, START_DIRECTION, SPIN_AXIS, OFFLINE -> Direction.NEAR_TARGET;
            case CLUB_SPEED -> Direction.HIGHER;
            case BALL_SPEED, CARRY -> driver ? Direction.HIGHER : Direction.NEAR_TARGET;
            case SPEED_RATIO -> driver ? Direction.HIGHER : Direction.NOT_SCORED;
            default -> Direction.NOT_SCORED;
        };
    }
}
