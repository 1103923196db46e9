package gripwright.desktop.plan;

import gripwright.charts.Mark;
import gripwright.desktop.support.Choice;
import gripwright.desktop.support.NumberEntry;
import gripwright.desktop.support.Subject;
import gripwright.desktop.support.Words;
import gripwright.desktop.support.Workbench;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.PhysicalClub;
import gripwright.model.Plan;
import gripwright.model.Stint;
import gripwright.session.edits.OrderEdits;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.value.ObservableValue;

/** The order of the stints: made by a rule or by hand, and the clubs that the configurations are on. */
public final class OrderViewModel {

    private final Workbench workbench;
    private final Subject<ClubTest> test;
    private final Subject<Plan> plan;

    OrderViewModel(Workbench workbench) {
        this.workbench = workbench;
        test = Subject.test(workbench);
        plan = test.part(ClubTest::plan, ClubTest::withPlan);
    }

    /** One stint of the queue at a glance: its mark, and what it is and where it stands. */
    record Cell(Mark mark, String words) {
    }

    /** One stint that is still planned, as fields and actions. */
    record Row(int number, Mark mark, Choice<Stint.Kind> kind, NumberEntry shots, NumberEntry settling,
            Choice<Boolean> changedBefore, boolean repeats, Runnable up, Runnable down, Runnable remove) {
    }

    /** One physical club as fields. */
    record ClubRow(gripwright.desktop.support.TextEntry name, Choice<PhysicalClub.Mounting> mounting, Runnable remove,
            String what) {
    }

    Choice<Plan.Order> order() {
        return plan.choice("order of the stints", Plan::order, Plan::withOrder);
    }

    static String text(Plan.Order order) {
        return switch (order) {
            case BY_HAND -> "by hand";
            case IN_TURN -> "in turn: ABC ABC";
            case FIRST_AGAIN -> "first again at the end: ABC A";
            case MIRRORED -> "there and back: ABC CBA";
            case ROTATED -> "rotated: ABC BCA CAB";
            case RANDOM -> "random in each round";
        };
    }

    NumberEntry shotsPerStint() {
        return plan.count("shots per stint", Plan::shotsPerStint, Plan::withShotsPerStint);
    }

    NumberEntry settlingSwings() {
        return plan.count("settling swings", Plan::settlingSwings, Plan::withSettlingSwings);
    }

    NumberEntry warmUpShots() {
        return plan.count("warm-up shots", Plan::warmUpShots, Plan::withWarmUpShots);
    }

    NumberEntry rounds() {
        return plan.count("rounds", Plan::rounds, Plan::withRounds);
    }

    NumberEntry seed() {
        return plan.count("seed", now -> (int) now.seed(), (now, seed) -> now.withSeed(seed));
    }

    ObservableValue<Boolean> isRandom() {
        return plan.value().map(now -> now.order() == Plan.Order.RANDOM);
    }

    /** Whether an order can be made: there is a rule, and something to order. */
    ObservableValue<Boolean> mayMake() {
        return test.value().map(now -> now.plan().order() != Plan.Order.BY_HAND && !now.configurations().isEmpty());
    }

    /** Replaces what is planned by the rule's order; stints already begun stay. */
    void make() {
        workbench.applyOrSay(OrderEdits.makeOrder(workbench.session().get(), test.get().id()));
    }

    List<Configuration> configurations() {
        return test.get().configurations();
    }

    /** Adds a stint at the end, for a retest or an order by hand. */
    void add(Configuration configuration, Stint.Kind kind) {
        workbench.applyOrSay(OrderEdits.add(workbench.session().get(), test.get().id(), configuration.id(), kind,
                test.get().stints().size()));
    }

    /** Changes when rows have to be made anew. */
    ObservableValue<List<Object>> shape() {
        return test.value().map(now -> {
            List<Object> shape = new ArrayList<>();
            now.stints().forEach(stint -> shape.addAll(List.of(stint.id(), stint.state(), stint.configurationId())));
            now.configurations().forEach(one -> shape.add(Mark.of(one)));
            return shape;
        });
    }

    /** The order at a glance: every stint, hit or planned, in order. */
    ObservableValue<List<Cell>> cells() {
        return test.value().map(now -> now.stints().stream().map(stint -> new Cell(mark(stint), words(stint))).toList());
    }

    private Mark mark(Stint stint) {
        return Mark.of(test.get().configuration(stint.configurationId()).orElseThrow());
    }

    private static String words(Stint stint) {
        int shots = stint.shots().size();
        String kind = stint.kind() == Stint.Kind.SCORED ? "" : text(stint.kind()) + ", ";
        return kind + switch (stint.state()) {
            case PLANNED -> stint.plannedShots() + " planned";
            case IN_HAND -> "in hand, " + shots + " of " + (stint.plannedShots() + stint.settlingSwings());
            case DONE -> stint.kind() == Stint.Kind.SCORED ? stint.scoredShots().size() + " of " + shots + " count"
                    : shots + " hit";
        };
    }

    /** The stints that are still planned; those that were begun are the bay's. */
    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (int index = 0; index < test.get().stints().size(); index++) {
            if (test.get().stints().get(index).state() == Stint.State.PLANNED) {
                rows.add(row(index));
            }
        }
        return rows;
    }

    private Row row(int index) {
        Subject<Stint> stint = test.element(index, ClubTest::stints, ClubTest::withStints);
        Stint now = stint.get();
        String name = "stint " + (index + 1);
        String testId = test.get().id();
        boolean repeats = index > 0
                && test.get().stints().get(index - 1).configurationId().equals(now.configurationId());
        return new Row(index + 1, mark(now),
                stint.choice("kind of " + name, Stint::kind, Stint::withKind),
                stint.count("shots of " + name, Stint::plannedShots, Stint::withPlannedShots),
                stint.count("settling swings of " + name, Stint::settlingSwings, Stint::withSettlingSwings),
                stint.choice("grip changed before " + name, Stint::changedBefore, Stint::withChangedBefore), repeats,
                () -> move(testId, now.id(), index - 1), () -> move(testId, now.id(), index + 1),
                () -> workbench.applyOrSay(OrderEdits.remove(workbench.session().get(), testId, now.id())));
    }

    private void move(String testId, String stintId, int to) {
        if (to >= 0 && to < test.get().stints().size()) {
            workbench.applyOrSay(OrderEdits.move(workbench.session().get(), testId, stintId, to));
        }
    }

    ObservableValue<Integer> clubCount() {
        return test.value().map(now -> now.physicalClubs().size());
    }

    List<ClubRow> clubs() {
        List<ClubRow> rows = new ArrayList<>();
        for (int index = 0; index < test.get().physicalClubs().size(); index++) {
            Subject<PhysicalClub> club = test.element(index, ClubTest::physicalClubs, ClubTest::withPhysicalClubs);
            String what = "Remove " + club.get().name();
            String id = club.get().id();
            rows.add(new ClubRow(club.text("name of a club", PhysicalClub::name, PhysicalClub::withName),
                    club.choice("mounting of " + club.get().name(), PhysicalClub::mounting, PhysicalClub::withMounting),
                    () -> removeClub(id, what), what));
        }
        return rows;
    }

    static String text(PhysicalClub.Mounting mounting) {
        return switch (mounting) {
            case BLOWN_ON -> "grips blown on and off";
            case TWIN -> "twin, its own grip on";
            case CONNECTOR -> "shaft on a connector";
        };
    }

    void addClub() {
        List<PhysicalClub> clubs = test.get().physicalClubs();
        int number = clubs.size() + 1;
        while (taken(clubs, "club-" + number)) {
            number++;
        }
        PhysicalClub club = new PhysicalClub("club-" + number, "club " + number,
                clubs.isEmpty() ? PhysicalClub.Mounting.BLOWN_ON : PhysicalClub.Mounting.TWIN);
        test.editOrSay("Add " + club.name(), now -> {
            List<PhysicalClub> more = new ArrayList<>(now.physicalClubs());
            more.add(club);
            return now.withPhysicalClubs(more);
        });
    }

    private static boolean taken(List<PhysicalClub> clubs, String id) {
        return clubs.stream().anyMatch(club -> club.id().equals(id));
    }

    /** Takes a club away; configurations that were on it are on no said club then. */
    private void removeClub(String id, String label) {
        test.editOrSay(label, now -> now
                .withPhysicalClubs(now.physicalClubs().stream().filter(club -> !club.id().equals(id)).toList())
                .withConfigurations(now.configurations().stream().map(one ->
                        id.equals(one.physicalClubId()) ? one.withPhysicalClubId(null) : one).toList()));
    }

    static String text(Stint.Kind kind) {
        return kind == Stint.Kind.WARM_UP ? "warm-up" : Words.of(kind);
    }
}
