package gripwright.desktop.support;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.session.Edit;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import org.junit.jupiter.api.Test;

class WorkbenchTest {

    private static Edit ball(String ball) {
        return new Edit("Set ball to " + ball, session -> session.withBall(ball));
    }

    private static ShopEdit shopName(String name) {
        return ShopEdit.settings("Set shop name to " + name, settings -> settings.withShopName(name));
    }

    @Test
    void undoTakesBackWhatWasDoneLastInSessionOrShop() {
        Workbench workbench = Workbenches.blank();
        workbench.apply(ball("one"));
        workbench.apply(shopName("Bench"));
        workbench.apply(ball("two"));

        List<String> undone = new ArrayList<>();
        while (!workbench.undoLabel().get().isEmpty()) {
            undone.add(workbench.undoLabel().get());
            workbench.undo();
        }
        assertThat(undone).containsExactly("Set ball to two", "Set shop name to Bench", "Set ball to one");
        assertThat(workbench.session().get().ball()).isEmpty();
        assertThat(workbench.settings().get().shopName()).isEmpty();

        workbench.redo();
        workbench.redo();
        workbench.redo();
        assertThat(workbench.session().get().ball()).isEqualTo("two");
        assertThat(workbench.settings().get().shopName()).isEqualTo("Bench");
        assertThat(workbench.redoLabel().get()).isEmpty();
    }

    @Test
    void aNewEditForgetsWhatWasUndone() {
        Workbench workbench = Workbenches.blank();
        workbench.apply(ball("one"));
        workbench.undo();
        workbench.apply(shopName("Bench"));
        assertThat(workbench.redoLabel().get()).isEmpty();
        workbench.redo();
        assertThat(workbench.session().get().ball()).isEmpty();
    }

    @Test
    void editsOnTheStoreItselfStandInTheSameLineOfUndo() {
        Workbench workbench = Workbenches.blank();
        workbench.apply(shopName("Bench"));
        workbench.store().apply(ball("one"));
        assertThat(workbench.undoLabel().get()).isEqualTo("Set ball to one");
        workbench.undo();
        assertThat(workbench.undoLabel().get()).isEqualTo("Set shop name to Bench");
    }

    @Test
    void theLookStaysWhereItIsWhenAnEarlierEditIsUndone() {
        Workbench workbench = Workbenches.blank();
        workbench.apply(shopName("Bench"));
        workbench.switchLook();
        workbench.undo();
        assertThat(workbench.settings().get().shopName()).isEmpty();
        assertThat(workbench.settings().get().dark()).isTrue();
    }

    @Test
    void anEditThatCannotBeSaysWhyAndChangesNothing() {
        Workbench workbench = Workbenches.blank();
        long before = workbench.revision().get();
        assertThat(workbench.apply(new Edit("Forget all tests", session -> session.withTests(List.of()))))
                .hasValueSatisfying(sentence -> assertThat(sentence).contains("one to three tests"));
        assertThat(workbench.revision().get()).isEqualTo(before);
    }

    @Test
    void openingAnotherSessionForgetsTheHistoryAndShowsItsFirstTest() {
        Workbench workbench = Workbenches.on(DemoSessions.leftHanded());
        workbench.selectTest("test-2");
        assertThat(workbench.test().get().id()).isEqualTo("test-2");
        workbench.apply(ball("one"));
        assertThat(workbench.test().get().id()).isEqualTo("test-2");

        workbench.open(WorkbenchServices.Opened.fresh(DemoSessions.leftHanded()));
        assertThat(workbench.test().get().id()).isEqualTo("test-1");
        assertThat(workbench.undoLabel().get()).isEmpty();
    }

    @Test
    void aDerivedValueDropsWhatIsStaleAndEndsWithTheNewest() {
        Queue<Runnable> background = new ArrayDeque<>();
        Workbench workbench = new Workbench(InMemoryServices.blank(), background::add, Runnable::run);
        Derived<String> ball = workbench.derive(snapshot -> snapshot.session().ball());
        List<String> seen = new ArrayList<>();
        ball.value().addListener((observed, before, now) -> seen.add(now));
        background.remove().run();
        seen.clear();

        workbench.apply(ball("one"));
        workbench.apply(ball("two"));
        workbench.apply(ball("three"));
        assertThat(ball.computing().get()).isTrue();
        assertThat(background).hasSize(1);
        background.remove().run();
        assertThat(seen).isEmpty();
        background.remove().run();
        assertThat(seen).containsExactly("three");
        assertThat(ball.computing().get()).isFalse();
        assertThat(background).isEmpty();
    }

    @Test
    void aDerivedValueThatCannotBeWorkedOutSaysWhyUntilItCan() {
        Workbench workbench = Workbenches.blank();
        Derived<String> ball = workbench.derive(snapshot -> {
            if (snapshot.session().ball().isEmpty()) {
                throw new IllegalStateException("Name a ball first.");
            }
            return snapshot.session().ball();
        });
        assertThat(ball.problem().get()).isEqualTo("Name a ball first.");
        workbench.apply(ball("one"));
        assertThat(ball.problem().get()).isEmpty();
        assertThat(ball.value().get()).isEqualTo("one");
    }

    @Test
    void whyAnEditCouldNotBeIsLeftBehindInItsPlace() {
        Workbench workbench = Workbenches.blank();
        workbench.applyOrSay(new gripwright.session.Edit("Refused", session -> {
            throw new IllegalArgumentException("This can't be.");
        }));
        assertThat(workbench.message().get().text()).isEqualTo("This can't be.");
        workbench.place().set(PlaceKey.COMPARE);
        assertThat(workbench.message().get().text()).isEmpty();
        workbench.sayProblem("The settings can't be kept.");
        workbench.place().set(PlaceKey.SETUP);
        assertThat(workbench.message().get().text()).isEqualTo("The settings can't be kept.");
    }
}
