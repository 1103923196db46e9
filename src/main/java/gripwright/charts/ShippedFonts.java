package gripwright.charts;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** The font that ships with the program, so that screen and paper agree. */
public final class ShippedFonts {

    /** Resource paths of the font files. */
    public static final List<String> FILES = List.of(
            "/gripwright/fonts/Lato-Regular.ttf",
            "/gripwright/fonts/Lato-Bold.ttf",
            "/gripwright/fonts/Lato-Italic.ttf");

    private ShippedFonts() {
    }

    /** Makes the font known to this process's graphics; calling it again does no harm. */
    public static void register() {
        GraphicsEnvironment environment = GraphicsEnvironment.getLocalGraphicsEnvironment();
        for (String file : FILES) {
            try (InputStream stream = ShippedFonts.class.getResourceAsStream(file)) {
                environment.registerFont(Font.createFont(Font.TRUETYPE_FONT, stream));
            } catch (IOException e) {
                throw new UncheckedIOException("The font " + file + " that ships with the program can't be read.", e);
            } catch (FontFormatException e) {
                throw new IllegalStateException("The font " + file + " that ships with the program is damaged.", e);
            }
        }
    }
}
