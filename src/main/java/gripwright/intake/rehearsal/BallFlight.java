package gripwright.intake.rehearsal;

/**
 * Where a ball goes: a point mass with drag and lift, integrated in small steps over level ground.
 *
 * <p>For invented shots only, so that carry, offline, apex and descent agree with one another. With velocity v, spin
 * parameter S = r·ω/v and the unit vectors e along v and n = axis × e: acceleration = −g − (ρ·A/2m)·v²·(C_D·e − C_L·n),
 * C_D = 0.21 + 0.30·S and C_L = 0.62·S^0.55 up to 0.32. The coefficients are invented to give plausible flights (no
 * source); mass 45.93 g and diameter 42.67 mm are the limits of the Rules of Golf (R&amp;A and USGA, Equipment Rules,
 * 2019, Part 4).
 *
 * @param carryMetres distance along the target line where the ball comes down
 * @param offlineMetres to the right of the target line where it comes down
 * @param apexMetres greatest height
 * @param descentDegrees angle at which it comes down
 */
public record BallFlight(double carryMetres, double offlineMetres, double apexMetres, double descentDegrees) {

    private static final double MASS_KG = 0.04593;
    private static final double RADIUS_M = 0.04267 / 2;
    private static final double AIR_KG_PER_CUBIC_METRE = 1.20;
    private static final double GRAVITY = 9.80665;
    private static final double STEP_SECONDS = 0.005;
    private static final double LONGEST_SECONDS = 15;
    private static final double HALF_RHO_A_OVER_M =
            0.5 * AIR_KG_PER_CUBIC_METRE * Math.PI * RADIUS_M * RADIUS_M / MASS_KG;
    /** Spin dies away with this time constant: a few per cent in a second (invented). */
    private static final double SPIN_DECAY_SECONDS = 25;

    /**
     * The flight of a ball.
     *
     * @param ballSpeed m/s, above zero
     * @param launchDegrees up
     * @param startDegrees right of the target
     * @param spinRpm total spin
     * @param axisDegrees tilt of the spin axis, positive to the right
     */
    static BallFlight of(double ballSpeed, double launchDegrees, double startDegrees, double spinRpm,
            double axisDegrees) {
        double launch = Math.toRadians(launchDegrees);
        double start = Math.toRadians(startDegrees);
        double tilt = Math.toRadians(axisDegrees);
        // x to the target, y up, z right; back spin turns about the axis that lifts the ball, tilted to the right.
        double[] axis = {-Math.sin(start) * Math.cos(tilt), -Math.sin(tilt), Math.cos(start) * Math.cos(tilt)};
        double[] position = new double[3];
        double[] velocity = {ballSpeed * Math.cos(launch) * Math.cos(start), ballSpeed * Math.sin(launch),
                ballSpeed * Math.cos(launch) * Math.sin(start)};
        double apex = 0;
        double spin = spinRpm * 2 * Math.PI / 60;
        for (double time = 0; time < LONGEST_SECONDS; time += STEP_SECONDS) {
            double[] before = position.clone();
            step(position, velocity, axis, spin * Math.exp(-time / SPIN_DECAY_SECONDS));
            apex = Math.max(apex, position[1]);
            if (position[1] < 0) {
                return landed(before, position, velocity, apex);
            }
        }
        return landed(position, position, velocity, apex);
    }

    /** Midpoint rule: velocity at half a step carries the position over the whole one. */
    private static void step(double[] position, double[] velocity, double[] axis, double omega) {
        double[] half = velocity.clone();
        add(half, acceleration(velocity, axis, omega), STEP_SECONDS / 2);
        double[] middle = acceleration(half, axis, omega);
        add(position, half, STEP_SECONDS);
        add(velocity, middle, STEP_SECONDS);
    }

    private static double[] acceleration(double[] v, double[] axis, double omega) {
        double speed = Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
        double spinParameter = RADIUS_M * omega / speed;
        double drag = 0.21 + 0.30 * spinParameter;
        double lift = Math.min(0.32, 0.62 * Math.pow(spinParameter, 0.55));
        double factor = HALF_RHO_A_OVER_M * speed;
        double[] n = {axis[1] * v[2] - axis[2] * v[1], axis[2] * v[0] - axis[0] * v[2], axis[0] * v[1] - axis[1] * v[0]};
        return new double[] {factor * (-drag * v[0] + lift * n[0]), factor * (-drag * v[1] + lift * n[1]) - GRAVITY,
                factor * (-drag * v[2] + lift * n[2])};
    }

    private static void add(double[] to, double[] what, double times) {
        for (int i = 0; i < to.length; i++) {
            to[i] += what[i] * times;
        }
    }

    private static BallFlight landed(double[] before, double[] after, double[] velocity, double apex) {
        double fall = before[1] - after[1];
        double share = fall > 0 ? before[1] / fall : 0;
        double x = before[0] + share * (after[0] - before[0]);
        double z = before[2] + share * (after[2] - before[2]);
        double descent = Math.toDegrees(Math.atan2(-velocity[1], Math.hypot(velocity[0], velocity[2])));
        return new BallFlight(x, z, apex, descent);
    }
}
