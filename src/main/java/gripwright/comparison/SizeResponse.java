package gripwright.comparison;

import gripwright.model.Metric;
import java.util.List;

/**
 * How one metric answers to the size of the grip.
 *
 * @param metric which
 * @param place where the diameter is taken
 * @param points the sizes and means
 * @param slopePerMm straight line: change per mm of diameter with its interval; null where it can't be had
 * @param curvature second derivative, internal units per mm², with its interval; null below four sizes
 * @param bestDiameterMm where the curve serves best; null where there is no curve, no best value within the sizes, or
 *     nothing that these sizes can tell
 * @param bestInterval its interval, which may be unbounded; null where it can't be had
 * @param sentence what these sizes can and can't tell
 */
public record SizeResponse(Metric metric, Place place, List<Point> points, Estimate slopePerMm, Estimate curvature,
        Double bestDiameterMm, Interval bestInterval, String sentence) {

    /** Where a diameter is taken. */
    public enum Place {
        UPPER_HAND,
        LOWER_HAND
    }

    /**
     * One configuration.
     *
     * @param configurationId which configuration
     * @param label its label
     * @param diameterMm outside diameter there, mm
     * @param estimate the model's mean with its interval
     */
    public record Point(String configurationId, String label, double diameterMm, Estimate estimate) {
    }

    public SizeResponse {
        points = List.copyOf(points);
    }
}
