package gripwright.desktop.setup;

import gripwright.desktop.support.Choice;
import gripwright.desktop.support.NumberEntry;
import gripwright.desktop.support.Quantity;
import gripwright.desktop.support.Subject;
import gripwright.desktop.support.TextEntry;
import gripwright.desktop.support.Workbench;
import gripwright.model.ClubKind;
import gripwright.model.Direction;
import gripwright.model.Goal;
import gripwright.model.Guardrail;
import gripwright.model.Metric;
import gripwright.model.PrimaryMetric;
import gripwright.model.Session;
import gripwright.planning.ReadyGoal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javafx.beans.value.ObservableValue;

/** What this player wants: the sentence, at most three primary metrics, guardrails, the weight of feel. */
public final class GoalViewModel {

    private static final double PERCENT = 100;

    private final Workbench workbench;
    private final Subject<Goal> goal;

    GoalViewModel(Workbench workbench) {
        this.workbench = workbench;
        goal = Subject.session(workbench).part(Session::goal, Session::withGoal);
    }

    /** When a primary metric serves the player: where its mean should go, or that its spread should shrink. */
    enum Serves {
        HIGHER("higher"),
        LOWER("lower"),
        NEAR_TARGET("near the target"),
        STEADIER("steadier"),
        NOT_SCORED("not scored");

        private final String text;

        Serves(String text) {
            this.text = text;
        }

        String text() {
            return text;
        }

        static Serves of(PrimaryMetric primary) {
            return primary.aspect() == PrimaryMetric.Aspect.SPREAD ? STEADIER : valueOf(primary.direction().name());
        }

        static Serves of(Guardrail guardrail) {
            return guardrail.isOnSpread() ? STEADIER : valueOf(guardrail.direction().name());
        }

        Guardrail applied(Guardrail guardrail) {
            return this == STEADIER ? Guardrail.spread(guardrail.metric(), guardrail.mostLoss())
                    : guardrail.withAspect(PrimaryMetric.Aspect.MEAN).withDirection(Direction.valueOf(name()));
        }

        PrimaryMetric applied(PrimaryMetric primary) {
            return this == STEADIER
                    ? primary.withAspect(PrimaryMetric.Aspect.SPREAD).withDirection(Direction.LOWER)
                    : primary.withAspect(PrimaryMetric.Aspect.MEAN).withDirection(Direction.valueOf(name()));
        }
    }

    /** One primary metric as fields; {@code hint} says what plus means for this player, {@code near} whether a target applies. */
    record PrimaryRow(Choice<Metric> metric, Choice<Serves> serves, NumberEntry target, NumberEntry weight, String hint, boolean near, Runnable remove, String what) {
    }

    /** One guardrail as fields. */
    record GuardrailRow(Choice<Metric> metric, Choice<Serves> serves, NumberEntry mostLoss, Runnable remove,
            String what) {
    }

    TextEntry sentence() {
        return goal.text("goal", Goal::sentence, Goal::withSentence);
    }

    /** Takes a ready goal as it is usually meant with the club in view. */
    void take(ReadyGoal ready) {
        ClubKind club = workbench.test().get().club().kind();
        goal.editOrSay("Set goal: " + ready.sentence(), now -> ready.with(club));
    }

    NumberEntry feelWeight() {
        return goal.needed("weight of feel", Quantity.PLAIN, now -> now.feelWeight() * PERCENT, (now, percent) -> {
            if (percent < 0 || percent > PERCENT) {
                throw new IllegalArgumentException("The weight of feel runs from 0 to 100 %.");
            }
            return now.withFeelWeight(percent / PERCENT);
        });
    }

    Choice<Boolean> comfortFirst() {
        return goal.choice("comfort first", Goal::comfortFirst, Goal::withComfortFirst);
    }

    /** Changes when rows have to be made anew: which metrics, which directions, which hand. */
    ObservableValue<List<Object>> shape() {
        return workbench.session().map(session -> {
            List<Object> shape = new ArrayList<>();
            session.goal().primaries().forEach(p -> shape.addAll(List.of(p.metric(), p.direction(), p.aspect())));
            session.goal().guardrails().forEach(g -> shape.add(g.metric()));
            shape.add(session.player().hand());
            return shape;
        });
    }

    ObservableValue<Boolean> mayAddPrimary() {
        return goal.value().map(now -> now.primaries().size() < Goal.MOST_PRIMARIES);
    }

    List<PrimaryRow> primaries() {
        List<PrimaryRow> rows = new ArrayList<>();
        for (int index = 0; index < goal.get().primaries().size(); index++) {
            rows.add(primary(index));
        }
        return rows;
    }

    private PrimaryRow primary(int index) {
        Subject<PrimaryMetric> primary = goal.element(index, Goal::primaries, Goal::withPrimaries);
        Metric metric = primary.get().metric();
        boolean near = Serves.of(primary.get()) == Serves.NEAR_TARGET;
        String plus = metric.sign().positiveWord(workbench.session().get().player().hand());
        String remove = "Remove " + metric.text() + " from the goal";
        return new PrimaryRow(
                primary.choice("primary metric", PrimaryMetric::metric, this::withMetric),
                primary.choice("what serves in " + metric.text(), Serves::of, (now, serves) -> serves.applied(now)),
                primary.number("target of " + metric.text(), Quantity.of(metric), PrimaryMetric::target,
                        PrimaryMetric::withTarget),
                primary.needed("weight of " + metric.text(), Quantity.PLAIN, PrimaryMetric::weight,
                        PrimaryMetric::withWeight),
                plus.isEmpty() ? "" : "+ is " + plus, near,
                () -> removePrimary(index, remove), remove);
    }

    private PrimaryMetric withMetric(PrimaryMetric now, Metric metric) {
        boolean spread = now.aspect() == PrimaryMetric.Aspect.SPREAD;
        return new PrimaryMetric(metric, now.aspect(), spread ? Direction.LOWER : usualDirection(metric), null,
                now.weight());
    }

    private Direction usualDirection(Metric metric) {
        Direction usual = metric.defaultDirection(workbench.test().get().club().kind());
        return usual == Direction.NOT_SCORED ? Direction.NEAR_TARGET : usual;
    }

    /** Adds the first metric that the goal does not name yet. */
    void addPrimary() {
        List<Metric> named = goal.get().primaries().stream().map(PrimaryMetric::metric).toList();
        Metric next = firstNot(named);
        goal.editOrSay("Add " + next.text() + " to the goal", now -> {
            List<PrimaryMetric> primaries = new ArrayList<>(now.primaries());
            primaries.add(PrimaryMetric.mean(next, usualDirection(next)));
            return now.withPrimaries(primaries);
        });
    }

    private static Metric firstNot(List<Metric> named) {
        return Arrays.stream(new Metric[] {Metric.FACE_ANGLE, Metric.CLUB_SPEED, Metric.OFFLINE, Metric.CARRY,
            Metric.CLUB_PATH}).filter(metric -> !named.contains(metric)).findFirst().orElse(Metric.FACE_ANGLE);
    }

    private void removePrimary(int index, String label) {
        goal.editOrSay(label, now -> {
            List<PrimaryMetric> primaries = new ArrayList<>(now.primaries());
            primaries.remove(index);
            return now.withPrimaries(primaries);
        });
    }

    List<GuardrailRow> guardrails() {
        List<GuardrailRow> rows = new ArrayList<>();
        for (int index = 0; index < goal.get().guardrails().size(); index++) {
            rows.add(guardrail(index));
        }
        return rows;
    }

    private GuardrailRow guardrail(int index) {
        Subject<Guardrail> guardrail = goal.element(index, Goal::guardrails, Goal::withGuardrails);
        Metric metric = guardrail.get().metric();
        String remove = "Remove the guardrail on " + metric.text();
        return new GuardrailRow(
                guardrail.choice("metric of a guardrail", Guardrail::metric, (now, chosen) -> usualGuardrail(chosen)),
                guardrail.choice("direction of the guardrail on " + metric.text(), Serves::of,
                        (now, serves) -> serves.applied(now)),
                guardrail.needed("most that may be lost of " + metric.text(), Quantity.of(metric), Guardrail::mostLoss,
                        Guardrail::withMostLoss),
                () -> removeGuardrail(index, remove), remove);
    }

    /** A guardrail that accepts no more than the smallest difference that matters. */
    private Guardrail usualGuardrail(Metric metric) {
        double smallest = workbench.session().get().smallestDifference(metric, workbench.settings().get());
        Direction usual = metric.defaultDirection(ClubKind.DRIVER);
        return Guardrail.mean(metric, usual == Direction.NOT_SCORED ? Direction.NEAR_TARGET : usual, null, smallest);
    }

    void addGuardrail() {
        goal.editOrSay("Add a guardrail", now -> {
            List<Guardrail> guardrails = new ArrayList<>(now.guardrails());
            guardrails.add(usualGuardrail(Metric.CARRY));
            return now.withGuardrails(guardrails);
        });
    }

    private void removeGuardrail(int index, String label) {
        goal.editOrSay(label, now -> {
            List<Guardrail> guardrails = new ArrayList<>(now.guardrails());
            guardrails.remove(index);
            return now.withGuardrails(guardrails);
        });
    }
}
