package gripwright.desktop.compare;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.desktop.TestWindow;
import gripwright.desktop.support.DemoSessions;
import gripwright.desktop.support.InMemoryServices;
import gripwright.desktop.support.PlaceKey;
import gripwright.model.ClubTest;
import gripwright.model.Metric;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.model.Stint;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Compare by keyboard alone, in the real window, with much and with little to compare. */
class ComparePlaceTest {

    static Stream<Session> sessions() {
        return Stream.of(DemoSessions.leftHanded(), DemoSessions.eightGrips(), oneShotEach());
    }

    /** One scored shot with each grip, a different reading missing in the first three. */
    private static Session oneShotEach() {
        Session demo = DemoSessions.leftHanded();
        ClubTest test = demo.tests().get(0);
        List<Stint> stints = new ArrayList<>();
        for (Stint stint : test.stints()) {
            if (stint.state() == Stint.State.DONE) {
                Shot shot = stint.shots().get(stint.shots().size() - 1);
                Metric missing = List.of(Metric.CLUB_SPEED, Metric.FACE_ANGLE, Metric.CARRY).get(stints.size() % 3);
                stints.add(stint.withSettlingSwings(0)
                        .withShots(List.of(shot.withReadings(shot.readings().without(missing)))));
            }
        }
        return demo.withTest(test.withStints(stints));
    }

    @ParameterizedTest
    @MethodSource("sessions")
    void everyTopicIsShownAndFollowsTheKeyboard(Session session) {
        List<Throwable> failures = new ArrayList<>();
        try (TestWindow window = TestWindow.open(new InMemoryServices(session, DemoSessions.shop()))) {
            window.onWindow(() -> {
                Thread.currentThread().setUncaughtExceptionHandler((thread, failure) -> failures.add(failure));
                window.workbench().place().set(PlaceKey.COMPARE);
                return null;
            });
            window.waitUntil("the list has the focus", () -> focused(window) instanceof ListView<?>);
            int topics = window.onWindow(() -> list(window).getItems().size());
            assertThat(topics).isGreaterThan(4);
            for (int step = 1; step < topics; step++) {
                window.robot().type(KeyCode.DOWN);
                window.settle();
                int expected = step;
                assertThat(window.onWindow(() -> list(window).getSelectionModel().getSelectedIndex())).isEqualTo(expected);
            }
            assertThat(failures).isEmpty();
            assertThat(window.onWindow(() -> window.window().scene().getRoot().lookupAll(".gw-heading").stream()
                    .map(node -> ((Label) node).getText()).toList())).contains("Read another way");
        }
    }

    @Test
    void aGuardrailIsAColumnAndNoSentenceForEachConfiguration() {
        try (TestWindow window = TestWindow.open(
                new InMemoryServices(DemoSessions.leftHanded(), DemoSessions.shop()))) {
            goToCompare(window);
            window.waitUntil("the table", () -> window.window().scene().getRoot().lookup(".gw-table") != null);
            List<String> headings = window.onWindow(() -> ((TableView<?>) window.window().scene().getRoot()
                    .lookup(".gw-table")).getColumns().stream().map(TableColumn::getText).toList());
            assertThat(headings).startsWith("Configuration").contains("Carry kept");
        }
    }

    @Test
    void whatTheFitterAdvisesKeepsTheFocusWhileTheSheetIsMadeAnew() {
        try (TestWindow window = TestWindow.open(
                new InMemoryServices(DemoSessions.leftHanded(), DemoSessions.shop()))) {
            goToCompare(window);
            for (int step = 0; step < 4 && !advises(window); step++) {
                window.robot().type(KeyCode.TAB);
                window.settle();
            }
            assertThat(advises(window)).isTrue();
            window.robot().type(KeyCode.DOWN);
            window.waitUntil("the advice", () -> window.workbench().session().get().advisedConfigurationId() != null);
            window.waitForWork();
            assertThat(advises(window)).isTrue();
            assertThat(window.workbench().undoLabel().get()).isEqualTo("Advise A");
        }
    }

    private static boolean advises(TestWindow window) {
        return window.onWindow(() -> focused(window) != null
                && "what the fitter advises".equals(focused(window).getAccessibleText()));
    }

    private static javafx.scene.Node focused(TestWindow window) {
        return window.window().scene().getFocusOwner();
    }

    private static ListView<?> list(TestWindow window) {
        return (ListView<?>) window.window().scene().getRoot().lookup(".gw-topics");
    }

    private static void goToCompare(TestWindow window) {
        window.onWindow(() -> {
            window.workbench().place().set(PlaceKey.COMPARE);
            return null;
        });
        window.waitUntil("the list has the focus", () -> focused(window) instanceof ListView<?>);
    }
}
