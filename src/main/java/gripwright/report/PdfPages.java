package gripwright.report;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.DefaultObjectDrawerFactory;
import com.openhtmltopdf.util.XRLog;
import gripwright.charts.Look;
import gripwright.charts.ShippedFonts;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.multipdf.PDFMergerUtility;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Lays an XHTML page out as PDF, with the shipped font and the pictures as vectors. */
final class PdfPages {

    /** Pixels of the template's style sheet in a point of the page. */
    static final double PIXELS_PER_POINT = 96.0 / 72.0;

    private static final int BOLD = 700;
    private static final int PLAIN = 400;

    private PdfPages() {
    }

    static byte[] of(String xhtml, PagePictures pictures, Look look) throws IOException {
        ShippedFonts.register();
        ShippedFontMapper.install();
        XRLog.setLoggingEnabled(false);
        DefaultObjectDrawerFactory drawers = new DefaultObjectDrawerFactory();
        drawers.registerDrawer(PictureDrawer.TYPE, new PictureDrawer(pictures, look));
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFastMode();
        builder.useObjectDrawerFactory(drawers);
        addFonts(builder);
        builder.withHtmlContent(xhtml, null);
        builder.withProducer("Gripwright");
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        builder.toStream(bytes);
        builder.run();
        return bytes.toByteArray();
    }

    /** Two files as one, the first one's pages before the second one's. */
    static byte[] joined(byte[] first, byte[] second, String title) throws IOException {
        try (PDDocument whole = Loader.loadPDF(first); PDDocument more = Loader.loadPDF(second)) {
            new PDFMergerUtility().appendDocument(whole, more);
            whole.getDocumentInformation().setTitle(title);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            whole.save(bytes);
            return bytes.toByteArray();
        }
    }

    private static void addFonts(PdfRendererBuilder builder) {
        List<String> files = ShippedFonts.FILES;
        addFont(builder, files.get(0), PLAIN, FontStyle.NORMAL);
        addFont(builder, files.get(1), BOLD, FontStyle.NORMAL);
        addFont(builder, files.get(2), PLAIN, FontStyle.ITALIC);
    }

    private static void addFont(PdfRendererBuilder builder, String file, int weight, FontStyle style) {
        builder.useFont(() -> PageFont.stream(file), Look.FAMILY, weight, style, true);
    }
}
