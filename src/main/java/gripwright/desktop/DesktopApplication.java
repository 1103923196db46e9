package gripwright.desktop;

import gripwright.desktop.support.Theme;
import gripwright.desktop.support.Workbench;
import gripwright.desktop.support.WorkbenchServices;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Platform;
import javafx.stage.Stage;

/** The window as a running program: starts the toolkit, opens the window on what the services give, waits until it closes. */
public final class DesktopApplication {

    private static final int WORKERS = 2;

    private final WorkbenchServices services;
    private final CountDownLatch closed = new CountDownLatch(1);

    public DesktopApplication(WorkbenchServices services) {
        this.services = services;
    }

    /**
     * Opens the window and returns when it has been closed and everything is kept.
     *
     * @throws UnsupportedOperationException where there is no display
     * @throws InterruptedException when the waiting thread is interrupted
     */
    public void run() throws InterruptedException {
        ExecutorService background = Executors.newFixedThreadPool(WORKERS, DesktopApplication::worker);
        Platform.startup(() -> open(background));
        closed.await();
        background.shutdownNow();
        services.close();
    }

    private static Thread worker(Runnable work) {
        Thread thread = new Thread(work, "gripwright-work");
        thread.setDaemon(true);
        return thread;
    }

    private void open(ExecutorService background) {
        Theme.loadFonts();
        Workbench workbench = new Workbench(services, background, Platform::runLater);
        Thread.currentThread().setUncaughtExceptionHandler((thread, failure) -> failed(workbench, failure));
        Stage stage = new Stage();
        stage.setOnHidden(event -> {
            Platform.exit();
            closed.countDown();
        });
        new WorkbenchWindow(workbench).open(stage);
    }

    /** Says that something failed in the window, which goes on, and leaves the details in the log. */
    private static void failed(Workbench workbench, Throwable failure) {
        System.getLogger(DesktopApplication.class.getName()).log(System.Logger.Level.ERROR, "Failed in the window", failure);
        workbench.sayProblem("Something failed here that should not have. Nothing is lost: go on in another place, and tell "
                + "whoever looks after the program what you did (" + failure.getClass().getSimpleName() + ").");
    }
}
