package gripwright.report;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.RenderingContext;
import gripwright.charts.Look;
import gripwright.charts.Picture;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.Map;
import org.w3c.dom.Element;

/** Draws the {@code object} elements of a template as vectors, each a picture by name. */
final class PictureDrawer implements FSObjectDrawer {

    /** The type that such an element carries. */
    static final String TYPE = "gripwright/picture";

    private final PagePictures pictures;
    private final Look look;

    PictureDrawer(PagePictures pictures, Look look) {
        this.pictures = pictures;
        this.look = look;
    }

    @Override
    public Map<Shape, String> drawObject(Element element, double x, double y, double width, double height,
            OutputDevice device, RenderingContext context, int dotsPerPixel) {
        String name = element.getAttribute("data");
        Picture picture = pictures.named(name).orElseThrow(() -> new IllegalStateException(
                "The template asks for the picture '" + name + "', which nobody made."));
        float unitsWide = (float) (width / dotsPerPixel);
        float unitsHigh = (float) (height / dotsPerPixel);
        device.drawWithGraphics((float) x, (float) y, unitsWide, unitsHigh,
                graphics -> picture.draw(graphics, new Rectangle2D.Double(0, 0, unitsWide, unitsHigh), look));
        return null;
    }
}
