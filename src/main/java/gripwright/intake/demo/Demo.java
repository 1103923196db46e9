package gripwright.intake.demo;

import gripwright.intake.rehearsal.GripEffect;
import gripwright.intake.rehearsal.SimulatedPlayer;
import gripwright.intake.rehearsal.Swing;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Direction;
import gripwright.model.Feel;
import gripwright.model.Goal;
import gripwright.model.Guardrail;
import gripwright.model.Handedness;
import gripwright.model.Metric;
import gripwright.model.Player;
import gripwright.model.PrimaryMetric;
import gripwright.model.ReadingSource;
import gripwright.model.Session;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A demo session, invented from beginning to end, with the simulated player whose truth is known.
 *
 * @param name name of its files, without an ending
 * @param story what the truth is, in a sentence
 * @param player the simulated player
 * @param session the session
 */
public record Demo(String name, String story, SimulatedPlayer player, Session session) {

    /** Chosen so that a mishit is among the shots and nothing is clear cut. */
    private static final long SEED_OF_THE_LEFT_HANDED = 35;
    private static final long SEED_WITHOUT_DIFFERENCE = 42;

    /**
     * A left-handed player with an 8-iron and five configurations, two of one size and different mass: the best size is
     * a little over the gamer's, neither thinnest nor thickest, and lighter grips add a little speed.
     */
    public static Demo leftHandedEightIron() {
        SimulatedPlayer player = SimulatedPlayer.middling(Handedness.LEFT, SEED_OF_THE_LEFT_HANDED).withEffects(Map.of(
                "B", new GripEffect(new Swing(0.25, 0, -0.9, 0, 0, 0, 90, 0, 0), 1.15),
                "C", new GripEffect(new Swing(0.05, 0.1, 1.3, 0, 0, 0, -120, 0, 0), 0.88),
                "D", new GripEffect(new Swing(0.25, 0.1, 1.1, 0, 0, 0, -100, 0, 0), 0.92),
                "E", new GripEffect(new Swing(-0.45, 0, 0.1, 0, 0, 0, -20, -1.5, 0), 1.05)));
        return new Demo("left-handed-8-iron", "The face closes too much with every grip; best is the size of C and D, "
                + "thicker than the gamer's, while E is too thick and B too thin. D is as thick as C and much lighter, "
                + "which adds a little speed. Six scored shots a configuration can seldom prove any of this.", player,
                session("demo-left-handed-8-iron", player, "Demo player", true));
    }

    /** A right-handed player for whom no grip makes any difference. */
    public static Demo noDifference() {
        SimulatedPlayer player = SimulatedPlayer.middling(Handedness.RIGHT, SEED_WITHOUT_DIFFERENCE);
        return new Demo("no-difference", "No grip changes anything: every difference in this session is chance, warming "
                + "up or the stint.", player, session("demo-no-difference", player, "Demo player", false));
    }

    private static Session session(String id, SimulatedPlayer simulated, String label, boolean withPreferences) {
        List<Configuration> configurations = DemoBench.configurations();
        LocalDate day = LocalDate.of(2026, 3, 14);
        DemoDay hit = new DemoDay(simulated, configurations, feel(withPreferences), Instant.parse("2026-03-14T14:00:00Z"));
        ClubTest test = new ClubTest("test-1", DemoBench.club(configurations), List.of(DemoBench.physicalClub()),
                configurations, null, DemoDay.PLAN, hit.stints());
        return new Session(id, day, true, person(label, simulated.hand()), goal(), "range ball, two-piece (invented)",
                "new this month, dry", "bay 2, mat", new ReadingSource("demo source (invented)",
                ReadingSource.ClosureAxis.TARGET_LINE, Set.of(Metric.TOTAL, Metric.APEX, Metric.DESCENT_ANGLE)), Map.of(),
                List.of(test), List.of(), DemoBench.set(), null,
                "Invented: hit by a simulated player.");
    }

    private static Player person(String label, Handedness hand) {
        return new Player(label, hand, 191.0, 82.0, hand == Handedness.LEFT ? "ML, right hand" : "ML, left hand",
                "Cord, standard, worn", 0, "", "invented");
    }

    private static Goal goal() {
        return new Goal("Take out the hook and keep the speed", List.of(
                PrimaryMetric.mean(Metric.FACE_ANGLE, Direction.NEAR_TARGET),
                PrimaryMetric.mean(Metric.CLUB_SPEED, Direction.HIGHER)),
                List.of(Guardrail.mean(Metric.CARRY, Direction.HIGHER, null, 2)), 0.25, false);
    }

    private static Map<String, Feel> feel(boolean withPreferences) {
        if (!withPreferences) {
            return Map.of("A", new Feel(5, 5, 5, 0, 0, Feel.WouldPlay.YES, ""),
                    "B", new Feel(5, 4, 4, 0, -1, Feel.WouldPlay.UNSURE, ""),
                    "C", new Feel(5, 5, 5, 0, 1, Feel.WouldPlay.YES, ""),
                    "D", new Feel(4, 5, 5, 1, 1, Feel.WouldPlay.UNSURE, ""),
                    "E", new Feel(4, 4, 4, -1, 2, Feel.WouldPlay.NO, "clumsy"));
        }
        return Map.of("A", new Feel(4, 4, 4, 0, -1, Feel.WouldPlay.YES, "slick"),
                "B", new Feel(3, 3, 3, 1, -2, Feel.WouldPlay.NO, "twitchy"),
                "C", new Feel(6, 6, 6, -1, 0, Feel.WouldPlay.YES, "quiet"),
                "D", new Feel(6, 5, 5, 1, 0, Feel.WouldPlay.UNSURE, "head heavy"),
                "E", new Feel(4, 5, 4, -2, 2, Feel.WouldPlay.NO, "like a broom"));
    }
}
