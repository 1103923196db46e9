package gripwright.statistics;

/**
 * Where a curve has its highest or lowest point.
 *
 * @param level           the place
 * @param value           the height there
 * @param highest         true for the top of an arch, false for the bottom of a bowl
 * @param withinLevels    whether it lies between the least and greatest level tried
 * @param confidenceSet   of the place, by Fieller's method; bounded only where the bend itself is sure
 */
public record TurningPoint(double level, double value, boolean highest, boolean withinLevels,
                           FiellerSet confidenceSet) {
}
