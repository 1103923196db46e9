package gripwright.comparison;

/**
 * How much was hit with one configuration.
 *
 * @param configurationId which configuration
 * @param label its label
 * @param gamer whether it is what the player plays now
 * @param reference whether the others are compared with it
 * @param swings all shots, warm-up and settling swings included
 * @param scored shots in the comparison
 * @param setAside shots set aside
 * @param stints scored stints, two in a row without a change counted as one
 */
public record ComparedConfiguration(String configurationId, String label, boolean gamer, boolean reference, int swings,
        int scored, int setAside, int stints) {
}
