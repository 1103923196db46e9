package gripwright.model;

/**
 * How a test is meant to be hit; the stints themselves are the queue.
 *
 * @param order how the order of stints was made
 * @param shotsPerStint scored shots each
 * @param settlingSwings swings after each change that are recorded and not scored
 * @param warmUpShots shots of the warm-up stint; 0 for none
 * @param rounds how often each configuration comes round
 * @param seed the seed of a random order
 */
public record Plan(Order order, int shotsPerStint, int settlingSwings, int warmUpShots, int rounds, long seed) {

    /** How the order of the stints comes about. */
    public enum Order {
        /** Written by hand. */
        BY_HAND,
        /** One after the other. */
        IN_TURN,
        /** In turn, and the first again at the end. */
        FIRST_AGAIN,
        /** There and back: ABCDDCBA. */
        MIRRORED,
        /** Each round begins one further: ABCD BCDA. */
        ROTATED,
        /** Shuffled in each round from the seed. */
        RANDOM
    }

    /** There and back, three shots each, one settling swing: what most sessions have time for. */
    public static Plan usual() {
        return new Plan(Order.MIRRORED, 3, 1, 0, 2, 1);
    }

    public Plan {
        Check.present(order, "order of the stints");
        Check.atLeast(shotsPerStint, 1, "number of shots per stint");
        Check.atLeast(settlingSwings, 0, "number of settling swings");
        Check.atLeast(warmUpShots, 0, "number of warm-up shots");
        Check.atLeast(rounds, 1, "number of rounds");
    }

    public Plan withOrder(Order order) {
        return new Plan(order, shotsPerStint, settlingSwings, warmUpShots, rounds, seed);
    }

    public Plan withShotsPerStint(int shotsPerStint) {
        return new Plan(order, shotsPerStint, settlingSwings, warmUpShots, rounds, seed);
    }

    public Plan withSettlingSwings(int settlingSwings) {
        return new Plan(order, shotsPerStint, settlingSwings, warmUpShots, rounds, seed);
    }

    public Plan withWarmUpShots(int warmUpShots) {
        return new Plan(order, shotsPerStint, settlingSwings, warmUpShots, rounds, seed);
    }

    public Plan withRounds(int rounds) {
        return new Plan(order, shotsPerStint, settlingSwings, warmUpShots, rounds, seed);
    }

    public Plan withSeed(long seed) {
        return new Plan(order, shotsPerStint, settlingSwings, warmUpShots, rounds, seed);
    }
}
