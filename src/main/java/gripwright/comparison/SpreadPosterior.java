package gripwright.comparison;

/** The shrunk standard deviations of one metric's configurations, to draw from. */
interface SpreadPosterior {

    /** Whether this configuration has enough shots. */
    boolean has(int configuration);

    /**
     * Draws of the standard deviations.
     *
     * @param scores draws x configurations standard normal scores
     * @return configurations x draws, internal units; null for a configuration without enough shots
     */
    double[][] draws(double[][] scores);
}
