package gripwright.report;

import gripwright.charts.ShippedFonts;
import java.io.IOException;
import java.io.InputStream;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * Stands in for fonts that a page does not embed with the one that ships with the program.
 *
 * <p>The page layout touches the standard fonts of PDF before it knows that it needs none of them; without this the whole
 * computer would be searched for fonts first, which takes seconds, and pages could differ from one computer to the next.
 */
final class ShippedFontMapper implements FontMapper {

    private final TrueTypeFont font;

    private ShippedFontMapper(TrueTypeFont font) {
        this.font = font;
    }

    /** Makes the PDF library use it; calling it again does no harm. */
    static void install() throws IOException {
        if (FontMappers.instance() instanceof ShippedFontMapper) {
            return;
        }
        try (InputStream file = ShippedFontMapper.class.getResourceAsStream(ShippedFonts.FILES.get(0))) {
            FontMappers.set(new ShippedFontMapper(new TTFParser().parse(new RandomAccessReadBuffer(file))));
        }
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String baseFont, PDFontDescriptor descriptor) {
        return new FontMapping<>(font, false);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String baseFont, PDFontDescriptor descriptor) {
        return new FontMapping<>(font, false);
    }

    @Override
    public CIDFontMapping getCIDFont(String baseFont, PDFontDescriptor descriptor, PDCIDSystemInfo system) {
        return new CIDFontMapping(null, font, false);
    }
}
