package gripwright.app;

import gripwright.comparison.Comparer;
import gripwright.model.ProblemException;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.report.PaperSize;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** {@code gripwright window}, and no command at all: the window, or, without a display, the demo session as text. */
@Command(name = "window", mixinStandardHelpOptions = true,
        description = "Opens the window on a copy of the demo session, or on the session opened last.")
final class WindowCommand implements Callable<Integer> {

    private final Gripwright.Output output;

    WindowCommand(Gripwright.Output output) {
        this.output = output;
    }

    @Override
    public Integer call() {
        try {
            return withoutDisplay("There is no display here, so no window opens.");
        } catch (IOException | ProblemException failure) {
            output.err().println(Failures.sentence(failure));
            return Gripwright.NOT_DONE;
        }
    }

    /** Says why there is no window, and shows the demo session as text and as a PDF instead. */
    private int withoutDisplay(String why) throws IOException, ProblemException {
        output.out().println(why + " This is the demo session's comparison:");
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
