package gripwright.balance;

import java.util.List;

/**
 * Ballast inside the butts that makes all configurations of a test equal in one figure, so that the grips' other
 * properties can be told apart from it.
 *
 * @param goal what is made equal
 * @param rows one per configuration whose grip is weighed
 * @param gripMassSpreadGrams largest less smallest mass of grip, wraps and ballast afterwards, g
 * @param swingweightSpreadPoints of the swingweights afterwards, points; null where they can't be known
 * @param inertiaSpreadKgCm2 of the inertias afterwards, kg·cm²; null where they can't be known
 * @param feasible whether every row can be done
 * @param sentence what it comes to
 */
public record BallastPlan(Goal goal, List<Row> rows, double gripMassSpreadGrams, Double swingweightSpreadPoints,
        Double inertiaSpreadKgCm2, boolean feasible, String sentence) {

    /** What is made equal. */
    public enum Goal {
        GRIP_MASS("grip mass"),
        SWINGWEIGHT("swingweight"),
        INERTIA("inertia");

        private final String text;

        Goal(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    /**
     * The ballast of one configuration.
     *
     * @param configurationId the configuration
     * @param label its label
     * @param grams what to put in, beside what is there; 0 for the heaviest
     * @param positionMm its centre, mm from the shaft's butt end
     * @param feasible whether it can be done
     * @param gripMassAfterGrams grip, wraps and ballast then, g
     * @param after the figures then
     */
    public record Row(String configurationId, String label, double grams, double positionMm, boolean feasible,
            double gripMassAfterGrams, LeverFigures after) {
    }

    public BallastPlan {
        rows = List.copyOf(rows);
    }
}
