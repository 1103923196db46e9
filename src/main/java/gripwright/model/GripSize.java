package gripwright.model;

/**
 * A size of grip as the trade names it, an item of the shop's editable table.
 *
 * @param name '+1/32', 'midsize'
 * @param diameterMm outside diameter at the size position, mm
 */
public record GripSize(String name, double diameterMm) {

    public GripSize {
        Check.text(name, "name of a grip size");
        Check.positive(diameterMm, "diameter of the grip size " + name);
    }
}
