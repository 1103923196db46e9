package gripwright.desktop.take;

import gripwright.intake.IntakeResult;
import gripwright.intake.SessionFilling;
import gripwright.model.ClubTest;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.model.Stint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Where the shots of a file go: a whole test, the stint in hand, or the tray. */
final class TakePlace {

    private TakePlace() {
    }

    /** The session with the shots in their place. */
    static Session filled(Session session, String testId, IntakeResult intake) {
        if (intake.isWholeTest()) {
            return SessionFilling.wholeTest(session, testId, intake).session();
        }
        Optional<Stint> inHand = session.test(testId).flatMap(ClubTest::stintInHand);
        if (inHand.isPresent()) {
            return SessionFilling.intoStint(session, testId, inHand.get().id(), intake).session();
        }
        List<Shot> tray = new ArrayList<>(session.tray());
        tray.addAll(intake.shots());
        return session.withTray(tray);
    }

    /** All shots that the session holds, wherever they are. */
    static List<Shot> shots(Session session) {
        return Stream.concat(session.tray().stream(), session.tests().stream().flatMap(test -> test.stints().stream())
                .flatMap(stint -> stint.shots().stream())).toList();
    }

    /** The place in words. */
    static String words(ClubTest test, IntakeResult intake, long withoutPlace) {
        if (intake.isWholeTest()) {
            return "The file names configurations: its shots fill the test with the " + test.club().name() + "."
                    + (withoutPlace == 0 ? "" : " " + withoutPlace + " without a configuration stay out: write theirs "
                            + "into the file and read it again.");
        }
        return test.stintInHand().flatMap(stint -> test.configuration(stint.configurationId()))
                .map(configuration -> "They go into the stint in hand, " + configuration.label() + ".")
                .orElse("No stint is in hand: they wait in the tray for a place.");
    }
}
