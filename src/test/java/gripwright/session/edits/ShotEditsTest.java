package gripwright.session.edits;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.model.Metric;
import gripwright.model.Readings;
import gripwright.model.Shot;
import gripwright.session.Edit;
import org.junit.jupiter.api.Test;

/** Shots that were taken in are corrected, moved and deleted, each with a name that undo can say. */
class ShotEditsTest {

    private final Bay bay = new Bay();

    @Test
    void aShotMovesToAnotherStintAndOutOfTheTray() {
        bay.hit("early").started().hit("one", "two");
        String second = bay.test().stints().get(1).id();
        Edit move = ShotEdits.move(bay.session(), "one", Bay.TEST, second);
        assertThat(move.label()).isEqualTo("Move shot 1 to stint 2 (B)");
        bay.apply(move);
        bay.apply(ShotEdits.move(bay.session(), "early", Bay.TEST, second));
        assertThat(bay.ids(0)).containsExactly("two");
        assertThat(bay.ids(1)).containsExactly("one", "early");
        assertThat(bay.session().tray()).isEmpty();
    }

    @Test
    void nothingMovesToWhereItIsOrWhereNothingIs() {
        bay.started().hit("one");
        String first = bay.test().stints().get(0).id();
        assertThat(bay.apply(ShotEdits.move(bay.session(), "one", Bay.TEST, first))).isFalse();
        assertThat(bay.apply(ShotEdits.move(bay.session(), "one", Bay.TEST, "gone"))).isFalse();
        assertThat(bay.apply(ShotEdits.move(bay.session(), "gone", Bay.TEST, first))).isFalse();
        assertThat(bay.apply(ShotEdits.delete(bay.session(), "gone"))).isFalse();
    }

    @Test
    void readingsAreCorrected() {
        bay.started().hit("one", "two");
        Edit correct = ShotEdits.correct(bay.session(), "two", Readings.of(Metric.CARRY, 131));
        assertThat(correct.label()).isEqualTo("Correct the readings of shot 2");
        bay.apply(correct);
        Shot two = bay.test().stints().get(0).shots().get(1);
        assertThat(two.readings().given(Metric.CARRY)).hasValue(131);
        assertThat(two.readings().given(Metric.CLUB_SPEED)).isEmpty();
    }

    @Test
    void deletingIsTakenBackByUndo() {
        bay.started().hit("one", "two");
        bay.apply(ShotEdits.delete(bay.session(), "one"));
        assertThat(bay.ids(0)).containsExactly("two");
        assertThat(bay.store().undo()).contains("Delete shot 1");
        assertThat(bay.ids(0)).containsExactly("one", "two");
    }

    @Test
    void newNamesAreFree() {
        bay.started().hit("shot-3", "other-7", "shot-x");
        assertThat(Identities.newShot(bay.session())).isEqualTo("shot-4");
        assertThat(Identities.newStint(bay.test())).isEqualTo("stint-7");
        assertThat(Identities.newConfiguration(bay.test())).isEqualTo("configuration-1");
        assertThat(Identities.newTest(bay.session())).isEqualTo("test-2");
    }
}
