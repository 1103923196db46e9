package gripwright.desktop.bay;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.desktop.TestWindow;
import gripwright.desktop.support.InMemoryServices;
import gripwright.desktop.support.PlaceKey;
import gripwright.desktop.support.Shop;
import gripwright.model.ClubTest;
import gripwright.model.Feel;
import gripwright.model.Metric;
import gripwright.model.Note;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.model.ShopSettings;
import gripwright.model.Stint;
import gripwright.model.Stock;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The bay in the real window, driven by the keyboard alone. */
class BayKeyboardTest {

    private final Random random = new Random(20260314);
    private TestWindow window;

    @BeforeEach
    void open() {
        Session session = BaySessions.planned("ABCDE", "ABCDEA", 6, 0);
        window = TestWindow.open(new InMemoryServices(session, new Shop(ShopSettings.usual().withEntryColumns(
                List.of(Metric.CLUB_SPEED, Metric.FACE_ANGLE, Metric.CARRY, Metric.OFFLINE)),
                new Stock(List.of(), List.of()))));
        window.robot().press(KeyCode.ALT).type(KeyCode.DIGIT3).release(KeyCode.ALT);
        window.settle();
    }

    @AfterEach
    void close() {
        window.close();
    }

    private ClubTest test() {
        return window.onWindow(() -> window.workbench().test().get());
    }

    private Stint stint(int index) {
        return test().stints().get(index);
    }

    private void keys(KeyCode... codes) {
        for (KeyCode code : codes) {
            window.robot().type(code);
            window.settle();
        }
    }

    private void write(String text) {
        window.robot().write(text, 0);
        window.settle();
    }

    private String text(String id) {
        return window.onWindow(() -> ((Label) window.window().scene().lookup(id)).getText());
    }

    private boolean isIn(String id) {
        return window.onWindow(() -> window.window().scene().lookup(id).isVisible());
    }

    /** Types one shot, Tab from cell to cell, and records it with Enter; the line is ready for the next one. */
    private void shot() {
        double face = 2 * random.nextGaussian();
        window.robot().write(String.format(Locale.ROOT, "%.1f\t%.1f %s\t%.0f\tL %.0f\n", 80 + random.nextGaussian(),
                Math.abs(face), face < 0 ? "o" : "c", 150 + 3 * random.nextGaussian(), 1 + 5 * random.nextDouble()),
                0);
    }

    private void shots(int count) {
        keys(KeyCode.E);
        for (int n = 0; n < count; n++) {
            shot();
        }
        window.settle();
        keys(KeyCode.ESCAPE);
    }

    /** Ends the stint and answers every question of the feel. */
    private void endWithFeel(int comfort, KeyCode wouldPlay) {
        keys(KeyCode.S, KeyCode.getKeyCode(String.valueOf(comfort)), KeyCode.DIGIT5, KeyCode.DIGIT6, KeyCode.DIGIT4,
                KeyCode.DIGIT3, wouldPlay);
        write("soft");
        keys(KeyCode.ENTER, KeyCode.ENTER, KeyCode.ENTER);
        write("D1.5");
        keys(KeyCode.ENTER, KeyCode.ESCAPE);
    }

    @Test
    void aWholeSessionIsPlayedWithoutTheMouse() {
        keys(KeyCode.N);
        assertThat(text("#hand-label")).isEqualTo("A");
        shots(6);
        endWithFeel(6, KeyCode.DIGIT1);

        keys(KeyCode.N);
        shots(3);
        keys(KeyCode.X, KeyCode.DIGIT1);
        assertThat(text("#last-title")).isEqualTo("last shot, set aside: mishit");
        shots(4);
        endWithFeel(4, KeyCode.DIGIT3);

        keys(KeyCode.N);
        shots(3);
        // It was D all the time: C, then the third of A B D E, then the whole stint.
        keys(KeyCode.C, KeyCode.DIGIT3, KeyCode.ENTER);
        assertThat(text("#hand-label")).isEqualTo("D");
        shots(3);
        endWithFeel(5, KeyCode.DIGIT2);

        for (int rest = 0; rest < 3; rest++) {
            keys(KeyCode.N);
            shots(6);
            endWithFeel(5, KeyCode.DIGIT1);
        }
        assertWholeSession();
    }

    private void assertWholeSession() {
        ClubTest test = test();
        assertThat(test.stints()).extracting(s -> test.configuration(s.configurationId()).orElseThrow().label())
                .containsExactly("A", "B", "D", "C", "E", "A");
        assertThat(test.stints()).allMatch(s -> s.state() == Stint.State.DONE)
                .allMatch(s -> s.scoredShots().size() == 6)
                .allMatch(s -> s.feel().word().equals("soft"))
                .allMatch(s -> s.swingweightRead().text().equals("D1.5"));
        assertThat(stint(1).shots()).hasSize(7).filteredOn(Shot::isSetAside).hasSize(1);
        assertThat(stint(0).feel()).isEqualTo(new Feel(6, 5, 6, 0, -1, Feel.WouldPlay.YES, "soft"));
        assertThat(stint(0).shots()).allSatisfy(shot -> assertThat(shot.readings().values())
                .containsOnlyKeys(Metric.CLUB_SPEED, Metric.FACE_ANGLE, Metric.CARRY, Metric.OFFLINE));
        window.waitUntil("the verdict", () -> !window.workbench().comparison().computing().get());
        assertThat(text("#next-headline")).isEqualTo("the plan is done");
        assertThat(text("#swings")).startsWith("37 swings");
    }

    @Test
    void keysAreNeverTakenFromAFieldAndFunctionKeysWorkInIt() {
        keys(KeyCode.N, KeyCode.E);
        write("snx");
        assertThat(window.onWindow(() -> ((TextField) window.window().scene().lookup("#cell-0")).getText()))
                .isEqualTo("snx");
        assertThat(stint(0).state()).isEqualTo(Stint.State.IN_HAND);
        assertThat(text("#line-problem")).contains("club speed");
        keys(KeyCode.F7, KeyCode.DIGIT1);
        assertThat(stint(0).notes()).extracting(Note::kind).containsExactly(Note.Kind.BALL_CHANGED);
    }

    @Test
    void aWrongCellKeepsTheLineAndTheFocus() {
        keys(KeyCode.N, KeyCode.E);
        write("80");
        keys(KeyCode.TAB);
        write("zz");
        keys(KeyCode.ENTER);
        assertThat(stint(0).shots()).isEmpty();
        assertThat(window.onWindow(() -> window.window().scene().getFocusOwner().getId())).isEqualTo("cell-1");
        write("1 c");
        keys(KeyCode.ENTER);
        assertThat(stint(0).shots()).hasSize(1);
        assertThat(text("#line-problem")).isEmpty();
    }

    @Test
    void undoTakesTheLastShotBackAlsoFromTheLine() {
        keys(KeyCode.N);
        shots(2);
        keys(KeyCode.U);
        assertThat(stint(0).shots()).hasSize(1);
        keys(KeyCode.Y);
        assertThat(stint(0).shots()).hasSize(2);
        window.robot().press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
        window.settle();
        assertThat(stint(0).shots()).hasSize(1);
    }

    @Test
    void aQuestionIsAskedInTheLineAndEscapeGivesTheFocusBack() {
        keys(KeyCode.N);
        shots(1);
        keys(KeyCode.E, KeyCode.F3);
        assertThat(isIn("#bay-prompt")).isTrue();
        keys(KeyCode.ESCAPE);
        assertThat(isIn("#bay-prompt")).isFalse();
        assertThat(window.onWindow(() -> window.window().scene().getFocusOwner().getId())).isEqualTo("cell-0");
    }

    @Test
    void aReasonInWordsMayBeginWithALetterThatIsAKeyElsewhere() {
        keys(KeyCode.N);
        shots(1);
        keys(KeyCode.X);
        write("sneezed");
        keys(KeyCode.ENTER);
        assertThat(stint(0).shots().get(0).setAsideReason()).isEqualTo("sneezed");
    }

    @Test
    void figuresAreNotOnTheScreenWhileTheyAreHidden() {
        keys(KeyCode.N);
        shots(1);
        keys(KeyCode.H);
        assertThat(window.onWindow(() -> isShowing("#bay-last"))).isFalse();
        assertThat(window.onWindow(() -> isShowing("#bay-pattern"))).isFalse();
        assertThat(text("#bay-covered")).startsWith("figures hidden");
    }

    private boolean isShowing(String id) {
        for (javafx.scene.Node node = window.window().scene().lookup(id); node != null; node = node.getParent()) {
            if (!node.isVisible()) {
                return false;
            }
        }
        return true;
    }

    @Test
    void everyActionHasAButtonBigEnoughForAFingerAndAKeyInTheOverlay() {
        List<BayAction> buttons = List.of(BayAction.SET_ASIDE, BayAction.BRING_BACK, BayAction.END_STINT,
                BayAction.START_NEXT, BayAction.NOTE, BayAction.SWITCH, BayAction.REPEAT, BayAction.FEEL,
                BayAction.TRAY, BayAction.UNDO, BayAction.REDO, BayAction.SOURCE, BayAction.HIDE);
        for (BayAction action : buttons) {
            Button button = window.onWindow(() -> (Button) window.window().scene().lookup(
                    "#action-" + action.name().toLowerCase(Locale.ROOT).replace('_', '-')));
            assertThat(window.onWindow(button::getHeight)).as("%s", action).isGreaterThanOrEqualTo(44);
            assertThat(window.onWindow(button::getWidth)).as("%s", action).isGreaterThanOrEqualTo(44);
        }
        assertThat(window.onWindow(() -> window.window().shown().key())).isEqualTo(PlaceKey.BAY);
        assertThat(window.onWindow(() -> window.window().shown().keys())).hasSizeGreaterThan(BayAction.values().length);
    }

    @Test
    void theFourSizesOfTypeAreThere() {
        assertThat(size("#hand-name")).isEqualTo(40);
        assertThat(size("#last-0")).isEqualTo(40);
        assertThat(size("#next-headline")).isEqualTo(22);
    }

    private double size(String id) {
        return window.onWindow(() -> ((Label) window.window().scene().lookup(id)).getFont().getSize());
    }
}
