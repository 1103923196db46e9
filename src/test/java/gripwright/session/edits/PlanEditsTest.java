package gripwright.session.edits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gripwright.model.ClubKind;
import gripwright.model.ClubReading;
import gripwright.model.Configuration;
import gripwright.model.Goal;
import gripwright.model.Handedness;
import gripwright.model.Metric;
import gripwright.model.Plan;
import gripwright.model.Player;
import gripwright.model.SetClub;
import gripwright.model.Stint;
import gripwright.model.StintOrder;
import gripwright.model.TestClub;
import gripwright.units.Swingweight;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Configurations, orders, setup and the set are edited, and nothing that was hit can be removed by the way. */
class PlanEditsTest {

    private final Bay bay = new Bay();

    @Test
    void ordersFollowTheirRule() {
        assertThat(order(Plan.Order.IN_TURN, 2)).isEqualTo("ABCDABCD");
        assertThat(order(Plan.Order.FIRST_AGAIN, 1)).isEqualTo("ABCDA");
        assertThat(order(Plan.Order.MIRRORED, 2)).isEqualTo("ABCDDCBA");
        assertThat(order(Plan.Order.MIRRORED, 3)).isEqualTo("ABCDDCBAABCD");
        assertThat(order(Plan.Order.ROTATED, 3)).isEqualTo("ABCDBCDACDAB");
        assertThat(order(Plan.Order.BY_HAND, 2)).isEmpty();
        assertThat(StintOrder.of(Plan.usual(), List.of())).isEmpty();
    }

    @Test
    void aRandomOrderHoldsEachOncePerRoundAndComesAgainFromItsSeed() {
        String order = order(Plan.Order.RANDOM, 5);
        for (int round = 0; round < 5; round++) {
            assertThat(order.substring(4 * round, 4 * round + 4).toCharArray()).containsExactlyInAnyOrder('A', 'B', 'C', 'D');
        }
        assertThat(order(Plan.Order.RANDOM, 5)).isEqualTo(order);
        assertThat(order).isNotEqualTo(order(Plan.Order.IN_TURN, 5));
    }

    @Test
    void theTurnOfAMirroredOrderIsNoChangeOfGrip() {
        bay.apply(OrderEdits.makeOrder(Bay.TEST, Plan.usual()));
        assertThat(bay.queue()).isEqualTo("A B C C B A");
        assertThat(bay.test().stints()).extracting(Stint::changedBefore)
                .containsExactly(true, true, true, false, true, true);
        assertThat(bay.test().stints()).extracting(Stint::settlingSwings).containsExactly(1, 1, 1, 0, 1, 1);
        assertThat(bay.test().stints()).extracting(Stint::id).doesNotHaveDuplicates();
    }

    @Test
    void aNewOrderLeavesWhatWasBegun() {
        bay.started().hit("1");
        bay.apply(OrderEdits.makeOrder(Bay.TEST, Plan.usual().withOrder(Plan.Order.IN_TURN).withRounds(1)));
        assertThat(bay.queue()).isEqualTo("A A B C");
        assertThat(bay.ids(0)).containsExactly("1");
        assertThat(bay.test().stints().get(1).changedBefore()).isFalse();
        assertThat(bay.apply(OrderEdits.makeOrder(Bay.TEST, Plan.usual().withOrder(Plan.Order.BY_HAND)))).isTrue();
        assertThat(bay.queue()).isEqualTo("A A B C");
    }

    @Test
    void aWarmUpComesFirstWithTheReference() {
        bay.apply(PlanEdits.reference(bay.session(), Bay.TEST, "b"));
        bay.apply(OrderEdits.makeOrder(Bay.TEST, Plan.usual().withOrder(Plan.Order.IN_TURN).withRounds(1)
                .withWarmUpShots(4)));
        assertThat(bay.queue()).isEqualTo("B A B C");
        assertThat(bay.test().stints().get(0).kind()).isEqualTo(Stint.Kind.WARM_UP);
        assertThat(bay.test().stints().get(0).plannedShots()).isEqualTo(4);
        assertThat(bay.test().stints().get(0).settlingSwings()).isZero();
    }

    @Test
    void aQueueWithoutConfigurationsIsEmpty() {
        for (String id : List.of("a", "b", "c")) {
            bay.apply(PlanEdits.remove(bay.session(), Bay.TEST, id));
        }
        assertThat(bay.apply(OrderEdits.makeOrder(bay.session(), Bay.TEST))).isFalse();
        assertThat(bay.test().stints()).isEmpty();
    }

    @Test
    void stintsAreAddedMovedAndRemovedByHandBehindThoseBegun() {
        bay.started().hit("1");
        bay.apply(OrderEdits.add(bay.session(), Bay.TEST, "c", Stint.Kind.SCORED, 0));
        assertThat(bay.queue()).isEqualTo("A C B C C B A");
        assertThat(bay.test().plan().order()).isEqualTo(Plan.Order.BY_HAND);
        bay.apply(OrderEdits.move(bay.session(), Bay.TEST, bay.test().stints().get(6).id(), 1));
        assertThat(bay.queue()).isEqualTo("A A C B C C B");
        assertThat(bay.apply(OrderEdits.move(bay.session(), Bay.TEST, bay.test().stints().get(0).id(), 3))).isFalse();
        bay.apply(OrderEdits.remove(bay.session(), Bay.TEST, bay.test().stints().get(1).id()));
        assertThat(bay.queue()).isEqualTo("A C B C C B");
        String hit = bay.test().stints().get(0).id();
        assertThatThrownBy(() -> bay.apply(OrderEdits.remove(bay.session(), Bay.TEST, hit)))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("has shots");
        assertThat(bay.apply(OrderEdits.add(bay.session(), Bay.TEST, "gone", Stint.Kind.SCORED, 0))).isFalse();
        assertThat(bay.apply(OrderEdits.remove(bay.session(), Bay.TEST, "gone"))).isFalse();
    }

    @Test
    void aConfigurationGoesWithEverythingThatNamesIt() {
        bay.apply(OrderEdits.makeOrder(Bay.TEST, Plan.usual()));
        bay.apply(PlanEdits.reference(bay.session(), Bay.TEST, "b"));
        bay.apply(SetupEdits.advise("b"));
        bay.apply(SetupEdits.club(Bay.TEST, TestClub.named(ClubKind.IRON, "8-iron").withReadings(List.of(
                new ClubReading(new Swingweight(32), 50, null, null, "b", "")))));
        bay.apply(PlanEdits.remove(bay.session(), Bay.TEST, "b"));
        assertThat(bay.queue()).isEqualTo("A C C A");
        assertThat(bay.test().referenceId()).isNull();
        assertThat(bay.session().advisedConfigurationId()).isNull();
        assertThat(bay.test().club().readings().get(0).configurationId()).isNull();
        assertThat(bay.apply(PlanEdits.remove(bay.session(), Bay.TEST, "b"))).isFalse();
        assertThat(bay.store().undo()).contains("Remove configuration B");
        assertThat(bay.queue()).isEqualTo("A B C C B A");
    }

    @Test
    void aConfigurationThatWasHitStays() {
        bay.started().hit("1");
        assertThatThrownBy(() -> bay.apply(PlanEdits.remove(bay.session(), Bay.TEST, "a")))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("Configuration A has shots");
        assertThat(bay.test().configurations()).hasSize(3);
    }

    @Test
    void configurationsAreAddedChangedMovedAndMadeTheGamer() {
        Configuration fourth = Bay.configuration(3, Identities.newLabel(bay.test()))
                .withId(Identities.newConfiguration(bay.test()));
        bay.apply(PlanEdits.add(Bay.TEST, fourth));
        bay.apply(PlanEdits.change(Bay.TEST, fourth.withNote("softer")));
        bay.apply(PlanEdits.move(bay.session(), Bay.TEST, fourth.id(), 0));
        bay.apply(PlanEdits.gamer(bay.session(), Bay.TEST, fourth.id()));
        assertThat(bay.test().configurations()).extracting(Configuration::label).containsExactly("D", "A", "B", "C");
        assertThat(bay.test().configurations().get(0).note()).isEqualTo("softer");
        assertThat(bay.test().configurations()).filteredOn(Configuration::gamer).extracting(Configuration::label)
                .containsExactly("D");
        assertThat(bay.apply(PlanEdits.move(bay.session(), Bay.TEST, "gone", 0))).isFalse();
        assertThatThrownBy(() -> bay.apply(PlanEdits.add(Bay.TEST, fourth)))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("give each its own");
    }

    @Test
    void labelsGoOnBehindTheAlphabet() {
        for (int index = 3; index < 26; index++) {
            bay.apply(PlanEdits.add(Bay.TEST, Bay.configuration(index, Identities.newLabel(bay.test()))));
        }
        assertThat(bay.test().configurations().get(25).label()).isEqualTo("Z");
        assertThat(Identities.newLabel(bay.test())).isEqualTo("A1");
    }

    @Test
    void setupIsEdited() {
        bay.apply(SetupEdits.player(Player.named("Invented", Handedness.LEFT)));
        bay.apply(SetupEdits.goal(Goal.open().withSentence("steadier")));
        bay.apply(SetupEdits.ball("range ball"));
        bay.apply(SetupEdits.glove("new"));
        bay.apply(SetupEdits.place("bay 2"));
        bay.apply(SetupEdits.note("n"));
        bay.apply(SetupEdits.smallestDifference(Metric.CARRY, 3.0));
        assertThat(bay.session().player().hand()).isEqualTo(Handedness.LEFT);
        assertThat(bay.session().smallestDifferences()).containsEntry(Metric.CARRY, 3.0);
        bay.apply(SetupEdits.smallestDifference(Metric.CARRY, null));
        assertThat(bay.session().smallestDifferences()).isEmpty();
        assertThat(List.of(bay.session().ball(), bay.session().glove(), bay.session().place(), bay.session().note()))
                .containsExactly("range ball", "new", "bay 2", "n");
    }

    @Test
    void testsComeAndGo() {
        bay.apply(SetupEdits.addTest(TestClub.named(ClubKind.DRIVER, "driver")));
        bay.apply(SetupEdits.addTest(TestClub.named(ClubKind.WEDGE, "wedge")));
        assertThatThrownBy(() -> bay.apply(SetupEdits.addTest(TestClub.named(ClubKind.IRON, "4-iron"))))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("one to three tests");
        bay.apply(SetupEdits.removeTest(bay.session(), "test-2"));
        assertThat(bay.session().tests()).extracting(test -> test.club().name()).containsExactly("8-iron", "wedge");
        bay.started().hit("1");
        assertThatThrownBy(() -> bay.apply(SetupEdits.removeTest(bay.session(), Bay.TEST)))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("has shots");
    }

    @Test
    void theSetIsEdited() {
        bay.apply(SetEdits.add(SetClub.named("set-1", "9-iron", ClubKind.IRON)));
        bay.apply(SetEdits.add(SetClub.named("set-1", "wedge", ClubKind.WEDGE)));
        assertThat(bay.session().set()).extracting(SetClub::id).containsExactly("set-1", "set-2");
        bay.apply(SetEdits.move(bay.session(), "set-2", 0));
        bay.apply(SetEdits.change(bay.session().set().get(0).withNote("bent")));
        assertThat(bay.session().set()).extracting(SetClub::name).containsExactly("wedge", "9-iron");
        bay.apply(SetEdits.remove(bay.session(), "set-1"));
        assertThat(bay.session().set()).extracting(SetClub::note).containsExactly("bent");
        assertThat(bay.apply(SetEdits.remove(bay.session(), "set-9"))).isFalse();
    }

    private static String order(Plan.Order order, int rounds) {
        return String.join("", StintOrder.of(Plan.usual().withOrder(order).withRounds(rounds),
                List.of("A", "B", "C", "D")));
    }
}
