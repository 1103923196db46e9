package gripwright.planning;

import gripwright.model.ClubTest;
import gripwright.model.PhysicalClub;
import gripwright.model.Stint;
import java.util.Optional;

/**
 * How long the planned stints of a test will take.
 *
 * <p>Time = swings × 35 s + questions after each stint × 45 s + changes × what a change takes: 5 min for a grip blown on
 * and off, 1 min on a quick connector, 20 s to take another club, and 5 min where nobody said how. Common practice, no
 * source; a shop's own pace may differ by half.
 *
 * @param swings swings still planned, settling and warm-up included
 * @param changes changes of grip or club still planned
 * @param seconds what they take together, s
 */
public record SessionTime(int swings, int changes, double seconds) {

    private static final double SECONDS_PER_SWING = 35;
    private static final double SECONDS_OF_QUESTIONS = 45;
    private static final double SECONDS_PER_MINUTE = 60;

    /** The time that is still to come: of stints planned, and what is left of the one in hand. */
    public static SessionTime ahead(ClubTest test) {
        int swings = 0;
        int changes = 0;
        double seconds = 0;
        for (Stint stint : test.stints()) {
            if (stint.state() == Stint.State.DONE) {
                continue;
            }
            int planned = stint.plannedShots() + stint.settlingSwings();
            int left = Math.max(0, planned - stint.shots().size());
            swings += left;
            seconds += left * SECONDS_PER_SWING + SECONDS_OF_QUESTIONS;
            if (stint.state() == Stint.State.PLANNED && stint.changedBefore()) {
                changes++;
                seconds += secondsOfChange(test, stint);
            }
        }
        return new SessionTime(swings, changes, seconds);
    }

    private static double secondsOfChange(ClubTest test, Stint stint) {
        String own = stint.physicalClubId() != null ? stint.physicalClubId()
                : test.configuration(stint.configurationId()).map(c -> c.physicalClubId()).orElse(null);
        Optional<PhysicalClub> club = test.physicalClubs().stream().filter(c -> c.id().equals(own)).findFirst();
        return switch (club.map(PhysicalClub::mounting).orElse(PhysicalClub.Mounting.BLOWN_ON)) {
            case BLOWN_ON -> 5 * SECONDS_PER_MINUTE;
            case CONNECTOR -> SECONDS_PER_MINUTE;
            case TWIN -> 20;
        };
    }

    /** Whole minutes, rounded up to five: nobody plans finer. */
    public int minutes() {
        return (int) (Math.ceil(seconds / SECONDS_PER_MINUTE / 5) * 5);
    }
}
