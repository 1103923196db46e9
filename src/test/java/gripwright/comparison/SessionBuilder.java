package gripwright.comparison;

import gripwright.model.BuildUp;
import gripwright.model.ClubKind;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Goal;
import gripwright.model.Grip;
import gripwright.model.Handedness;
import gripwright.model.Metric;
import gripwright.model.Player;
import gripwright.model.Readings;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.model.Stint;
import gripwright.model.TestClub;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** Builds invented sessions for the tests, stint by stint in the order of play; the first configuration is the gamer. */
final class SessionBuilder {

    private final List<Configuration> configurations = new ArrayList<>();
    private final List<Stint> stints = new ArrayList<>();
    private ClubKind kind = ClubKind.IRON;
    private Goal goal = Goal.open();
    private Handedness hand = Handedness.RIGHT;
    private Map<Metric, Double> smallest = Map.of();
    private int shots;

    static SessionBuilder of(String... labels) {
        SessionBuilder builder = new SessionBuilder();
        for (String label : labels) {
            int index = builder.configurations.size();
            builder.configurations.add(Configuration.ofIndex(index, "id-" + label, label,
                    Grip.weighed("grip-" + label, "Invented grip " + label, 50), BuildUp.none()).withGamer(index == 0));
        }
        return builder;
    }

    SessionBuilder kind(ClubKind kind) {
        this.kind = kind;
        return this;
    }

    SessionBuilder goal(Goal goal) {
        this.goal = goal;
        return this;
    }

    SessionBuilder hand(Handedness hand) {
        this.hand = hand;
        return this;
    }

    SessionBuilder smallest(Metric metric, double difference) {
        this.smallest = Map.of(metric, difference);
        return this;
    }

    /** A scored stint with one metric read. */
    SessionBuilder stint(String label, Metric metric, double... values) {
        List<Readings> readings = new ArrayList<>();
        for (double value : values) {
            readings.add(Double.isNaN(value) ? Readings.none() : Readings.of(metric, value));
        }
        return stint(label, readings);
    }

    /** A scored stint with these readings. */
    SessionBuilder stint(String label, List<Readings> readings) {
        List<Shot> played = new ArrayList<>();
        for (Readings one : readings) {
            shots++;
            played.add(Shot.of("shot-" + shots, one));
        }
        stints.add(Stint.planned("stint-" + (stints.size() + 1), "id-" + label, Stint.Kind.SCORED, readings.size(), 0)
                .withState(Stint.State.DONE).withShots(played));
        return this;
    }

    /** Changes the stint added last. */
    SessionBuilder last(UnaryOperator<Stint> change) {
        stints.set(stints.size() - 1, change.apply(stints.get(stints.size() - 1)));
        return this;
    }

    /** Sets the n-th shot (from 1) of the stint added last aside. */
    SessionBuilder aside(int nth) {
        return last(stint -> {
            List<Shot> changed = new ArrayList<>(stint.shots());
            changed.set(nth - 1, changed.get(nth - 1).withSetAsideReason("mishit"));
            return stint.withShots(changed);
        });
    }

    SessionBuilder configuration(String label, UnaryOperator<Configuration> change) {
        configurations.replaceAll(c -> c.label().equals(label) ? change.apply(c) : c);
        return this;
    }

    Session build() {
        ClubTest test = ClubTest.empty("test-1", TestClub.named(kind, "8-iron"))
                .withConfigurations(configurations).withStints(stints);
        return Session.blank("session-1", LocalDate.of(2026, 1, 1)).withInvented(true)
                .withPlayer(Player.named("Invented player", hand)).withGoal(goal).withSmallestDifferences(smallest)
                .withTests(List.of(test));
    }
}
