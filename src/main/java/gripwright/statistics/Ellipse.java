package gripwright.statistics;

/**
 * An ellipse around the centre of points; a segment of area 0 where the points lie on a line.
 *
 * @param kind          what it claims to hold
 * @param probability   of the claim
 * @param squaredRadius in units of the covariance matrix
 * @param centre        its centre
 * @param semiMajor     half the longer axis
 * @param semiMinor     half the shorter axis, 0 where the points lie on a line
 * @param angleDegrees  of the longer axis from x towards y, above -90 to 90
 */
public record Ellipse(EllipseKind kind, double probability, double squaredRadius, PlanePoint centre, double semiMajor,
                      double semiMinor, double angleDegrees) {

    /** pi times both half axes. */
    public double area() {
        return Math.PI * semiMajor * semiMinor;
    }

    /**
     * A point of the outline.
     *
     * @param turn 0 at the end of the longer axis, 1 after a full turn
     * @return the point
     */
    public PlanePoint pointAt(double turn) {
        double along = semiMajor * Math.cos(2 * Math.PI * turn);
        double across = semiMinor * Math.sin(2 * Math.PI * turn);
        double cosine = Math.cos(Math.toRadians(angleDegrees));
        double sine = Math.sin(Math.toRadians(angleDegrees));
        return new PlanePoint(centre.x() + along * cosine - across * sine, centre.y() + along * sine + across * cosine);
    }
}
