package gripwright.charts;

import java.util.List;

/**
 * What a shot pattern shows: where the balls came down, seen from above, to scale. Metres or yards, as shown.
 *
 * @param groups one a configuration
 * @param targetCarry how far the target is; null where there is none
 * @param targetOffline how far right of the line it is
 * @param unit the unit shown, 'yd'
 * @param decimalMark '.' or ','
 */
public record Pattern(List<Group> groups, Double targetCarry, double targetOffline, String unit, char decimalMark) {

    /** One shot: how far right of the line, and how far. */
    public record Point(double offline, double carry, MarkPainter.State state) {
    }

    /**
     * The ellipse that should hold a share of future shots.
     *
     * @param offline its centre, right of the line
     * @param carry its centre, out
     * @param semiMajor longer half axis
     * @param semiMinor shorter half axis
     * @param degrees of the longer axis from the right-hand direction, turning towards the target
     */
    public record Ellipse(double offline, double carry, double semiMajor, double semiMinor, double degrees) {
    }

    /** One configuration: its mark, shots, and ellipses (may be empty). */
    public record Group(Mark mark, List<Point> points, List<Ellipse> ellipses) {

        public Group {
            points = List.copyOf(points);
            ellipses = List.copyOf(ellipses);
        }
    }

    public Pattern {
        groups = List.copyOf(groups);
    }

    /** The same without the shots that were set aside, which would else stretch a small picture. */
    public Pattern withoutSetAside() {
        List<Group> kept = groups.stream().map(group -> new Group(group.mark(), group.points().stream()
                .filter(point -> point.state() != MarkPainter.State.SET_ASIDE).toList(), group.ellipses())).toList();
        return new Pattern(kept, targetCarry, targetOffline, unit, decimalMark);
    }
}
