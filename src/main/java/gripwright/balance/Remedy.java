package gripwright.balance;

/**
 * One way to bring a club to a wanted figure, with what it does to the others.
 *
 * @param means what is changed
 * @param amount g of mass, or mm of length; negative to take off; null where it can't be computed
 * @param positionMm where the mass goes, mm from the butt end, cap included; null for length or where it is not known
 * @param feasible whether it can be done
 * @param after the figures then, infeasible ones included; null where the amount is
 * @param sentence how, or why not
 */
public record Remedy(Means means, Double amount, Double positionMm, boolean feasible, LeverFigures after,
        String sentence) {

    /** What can be changed. */
    public enum Means {
        HEAD_MASS("head mass", "g"),
        BUTT_WEIGHT("butt weight", "g"),
        LENGTH("length", "mm");

        private final String text;
        private final String unit;

        Means(String text, String unit) {
            this.text = text;
            this.unit = unit;
        }

        public String text() {
            return text;
        }

        /** The internal unit of the amount. */
        public String unit() {
            return unit;
        }
    }

    static Remedy unknown(Means means, String sentence) {
        return new Remedy(means, null, null, false, null, sentence);
    }
}
