package gripwright.model;

/**
 * One part of a club, as a body along the shaft's axis.
 *
 * @param kind what it is
 * @param name free text, may be empty
 * @param massGrams mass, g
 * @param balancePointMm its balance point, mm from the shaft's butt end
 * @param lengthMm its length, mm; 0 for a point
 * @param ownInertiaKgCm2 measured inertia about its own balance point, kg·cm²; null to take a uniform rod
 */
public record ClubPart(Kind kind, String name, double massGrams, double balancePointMm, double lengthMm,
        Double ownInertiaKgCm2) {

    /** What a part is. */
    public enum Kind {
        HEAD,
        SHAFT,
        FERRULE,
        EPOXY,
        TAPE,
        COUNTERWEIGHT,
        HEAD_WEIGHT,
        OTHER
    }

    public ClubPart {
        Check.present(kind, "kind of a club part");
        name = Check.orEmpty(name);
        Check.notNegative(massGrams, "mass of the " + kind);
        Check.finite(balancePointMm, "balance point of the " + kind);
        Check.notNegative(lengthMm, "length of the " + kind);
        Check.optionalNotNegative(ownInertiaKgCm2, "own inertia of the " + kind);
    }

    public ClubPart withKind(Kind kind) {
        return new ClubPart(kind, name, massGrams, balancePointMm, lengthMm, ownInertiaKgCm2);
    }

    public ClubPart withName(String name) {
        return new ClubPart(kind, name, massGrams, balancePointMm, lengthMm, ownInertiaKgCm2);
    }

    public ClubPart withMassGrams(double massGrams) {
        return new ClubPart(kind, name, massGrams, balancePointMm, lengthMm, ownInertiaKgCm2);
    }

    public ClubPart withBalancePointMm(double balancePointMm) {
        return new ClubPart(kind, name, massGrams, balancePointMm, lengthMm, ownInertiaKgCm2);
    }

    public ClubPart withLengthMm(double lengthMm) {
        return new ClubPart(kind, name, massGrams, balancePointMm, lengthMm, ownInertiaKgCm2);
    }

    public ClubPart withOwnInertiaKgCm2(Double ownInertiaKgCm2) {
        return new ClubPart(kind, name, massGrams, balancePointMm, lengthMm, ownInertiaKgCm2);
    }
}
