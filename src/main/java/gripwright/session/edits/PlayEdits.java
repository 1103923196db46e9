package gripwright.session.edits;

import gripwright.model.ClubTest;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.model.Stint;
import gripwright.session.Edit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * Edits of shots while a test is played: take in, set aside, bring back, give a place from the tray.
 *
 * <p>No edit ever drops a shot, save a provisional one whose line turned out to hold none. Where the stint or shot an edit is about is gone, the session stays as it is.
 */
public final class PlayEdits {

    private final String testId;

    private PlayEdits(String testId) {
        this.testId = testId;
    }

    /** Edits of the test with this identity. */
    public static PlayEdits of(String testId) {
        return new PlayEdits(testId);
    }

    /**
     * Takes shots in that arrived together: into the stint in hand, else into the tray. A shot whose identity the
     * session knows already replaces it, as a provisional line that has grown does.
     */
    public Edit takeIn(List<Shot> arrived) {
        String label = arrived.size() == 1 ? "Record a shot" : "Record " + arrived.size() + " shots";
        return new Edit(label, session -> {
            Session result = session;
            List<Shot> fresh = new ArrayList<>();
            Set<String> known = shotIds(session);
            for (Shot shot : arrived) {
                if (known.add(shot.id())) {
                    fresh.add(shot);
                } else {
                    result = replaced(result, shot);
                }
            }
            return append(result, fresh);
        });
    }

    /**
     * As {@link #takeIn}, and takes provisional shots out again whose line turned out to hold none; a shot that isn't
     * provisional stays.
     */
    public Edit takeInAndWithdraw(List<Shot> arrived, Set<String> withdrawn) {
        return new Edit("Read a line again", session -> takeIn(arrived).change().apply(without(session, withdrawn)));
    }

    private static Session without(Session session, Set<String> withdrawn) {
        Predicate<Shot> stays = shot -> !shot.provisional() || !withdrawn.contains(shot.id());
        return session.withTray(session.tray().stream().filter(stays).toList())
                .withTests(session.tests().stream().map(test -> test.withStints(test.stints().stream()
                        .map(stint -> stint.shots().stream().allMatch(stays) ? stint
                                : stint.withShots(stint.shots().stream().filter(stays).toList())).toList())).toList());
    }

    /** Sets a shot aside with a reason; it stays in the record. */
    public Edit setAside(String shotId, String reason) {
        return shot("Set a shot aside: " + reason, shotId, shot -> shot.withSetAsideReason(reason));
    }

    /** Brings a shot that was set aside back into the comparison. */
    public Edit bringBack(String shotId) {
        return shot("Bring a shot back in", shotId, shot -> shot.withSetAsideReason(null));
    }

    /** Writes a note on a shot. */
    public Edit noteOnShot(String shotId, String note) {
        return shot("Note on a shot", shotId, shot -> shot.withNote(note));
    }

    /** Gives shots of the tray a place at the end of a stint, in their order. */
    public Edit placeFromTray(Set<String> shotIds, String stintId) {
        String label = shotIds.size() == 1 ? "Give a shot its place" : "Give " + shotIds.size() + " shots their place";
        return new Edit(label, session -> {
            Optional<ClubTest> test = session.test(testId);
            Optional<Stint> stint = test.flatMap(t -> t.stint(stintId));
            if (stint.isEmpty()) {
                return session;
            }
            List<Shot> moved = session.tray().stream().filter(s -> shotIds.contains(s.id())).toList();
            List<Shot> left = session.tray().stream().filter(s -> !shotIds.contains(s.id())).toList();
            return session.withTray(left).withTest(test.get().withStint(withMore(stint.get(), moved)));
        });
    }

    /** Takes shots out of a stint and into the tray, where they wait for another place. */
    public Edit moveToTray(Set<String> shotIds) {
        String label = shotIds.size() == 1 ? "Move a shot to the tray" : "Move " + shotIds.size() + " shots to the tray";
        return new Edit(label, session -> {
            Optional<ClubTest> test = session.test(testId);
            if (test.isEmpty()) {
                return session;
            }
            List<Shot> tray = new ArrayList<>(session.tray());
            List<Stint> stints = new ArrayList<>();
            for (Stint stint : test.get().stints()) {
                stint.shots().stream().filter(s -> shotIds.contains(s.id())).forEach(tray::add);
                stints.add(stint.withShots(stint.shots().stream().filter(s -> !shotIds.contains(s.id())).toList()));
            }
            return session.withTray(tray).withTest(test.get().withStints(stints));
        });
    }

    private Session append(Session session, List<Shot> fresh) {
        if (fresh.isEmpty()) {
            return session;
        }
        Optional<ClubTest> test = session.test(testId);
        Optional<Stint> hand = test.flatMap(ClubTest::stintInHand);
        if (hand.isPresent()) {
            return session.withTest(test.get().withStint(withMore(hand.get(), fresh)));
        }
        List<Shot> tray = new ArrayList<>(session.tray());
        tray.addAll(fresh);
        return session.withTray(tray);
    }

    private static Stint withMore(Stint stint, List<Shot> more) {
        List<Shot> shots = new ArrayList<>(stint.shots());
        shots.addAll(more);
        return stint.withShots(shots);
    }

    private static Set<String> shotIds(Session session) {
        Set<String> ids = new HashSet<>();
        session.tray().forEach(shot -> ids.add(shot.id()));
        for (ClubTest test : session.tests()) {
            for (Stint stint : test.stints()) {
                stint.shots().forEach(shot -> ids.add(shot.id()));
            }
        }
        return ids;
    }

    /** The grown line keeps what the fitter said of the shot meanwhile. */
    private static Session replaced(Session session, Shot grown) {
        return changed(session, grown.id(), old -> grown.withSetAsideReason(old.setAsideReason())
                .withNote(old.note().isEmpty() ? grown.note() : old.note()));
    }

    private Edit shot(String label, String shotId, UnaryOperator<Shot> change) {
        return new Edit(label, session -> changed(session, shotId, change));
    }

    private static Session changed(Session session, String shotId, UnaryOperator<Shot> change) {
        for (int n = 0; n < session.tray().size(); n++) {
            if (session.tray().get(n).id().equals(shotId)) {
                return session.withTray(changed(session.tray(), shotId, change));
            }
        }
        for (ClubTest test : session.tests()) {
            for (Stint stint : test.stints()) {
                if (stint.shots().stream().anyMatch(s -> s.id().equals(shotId))) {
                    return session.withTest(test.withStint(stint.withShots(changed(stint.shots(), shotId, change))));
                }
            }
        }
        return session;
    }

    private static List<Shot> changed(List<Shot> shots, String shotId, UnaryOperator<Shot> change) {
        return shots.stream().map(s -> s.id().equals(shotId) ? change.apply(s) : s).toList();
    }
}
