package gripwright.session.edits;

import gripwright.model.ClubTest;
import gripwright.model.Goal;
import gripwright.model.Metric;
import gripwright.model.PhysicalClub;
import gripwright.model.Player;
import gripwright.model.ReadingSource;
import gripwright.model.Session;
import gripwright.model.Stint;
import gripwright.model.TestClub;
import gripwright.session.Edit;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What can be said about a session before anything is hit: player, goal, clubs, ball, source. */
public final class SetupEdits {

    private SetupEdits() {
    }

    /** Everything about the player. */
    public static Edit player(Player player) {
        return new Edit("Change the player", session -> session.withPlayer(player));
    }

    /** What the player wants. */
    public static Edit goal(Goal goal) {
        return new Edit("Change the goal", session -> session.withGoal(goal));
    }

    /** The day of the visit. */
    public static Edit date(LocalDate date) {
        return new Edit("Change the date", session -> session.withDate(date));
    }

    /** The ball. */
    public static Edit ball(String ball) {
        return new Edit("Change the ball", session -> session.withBall(ball));
    }

    /** The glove and its state. */
    public static Edit glove(String glove) {
        return new Edit("Change the glove", session -> session.withGlove(glove));
    }

    /** Bay and mat. */
    public static Edit place(String place) {
        return new Edit("Change the place", session -> session.withPlace(place));
    }

    /** Where readings come from. */
    public static Edit source(ReadingSource source) {
        return new Edit("Change the reading source", session -> session.withSource(source));
    }

    /** Free text about the session. */
    public static Edit note(String note) {
        return new Edit("Change the session's note", session -> session.withNote(note));
    }

    /** The session's own smallest difference that matters, internal units; null for the shop's. */
    public static Edit smallestDifference(Metric metric, Double difference) {
        return new Edit("Change the smallest difference of " + metric.text(), session -> {
            Map<Metric, Double> differences = new EnumMap<>(Metric.class);
            differences.putAll(session.smallestDifferences());
            if (difference == null) {
                differences.remove(metric);
            } else {
                differences.put(metric, difference);
            }
            return session.withSmallestDifferences(differences);
        });
    }

    /** What the fitter advises; null for nothing yet. */
    public static Edit advise(String configurationId) {
        return new Edit("Change the advice", session -> session.withAdvisedConfigurationId(configurationId));
    }

    /** The test club. */
    public static Edit club(String testId, TestClub club) {
        return new Edit("Change the " + club.name(),
                session -> Places.changeTest(session, testId, test -> test.withClub(club)));
    }

    /** The clubs one can hold. */
    public static Edit physicalClubs(String testId, List<PhysicalClub> clubs) {
        return new Edit("Change the physical clubs",
                session -> Places.changeTest(session, testId, test -> test.withPhysicalClubs(clubs)));
    }

    /** One more test; the edit throws where the session has as many as it can. */
    public static Edit addTest(TestClub club) {
        return new Edit("Add a test with the " + club.name(), session -> session.withTests(Places.inserted(
                session.tests(), session.tests().size(), ClubTest.empty(Identities.newTest(session), club))));
    }

    /** Takes a test out; the edit throws where it has shots or is the only one. */
    public static Edit removeTest(Session before, String testId) {
        String name = before.test(testId).map(test -> test.club().name()).orElse("club");
        return new Edit("Remove the test with the " + name, session -> {
            boolean hit = session.test(testId).stream().flatMap(test -> test.stints().stream())
                    .map(Stint::shots).anyMatch(shots -> !shots.isEmpty());
            if (hit) {
                throw new IllegalArgumentException("The test with the " + name
                        + " has shots; delete them before the test is removed.");
            }
            return session.withTests(session.tests().stream().filter(test -> !test.id().equals(testId)).toList());
        });
    }
}
