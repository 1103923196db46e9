package gripwright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.desktop.support.DemoSessions;
import gripwright.desktop.support.InMemoryServices;
import gripwright.desktop.support.PlaceKey;
import gripwright.desktop.support.ShopEdit;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Typing, Tab, focus and clicks in the real window. */
class TypingTest {

    private TestWindow window;

    @BeforeEach
    void open() {
        window = TestWindow.open(new InMemoryServices(InMemoryServices.blank().first().session(), DemoSessions.shop()));
    }

    @AfterEach
    void close() {
        window.close();
    }

    private TextField field(String accessibleText) {
        return window.onWindow(() -> (TextField) window.window().scene().getRoot().lookupAll(".text-field").stream()
                .filter(node -> accessibleText.equals(node.getAccessibleText())).findFirst().orElseThrow());
    }

    private void focus(Node node) {
        window.onWindow(() -> {
            node.requestFocus();
            return null;
        });
        window.settle();
    }

    private void type(TextField field, String text) {
        focus(field);
        window.onWindow(() -> {
            field.selectAll();
            return null;
        });
        window.robot().write(text);
        window.settle();
    }

    private void press(KeyCode... keys) {
        window.robot().push(keys);
        window.settle();
    }

    private String text(TextInputControl input) {
        return window.onWindow(input::getText);
    }

    private Double handLength() {
        return window.onWindow(() -> window.workbench().session().get().player().handLengthMm());
    }

    private PlaceKey shown() {
        return window.onWindow(() -> window.window().shown().key());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {". | 7.5 | 7.50", ", | 7,5 | 7,50", ", | 7.5 | 7,50"})
    void enterKeepsANumberInTheShopsUnitUnderEitherDecimalMark(char mark, String typed, String shown) {
        window.onWindow(() -> window.workbench().apply(
                ShopEdit.settings("Set decimal mark", settings -> settings.withDecimalMark(mark))));
        TextField hand = field("hand length");
        type(hand, typed);
        press(KeyCode.ENTER);
        assertThat(handLength()).isEqualTo(190.5);
        assertThat(text(hand)).isEqualTo(shown);
    }

    @Test
    void tabKeepsWhatIsTypedAndGoesToTheNextField() {
        type(field("hand length"), "7.5");
        press(KeyCode.TAB);
        assertThat(handLength()).isEqualTo(190.5);
        assertThat((String) window.onWindow(() -> window.window().scene().getFocusOwner().getAccessibleText()))
                .isEqualTo("longest finger");
    }

    @Test
    void whatIsNoNumberSaysSoBesideTheFieldAndEscapePutsBack() {
        TextField hand = field("hand length");
        type(hand, "7.5");
        press(KeyCode.ENTER);
        type(hand, "seven");
        press(KeyCode.ENTER);
        assertThat(handLength()).isEqualTo(190.5);
        Node problem = window.onWindow(() -> hand.getParent().getParent().lookup(".gw-problem"));
        assertThat(window.onWindow(problem::isVisible)).isTrue();
        press(KeyCode.ESCAPE);
        assertThat(text(hand)).isEqualTo("7.50");
        assertThat(window.onWindow(problem::isVisible)).isFalse();
    }

    @Test
    void aBareDigitIsTypedWhereTypingIsTakenAndGoesToAPlaceElsewhere() {
        TextField hand = field("hand length");
        type(hand, "2");
        assertThat(shown()).isEqualTo(PlaceKey.SETUP);
        assertThat(text(hand)).isEqualTo("2");
        press(KeyCode.ESCAPE);
        focus(window.onWindow(() -> window.window().scene().lookup("#imperial")));
        press(KeyCode.DIGIT2);
        assertThat(shown()).isEqualTo(PlaceKey.PLAN);
    }

    @Test
    void leavingThePlaceKeepsWhatWasTyped() {
        type(field("hand length"), "7.5");
        press(KeyCode.ALT, KeyCode.DIGIT2);
        assertThat(shown()).isEqualTo(PlaceKey.PLAN);
        assertThat(handLength()).isEqualTo(190.5);
    }

    @Test
    void undoInAFieldBelongsToTheTextUntilItIsKeptAndToTheSessionAfter() {
        TextField hand = field("hand length");
        type(hand, "7.5");
        press(KeyCode.ENTER);
        press(KeyCode.CONTROL, KeyCode.Z);
        assertThat(handLength()).isNull();
        assertThat(text(hand)).isEmpty();
    }

    @Test
    void aClickOnAButtonIsAnEditThatUndoNames() {
        Button metric = window.onWindow(() -> (Button) window.window().scene().lookup("#metric"));
        window.onWindow(() -> {
            metric.fire();
            return null;
        });
        assertThat((String) window.onWindow(() -> ((Button) window.window().scene().lookup("#undo")).getText()))
                .isEqualTo("Undo: Set all units to metric");
        window.robot().clickOn("#undo");
        window.settle();
        assertThat((String) window.onWindow(() -> window.workbench().undoLabel().get())).isEmpty();
    }

    @Test
    void theHandIsChosenByKeyboardAlone() {
        focus(window.onWindow(() -> window.window().scene().getRoot().lookupAll(".toggle-button").stream()
                .filter(node -> "hand: left-handed".equals(node.getAccessibleText())).findFirst().orElseThrow()));
        press(KeyCode.SPACE);
        assertThat((String) window.onWindow(() -> window.workbench().session().get().player().hand().text()))
                .isEqualTo("left-handed");
    }

    @Test
    void aGripIsAddedToTheStockListFromTheKeyboard() {
        press(KeyCode.ALT, KeyCode.DIGIT2);
        TextInputControl name = window.onWindow(
                () -> (TextInputControl) window.window().scene().lookup("#draft-grip-name"));
        type((TextField) name, "Soft");
        press(KeyCode.ENTER);
        assertThat(window.onWindow(() -> window.workbench().stock().get().grips()))
                .anySatisfy(grip -> assertThat(grip.name()).isEqualTo("Soft"));
        assertThat(window.onWindow(() -> window.window().scene().lookup("#grip-mass"))).isNotNull();
    }

    @Test
    void closingTheWindowKeepsWhatIsBeingTyped() {
        type(field("hand length"), "7.5");
        window.onWindow(() -> {
            window.stage().close();
            return null;
        });
        assertThat(handLength()).isEqualTo(190.5);
    }

    @Test
    void aNewSessionLeavesWhatWasTypedInTheOneBefore() {
        type(field("hand length"), "7.5");
        var before = new java.util.concurrent.atomic.AtomicReference<Double>();
        window.onWindow(() -> window.workbench().store().listen(change -> {
            if (change.opening()) {
                before.set(change.before().player().handLengthMm());
            }
        }));
        press(KeyCode.CONTROL, KeyCode.N);
        assertThat(before.get()).isEqualTo(190.5);
        assertThat(handLength()).isNull();
    }
}
