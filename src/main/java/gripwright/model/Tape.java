package gripwright.model;

/**
 * A build-up tape of the shop.
 *
 * @param id unique in the stock list
 * @param name plain description
 * @param perWrapMm what one wrap adds to the diameter under the grip, mm; measured by the shop, published values differ
 * @param arealMassGramsPerSquareMetre mass of the tape by area, g/m²
 * @param doubleSided whether it is the layer that holds the grip, which is not counted as a wrap
 * @param note free text
 */
public record Tape(String id, String name, double perWrapMm, double arealMassGramsPerSquareMetre,
        boolean doubleSided, String note) {

    public Tape {
        Check.text(id, "identity of a tape");
        Check.text(name, "name of a tape");
        Check.notNegative(perWrapMm, "build-up per wrap of a tape");
        Check.notNegative(arealMassGramsPerSquareMetre, "areal mass of a tape");
        note = Check.orEmpty(note);
    }

    public Tape withId(String id) {
        return new Tape(id, name, perWrapMm, arealMassGramsPerSquareMetre, doubleSided, note);
    }

    public Tape withName(String name) {
        return new Tape(id, name, perWrapMm, arealMassGramsPerSquareMetre, doubleSided, note);
    }

    public Tape withPerWrapMm(double perWrapMm) {
        return new Tape(id, name, perWrapMm, arealMassGramsPerSquareMetre, doubleSided, note);
    }

    public Tape withArealMassGramsPerSquareMetre(double arealMassGramsPerSquareMetre) {
        return new Tape(id, name, perWrapMm, arealMassGramsPerSquareMetre, doubleSided, note);
    }

    public Tape withDoubleSided(boolean doubleSided) {
        return new Tape(id, name, perWrapMm, arealMassGramsPerSquareMetre, doubleSided, note);
    }

    public Tape withNote(String note) {
        return new Tape(id, name, perWrapMm, arealMassGramsPerSquareMetre, doubleSided, note);
    }
}
