package gripwright.report;

import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import javax.print.PrintService;
import javax.print.PrintServiceLookup;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;

/** Sends a PDF to a printer of this computer. */
public final class PaperPrinter {

    private PaperPrinter() {
    }

    /** The names of the printers; empty where there is none. May take a while: not for the window's thread. */
    public static List<String> names() {
        return Arrays.stream(PrintServiceLookup.lookupPrintServices(null, null)).map(PrintService::getName).toList();
    }

    /**
     * Prints all pages.
     *
     * @throws IOException with a sentence when the printer is gone or refuses
     */
    public static void print(byte[] pdf, String printer) throws IOException {
        PrintService service = Arrays.stream(PrintServiceLookup.lookupPrintServices(null, null))
                .filter(each -> each.getName().equals(printer)).findFirst()
                .orElseThrow(() -> new IOException("There is no printer " + printer + " any more; choose another one."));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PrinterJob job = PrinterJob.getPrinterJob();
            job.setPrintService(service);
            job.setJobName("Gripwright summary");
            job.setPageable(new PDFPageable(document));
            job.print();
        } catch (PrinterException refused) {
            throw new IOException("The printer " + printer + " refused the pages: " + refused.getMessage()
                    + ". Save them as PDF instead, or try again.", refused);
        }
    }
}
