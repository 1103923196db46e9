package gripwright.planning;

import gripwright.model.ClubTest;
import gripwright.model.Metric;
import gripwright.model.Stint;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What difference between two configurations a plan can detect, by a simple formula; a guide before the first shot.
 *
 * <p>Δ = (z₀.₉₇₅ + z₀.₈) σ √(2/n + 2 ρ²/k) = 2.80 σ √(2/n + 2 ρ²/k): the true difference that a two-sided test at 5 %
 * finds in four of five sessions, with n scored shots and k distinct stints a configuration, shot-to-shot SD σ and
 * stint-to-stint SD ρσ. Normal quantiles in place of t: a little hopeful for few shots. Standard sample-size theory for
 * two means (for example Cohen 1988, Statistical Power Analysis), with the variance of a stint mean added.
 *
 * @param metric of which
 * @param shots scored shots n of the configuration with fewest
 * @param stints distinct stints k of the configuration with fewest
 * @param noise σ, internal units
 * @param noiseIsOwn whether σ is this player's, or what is typical before the first stints
 * @param difference Δ, internal units; infinite where a configuration has no shot
 */
public record DetectableDifference(Metric metric, int shots, int stints, double noise, boolean noiseIsOwn,
        double difference) {

    /** z(0.975) + z(0.8) of the normal distribution. */
    static final double QUANTILES = 1.959964 + 0.841621;

    /** Scored shots and distinct stints: of one configuration, or the fewest that any configuration of a test has. */
    public record Size(int shots, int stints) {

        /** The fewest of each that any configuration will have; see {@link #ofEach}. */
        public static Size of(ClubTest test) {
            Collection<Size> sizes = ofEach(test).values();
            return new Size(sizes.stream().mapToInt(Size::shots).min().orElse(0),
                    sizes.stream().mapToInt(Size::stints).min().orElse(0));
        }

        /**
         * Counts for each configuration what is hit and what is planned, in the order of the test.
         *
         * <p>A stint without a change before it goes on with the one before and the two count once, also where the one
         * before was a warm-up; a stint that is done counts by the shots that are scored.
         */
        public static Map<String, Size> ofEach(ClubTest test) {
            Map<String, Size> sizes = new LinkedHashMap<>();
            test.configurations().forEach(configuration -> sizes.put(configuration.id(), new Size(0, 0)));
            Stint before = null;
            boolean counted = false;
            for (Stint stint : test.withoutRehearsals().stints()) {
                counted &= stint.goesOnFrom(before);
                int shots = scoredShots(stint);
                if (shots > 0) {
                    Size now = sizes.get(stint.configurationId());
                    sizes.put(stint.configurationId(), new Size(now.shots() + shots, now.stints() + (counted ? 0 : 1)));
                    counted = true;
                }
                before = stint;
            }
            return sizes;
        }

        private static int scoredShots(Stint stint) {
            if (stint.kind() != Stint.Kind.SCORED) {
                return 0;
            }
            int scored = stint.scoredShots().size();
            return stint.state() == Stint.State.DONE ? scored : Math.max(stint.plannedShots(), scored);
        }
    }

    /**
     * The detectable difference for a metric.
     *
     * @param noise shot-to-shot SD, internal units, above zero
     * @param stintToNoise ρ, not negative
     */
    public static DetectableDifference of(Metric metric, Size size, double noise, boolean noiseIsOwn,
            double stintToNoise) {
        double difference = size.shots() < 1 || size.stints() < 1 ? Double.POSITIVE_INFINITY
                : QUANTILES * noise * Math.sqrt(2.0 / size.shots() + 2 * stintToNoise * stintToNoise / size.stints());
        return new DetectableDifference(metric, size.shots(), size.stints(), noise, noiseIsOwn, difference);
    }

    /**
     * The scored shots a configuration that it takes to detect a difference Δ in stints as long as now, s = n/k shots:
     * n = 2 ((z₀.₉₇₅ + z₀.₈) σ/Δ)² (1 + ρ² s), rounded up; the formula above with k = n/s.
     *
     * @param wanted Δ, internal units, above zero
     * @throws IllegalStateException where a configuration has no shot or stint, or no difference can be worked out
     */
    public long shotsFor(double wanted) {
        if (!Double.isFinite(difference) || !(wanted > 0)) {
            throw new IllegalStateException("Without a shot of each configuration, or for a difference of " + wanted
                    + ", no number of shots can be told.");
        }
        double now = difference / wanted;
        return (long) Math.ceil(shots * now * now - 1e-9);
    }

    /**
     * A shot-to-shot SD to reckon with before the player's own is known, internal units: a middling amateur with an iron.
     * From memory, not confirmed in a source; for speeds and distances a share of what is usual.
     */
    public static double typicalNoise(Metric metric) {
        return switch (metric) {
            case CLUB_SPEED -> 0.7;
            case BALL_SPEED -> 1.3;
            case SPEED_RATIO -> 0.03;
            case CLUB_PATH -> 2.5;
            case FACE_ANGLE, START_DIRECTION -> 3;
            case FACE_TO_PATH -> 3.2;
            case ATTACK_ANGLE -> 1.3;
            case DYNAMIC_LOFT, LAUNCH_ANGLE -> 2;
            case APEX -> 4;
            case DESCENT_ANGLE -> 3;
            case DYNAMIC_LIE -> 1.5;
            case CLOSURE_RATE -> 250;
            case STRIKE_SIDEWAYS, STRIKE_UP -> 8;
            case SPIN_RATE -> 600;
            case SPIN_AXIS -> 5;
            case CARRY, TOTAL -> 8;
            case OFFLINE -> 9;
        };
    }
}
