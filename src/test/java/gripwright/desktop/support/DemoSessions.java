package gripwright.desktop.support;

import gripwright.model.BuildUp;
import gripwright.model.ClubKind;
import gripwright.model.ClubPart;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Diameter;
import gripwright.model.Direction;
import gripwright.model.Firmness;
import gripwright.model.Goal;
import gripwright.model.Grip;
import gripwright.model.GripCondition;
import gripwright.model.Guardrail;
import gripwright.model.Handedness;
import gripwright.model.Metric;
import gripwright.model.Player;
import gripwright.model.PrimaryMetric;
import gripwright.model.Readings;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.model.ShopSettings;
import gripwright.model.Stint;
import gripwright.model.Stock;
import gripwright.model.Tape;
import gripwright.model.TestClub;
import gripwright.model.Texture;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Invented sessions for tests of the window: a left-handed player with five configurations, and one with eight. */
public final class DemoSessions {

    private static final double INCH = 25.4;
    private static final Tape TAPE = new Tape("tape-1", "Paper tape, 0.010 in", 0.254, 120, false, "");

    private DemoSessions() {
    }

    /** A left-handed player, an 8-iron, five configurations, mirrored order, some shots; and a driver test, empty. */
    public static Session leftHanded() {
        return session(5);
    }

    /** The same with eight configurations, among them the longest names that a shop would write. */
    public static Session eightGrips() {
        return session(8);
    }

    private static Session session(int configurations) {
        TestClub iron = new TestClub(ClubKind.IRON, "8-iron", 927.1, 36.0, 63.0,
                List.of(new Diameter(0, 15.24), new Diameter(76.2, 14.6), new Diameter(152.4, 13.9)),
                List.of(new ClubPart(ClubPart.Kind.HEAD, "", 274, 914, 0, null),
                        new ClubPart(ClubPart.Kind.SHAFT, "", 112, 445, 905, null),
                        new ClubPart(ClubPart.Kind.FERRULE, "with epoxy", 4, 880, 0, null)), List.of(), "");
        List<Configuration> columns = new ArrayList<>();
        for (int index = 0; index < configurations; index++) {
            columns.add(configuration(index));
        }
        ClubTest first = ClubTest.empty("test-1", iron).withConfigurations(columns).withStints(stints(columns));
        ClubTest second = ClubTest.empty("test-2", TestClub.named(ClubKind.DRIVER, "driver"));
        return Session.blank("demo-1", LocalDate.of(2026, 3, 14)).withInvented(true)
                .withPlayer(new Player("Player 12", Handedness.LEFT, 190.5, 82.0, "M/L",
                        "Standard, rubber, worn, about two winters old", 1, "base of the left thumb", ""))
                .withGoal(new Goal("Bigger misses back in", List.of(
                        new PrimaryMetric(Metric.FACE_ANGLE, PrimaryMetric.Aspect.SPREAD, Direction.LOWER, null, 2),
                        PrimaryMetric.mean(Metric.CLUB_SPEED, Direction.HIGHER)),
                        List.of(Guardrail.mean(Metric.CARRY, Direction.HIGHER, null, 2)), 0.25, false))
                .withBall("premium, three-piece").withGlove("new").withTests(List.of(first, second));
    }

    private static Configuration configuration(int index) {
        String label = String.valueOf((char) ('A' + index));
        Grip grip = grips().get(index % grips().size());
        BuildUp buildUp = index == 3 ? BuildUp.none().withBallastPositionMm(108.0).withBallastGrams(16)
                : index == 4 ? BuildUp.none().withFullWraps(2).withTape(TAPE) : BuildUp.none();
        return Configuration.ofIndex(index, "configuration-" + (index + 1), label, grip, buildUp)
                .withGamer(index == 0);
    }

    private static List<Grip> grips() {
        return List.of(grip("grip-1", "Standard, rubber, worn, 50 g", "standard", 50, 22.7, GripCondition.WORN),
                grip("grip-2", "Standard, rubber, fresh, 50 g", "standard", 50, 22.86, GripCondition.FRESH),
                grip("grip-3", "Midsize, rubber, 66 g", "+1/16", 66, 24.4, GripCondition.FRESH),
                grip("grip-4", "Midsize, light, 42 g", "+1/16", 42, 24.4, GripCondition.FRESH),
                grip("grip-5", "Standard, cord, 52 g", "standard", 52, 22.86, GripCondition.FRESH),
                grip("grip-6", "Jumbo, reduced taper, soft and tacky, 73 g", "jumbo", 73, 26.0,
                        GripCondition.FRESH));
    }

    private static Grip grip(String id, String name, String size, double mass, double at2, GripCondition condition) {
        return new Grip(id, name, size, 15.24, mass - 1, mass, 268, 4, null,
                List.of(new Diameter(2 * INCH, at2), new Diameter(6 * INCH, at2 - 2.5)), null, false, Firmness.MEDIUM,
                name.contains("cord") ? Texture.CORD : Texture.RUBBER, condition == GripCondition.WORN, condition,
                9.5, 12, "");
    }

    private static List<Stint> stints(List<Configuration> columns) {
        Random random = new Random(20260314);
        List<Stint> stints = new ArrayList<>();
        int shot = 0;
        for (int place = 0; place < 2 * columns.size(); place++) {
            Configuration column = columns.get(place < columns.size() ? place : 2 * columns.size() - 1 - place);
            Stint stint = Stint.planned("stint-" + (place + 1), column.id(), Stint.Kind.SCORED, 3, 1);
            if (place < columns.size()) {
                List<Shot> shots = new ArrayList<>();
                for (int n = 0; n < 4; n++) {
                    shot++;
                    shots.add(Shot.of("shot-" + shot, Readings.of(Metric.CLUB_SPEED, 38 + random.nextGaussian() * 0.5)
                            .with(Metric.FACE_ANGLE, random.nextGaussian() * 2.5)
                            .with(Metric.CLUB_PATH, 1 + random.nextGaussian() * 2)
                            .with(Metric.CARRY, 138 + random.nextGaussian() * 5)
                            .with(Metric.OFFLINE, random.nextGaussian() * 7)));
                }
                stint = stint.withShots(shots).withState(Stint.State.DONE);
            }
            stints.add(stint);
        }
        return stints;
    }

    /** A shop that has the demo's grips and tapes in stock. */
    public static Shop shop() {
        return new Shop(ShopSettings.usual(), new Stock(grips(), List.of(TAPE,
                new Tape("tape-2", "Double-sided, 48 mm", 0.2, 150, true, ""))));
    }
}
