package gripwright.desktop.balance;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.desktop.TestWindow;
import gripwright.desktop.support.DemoSessions;
import gripwright.desktop.support.InMemoryServices;
import gripwright.desktop.support.PlaceKey;
import javafx.scene.Node;
import javafx.scene.control.ListView;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** Balance by keyboard alone, in the real window. */
class BalancePlaceTest {

    @Test
    void theSolverIsReachedAndUsedByKeyboard() {
        try (TestWindow window = TestWindow.open(
                new InMemoryServices(DemoSessions.leftHanded(), DemoSessions.shop()))) {
            window.onWindow(() -> {
                window.workbench().place().set(PlaceKey.BALANCE);
                return null;
            });
            window.waitUntil("the list has the focus", () -> focus(window) instanceof ListView<?>);
            window.robot().type(KeyCode.DOWN, KeyCode.DOWN);
            window.waitUntil("the solver", () -> lookup(window, "#wanted") != null);
            tabTo(window, "wanted");
            window.robot().type(KeyCode.DELETE).write("D4").type(KeyCode.ENTER);
            window.waitUntil("the slider follows",
                    () -> Math.abs(((Slider) lookup(window, "#wantedSlider")).getValue() - 34) < 0.01);
            tabTo(window, "wantedSlider");
            window.robot().type(KeyCode.RIGHT);
            window.waitUntil("the typed value follows",
                    () -> ((TextField) lookup(window, "#wanted")).getText().equals("D4.5"));
        }
    }

    @Test
    void theSetIsStartedFromItsEmptyState() {
        try (TestWindow window = TestWindow.openBlank()) {
            window.onWindow(() -> {
                window.workbench().place().set(PlaceKey.BALANCE);
                return null;
            });
            window.waitUntil("the list has the focus", () -> focus(window) instanceof ListView<?>);
            window.robot().type(KeyCode.END);
            window.waitUntil("the empty set", () -> lookup(window, "#usualSet") != null);
            tabTo(window, "usualSet");
            window.robot().type(KeyCode.SPACE);
            window.waitUntil("the set", () -> window.workbench().session().get().set().size() == 11);
            assertThat(window.workbench().undoLabel().get()).isEqualTo("Start with a usual set");
        }
    }

    private static void tabTo(TestWindow window, String id) {
        for (int step = 0; step < 20; step++) {
            Node focused = window.onWindow(() -> focus(window));
            if (focused != null && id.equals(focused.getId())) {
                return;
            }
            window.robot().type(KeyCode.TAB);
            window.settle();
        }
        throw new AssertionError("Tab does not reach " + id);
    }

    private static Node focus(TestWindow window) {
        return window.window().scene().getFocusOwner();
    }

    private static Node lookup(TestWindow window, String selector) {
        return window.window().scene().getRoot().lookup(selector);
    }
}
