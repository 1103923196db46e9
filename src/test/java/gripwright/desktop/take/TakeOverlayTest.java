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
}
