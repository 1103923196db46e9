package gripwright.charts;

import gripwright.model.MarkerShape;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Draws the marks of configurations and the states of a shot: plain, hollow when set aside, ringed when flagged. */
public final class MarkPainter {

    private static final double HALF = 0.5;

    private MarkPainter() {
    }

    /** The state a shot is drawn in. */
    public enum State {
        PLAIN,
        SET_ASIDE,
        FLAGGED,
        NEWEST
    }

    /** The outline of a shape, centred, about {@code size} across and of equal visual weight. */
    public static Shape outline(MarkerShape shape, double x, double y, double size) {
        Shape unit = switch (shape) {
            case CIRCLE -> new Ellipse2D.Double(-HALF, -HALF, 1, 1);
            case SQUARE -> new Rectangle2D.Double(-0.44, -0.44, 0.88, 0.88);
            case TRIANGLE -> polygon(0, -0.58, 0.56, 0.42, -0.56, 0.42);
            case TRIANGLE_DOWN -> polygon(0, 0.58, 0.56, -0.42, -0.56, -0.42);
            case DIAMOND -> polygon(0, -0.6, 0.6, 0, 0, 0.6, -0.6, 0);
            case PLUS -> cross(0);
            case CROSS -> cross(Math.PI / 4);
            case HEXAGON -> polygon(0, -0.55, 0.48, -0.28, 0.48, 0.28, 0, 0.55, -0.48, 0.28, -0.48, -0.28);
        };
        AffineTransform place = AffineTransform.getTranslateInstance(x, y);
        place.scale(size, size);
        return place.createTransformedShape(unit);
    }

    /** Draws one mark in the colour of its configuration. */
    public static void draw(Graphics2D graphics, Mark mark, double x, double y, double size, State state, Look look) {
        Color colour = Palette.of(mark.colourIndex(), look);
        double drawn = state == State.NEWEST ? size * 1.5 : size;
        Shape shape = outline(mark.shape(), x, y, drawn);
        graphics.setColor(colour);
        if (state == State.SET_ASIDE) {
            graphics.setStroke(new BasicStroke((float) Math.max(0.6, size * 0.12)));
            graphics.draw(shape);
            return;
        }
        graphics.fill(shape);
        if (state == State.FLAGGED) {
            double ring = size * 1.8;
            graphics.setStroke(new BasicStroke((float) Math.max(0.6, size * 0.1)));
            graphics.setColor(look.quiet());
            graphics.draw(new Ellipse2D.Double(x - ring / 2, y - ring / 2, ring, ring));
        }
    }

    private static Shape polygon(double... coordinates) {
        Path2D path = new Path2D.Double();
        path.moveTo(coordinates[0], coordinates[1]);
        for (int at = 2; at < coordinates.length; at += 2) {
            path.lineTo(coordinates[at], coordinates[at + 1]);
        }
        path.closePath();
        return path;
    }

    private static Shape cross(double turn) {
        double a = 0.17;
        double b = 0.56;
        Shape plus = polygon(-a, -b, a, -b, a, -a, b, -a, b, a, a, a, a, b, -a, b, -a, a, -b, a, -b, -a, -a, -a);
        return AffineTransform.getRotateInstance(turn).createTransformedShape(plus);
    }
}
