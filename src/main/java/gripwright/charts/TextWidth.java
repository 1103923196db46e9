package gripwright.charts;

import java.awt.Font;
import java.awt.Graphics2D;

/** How wide a text is drawn. */
final class TextWidth {

    private TextWidth() {
    }

    /**
     * Width in the units of the graphics. Sets the font first, since the screen's graphics measure with the font that is
     * set, whatever font they are asked about.
     */
    static double of(Graphics2D graphics, Font font, String text) {
        graphics.setFont(font);
        return graphics.getFontMetrics(font).stringWidth(text);
    }
}
