package gripwright.charts;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

/** Something drawn: one definition for the screen, the PDF and the PNG. */
public interface Picture {

    /**
     * Draws into the area and nowhere else.
     *
     * @param graphics state is restored by the caller
     * @param area where; in pixels on a screen, points on paper
     * @param look colours and letter sizes of the medium
     */
    void draw(Graphics2D graphics, Rectangle2D area, Look look);

    /** The height that suits this width; {@code width} and result in the units of the area. */
    default double heightFor(double width, Look look) {
        return width * 0.6;
    }
}
