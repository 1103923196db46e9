package gripwright.comparison;

/**
 * One cell of the simulation study; all sizes in standard deviations of the noise.
 *
 * @param order order of play
 * @param configurations how many
 * @param tau SD of the stint effect
 * @param drift change over the session
 * @param better how much better one configuration, chosen at random, is than the others, which are equal
 */
record StudyCell(StudyOrder order, int configurations, double tau, double drift, double better) {
}
