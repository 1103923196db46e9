package gripwright.statistics;

/**
 * A point of the plane.
 *
 * @param x first coordinate
 * @param y second coordinate
 */
public record PlanePoint(double x, double y) {
}
