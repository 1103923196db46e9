package gripwright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.desktop.support.DemoSessions;
import gripwright.desktop.support.InMemoryServices;
import gripwright.desktop.support.PlaceKey;
import gripwright.desktop.support.SavingStatus;
import gripwright.session.SessionStore;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;

/** The check for cut and overlapping texts finds what it should, and finds nothing on the small screen. */
class LabelFitTest {

    private static List<String> faults(TestWindow window, java.util.function.Supplier<Parent> content) {
        return window.onWindow(() -> {
            Stage stage = new Stage();
            Parent root = content.get();
            stage.setScene(new Scene(root, 300, 200));
            stage.show();
            root.applyCss();
            root.layout();
            List<String> faults = LabelFit.faults(root);
            stage.close();
            return faults;
        });
    }

    @Test
    void findsWhatIsCutWhatOverlapsAndWhatSticksOut() {
        try (TestWindow window = TestWindow.openBlank()) {
            assertThat(faults(window, () -> {
                Label label = new Label("a text that is far too long for it");
                label.setMaxWidth(40);
                return new VBox(label);
            })).anySatisfy(fault -> assertThat(fault).startsWith("cut off: 'a text"));
            assertThat(faults(window, () -> {
                TextField field = new TextField("a text that is far too long for it");
                field.setMaxWidth(60);
                return new VBox(field);
            })).anySatisfy(fault -> assertThat(fault).startsWith("cut off in its field"));
            assertThat(faults(window, () -> {
                Label second = new Label("second");
                second.setLayoutX(5);
                return new Pane(new Label("first"), second);
            })).anySatisfy(fault -> assertThat(fault).startsWith("overlap"));
            assertThat(faults(window, () -> {
                Region wide = new Region();
                wide.setMinSize(500, 10);
                return new HBox(new HBox(wide));
            })).anySatisfy(fault -> assertThat(fault).startsWith("sticks out"));
            assertThat(faults(window, () -> {
                Region wide = new Region();
                wide.setMinSize(500, 10);
                ScrollPane pane = new ScrollPane(wide);
                pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
                return new VBox(pane);
            })).anySatisfy(fault -> assertThat(fault).startsWith("wider than its view"));
            assertThat(faults(window, () -> {
                Region wide = new Region();
                wide.setMinSize(500, 10);
                return new VBox(wide);
            })).anySatisfy(fault -> assertThat(fault).startsWith("root wider than scene by 200 px"));
            assertThat(faults(window, () -> new VBox(new Label("first"), new Label("second"), new TextField("12"))))
                    .isEmpty();
        }
    }

    @Test
    void nothingIsCutInAnyPlaceOnTheSmallScreen() {
        try (TestWindow window = TestWindow.open(
                new InMemoryServices(DemoSessions.leftHanded(), DemoSessions.shop()))) {
            List<String> faults = new ArrayList<>();
            for (PlaceKey place : PlaceKey.values()) {
                window.onWindow(() -> {
                    window.workbench().place().set(place);
                    return null;
                });
                window.waitForWork();
                window.onWindow(() -> {
                    window.window().scene().getRoot().applyCss();
                    window.window().scene().getRoot().layout();
                    return LabelFit.faults(window.window().scene().getRoot());
                }).forEach(fault -> faults.add(place.title() + ": " + fault));
            }
            assertThat(faults).isEmpty();
        }
    }

    @Test
    void aFailureToSaveIsReadToItsEndAtTheFoot() {
        InMemoryServices services = new InMemoryServices(DemoSessions.leftHanded(), DemoSessions.shop()) {
            @Override
            public void follow(SessionStore store, Opened opened, Consumer<SavingStatus> listener) {
                listener.accept(new SavingStatus(SavingStatus.State.FAILED, "Not saved to the file yet. The drive that '"
                        + "left-handed-8-iron.json' is on is not there any more; it may have been unplugged. Everything "
                        + "is kept on this computer, and saving is tried again by itself until the drive is back."));
            }
        };
        try (TestWindow window = TestWindow.open(services)) {
            window.onWindow(() -> {
                window.workbench().sayProblem("The test with the 8-iron has shots; delete them before the test is removed, "
                        + "or leave it where it is and add another one, of which a session may hold three in all.");
                window.window().scene().getRoot().applyCss();
                window.window().scene().getRoot().layout();
                return null;
            });
            window.settle();
            assertThat(window.onWindow(() -> LabelFit.faults(
                    (Parent) window.window().scene().lookup(".gw-foot")))).isEmpty();
        }
    }
}
