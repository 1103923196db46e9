package gripwright.desktop.support;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import gripwright.charts.Look;
import gripwright.charts.ShippedFonts;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.text.Font;

/** The look of the window: a base theme for the controls, the shipped font, and sheets of our own over it, light or dark. */
public final class Theme {

    /** Size of plain text on a work screen, px; as in the style sheet. */
    public static final double BODY_SIZE = 14;

    private Theme() {
    }

    /** Loads the fonts that screen and paper share; once, before the first window. */
    public static void loadFonts() {
        for (String font : ShippedFonts.FILES) {
            try (InputStream file = Theme.class.getResourceAsStream(font)) {
                Font.loadFont(file, BODY_SIZE);
            } catch (IOException unreadable) {
                throw new UncheckedIOException("The font " + font + " that ships with the program can't be read.",
                        unreadable);
            }
        }
    }

    /** Gives a window the light or the dark look. */
    public static void apply(Scene scene, boolean dark) {
        Application.setUserAgentStylesheet(
                dark ? new PrimerDark().getUserAgentStylesheet() : new PrimerLight().getUserAgentStylesheet());
        scene.getStylesheets().setAll(dark
                ? List.of(sheet("gripwright.css"), sheet("gripwright-dark.css"))
                : List.of(sheet("gripwright.css")));
    }

    private static String sheet(String name) {
        return Theme.class.getResource(name).toExternalForm();
    }

    /** How pictures are drawn in this look at this size of text; their ground is that of the sheets. */
    public static Look pictures(boolean dark, double textSize) {
        return dark ? Look.dark(textSize) : Look.light(textSize);
    }
}
