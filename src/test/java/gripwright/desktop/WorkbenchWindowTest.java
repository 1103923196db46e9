package gripwright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.desktop.support.PlaceKey;
import gripwright.session.Edit;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class WorkbenchWindowTest {

    private TestWindow window;

    @BeforeEach
    void open() {
        window = TestWindow.openBlank();
    }

    @AfterEach
    void close() {
        window.close();
    }

    private PlaceKey shown() {
        return window.onWindow(() -> window.window().shown().key());
    }

    private String text(String id) {
        return window.onWindow(() -> {
            var node = window.window().scene().lookup(id);
            return node instanceof Button button ? button.getText() : ((Label) node).getText();
        });
    }

    @Test
    void altAndADigitGoToEachOfTheSevenPlaces() {
        for (PlaceKey place : PlaceKey.values()) {
            window.robot().press(KeyCode.ALT).type(KeyCode.getKeyCode(String.valueOf(place.digit())))
                    .release(KeyCode.ALT);
            window.settle();
            assertThat(shown()).isEqualTo(place);
        }
    }

    @Test
    void undoSaysWhatItWouldTakeBackAndTakesIt() {
        window.onWindow(() -> window.workbench().apply(new Edit("Set ball", session -> session.withBall("two-piece"))));
        assertThat(text("#undo")).isEqualTo("Undo: Set ball");

        window.robot().press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
        window.settle();

        assertThat(window.onWindow(() -> window.workbench().session().get().ball())).isEmpty();
        assertThat(text("#undo")).isEqualTo("Undo");
        assertThat(text("#redo")).isEqualTo("Redo: Set ball");
        assertThat(text("#message")).isEqualTo("Undone: Set ball");

        window.robot().press(KeyCode.CONTROL).press(KeyCode.SHIFT).type(KeyCode.Z)
                .release(KeyCode.SHIFT).release(KeyCode.CONTROL);
        window.settle();
        assertThat(window.onWindow(() -> window.workbench().session().get().ball())).isEqualTo("two-piece");
    }

    @Test
    void theOverlayShowsAllKeysAndEscapeClosesIt() {
        var overlay = window.onWindow(() -> window.window().scene().lookup("#keys-overlay"));
        window.robot().type(KeyCode.F1);
        window.settle();
        assertThat(window.onWindow(overlay::isVisible)).isTrue();
        window.robot().type(KeyCode.ESCAPE);
        window.settle();
        assertThat(window.onWindow(overlay::isVisible)).isFalse();
    }

    @Test
    void theDemoSessionSaysThatItIsInvented() {
        var sign = window.onWindow(() -> window.window().scene().lookup("#invented-sign"));
        assertThat(window.onWindow(sign::isVisible)).isFalse();
        window.onWindow(() -> {
            window.workbench().open(window.workbench().services().demo());
            return null;
        });
        assertThat(window.onWindow(sign::isVisible)).isTrue();
    }

    @Test
    void theLookIsKeptAndIsNoStepOfUndo() {
        window.onWindow(() -> {
            window.workbench().switchLook();
            return null;
        });
        assertThat(window.onWindow(() -> window.workbench().services().shop().settings().dark())).isTrue();
        assertThat(text("#undo")).isEqualTo("Undo");
    }
}
