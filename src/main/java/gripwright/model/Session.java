package gripwright.model;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One visit of one player: one to three tests, and the readings that still wait for a place.
 *
 * @param id unique for ever
 * @param date the day of the visit
 * @param invented whether this is demo data; screens and papers say so
 * @param player the player
 * @param goal what the player wants
 * @param ball the ball; may be empty
 * @param glove the glove and its state; may be empty
 * @param place bay and mat; may be empty
 * @param source where readings come from
 * @param smallestDifferences the session's own smallest differences that matter, internal units; missing: the shop's
 * @param tests in order
 * @param tray shots that arrived between stints and wait for a place
 * @param set the player's set on its way over the bench
 * @param advisedConfigurationId what the fitter advises; null before
 * @param note free text
 */
public record Session(String id, LocalDate date, boolean invented, Player player, Goal goal, String ball, String glove,
        String place, ReadingSource source, Map<Metric, Double> smallestDifferences, List<ClubTest> tests,
        List<Shot> tray, List<SetClub> set, String advisedConfigurationId, String note) {

    /** More tests than this do not fit into an hour. */
    public static final int MOST_TESTS = 3;

    /** A new session with one empty test. */
    public static Session blank(String id, LocalDate date) {
        return new Session(id, date, false, Player.named("", Handedness.RIGHT), Goal.open(), "", "", "",
                ReadingSource.usual(), Map.of(),
                List.of(ClubTest.empty("test-1", TestClub.named(ClubKind.IRON, "7-iron"))), List.of(), List.of(),
                null, "");
    }

    public Session {
        Check.text(id, "identity of a session");
        Check.present(date, "date of a session");
        Check.present(player, "player of a session");
        Check.present(goal, "goal of a session");
        ball = Check.orEmpty(ball);
        glove = Check.orEmpty(glove);
        place = Check.orEmpty(place);
        Check.present(source, "reading source of a session");
        Map<Metric, Double> differences = new EnumMap<>(Metric.class);
        smallestDifferences.forEach((metric, difference) ->
                differences.put(metric, Check.notNegative(difference, "smallest difference of " + metric.text())));
        smallestDifferences = Collections.unmodifiableMap(differences);
        tests = Check.list(tests);
        if (tests.isEmpty() || tests.size() > MOST_TESTS) {
            throw new IllegalArgumentException("A session holds one to three tests, not " + tests.size() + ".");
        }
        if (tests.stream().map(ClubTest::id).distinct().count() != tests.size()) {
            throw new IllegalArgumentException("Two tests of the session share an identity.");
        }
        tray = Check.list(tray);
        set = Check.list(set);
        note = Check.orEmpty(note);
    }

    /** The test with this identity. */
    public Optional<ClubTest> test(String testId) {
        return tests.stream().filter(t -> t.id().equals(testId)).findFirst();
    }

    /** The smallest difference that matters, internal units: the session's own, else the given one of the shop. */
    public double smallestDifference(Metric metric, ShopSettings shop) {
        Double own = smallestDifferences.get(metric);
        return own != null ? own : shop.smallestDifference(metric);
    }

    /** This session with one test, found by its identity, replaced. */
    public Session withTest(ClubTest changed) {
        return withTests(tests.stream().map(t -> t.id().equals(changed.id()) ? changed : t).toList());
    }

    public Session withId(String id) {
        return new Session(id, date, invented, player, goal, ball, glove, place, source, smallestDifferences, tests,
                tray, set, advisedConfigurationId, note);
    }

    public Session withDate(LocalDate date) {
        return new Session(id, date, invented, player, goal, ball, glove, place, source, smallestDifferences, tests,
                tray, set, advisedConfigurationId, note);
    }

    public Session withInvented(boolean invented) {
        return new Session(id, date, invented, player, goal, ball, glove, place, source, smallestDifferences, tests,
                tray, set, advisedConfigurationId, note);
    }

    public Session withPlayer(Player player) {
        return new Session(id, date, invented, player, goal, ball, glove, place, source, smallestDifferences, tests,
                tray, set, advisedConfigurationId, note);
    }

    public Session withGoal(Goal goal) {
        return new Session(id, date, invented, player, goal, ball, glove, place, source, smallestDifferences, tests,
                tray, set, advisedConfigurationId, note);
    }

    public Session withBall(String ball) {
        return new Session(id, date, invented, player, goal, ball, glove, place, source, smallestDifferences, tests,
                tray, set, advisedConfigurationId, note);
    }

    public Session withGlove(String glove) {
        return new Session(id, date, invented, player, goal, ball, glove, place, source, smallestDifferences, tests,
                tray, set, advisedConfigurationId, note);
    }

    public Session withPlace(String place) {
        return new Session(id, date, invented, player, goal, ball, glove, place, source, smallestDifferences, tests,
                tray, set, advisedConfigurationId, note);
    }

    public Session withSource(ReadingSource source) {
        return new Session(id, date, invented, player, goal, ball, glove, place, source, smallestDifferences, tests,
                tray, set, advisedConfigurationId, note);
    }

    public Session withSmallestDifferences(Map<Metric, Double> smallestDifferences) {
        return new Session(id, date, invented, player, goal, ball, glove, place, source, smallestDifferences, tests,
                tray, set, advisedConfigurationId, note);
    }

    public Session withTests(List<ClubTest> tests) {
        return new Session(id, date, invented, player, goal, ball, glove, place, source, smallestDifferences, tests,
                tray, set, advisedConfigurationId, note);
    }

    public Session withTray(List<Shot> tray) {
        return new Session(id, date, invented, player, goal, ball, glove, place, source, smallestDifferences, tests,
                tray, set, advisedConfigurationId, note);
    }

    public Session withSet(List<SetClub> set) {
        return new Session(id, date, invented, player, goal, ball, glove, place, source, smallestDifferences, tests,
                tray, set, advisedConfigurationId, note);
    }

    public Session withAdvisedConfigurationId(String advisedConfigurationId) {
        return new Session(id, date, invented, player, goal, ball, glove, place, source, smallestDifferences, tests,
                tray, set, advisedConfigurationId, note);
    }

    public Session withNote(String note) {
        return new Session(id, date, invented, player, goal, ball, glove, place, source, smallestDifferences, tests,
                tray, set, advisedConfigurationId, note);
    }
}
