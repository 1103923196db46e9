package gripwright.balance;

import gripwright.units.Swingweight;
import java.util.Locale;

/** A figure that a club shall be brought to. */
public sealed interface Wanted {

    /** In words, 'swingweight D2.0'. */
    String text();

    /** Wanted less present figure, in its own unit (points, kg·cm², mm); null where the present one is not known. */
    Double missing(LeverFigures now);

    /**
     * The mass Δ that reaches the figure from a place, g; negative to take off; null where the figures don't allow it,
     * not finite where the place has no lever.
     *
     * @param positionMm mm from the butt end, cap included
     */
    Double grams(LeverFigures now, double positionMm, SwingweightScale scale);

    /** What to measure where the present figure is not known. */
    String measureFirst();

    /**
     * A swingweight on the shop's scale; Δ = (S_wanted − S) p / (x − f).
     *
     * @param swingweight the target
     */
    record AtSwingweight(Swingweight swingweight) implements Wanted {
        @Override
        public String text() {
            return "swingweight " + swingweight.text();
        }

        @Override
        public Double missing(LeverFigures now) {
            return now.swingweight() == null ? null
                    : Double.valueOf(swingweight.points() - now.swingweight().points());
        }

        @Override
        public Double grams(LeverFigures now, double positionMm, SwingweightScale scale) {
            Double missing = missing(now);
            return missing == null ? null : Double.valueOf(missing / scale.points(1, positionMm));
        }

        @Override
        public String measureFirst() {
            return "Read the swingweight first.";
        }
    }

    /**
     * An inertia about the butt end; Δ = (I_wanted − I) / x².
     *
     * @param kgCm2 kg·cm², above zero
     */
    record AtInertia(double kgCm2) implements Wanted {
        public AtInertia {
            if (!(kgCm2 > 0) || !Double.isFinite(kgCm2)) {
                throw new IllegalArgumentException("The wanted inertia must be above zero, not " + kgCm2 + " kg·cm².");
            }
        }

        @Override
        public String text() {
            return String.format(Locale.ROOT, "inertia %.0f kg·cm²", kgCm2);
        }

        @Override
        public Double missing(LeverFigures now) {
            return now.inertiaKgCm2() == null ? null : Double.valueOf(kgCm2 - now.inertiaKgCm2());
        }

        @Override
        public Double grams(LeverFigures now, double positionMm, SwingweightScale scale) {
            Double missing = missing(now);
            return missing == null ? null
                    : Double.valueOf(missing * Body.GRAM_MM2_PER_KG_CM2 / (positionMm * positionMm));
        }

        @Override
        public String measureFirst() {
            return "The inertia needs the parts of the club: weigh them.";
        }
    }

    /**
     * A balance point; Δ = m (b_wanted − b) / (x − b_wanted).
     *
     * @param mm from the butt end, cap included, above zero
     */
    record AtBalancePoint(double mm) implements Wanted {
        public AtBalancePoint {
            if (!(mm > 0) || !Double.isFinite(mm)) {
                throw new IllegalArgumentException("The wanted balance point must be above zero, not " + mm + " mm.");
            }
        }

        @Override
        public String text() {
            return String.format(Locale.ROOT, "balance point %.0f mm", mm);
        }

        @Override
        public Double missing(LeverFigures now) {
            return now.balancePointMm() == null ? null : Double.valueOf(mm - now.balancePointMm());
        }

        @Override
        public Double grams(LeverFigures now, double positionMm, SwingweightScale scale) {
            Double missing = missing(now);
            return missing == null || now.massGrams() == null ? null
                    : Double.valueOf(now.massGrams() * missing / (positionMm - mm));
        }

        @Override
        public String measureFirst() {
            return "Weigh the club first: its balance point is not known.";
        }
    }
}
