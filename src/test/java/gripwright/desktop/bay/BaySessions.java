package gripwright.desktop.bay;

import gripwright.intake.Arrival;
import gripwright.intake.IntakeRow;
import gripwright.model.BuildUp;
import gripwright.model.ClubKind;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Direction;
import gripwright.model.Goal;
import gripwright.model.Grip;
import gripwright.model.Handedness;
import gripwright.model.Metric;
import gripwright.model.Player;
import gripwright.model.PrimaryMetric;
import gripwright.model.Readings;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.model.Stint;
import gripwright.model.TestClub;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Invented sessions for the tests of the bay. */
final class BaySessions {

    private BaySessions() {
    }

    /** A session with the labels as configurations and one planned stint per letter of the order. */
    static Session planned(String labels, String order, int shots, int settling) {
        List<Configuration> configurations = new ArrayList<>();
        for (int index = 0; index < labels.length(); index++) {
            String label = labels.substring(index, index + 1);
            Grip grip = Grip.weighed("grip-" + label, "Invented grip " + label, 46 + 4 * index)
                    .withSizeName(index == 0 ? "standard" : "+" + index + "/64");
            configurations.add(Configuration.ofIndex(index, "c-" + label, label, grip, BuildUp.none())
                    .withGamer(index == 0));
        }
        List<Stint> stints = new ArrayList<>();
        for (int index = 0; index < order.length(); index++) {
            stints.add(Stint.planned("s-" + (index + 1), "c-" + order.charAt(index), Stint.Kind.SCORED, shots,
                    settling));
        }
        ClubTest test = ClubTest.empty("test-1", TestClub.named(ClubKind.IRON, "8-iron"))
                .withConfigurations(configurations).withStints(stints);
        Goal goal = Goal.open().withSentence("take out the left").withPrimaries(List.of(
                PrimaryMetric.mean(Metric.FACE_ANGLE, Direction.NEAR_TARGET),
                PrimaryMetric.mean(Metric.CLUB_SPEED, Direction.HIGHER),
                PrimaryMetric.mean(Metric.CARRY, Direction.HIGHER)));
        return Session.blank("invented-session", LocalDate.of(2026, 3, 14)).withInvented(true)
                .withPlayer(Player.named("Invented player", Handedness.LEFT)).withGoal(goal)
                .withTests(List.of(test));
    }

    /** The same with every stint done, shots from a seed. */
    static Session hit(String labels, String order, int shots, long seed) {
        Session session = planned(labels, order, shots, 0);
        Random random = new Random(seed);
        ClubTest test = session.tests().get(0);
        List<Stint> stints = test.stints().stream().map(stint -> {
            List<Shot> hit = new ArrayList<>();
            for (int n = 0; n < shots; n++) {
                hit.add(Shot.of(stint.id() + "-" + n, readings(random, labels.indexOf(
                        stint.configurationId().charAt(2)))));
            }
            return stint.withShots(hit).withState(Stint.State.DONE);
        }).toList();
        return session.withTest(test.withStints(stints));
    }

    /** One shot as a source brings it. */
    static Arrival arrival(Shot shot) {
        return new Arrival(List.of(new IntakeRow(1, "", "", null, null, "", shot)), List.of(), List.of(), List.of(),
                List.of());
    }

    /** Plausible 8-iron readings of an invented player. */
    static Readings readings(Random random, int configuration) {
        return Readings.of(Metric.CLUB_SPEED, 36 + 0.1 * configuration + 0.4 * random.nextGaussian())
                .with(Metric.FACE_ANGLE, 1.5 - 0.4 * configuration + 2.2 * random.nextGaussian())
                .with(Metric.CLUB_PATH, -1 + 1.8 * random.nextGaussian())
                .with(Metric.CLOSURE_RATE, 2300 + 150 * random.nextGaussian())
                .with(Metric.CARRY, 138 + 4 * random.nextGaussian())
                .with(Metric.OFFLINE, 2 + 6 * random.nextGaussian());
    }
}
