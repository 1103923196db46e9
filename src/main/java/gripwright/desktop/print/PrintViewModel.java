package gripwright.desktop.print;

import gripwright.comparison.Comparer;
import gripwright.desktop.support.Snapshot;
import gripwright.desktop.support.Workbench;
import gripwright.model.Session;
import gripwright.report.PagePreview;
import gripwright.report.PaperPrinter;
import gripwright.report.PaperSize;
import gripwright.report.PdfFile;
import gripwright.report.SummaryPages;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** What Print shows: the pages of the summary as they will come out, and where they can go. */
public final class PrintViewModel {

    private static final float PREVIEW_DPI = 96;

    /**
     * The pages for one state of the session.
     *
     * @param pdf what is saved and printed
     * @param pages what is shown of it
     * @param revision of the workbench it was made for
     */
    public record Pages(byte[] pdf, List<BufferedImage> pages, long revision) {
    }

    private final Workbench workbench;
    private final ReadOnlyObjectWrapper<Pages> pages = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyStringWrapper state = new ReadOnlyStringWrapper("");
    private final ObservableList<String> printers = FXCollections.observableArrayList();
    private boolean shown;
    private boolean working;

    public PrintViewModel(Workbench workbench) {
        this.workbench = workbench;
        workbench.revision().addListener((observed, before, now) -> refresh());
    }

    /** The pages; null before the first ones. */
    public ReadOnlyObjectProperty<Pages> pages() {
        return pages.getReadOnlyProperty();
    }

    /** What is going on, or what went wrong; empty when nothing is. */
    public ReadOnlyStringProperty state() {
        return state.getReadOnlyProperty();
    }

    /** The printers of this computer, once they are known. */
    public ObservableList<String> printers() {
        return printers;
    }

    /** The place is shown: pages are laid out now and after each change; hidden, nothing is. */
    public void setShown(boolean now) {
        shown = now;
        refresh();
        if (now && printers.isEmpty()) {
            workbench.inBackground(PaperPrinter::names, printers::setAll, failure -> printers.clear());
        }
    }

    private void refresh() {
        boolean stale = pages.get() == null || pages.get().revision() != workbench.revision().get();
        if (!shown || working || !stale) {
            return;
        }
        working = true;
        state.set("Laying out the pages \u2026");
        Snapshot snapshot = workbench.snapshot();
        workbench.inBackground(() -> layOut(snapshot), made -> {
            working = false;
            pages.set(made);
            state.set("");
            refresh();
        }, failure -> {
            working = false;
            state.set("The pages could not be laid out: " + failure.getMessage());
        });
    }

    private static Pages layOut(Snapshot snapshot) throws IOException {
        PaperSize paper = PaperSize.ofText(snapshot.settings().paper()).orElse(PaperSize.A4);
        byte[] pdf = new SummaryPages(snapshot.session(),
                Comparer.withSettings(snapshot.settings()).compareAll(snapshot.session()), snapshot.settings(),
                snapshot.stock()).toPdf(paper);
        return new Pages(pdf, PagePreview.of(pdf, PREVIEW_DPI), snapshot.revision());
    }

    /** A name for the PDF that says whose it is and of which day. */
    public String suggestedName() {
        Session session = workbench.session().get();
        String player = session.player().label().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        return "summary-" + (player.isEmpty() ? "" : player + "-") + session.date() + ".pdf";
    }

    /** Saves the pages as a PDF, in one step: a failure leaves what was there. */
    public void save(Path file) {
        Pages now = pages.get();
        if (now == null) {
            return;
        }
        workbench.inBackground(() -> PdfFile.write(now.pdf(), file),
                done -> workbench.say("Saved as " + file.toAbsolutePath() + "."),
                failure -> workbench.sayProblem("The PDF could not be saved as " + file + ": "
                        + String.valueOf(failure.getMessage()).replaceFirst("\\.$", "") + ". Choose another name or folder."));
    }

    /** Sends the pages to a printer. */
    public void print(String printer) {
        Pages now = pages.get();
        if (now == null || printer == null) {
            return;
        }
        workbench.say("Sent to " + printer + ".");
        workbench.inBackground(() -> {
            PaperPrinter.print(now.pdf(), printer);
            return printer;
        }, done -> workbench.say("Printed on " + printer + "."), failure -> workbench.sayProblem(failure.getMessage()));
    }
}
