package gripwright.session.edits;

import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Plan;
import gripwright.model.Session;
import gripwright.model.Stint;
import gripwright.model.StintOrder;
import gripwright.session.Edit;
import java.util.ArrayList;
import java.util.List;

/** What can be done with the planned stints before they are hit: an order made from the plan, or one by hand. */
public final class OrderEdits {

    private OrderEdits() {
    }

    /**
     * Replaces all planned stints by the order of the plan; stints that were begun stay.
     *
     * <p>A warm-up stint with the reference comes first where the plan wants one and nothing was hit yet. A stint that
     * follows one of the same configuration is planned without a change in between, so without settling swings, and the
     * two count as one until the fitter says that the grip was changed. An order by hand is left alone.
     */
    public static Edit makeOrder(Session before, String testId) {
        return new Edit("Make the order of the stints", session -> Places.changeTest(session, testId, test ->
                test.plan().order() == Plan.Order.BY_HAND ? test : ordered(test)));
    }

    /** The plan changed and its order made, as one step. */
    public static Edit makeOrder(String testId, Plan plan) {
        return new Edit("Make the order of the stints", session -> {
            Session planned = Places.changeTest(session, testId, test -> test.withPlan(plan));
            return makeOrder(planned, testId).change().apply(planned);
        });
    }

    /**
     * One more planned stint with the plan's shots and settling swings.
     *
     * @param toIndex its place among all stints; one before or between stints that were begun becomes the next
     */
    public static Edit add(Session before, String testId, String configurationId, Stint.Kind kind, int toIndex) {
        return new Edit("Add a stint of " + Places.label(before, testId, configurationId),
                session -> Places.changeTest(session, testId, test -> {
                    if (test.configuration(configurationId).isEmpty()) {
                        return test;
                    }
                    Stint stint = planned(test, Identities.newStint(test), configurationId, kind);
                    int place = Math.max(toIndex, firstPlanned(test));
                    return byHand(test, Places.inserted(test.stints(), place, stint));
                }));
    }

    /** Takes a stint without shots out of the queue. The edit throws when the stint has shots. */
    public static Edit remove(Session before, String testId, String stintId) {
        return new Edit("Remove " + Places.stintName(before, testId, stintId),
                session -> Places.changeTest(session, testId, test -> test.stint(stintId).map(stint -> {
                    if (!stint.shots().isEmpty()) {
                        throw new IllegalArgumentException("This stint has shots; move or delete them before it is "
                                + "removed, or leave it and set them aside.");
                    }
                    return byHand(test, test.stints().stream().filter(one -> one != stint).toList());
                }).orElse(test)));
    }

    /** Moves a planned stint within the queue; it stays behind those that were begun. */
    public static Edit move(Session before, String testId, String stintId, int toIndex) {
        return new Edit("Move " + Places.stintName(before, testId, stintId),
                session -> Places.changeTest(session, testId, test -> test.stint(stintId)
                        .filter(stint -> stint.state() == Stint.State.PLANNED)
                        .map(stint -> byHand(test, Places.moved(test.stints(), test.stints().indexOf(stint),
                                Math.max(toIndex, firstPlanned(test))))).orElse(test)));
    }

    private static ClubTest byHand(ClubTest test, List<Stint> stints) {
        return test.withStints(stints).withPlan(test.plan().withOrder(Plan.Order.BY_HAND));
    }

    private static ClubTest ordered(ClubTest test) {
        List<Stint> stints = new ArrayList<>(test.stints().stream()
                .filter(stint -> stint.state() != Stint.State.PLANNED || !stint.shots().isEmpty()).toList());
        ClubTest begun = test.withStints(stints);
        if (stints.isEmpty() && test.plan().warmUpShots() > 0 && test.reference().isPresent()) {
            stints.add(Stint.planned(Identities.newStint(begun), test.reference().get().id(), Stint.Kind.WARM_UP,
                    test.plan().warmUpShots(), 0));
        }
        List<String> order = StintOrder.of(test.plan(),
                test.configurations().stream().map(Configuration::id).toList());
        for (String configurationId : order) {
            String id = Identities.newStint(test.withStints(stints));
            Stint stint = planned(test, id, configurationId, Stint.Kind.SCORED);
            boolean sameAgain = !stints.isEmpty()
                    && stints.get(stints.size() - 1).configurationId().equals(configurationId);
            stints.add(sameAgain ? stint.withChangedBefore(false).withSettlingSwings(0) : stint);
        }
        return test.withStints(stints);
    }

    private static Stint planned(ClubTest test, String id, String configurationId, Stint.Kind kind) {
        return kind == Stint.Kind.WARM_UP && test.plan().warmUpShots() > 0
                ? Stint.planned(id, configurationId, kind, test.plan().warmUpShots(), 0)
                : Stint.planned(id, configurationId, kind, test.plan().shotsPerStint(),
                        kind == Stint.Kind.SCORED ? test.plan().settlingSwings() : 0);
    }

    /** The place of the first planned stint: behind all that were begun. */
    private static int firstPlanned(ClubTest test) {
        int index = 0;
        for (int place = 0; place < test.stints().size(); place++) {
            if (test.stints().get(place).state() != Stint.State.PLANNED) {
                index = place + 1;
            }
        }
        return index;
    }
}
