package gripwright.comparison;

import java.util.List;

/**
 * Where the shots of one configuration end in carry and offline, and where the next should.
 *
 * @param configurationId which configuration
 * @param label its label
 * @param shots scored shots with both readings
 * @param centreCarry mean carry, m
 * @param centreOffline mean offline, m, right of the target positive
 * @param varianceCarry m²; null below three shots
 * @param varianceOffline m²; null below three shots
 * @param covariance m²; null below three shots
 * @param ellipses for 50, 80 and 95 % of future shots; empty where they can't be had
 * @param distribution how the ellipses were sized, in words; empty where there are none
 * @param distanceToTarget expected distance of a shot to the target, m, with its interval; null where no target is
 *     known
 * @param misses chances of missing by more than a distance to a side
 * @param sentences what can't be told, and why
 */
public record ShotPattern(String configurationId, String label, int shots, double centreCarry, double centreOffline,
        Double varianceCarry, Double varianceOffline, Double covariance, List<Ellipse> ellipses, String distribution,
        Estimate distanceToTarget, List<Miss> misses, List<String> sentences) {

    /**
     * An ellipse that should hold a share of future shots (a prediction set).
     *
     * @param coverage share of future shots, 0 to 1
     * @param semiMajor m
     * @param semiMinor m
     * @param angleDegrees of the major axis from the line of carry towards the right, −90 to 90
     * @param area m²
     */
    public record Ellipse(double coverage, double semiMajor, double semiMinor, double angleDegrees, double area) {
    }

    /**
     * The chance of missing by more than a distance to one side.
     *
     * @param side left or right of the target, short or long of it
     * @param distance m
     * @param probability with its interval
     */
    public record Miss(Side side, double distance, Estimate probability) {
    }

    /** Where a shot can miss to. */
    public enum Side {
        LEFT,
        RIGHT,
        SHORT,
        LONG
    }

    public ShotPattern {
        ellipses = List.copyOf(ellipses);
        misses = List.copyOf(misses);
        sentences = List.copyOf(sentences);
    }

    /** The ellipse with this coverage; null where there is none. */
    public Ellipse ellipse(double coverage) {
        return ellipses.stream().filter(e -> Math.abs(e.coverage() - coverage) < 1e-9).findFirst().orElse(null);
    }
}
