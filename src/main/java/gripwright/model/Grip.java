package gripwright.model;

import java.util.List;

/**
 * A grip of the shop's stock list, or the player's own.
 *
 * @param id unique in the stock list or session
 * @param name invented or plain description, 'Cord, thin, 42 g'
 * @param sizeName the size on the label as the trade says it ('standard', '+1/16', 'jumbo'); may be empty
 * @param coreMm inside diameter at the butt as marked, mm; null where unknown
 * @param nominalMassGrams mass on the label; null where unknown
 * @param measuredMassGrams mass off the shop's own scale; null where not weighed
 * @param lengthMm length without the cap, mm
 * @param capThicknessMm thickness of the cap, mm; it makes the club that much longer
 * @param balancePointMm measured balance point from the outer face of the cap, mm; null where not measured
 * @param diameters outside diameters as moulded on a matching shaft, by position from the cap's edge
 * @param transferFactor share of a core mismatch or of tape that reaches the outside; null for the shop's setting
 * @param ribbed whether there is a rib (else round)
 * @param firmness null where unknown
 * @param texture null where unknown
 * @param playersOwn whether the player brought it
 * @param condition fresh, used or worn
 * @param price in the shop's currency; null where not priced
 * @param inStock pieces in stock; null where not counted
 * @param note free text
 */
public record Grip(String id, String name, String sizeName, Double coreMm, Double nominalMassGrams,
        Double measuredMassGrams, double lengthMm, double capThicknessMm, Double balancePointMm,
        List<Diameter> diameters, Double transferFactor, boolean ribbed, Firmness firmness, Texture texture,
        boolean playersOwn, GripCondition condition, Double price, Integer inStock, String note) {

    private static final double USUAL_LENGTH_MM = 268;
    private static final double USUAL_CAP_MM = 4;

    /** A fresh, round grip of usual length with only a name and a mass off the scale. */
    public static Grip weighed(String id, String name, double massGrams) {
        return new Grip(id, name, "", null, null, massGrams, USUAL_LENGTH_MM, USUAL_CAP_MM, null, List.of(), null,
                false, null, null, false, GripCondition.FRESH, null, null, "");
    }

    public Grip {
        Check.text(id, "identity of a grip");
        Check.text(name, "name of a grip");
        sizeName = Check.orEmpty(sizeName);
        Check.optionalPositive(coreMm, "core of a grip");
        Check.optionalNotNegative(nominalMassGrams, "nominal mass of a grip");
        Check.optionalNotNegative(measuredMassGrams, "measured mass of a grip");
        Check.positive(lengthMm, "length of a grip");
        Check.notNegative(capThicknessMm, "cap thickness of a grip");
        if (balancePointMm != null && (balancePointMm < 0 || balancePointMm > lengthMm + capThicknessMm)) {
            throw new IllegalArgumentException("The balance point of the grip '" + name + "' lies at " + balancePointMm
                    + " mm, outside the grip; measure it from the face of the cap.");
        }
        diameters = Check.list(diameters);
        if (transferFactor != null && !(transferFactor >= 0 && transferFactor <= 1)) {
            throw new IllegalArgumentException("The transfer factor of the grip '" + name
                    + "' runs from 0 to 1, but is " + transferFactor + ".");
        }
        Check.present(condition, "condition of a grip");
        Check.optionalNotNegative(price, "price of a grip");
        if (inStock != null) {
            Check.atLeast(inStock, 0, "number of grips in stock");
        }
        note = Check.orEmpty(note);
    }

    /** The measured mass, else the nominal one, else null: labels mislead, the scale does not. */
    public Double massGrams() {
        return measuredMassGrams != null ? measuredMassGrams : nominalMassGrams;
    }

    public Grip withId(String id) {
        return new Grip(id, name, sizeName, coreMm, nominalMassGrams, measuredMassGrams, lengthMm, capThicknessMm,
                balancePointMm, diameters, transferFactor, ribbed, firmness, texture, playersOwn, condition, price,
                inStock, note);
    }

    public Grip withName(String name) {
        return new Grip(id, name, sizeName, coreMm, nominalMassGrams, measuredMassGrams, lengthMm, capThicknessMm,
                balancePointMm, diameters, transferFactor, ribbed, firmness, texture, playersOwn, condition, price,
                inStock, note);
    }

    public Grip withSizeName(String sizeName) {
        return new Grip(id, name, sizeName, coreMm, nominalMassGrams, measuredMassGrams, lengthMm, capThicknessMm,
                balancePointMm, diameters, transferFactor, ribbed, firmness, texture, playersOwn, condition, price,
                inStock, note);
    }

    public Grip withCoreMm(Double coreMm) {
        return new Grip(id, name, sizeName, coreMm, nominalMassGrams, measuredMassGrams, lengthMm, capThicknessMm,
                balancePointMm, diameters, transferFactor, ribbed, firmness, texture, playersOwn, condition, price,
                inStock, note);
    }

    public Grip withNominalMassGrams(Double nominalMassGrams) {
        return new Grip(id, name, sizeName, coreMm, nominalMassGrams, measuredMassGrams, lengthMm, capThicknessMm,
                balancePointMm, diameters, transferFactor, ribbed, firmness, texture, playersOwn, condition, price,
                inStock, note);
    }

    public Grip withMeasuredMassGrams(Double measuredMassGrams) {
        return new Grip(id, name, sizeName, coreMm, nominalMassGrams, measuredMassGrams, lengthMm, capThicknessMm,
                balancePointMm, diameters, transferFactor, ribbed, firmness, texture, playersOwn, condition, price,
                inStock, note);
    }

    public Grip withLengthMm(double lengthMm) {
        return new Grip(id, name, sizeName, coreMm, nominalMassGrams, measuredMassGrams, lengthMm, capThicknessMm,
                balancePointMm, diameters, transferFactor, ribbed, firmness, texture, playersOwn, condition, price,
                inStock, note);
    }

    public Grip withCapThicknessMm(double capThicknessMm) {
        return new Grip(id, name, sizeName, coreMm, nominalMassGrams, measuredMassGrams, lengthMm, capThicknessMm,
                balancePointMm, diameters, transferFactor, ribbed, firmness, texture, playersOwn, condition, price,
                inStock, note);
    }

    public Grip withBalancePointMm(Double balancePointMm) {
        return new Grip(id, name, sizeName, coreMm, nominalMassGrams, measuredMassGrams, lengthMm, capThicknessMm,
                balancePointMm, diameters, transferFactor, ribbed, firmness, texture, playersOwn, condition, price,
                inStock, note);
    }

    public Grip withDiameters(List<Diameter> diameters) {
        return new Grip(id, name, sizeName, coreMm, nominalMassGrams, measuredMassGrams, lengthMm, capThicknessMm,
                balancePointMm, diameters, transferFactor, ribbed, firmness, texture, playersOwn, condition, price,
                inStock, note);
    }

    public Grip withTransferFactor(Double transferFactor) {
        return new Grip(id, name, sizeName, coreMm, nominalMassGrams, measuredMassGrams, lengthMm, capThicknessMm,
                balancePointMm, diameters, transferFactor, ribbed, firmness, texture, playersOwn, condition, price,
                inStock, note);
    }

    public Grip withRibbed(boolean ribbed) {
        return new Grip(id, name, sizeName, coreMm, nominalMassGrams, measuredMassGrams, lengthMm, capThicknessMm,
                balancePointMm, diameters, transferFactor, ribbed, firmness, texture, playersOwn, condition, price,
                inStock, note);
    }

    public Grip withFirmness(Firmness firmness) {
        return new Grip(id, name, sizeName, coreMm, nominalMassGrams, measuredMassGrams, lengthMm, capThicknessMm,
                balancePointMm, diameters, transferFactor, ribbed, firmness, texture, playersOwn, condition, price,
                inStock, note);
    }

    public Grip withTexture(Texture texture) {
        return new Grip(id, name, sizeName, coreMm, nominalMassGrams, measuredMassGrams, lengthMm, capThicknessMm,
                balancePointMm, diameters, transferFactor, ribbed, firmness, texture, playersOwn, condition, price,
                inStock, note);
    }

    public Grip withPlayersOwn(boolean playersOwn) {
        return new Grip(id, name, sizeName, coreMm, nominalMassGrams, measuredMassGrams, lengthMm, capThicknessMm,
                balancePointMm, diameters, transferFactor, ribbed, firmness, texture, playersOwn, condition, price,
                inStock, note);
    }

    public Grip withCondition(GripCondition condition) {
        return new Grip(id, name, sizeName, coreMm, nominalMassGrams, measuredMassGrams, lengthMm, capThicknessMm,
                balancePointMm, diameters, transferFactor, ribbed, firmness, texture, playersOwn, condition, price,
                inStock, note);
    }

    public Grip withPrice(Double price) {
        return new Grip(id, name, sizeName, coreMm, nominalMassGrams, measuredMassGrams, lengthMm, capThicknessMm,
                balancePointMm, diameters, transferFactor, ribbed, firmness, texture, playersOwn, condition, price,
                inStock, note);
    }

    public Grip withInStock(Integer inStock) {
        return new Grip(id, name, sizeName, coreMm, nominalMassGrams, measuredMassGrams, lengthMm, capThicknessMm,
                balancePointMm, diameters, transferFactor, ribbed, firmness, texture, playersOwn, condition, price,
                inStock, note);
    }

    public Grip withNote(String note) {
        return new Grip(id, name, sizeName, coreMm, nominalMassGrams, measuredMassGrams, lengthMm, capThicknessMm,
                balancePointMm, diameters, transferFactor, ribbed, firmness, texture, playersOwn, condition, price,
                inStock, note);
    }
}
