package gripwright.report;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** The pages of a PDF as pictures for the screen, drawn from the very bytes that are saved and printed. */
public final class PagePreview {

    private PagePreview() {
    }

    /**
     * Draws every page.
     *
     * @param pdf a PDF file's content
     * @param dotsPerInch how finely
     * @throws IOException when the bytes are no PDF
     */
    public static List<BufferedImage> of(byte[] pdf, float dotsPerInch) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFRenderer renderer = new PDFRenderer(document);
            List<BufferedImage> pages = new ArrayList<>();
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                pages.add(renderer.renderImageWithDPI(page, dotsPerInch, ImageType.RGB));
            }
            return pages;
        }
    }
}
