package gripwright.desktop;

import gripwright.desktop.support.InMemoryServices;
import gripwright.desktop.support.Theme;
import gripwright.desktop.support.Workbench;
import gripwright.desktop.support.WorkbenchServices;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.embed.swing.SwingFXUtils;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** The real window on a session in memory, for tests with the toolkit; the toolkit starts once and loudly. */
public final class TestWindow implements AutoCloseable {

    private static final int PATIENCE_SECONDS = 60;

    private final ThreadPoolExecutor background =
            new ThreadPoolExecutor(1, 1, 0, TimeUnit.SECONDS, new LinkedBlockingQueue<>());
    private final FxRobot robot = new FxRobot();
    private Workbench workbench;
    private WorkbenchWindow window;
    private Stage stage;

    private TestWindow() {
    }

    /** Opens the window on what the services give. */
    public static TestWindow open(WorkbenchServices services) {
        TestWindow test = new TestWindow();
        try {
            FxToolkit.registerPrimaryStage();
        } catch (TimeoutException stuck) {
            throw new IllegalStateException("The window toolkit did not start; tests of the window can't run.", stuck);
        }
        test.onWindow(() -> {
            Theme.loadFonts();
            test.workbench = new Workbench(services, test.background, javafx.application.Platform::runLater);
            test.window = new WorkbenchWindow(test.workbench);
            test.stage = new Stage();
            test.window.open(test.stage);
            return null;
        });
        test.settle();
        return test;
    }

    public static TestWindow openBlank() {
        return open(InMemoryServices.blank());
    }

    /** Runs something on the window's thread and gives back what it gives. */
    public <T> T onWindow(Callable<T> work) {
        T result = WaitForAsyncUtils.waitForAsyncFx(TimeUnit.SECONDS.toMillis(PATIENCE_SECONDS), work);
        WaitForAsyncUtils.waitForFxEvents();
        return result;
    }

    /** Waits until the condition holds on the window's thread; fails when it does not within reason. */
    public void waitUntil(String what, BooleanSupplier condition) {
        try {
            WaitForAsyncUtils.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS, () -> onWindow(condition::getAsBoolean));
        } catch (TimeoutException never) {
            throw new AssertionError("Waited in vain: " + what, never);
        }
    }

    /** Waits until nothing is computed in the background any more and what was has been shown. */
    public void waitForWork() {
        waitUntil("the work in the background", () -> background.getQueue().isEmpty() && background.getActiveCount() == 0);
        settle();
    }

    /** Waits until all events that are under way have been handled. */
    public void settle() {
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** Gives the window a size, and the dark look where wanted. */
    public void dress(int width, int height, boolean dark) {
        onWindow(() -> {
            stage().setWidth(width);
            stage().setHeight(height);
            if (dark) {
                workbench().switchLook();
            }
            return null;
        });
    }

    /** Writes what the window shows as a PNG file. */
    public void photograph(Path file) throws IOException {
        BufferedImage image = onWindow(() -> {
            window().scene().getRoot().applyCss();
            window().scene().getRoot().layout();
            return SwingFXUtils.fromFXImage(window().scene().snapshot(null), null);
        });
        ImageIO.write(image, "png", file.toFile());
    }

    public FxRobot robot() {
        return robot;
    }

    public Workbench workbench() {
        return workbench;
    }

    public WorkbenchWindow window() {
        return window;
    }

    public Stage stage() {
        return stage;
    }

    @Override
    public void close() {
        onWindow(() -> {
            stage.close();
            return null;
        });
        background.shutdownNow();
    }
}
