package gripwright.balance;

import gripwright.model.ClubPart;

/**
 * A mass on the axis of the club, as it stands in the finished club.
 *
 * @param role what it is
 * @param name free text, may be empty
 * @param massGrams g, not negative
 * @param positionMm its balance point, mm from the butt end, cap included, not negative
 * @param lengthMm its length along the axis, mm, not negative; 0 for a point
 * @param ownInertiaKgCm2 inertia about its own balance point, kg·cm²
 */
public record Body(Role role, String name, double massGrams, double positionMm, double lengthMm,
        double ownInertiaKgCm2) {

    /** g·mm² in one kg·cm². */
    static final double GRAM_MM2_PER_KG_CM2 = 1e5;

    private static final double ROD = 12;

    /** What a body of a club is. */
    public enum Role {
        HEAD("head"),
        HEAD_WEIGHT("head weight"),
        SHAFT("shaft"),
        FERRULE("ferrule"),
        EPOXY("epoxy"),
        TAPE("tape"),
        GRIP("grip"),
        BALLAST("ballast"),
        COUNTERWEIGHT("counterweight"),
        OTHER("other part");

        private final String text;

        Role(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }

        static Role of(ClubPart.Kind kind) {
            return switch (kind) {
                case HEAD -> HEAD;
                case SHAFT -> SHAFT;
                case FERRULE -> FERRULE;
                case EPOXY -> EPOXY;
                case TAPE -> TAPE;
                case COUNTERWEIGHT -> COUNTERWEIGHT;
                case HEAD_WEIGHT -> HEAD_WEIGHT;
                case OTHER -> OTHER;
            };
        }

        /** Whether the part moves with the head when the club is made longer. */
        boolean atHead() {
            return this == HEAD || this == HEAD_WEIGHT || this == FERRULE || this == EPOXY;
        }
    }

    public Body {
        name = name == null || name.isBlank() ? role.text() : name;
        if (!(massGrams >= 0) || !Double.isFinite(massGrams)) {
            throw new IllegalArgumentException("The mass of the " + name + " can't be " + massGrams
                    + " g; weigh it, or leave it out.");
        }
        if (!(positionMm >= 0) || !Double.isFinite(positionMm)) {
            throw new IllegalArgumentException("The balance point of the " + name + " lies at " + positionMm
                    + " mm, outside the club; measure it from the butt end.");
        }
        if (!(lengthMm >= 0) || !Double.isFinite(lengthMm)) {
            throw new IllegalArgumentException("The length of the " + name + " can't be " + lengthMm + " mm.");
        }
        if (!(ownInertiaKgCm2 >= 0) || !Double.isFinite(ownInertiaKgCm2)) {
            throw new IllegalArgumentException("The own inertia of the " + name + " can't be " + ownInertiaKgCm2
                    + " kg·cm².");
        }
    }

    /**
     * A uniform rod about its balance point: own inertia m L² / 12 / 10⁵ kg·cm².
     *
     * @param massGrams m, g, not negative
     * @param positionMm its balance point, mm from the butt end, not negative
     * @param lengthMm L, mm, not negative
     * @throws IllegalArgumentException with a sentence where a figure is negative or not finite
     */
    public static Body rod(Role role, String name, double massGrams, double positionMm, double lengthMm) {
        double own = massGrams * lengthMm * lengthMm / ROD / GRAM_MM2_PER_KG_CM2;
        return new Body(role, name, massGrams, positionMm, lengthMm, own);
    }

    /** A mass without extent, g at mm from the butt end; refused like any body where a figure can't be. */
    public static Body point(Role role, String name, double massGrams, double positionMm) {
        return new Body(role, name, massGrams, positionMm, 0, 0);
    }

    /**
     * A part where it stands in the club: its place from the shaft's butt end plus the cap, with its measured inertia
     * or that of a uniform rod.
     */
    public static Body of(ClubPart part, double capMm) {
        double position = part.balancePointMm() + capMm;
        Role role = Role.of(part.kind());
        if (part.ownInertiaKgCm2() == null) {
            return rod(role, part.name(), part.massGrams(), position, part.lengthMm());
        }
        return new Body(role, part.name(), part.massGrams(), position, part.lengthMm(), part.ownInertiaKgCm2());
    }

    /** Inertia about the butt end, kg·cm²: own + m x². */
    public double inertiaAboutButtKgCm2() {
        return ownInertiaKgCm2 + massGrams * positionMm * positionMm / GRAM_MM2_PER_KG_CM2;
    }

    /** The same body moved along the axis by so many mm, towards the head; refused where that is before the butt end. */
    public Body movedBy(double mm) {
        return new Body(role, name, massGrams, positionMm + mm, lengthMm, ownInertiaKgCm2);
    }
}
