package gripwright.report;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/**
 * The shipped font as the page layout gets it: without ligatures, so that text can be searched and copied out of the PDF
 * letter by letter.
 *
 * <p>The layout would use ligatures such as 'tt' and name none of their letters in the file. Only the bytes in memory are
 * changed: the table of substitutions loses its name, and so is passed over.
 */
final class PageFont {

    private static final int TABLES_AT = 12;
    private static final int ENTRY = 16;
    private static final int COUNT_AT = 4;

    private PageFont() {
    }

    /** The font file of this resource. */
    static InputStream stream(String resource) {
        try (InputStream file = PageFont.class.getResourceAsStream(resource)) {
            byte[] font = file.readAllBytes();
            hideSubstitutions(font);
            return new ByteArrayInputStream(font);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("The font " + resource + " that ships with the program can't be read.",
                    unreadable);
        }
    }

    private static void hideSubstitutions(byte[] font) {
        int tables = ByteBuffer.wrap(font).getShort(COUNT_AT);
        for (int table = 0; table < tables; table++) {
            int at = TABLES_AT + table * ENTRY;
            if (new String(font, at, 4, StandardCharsets.US_ASCII).equals("GSUB")) {
                font[at] = 'x';
            }
        }
    }
}
