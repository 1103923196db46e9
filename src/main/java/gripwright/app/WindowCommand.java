package gripwright.app;

import gripwright.comparison.Comparer;
import gripwright.desktop.DesktopApplication;
import gripwright.model.ProblemException;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.report.PaperSize;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code gripwright window}, and no command at all: the window, or, without a display, the demo session as text. */
@Command(name = "window", mixinStandardHelpOptions = true,
        description = "Opens the window on a copy of the demo session, or on the session opened last.")
final class WindowCommand implements Callable<Integer> {

    private final Gripwright.Output output;

    @Option(names = "--demo", description = "open a copy of the demo session, whatever was open last")
    private boolean demo;

    WindowCommand(Gripwright.Output output) {
        this.output = output;
    }

    @Override
    public Integer call() {
        try {
            if (!isDisplayThere()) {
                return withoutDisplay();
            }
            new DesktopApplication(new DesktopServices(ApplicationFolders.ofProcess(), demo)).run();
            return 0;
        } catch (UnsupportedOperationException noDisplay) {
            return withoutDisplayOrWhy();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return Gripwright.NOT_DONE;
        } catch (IOException | ProblemException failure) {
            output.err().println(Failures.sentence(failure));
            return Gripwright.NOT_DONE;
        }
    }

    private int withoutDisplayOrWhy() {
        try {
            return withoutDisplay();
        } catch (IOException | ProblemException failure) {
            output.err().println(Failures.sentence(failure));
            return Gripwright.NOT_DONE;
        }
    }

    /** On X11 and Wayland the environment names the display; other systems have one unless they say headless. */
    private static boolean isDisplayThere() {
        if (Boolean.getBoolean("java.awt.headless") && System.getProperty("glass.platform") == null) {
            return false;
        }
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (system.contains("win") || system.contains("mac")) {
            return !GraphicsEnvironment.isHeadless();
        }
        return Stream.of("DISPLAY", "WAYLAND_DISPLAY").map(System::getenv).anyMatch(name -> name != null && !name.isBlank());
    }

    /** Says that there is no window, and shows the demo session as text and as a PDF instead. */
    private int withoutDisplay() throws IOException, ProblemException {
        output.out().println("There is no display here, so no window opens. This is the demo session's comparison:");
        output.out().println();
        Session session = DemoSession.read();
        SessionInput input = new SessionInput(output);
        ShopSettings shop = input.settings(null);
        output.out().print(new CompareText(session, shop).of(Comparer.withSettings(shop).compareAll(session)));
        Path folder = ApplicationFolders.ofProcess().sessions();
        Files.createDirectories(folder);
        Path pdf = folder.resolve("demo-summary.pdf");
        SummaryCommand.write(session, shop, input.stock(), PaperSize.ofText(shop.paper()).orElse(PaperSize.A4), pdf);
        output.out().println();
        output.out().println("Its summary is " + pdf.toAbsolutePath() + ".");
        return 0;
    }
}
