package gripwright.desktop.bay;

import gripwright.model.Player;
import gripwright.model.Session;

/**
 * How many swings the player has made today, and the caution that goes with them.
 *
 * @param swings every shot of the session: warm-up, settling, set aside and in the tray included
 * @param caution a sentence when rest is due, else empty
 */
public record SwingCount(int swings, String caution) {

    /** From here on a pause is suggested; our judgement, common practice has no figure. */
    static final int MANY = 90;

    /** The same where the player's hands hurt. */
    static final int MANY_WITH_PAIN = 40;

    /** Counts the swings of a session. */
    public static SwingCount of(Session session) {
        int swings = session.tray().size() + session.tests().stream().flatMap(test -> test.stints().stream())
                .mapToInt(stint -> stint.shots().size()).sum();
        return new SwingCount(swings, caution(swings, session.player()));
    }

    private static String caution(int swings, Player player) {
        boolean hurts = !player.painSites().isBlank();
        if (hurts && swings >= MANY_WITH_PAIN) {
            return "Hands that hurt have made " + swings + " swings: ask, rest, or stop here. Stop on pain and see a "
                    + "clinician.";
        }
        return swings >= MANY ? "Many swings for one visit: offer a rest. Stop on pain and see a clinician." : "";
    }
}
