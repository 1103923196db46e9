package gripwright.desktop.take;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.desktop.LabelFit;
import gripwright.desktop.TestWindow;
import gripwright.desktop.support.DemoSessions;
import gripwright.desktop.support.InMemoryServices;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Parent;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sheet on which a CSV file is looked at, in the real window. */
class TakeOverlayTest {

    @TempDir
    Path folder;

    @Test
    void showsQuestionsAndColumnsAndNothingIsCutOff() throws Exception {
        Path csv = Files.writeString(folder.resolve("shots.csv"), "shot,club speed,face angle (deg),mystery\n"
                + "1,86.1,0.5 open,x\n2,85.9,abc,y\n");
        try (TestWindow window = TestWindow.open(new InMemoryServices(DemoSessions.leftHanded(), DemoSessions.shop()))) {
            window.onWindow(() -> {
                window.stage().setWidth(1366);
                window.stage().setHeight(768);
                window.window().takeShots(csv);
                return null;
            });
            Parent overlay = (Parent) window.window().scene().lookup("#take-overlay");
            window.waitUntil("the file to be read", () -> overlay.isVisible()
                    && !window.window().scene().getRoot().lookupAll(".take-question .toggle-button").isEmpty());
            window.settle();
            WritableImage shot = window.onWindow(() -> window.window().scene().snapshot(null));
            Path picture = Path.of("target", "screenshots", "take.png");
            Files.createDirectories(picture.getParent());
            ImageIO.write(SwingFXUtils.fromFXImage(shot, null), "png", picture.toFile());
            assertThat(window.onWindow(() -> LabelFit.faults(overlay))).isEmpty();
            assertThat(window.window().scene().lookup("#take-them").isDisabled()).isTrue();
        }
    }

    private TestWindow opened(String csv) throws Exception {
        Path file = Files.writeString(folder.resolve("shots.csv"), csv);
        TestWindow window = TestWindow.open(new InMemoryServices(DemoSessions.leftHanded(), DemoSessions.shop()));
        window.onWindow(() -> {
            window.window().scene().lookup("#session-menu").requestFocus();
            window.window().takeShots(file);
            return null;
        });
        window.waitUntil("the file to be read", () -> model(window).result().get() != null && !model(window).reading().get());
        window.settle();
        return window;
    }

    private static TakeViewModel model(TestWindow window) {
        return ((TakeOverlay) window.window().scene().lookup("#take-overlay")).model();
    }

    private static String focused(TestWindow window) {
        return window.onWindow(() -> String.valueOf(window.window().scene().getFocusOwner().getId()));
    }

    @Test
    void enterTakesAndTheFocusGoesBack() throws Exception {
        try (TestWindow window = opened("shot,club speed (mph)\n1,86.1\n2,85.9\n")) {
            assertThat(focused(window)).isEqualTo("take-them");
            window.robot().push(KeyCode.ENTER);
            window.waitUntil("the shots to be taken", () -> window.workbench().session().get().tray().size() == 2);
            assertThat(window.window().scene().lookup("#take-overlay").isVisible()).isFalse();
            assertThat(focused(window)).isEqualTo("session-menu");
            window.onWindow(() -> {
                window.workbench().undo();
                return null;
            });
            assertThat(window.workbench().session().get().tray()).isEmpty();
        }
    }

    @Test
    void questionsAreAnsweredByKeyboardAndEscapeLeavesNothing() throws Exception {
        try (TestWindow window = opened("shot,club speed\n1,86.1\n")) {
            window.robot().push(KeyCode.ENTER);
            window.waitUntil("the answer to be read", () -> model(window).isReady());
            window.settle();
            assertThat(focused(window)).isEqualTo("take-them");
            window.robot().push(KeyCode.TAB);
            window.settle();
            assertThat(window.onWindow(() -> window.window().scene().getFocusOwner().getStyleClass()))
                    .as("Tab goes round within the sheet").contains("toggle-button");
            window.robot().push(KeyCode.ESCAPE);
            window.settle();
            assertThat(focused(window)).isEqualTo("session-menu");
            assertThat(window.workbench().undoLabel().get()).isEmpty();
        }
    }

    @Test
    void tenThousandShotsAreReadWithProgressAndTakenInOneStep() throws Exception {
        StringBuilder csv = new StringBuilder("shot,club speed (mph),carry (yd)\n");
        for (int shot = 1; shot <= 10_000; shot++) {
            csv.append(shot).append(',').append(80 + shot % 10).append(',').append(140 + shot % 7).append('\n');
        }
        try (TestWindow window = opened(csv.toString())) {
            assertThat(model(window).progress().get()).isEqualTo(1);
            assertThat(model(window).count()).isEqualTo(10_000);
            window.robot().push(KeyCode.ENTER);
            window.waitUntil("the shots to be taken", () -> window.workbench().session().get().tray().size() == 10_000);
            assertThat(window.workbench().undoLabel().get()).isEqualTo("Take 10000 shots from shots.csv");
        }
    }
}
