package gripwright.balance;

/**
 * Wraps for one club of the set, and how near they come to the size that was tested.
 *
 * @param fullWraps whole wraps, full length
 * @param lowerWraps whole wraps under the lower hand
 * @param size the size they reach; null where it can't be known
 * @param offMm how much thicker that is than tested, at the size position, mm; null where it can't be known
 * @param lowerHandOffMm the same at the last measuring place
 */
public record SetBuild(int fullWraps, int lowerWraps, SizeReading size, Double offMm, Double lowerHandOffMm) {
}
