package gripwright.session.edits;

import gripwright.model.Readings;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.model.Stint;
import gripwright.session.Edit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What can be done with shots that were taken in: correct, move, delete; those of the play are {@link PlayEdits}. */
public final class ShotEdits {

    private ShotEdits() {
    }

    /** Replaces the readings of a shot. */
    public static Edit correct(Session before, String shotId, Readings readings) {
        return new Edit("Correct the readings of " + Places.shotName(before, shotId),
                session -> Places.changeShot(session, shotId, shot -> shot.withReadings(readings)));
    }

    /** Moves a shot, from a stint or from the tray, to the end of a stint. */
    public static Edit move(Session before, String shotId, String testId, String stintId) {
        return new Edit("Move " + Places.shotName(before, shotId) + " to " + Places.stintName(before, testId, stintId),
                session -> {
                    Optional<Shot> shot = Places.shot(session, shotId);
                    Optional<Stint> stint = session.test(testId).flatMap(test -> test.stint(stintId));
                    if (shot.isEmpty() || stint.isEmpty() || Places.has(stint.get().shots(), shotId)) {
                        return session;
                    }
                    return Places.changeStint(Places.changeShot(session, shotId, one -> null), testId, stintId, to -> {
                        List<Shot> shots = new ArrayList<>(to.shots());
                        shots.add(shot.get());
                        return to.withShots(shots);
                    });
                });
    }

    /** Deletes a shot from the record; setting aside is nearly always the better choice. */
    public static Edit delete(Session before, String shotId) {
        return new Edit("Delete " + Places.shotName(before, shotId),
                session -> Places.changeShot(session, shotId, shot -> null));
    }
}
