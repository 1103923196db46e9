package gripwright.intake.rehearsal;

import gripwright.model.Handedness;
import gripwright.model.Metric;
import gripwright.model.Readings;
import java.util.EnumMap;
import java.util.Map;
import java.util.Random;

/**
 * An invented player, whose truth is known: means, spread, what each configuration changes, what differs from stint to
 * stint, drift over the session and mishits.
 *
 * <p>The readings of a shot agree with one another: ball speed follows from club speed and strike, start direction
 * mostly from the face, spin axis from face to path over spin loft, and where the ball goes from all of these.
 *
 * @param hand which way the player stands
 * @param mean the mean delivery without any effect
 * @param sd standard deviation of each part from shot to shot
 * @param stintShare standard deviation from stint to stint, as a share of {@code sd}
 * @param drift what the whole session adds from its first to its last shot
 * @param mishitRate share of shots that are mishit
 * @param effects what each configuration does, by its label; one that is missing does nothing
 * @param seed the same seed gives the same shots
 */
public record SimulatedPlayer(Handedness hand, Swing mean, Swing sd, double stintShare, Swing drift, double mishitRate,
        Map<String, GripEffect> effects, long seed) {

    /** Share of the start direction that is face; published values run from 61 to 83 % (Wood, Henrikson, Broadie 2018). */
    private static final double FACE_SHARE_OF_START = 0.75;
    /** Share of the launch angle that is dynamic loft (invented). */
    private static final double LOFT_SHARE_OF_LAUNCH = 0.80;
    /** How much of the face's chance goes with the path's, and of the closure rate's against the face's (invented). */
    private static final double FACE_WITH_PATH = 0.4;
    private static final double CLOSURE_WITH_FACE = -0.3;
    private static final double MISHIT_STRIKE_MM = 17;
    private static final double MISHIT_SPEED_SHARE = 0.97;

    public SimulatedPlayer {
        effects = Map.copyOf(effects);
        if (!(mishitRate >= 0 && mishitRate < 1) || !(stintShare >= 0)) {
            throw new IllegalArgumentException("The share of mishits runs from 0 to 1, that of the stints from 0 up.");
        }
    }

    /** An invented player of middling skill with an 8-iron; speeds in m/s. */
    public static SimulatedPlayer middling(Handedness hand, long seed) {
        return new SimulatedPlayer(hand, new Swing(36.5, -1.2, -1.6, -3.4, 27.5, 0.4, 2300, -1.5, -1.0),
                new Swing(0.65, 1.6, 2.1, 0.9, 1.5, 0.9, 230, 5.5, 3.8), 0.3,
                new Swing(0.35, 0, 0.3, 0, 0, 0, -30, 0, 0), 0.04, Map.of(), seed);
    }

    public SimulatedPlayer withEffects(Map<String, GripEffect> effects) {
        return new SimulatedPlayer(hand, mean, sd, stintShare, drift, mishitRate, effects, seed);
    }

    public SimulatedPlayer withSeed(long seed) {
        return new SimulatedPlayer(hand, mean, sd, stintShare, drift, mishitRate, effects, seed);
    }

    /** The same player without stint effect, drift and mishits: what a configuration is truly like. */
    public SimulatedPlayer undisturbed() {
        return new SimulatedPlayer(hand, mean, sd, 0, Swing.none(), 0, effects, seed);
    }

    /** Begins a session. */
    public Visit visit() {
        return new Visit(this);
    }

    /** What a configuration does to this player. */
    public GripEffect effect(String label) {
        return effects.getOrDefault(label, GripEffect.none());
    }

    /** One session of the player, hit shot by shot. */
    public static final class Visit {

        private final SimulatedPlayer player;
        private final Random random;
        private String label = "";
        private Swing stintEffect = Swing.none();

        private Visit(SimulatedPlayer player) {
            this.player = player;
            this.random = new Random(player.seed);
        }

        /** A new stint with the configuration of this label. */
        public void beginStint(String configurationLabel) {
            label = configurationLabel;
            stintEffect = player.sd.timesEach(draw()).timesEach(all(player.stintShare));
        }

        /**
         * Hits one shot.
         *
         * @param progress how far the session has come, 0 to 1
         */
        public SimulatedShot hit(double progress) {
            GripEffect effect = player.effect(label);
            Swing chance = player.sd.timesEach(draw()).timesEach(all(effect.spread()));
            Swing swing = player.mean.plus(effect.shift()).plus(stintEffect).combined(player.drift, progress).plus(chance);
            boolean mishit = random.nextDouble() < player.mishitRate;
            double side = random.nextBoolean() ? 1 : -1;
            if (mishit) {
                swing = new Swing(swing.clubSpeed() * MISHIT_SPEED_SHARE, swing.path(), swing.face(), swing.attack(),
                        swing.dynamicLoft(), swing.dynamicLie(), swing.closureRate(),
                        swing.strikeSideways() + side * MISHIT_STRIKE_MM, swing.strikeUp() - MISHIT_STRIKE_MM / 2);
            }
            return new SimulatedShot(readings(swing, player.hand), mishit);
        }

        /** Standard normal draws; face goes a little with path, closure rate a little against face. */
        private Swing draw() {
            double speed = random.nextGaussian();
            double path = random.nextGaussian();
            double face = mixed(FACE_WITH_PATH, path);
            double closure = mixed(CLOSURE_WITH_FACE, face);
            return new Swing(speed, path, face, random.nextGaussian(), random.nextGaussian(), random.nextGaussian(),
                    closure, random.nextGaussian(), random.nextGaussian());
        }

        private double mixed(double correlation, double with) {
            return correlation * with + Math.sqrt(1 - correlation * correlation) * random.nextGaussian();
        }

        private static Swing all(double value) {
            return new Swing(value, value, value, value, value, value, value, value, value);
        }
    }

    /** The readings that a delivery leads to, as an ideal source would give them. */
    static Readings readings(Swing swing, Handedness hand) {
        double mirror = hand == Handedness.LEFT ? -1 : 1;
        double face = mirror * swing.face();
        double path = mirror * swing.path();
        double spinLoft = Math.max(5, swing.dynamicLoft() - swing.attack());
        double ballSpeed = swing.clubSpeed() * speedRatio(swing, spinLoft);
        double launch = LOFT_SHARE_OF_LAUNCH * swing.dynamicLoft() + (1 - LOFT_SHARE_OF_LAUNCH) * swing.attack();
        double start = FACE_SHARE_OF_START * face + (1 - FACE_SHARE_OF_START) * path;
        double spin = 270 * ballSpeed * Math.sin(Math.toRadians(spinLoft));
        // Spin axis tilt is about atan(face to path / spin loft): geometry of impact.
        double axis = Math.toDegrees(Math.atan((face - path) / spinLoft));
        BallFlight flight = BallFlight.of(ballSpeed, launch, start, spin, axis);
        Map<Metric, Double> values = new EnumMap<>(Metric.class);
        values.put(Metric.CLUB_SPEED, swing.clubSpeed());
        values.put(Metric.BALL_SPEED, ballSpeed);
        values.put(Metric.CLUB_PATH, path);
        values.put(Metric.FACE_ANGLE, face);
        values.put(Metric.START_DIRECTION, start);
        values.put(Metric.ATTACK_ANGLE, swing.attack());
        values.put(Metric.DYNAMIC_LOFT, swing.dynamicLoft());
        values.put(Metric.LAUNCH_ANGLE, launch);
        values.put(Metric.APEX, flight.apexMetres());
        values.put(Metric.DESCENT_ANGLE, flight.descentDegrees());
        values.put(Metric.DYNAMIC_LIE, swing.dynamicLie());
        values.put(Metric.CLOSURE_RATE, swing.closureRate());
        values.put(Metric.STRIKE_SIDEWAYS, swing.strikeSideways());
        values.put(Metric.STRIKE_UP, swing.strikeUp());
        values.put(Metric.SPIN_RATE, spin);
        values.put(Metric.SPIN_AXIS, axis);
        values.put(Metric.CARRY, flight.carryMetres());
        values.put(Metric.OFFLINE, flight.offlineMetres());
        values.put(Metric.TOTAL, flight.carryMetres() + roll(flight));
        return new Readings(values);
    }

    /** Ball speed over club speed: less with spin loft, and less off the middle of the face (invented). */
    private static double speedRatio(Swing swing, double spinLoft) {
        double sideways = swing.strikeSideways() / 40;
        double up = swing.strikeUp() / 32;
        return (1.50 - 0.0052 * spinLoft) * (1 - 0.45 * (sideways * sideways + up * up));
    }

    /** How far a ball runs on: less the steeper it comes down (invented). */
    private static double roll(BallFlight flight) {
        return Math.max(0, 0.35 * (58 - flight.descentDegrees()));
    }
}
