package gripwright.balance;

/**
 * The swingweight of one club of the set through the passes of the bench.
 *
 * @param pass what the figures rest on
 * @param barePredicted the club stripped, computed from its present swingweight and what comes off, points above A0; null
 *     where it can't be
 * @param bare the club stripped, read where it was read, else computed; null where neither
 * @param regripped with the new grip and before any head mass; null where it can't be known
 * @param wanted what it shall have; null where the target is not known
 * @param headMass what to add at the head; null where it can't be known
 * @param headPlaceMm the head's centre from the butt end, cap included, mm; null where the length is not known
 * @param after the figures when all is done
 * @param bareOffPoints bare reading less its prediction; null before
 * @param finalOffPoints final reading less what was expected; null before
 * @param offTargetPoints final reading, or before it what is expected, less the target; null for an inertia target
 */
public record SetBalance(Pass pass, Estimate barePredicted, Estimate bare, Estimate regripped, Wanted wanted,
        HeadMass headMass, Double headPlaceMm, LeverFigures after, Double bareOffPoints, Double finalOffPoints,
        Double offTargetPoints) {

    /** What the figures rest on. */
    public enum Pass {
        /** Nothing was read. */
        NOTHING_READ("nothing read yet"),
        /** Computed from the present swingweight and what comes off. */
        PREDICTED("predicted"),
        /** Computed from the reading of the stripped club. */
        BARE_READ("from the bare reading"),
        /** Read when done. */
        FINAL_READ("read when done");

        private final String text;

        Pass(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }
}
