package gripwright.model;

/**
 * An outside diameter at a place.
 *
 * @param positionMm distance from the edge of the cap (grip) or from the butt end (shaft), mm, not negative
 * @param diameterMm diameter there, mm, above zero
 */
public record Diameter(double positionMm, double diameterMm) {

    public Diameter {
        Check.notNegative(positionMm, "position of a diameter");
        Check.positive(diameterMm, "diameter");
    }
}
