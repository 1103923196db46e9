package gripwright.session.edits;

import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.model.Stint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Where things are in a session, and the session with one of them changed. */
final class Places {

    private Places() {
    }

    static Session changeTest(Session session, String testId, UnaryOperator<ClubTest> change) {
        return session.test(testId).map(test -> session.withTest(change.apply(test))).orElse(session);
    }

    static Session changeStint(Session session, String testId, String stintId, UnaryOperator<Stint> change) {
        return changeTest(session, testId, test -> test.stint(stintId)
                .map(stint -> test.withStint(change.apply(stint))).orElse(test));
    }

    /** The session with one shot changed wherever it is; null as the result takes it out. */
    static Session changeShot(Session session, String shotId, UnaryOperator<Shot> change) {
        if (has(session.tray(), shotId)) {
            return session.withTray(change(session.tray(), shotId, change));
        }
        for (ClubTest test : session.tests()) {
            for (Stint stint : test.stints()) {
                if (has(stint.shots(), shotId)) {
                    return session.withTest(test.withStint(stint.withShots(change(stint.shots(), shotId, change))));
                }
            }
        }
        return session;
    }

    static Optional<Shot> shot(Session session, String shotId) {
        return Identities.shots(session).filter(shot -> shot.id().equals(shotId)).findFirst();
    }

    /** 'shot 14', counted through the stints of its test in order of play; 'shot in the tray'; 'shot'. */
    static String shotName(Session session, String shotId) {
        for (ClubTest test : session.tests()) {
            int number = 0;
            for (Stint stint : test.stints()) {
                for (Shot shot : stint.shots()) {
                    number++;
                    if (shot.id().equals(shotId)) {
                        return "shot " + number;
                    }
                }
            }
        }
        return has(session.tray(), shotId) ? "shot in the tray" : "shot";
    }

    /** The label of a configuration, or 'configuration' where the test has none such. */
    static String label(Session session, String testId, String configurationId) {
        return session.test(testId).flatMap(test -> test.configuration(configurationId)).map(Configuration::label)
                .orElse("configuration");
    }

    /** 'stint 3 (B)'. */
    static String stintName(Session session, String testId, String stintId) {
        Optional<ClubTest> test = session.test(testId);
        Optional<Stint> stint = test.flatMap(one -> one.stint(stintId));
        if (stint.isEmpty()) {
            return "stint";
        }
        return "stint " + (test.get().stints().indexOf(stint.get()) + 1) + " ("
                + label(session, testId, stint.get().configurationId()) + ")";
    }

    static boolean has(List<Shot> shots, String shotId) {
        return shots.stream().anyMatch(shot -> shot.id().equals(shotId));
    }

    /** The list with an element put at a place, which is cut to what the list has. */
    static <T> List<T> inserted(List<T> list, int index, T element) {
        List<T> longer = new ArrayList<>(list);
        longer.add(Math.max(0, Math.min(index, list.size())), element);
        return longer;
    }

    /** The list with one element moved to another place, which is cut to what the list has. */
    static <T> List<T> moved(List<T> list, int from, int to) {
        if (from < 0 || from >= list.size()) {
            return list;
        }
        List<T> rest = new ArrayList<>(list);
        T element = rest.remove(from);
        return inserted(rest, to, element);
    }

    private static List<Shot> change(List<Shot> shots, String shotId, UnaryOperator<Shot> change) {
        List<Shot> changed = new ArrayList<>();
        for (Shot shot : shots) {
            Shot after = shot.id().equals(shotId) ? change.apply(shot) : shot;
            if (after != null) {
                changed.add(after);
            }
        }
        return changed;
    }
}
