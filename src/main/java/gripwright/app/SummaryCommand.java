package gripwright.app;

import gripwright.comparison.Comparer;
import gripwright.model.ProblemException;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import gripwright.report.PaperSize;
import gripwright.report.PdfFile;
import gripwright.report.SummaryPages;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Model.CommandSpec;

/** {@code gripwright summary}: the player's page, the numbers and the work order as a PDF. */
@Command(name = "summary", mixinStandardHelpOptions = true,
        description = "Writes the summary of a session as a PDF: player page, numbers, work order.")
final class SummaryCommand implements Callable<Integer> {

    private final Gripwright.Output output;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "SESSION.json", description = "the session")
    private Path file;

    @Option(names = "--out", required = true, paramLabel = "FILE.pdf", description = "where the PDF goes")
    private Path out;

    @Option(names = "--paper", paramLabel = "A4|Letter", description = "the paper; else the shop's")
    private String paper;

    @Option(names = "--settings", paramLabel = "FILE", description = "the shop's settings; else the program's own")
    private Path settingsFile;

    SummaryCommand(Gripwright.Output output) {
        this.output = output;
    }

    @Override
    public Integer call() throws ProblemException, IOException {
        SessionInput input = new SessionInput(output);
        ShopSettings shop = input.settings(settingsFile);
        String wanted = paper == null ? shop.paper() : paper;
        PaperSize size = PaperSize.ofText(wanted).orElseThrow(() -> new ParameterException(spec.commandLine(),
                "The paper is A4 or Letter, not '" + wanted + "'."));
        Session session = input.session(file);
        write(session, shop, input.stock(), size, out);
        output.out().println(out);
        return 0;
    }

    /** Writes the summary in one step, never over anything but a PDF: a failure leaves what was there. */
    static void write(Session session, ShopSettings shop, Stock stock, PaperSize paper, Path out) throws IOException {
        byte[] pdf = new SummaryPages(session, Comparer.withSettings(shop).compareAll(session), shop, stock)
                .toPdf(paper);
        PdfFile.write(pdf, out);
    }
}
