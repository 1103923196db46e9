package gripwright.charts;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;

/** A picture as pixels, for PNG files and for tests. */
public final class PictureImage {

    private PictureImage() {
    }

    /** Draws the picture on its ground, {@code zoom} pixels a unit. */
    public static BufferedImage of(Picture picture, int width, int height, double zoom, Look look) {
        ShippedFonts.register();
        BufferedImage image = new BufferedImage((int) Math.ceil(width * zoom), (int) Math.ceil(height * zoom),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setColor(look.ground());
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.scale(zoom, zoom);
        picture.draw(graphics, new Rectangle2D.Double(0, 0, width, height), look);
        graphics.dispose();
        return image;
    }
}
