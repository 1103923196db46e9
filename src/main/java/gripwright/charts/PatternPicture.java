package gripwright.charts;

import gripwright.units.NumberText;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.DoubleSummaryStatistics;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** Draws a {@link Pattern} from above, the same scale both ways, the target line upright. */
public final class PatternPicture implements Picture {

    private static final double LEAST_SPAN = 20;
    /** An outline may widen the picture by this share of what the shots span, each way; past that it is cut. */
    private static final double MOST_WIDENING = 0.5;

    private final Pattern pattern;

    public PatternPicture(Pattern pattern) {
        this.pattern = pattern;
    }

    @Override
    public double heightFor(double width, Look look) {
        return width;
    }

    @Override
    public void draw(Graphics2D graphics, Rectangle2D area, Look look) {
        double margin = look.textSize() * 2.6;
        Rectangle2D plot = new Rectangle2D.Double(area.getX() + margin, area.getY() + look.textSize(),
                Math.max(1, area.getWidth() - margin - look.textSize()),
                Math.max(1, area.getHeight() - margin - look.textSize()));
        View view = view(plot);
        drawGrid(graphics, plot, view, look);
        Shape clip = graphics.getClip();
        graphics.clip(plot);
        for (Pattern.Group group : pattern.groups()) {
            drawEllipses(graphics, group, view, look);
        }
        for (Pattern.Group group : pattern.groups()) {
            for (Pattern.Point point : group.points()) {
                MarkPainter.draw(graphics, group.mark(), view.x(point.offline()), view.y(point.carry()),
                        look.textSize() * 0.7, point.state(), look);
            }
        }
        graphics.setClip(clip);
    }

    /** A point of the range, and how many pixels a unit takes. */
    private record View(double centreOffline, double centreCarry, double perUnit, Rectangle2D plot) {

        double x(double offline) {
            return plot.getCenterX() + (offline - centreOffline) * perUnit;
        }

        double y(double carry) {
            return plot.getCenterY() - (carry - centreCarry) * perUnit;
        }

        double lowOffline() {
            return centreOffline - plot.getWidth() / 2 / perUnit;
        }

        double highOffline() {
            return centreOffline + plot.getWidth() / 2 / perUnit;
        }

        double lowCarry() {
            return centreCarry - plot.getHeight() / 2 / perUnit;
        }

        double highCarry() {
            return centreCarry + plot.getHeight() / 2 / perUnit;
        }
    }

    private View view(Rectangle2D plot) {
        Range across = range(true);
        Range out = range(false);
        double spanX = Math.max(LEAST_SPAN, across.span() * 1.1);
        double spanY = Math.max(LEAST_SPAN, out.span() * 1.1);
        double perUnit = Math.min(plot.getWidth() / spanX, plot.getHeight() / spanY);
        return new View(across.middle(), out.middle(), perUnit, plot);
    }

    /** Whether an outline is so wide that the picture cuts it: few shots know little of the next one. */
    public boolean cutsAnOutline() {
        return cuts(true) || cuts(false);
    }

    private boolean cuts(boolean sideways) {
        Range shown = range(sideways);
        return Range.of(outlines(sideways)).map(wanted -> wanted.low() < shown.low() || wanted.high() > shown.high())
                .orElse(false);
    }

    /** From one value to another, in units of the range. */
    private record Range(double low, double high) {

        static Optional<Range> of(DoubleStream values) {
            DoubleSummaryStatistics all = values.filter(Double::isFinite).summaryStatistics();
            return all.getCount() == 0 ? Optional.empty() : Optional.of(new Range(all.getMin(), all.getMax()));
        }

        double span() {
            return high - low;
        }

        double middle() {
            return (low + high) / 2;
        }
    }

    /** What is shown one way: target and shots, widened for the outlines as far as that goes. */
    private Range range(boolean sideways) {
        DoubleStream target = sideways ? DoubleStream.of(pattern.targetOffline())
                : pattern.targetCarry() == null ? DoubleStream.empty() : DoubleStream.of(pattern.targetCarry());
        DoubleStream shots = pattern.groups().stream().flatMapToDouble(group ->
                group.points().stream().mapToDouble(p -> sideways ? p.offline() : p.carry()));
        Range kept = Range.of(DoubleStream.concat(target, shots)).orElse(new Range(0, 0));
        double most = MOST_WIDENING * Math.max(LEAST_SPAN, kept.span());
        return Range.of(outlines(sideways)).map(wanted -> new Range(
                Math.min(kept.low(), Math.max(wanted.low(), kept.low() - most)),
                Math.max(kept.high(), Math.min(wanted.high(), kept.high() + most)))).orElse(kept);
    }

    private DoubleStream outlines(boolean sideways) {
        return pattern.groups().stream().flatMap(group -> group.ellipses().stream()).flatMapToDouble(e -> {
            double turn = Math.toRadians(e.degrees());
            double half = sideways
                    ? Math.hypot(e.semiMajor() * Math.cos(turn), e.semiMinor() * Math.sin(turn))
                    : Math.hypot(e.semiMajor() * Math.sin(turn), e.semiMinor() * Math.cos(turn));
            double centre = sideways ? e.offline() : e.carry();
            return DoubleStream.of(centre - half, centre + half);
        });
    }

    private void drawGrid(Graphics2D graphics, Rectangle2D plot, View view, Look look) {
        NumberText numbers = NumberText.withDecimalMark(pattern.decimalMark());
        graphics.setFont(look.small());
        graphics.setStroke(new BasicStroke(0.5f));
        Scale across = Scale.covering(new double[] {view.lowOffline(), view.highOffline()}, 6);
        for (double tick : across.ticks()) {
            double x = view.x(tick);
            if (x < plot.getX() || x > plot.getMaxX()) {
                continue;
            }
            graphics.setColor(tick == pattern.targetOffline() ? look.quiet() : look.hairline());
            graphics.draw(new Line2D.Double(x, plot.getY(), x, plot.getMaxY()));
            String side = tick == 0 ? "0" : numbers.format(Math.abs(tick), across.decimals()) + (tick < 0 ? " L" : " R");
            label(graphics, look, side, x, plot.getMaxY() + look.textSize() * 1.2, 0.5);
        }
        Scale out = Scale.covering(new double[] {view.lowCarry(), view.highCarry()}, 5);
        for (double tick : out.ticks()) {
            double y = view.y(tick);
            if (y < plot.getY() || y > plot.getMaxY()) {
                continue;
            }
            graphics.setColor(look.hairline());
            graphics.draw(new Line2D.Double(plot.getX(), y, plot.getMaxX(), y));
            label(graphics, look, numbers.format(tick, out.decimals()), plot.getX() - look.textSize() * 0.4,
                    y + look.textSize() * 0.3, 1);
        }
        label(graphics, look, "offline and carry, " + pattern.unit(), plot.getMaxX(),
                plot.getMaxY() + look.textSize() * 2.4, 1);
        drawTarget(graphics, view, look);
    }

    private void drawTarget(Graphics2D graphics, View view, Look look) {
        if (pattern.targetCarry() == null) {
            return;
        }
        double x = view.x(pattern.targetOffline());
        double y = view.y(pattern.targetCarry());
        double arm = look.textSize() * 0.9;
        graphics.setColor(look.ink());
        graphics.setStroke(new BasicStroke(1f));
        graphics.draw(new Line2D.Double(x - arm, y, x + arm, y));
        graphics.draw(new Line2D.Double(x, y - arm, x, y + arm));
    }

    private static void label(Graphics2D graphics, Look look, String text, double x, double baseline, double anchor) {
        graphics.setColor(look.quiet());
        double width = TextWidth.of(graphics, look.small(), text);
        graphics.drawString(text, (float) (x - anchor * width), (float) baseline);
    }

    private static void drawEllipses(Graphics2D graphics, Pattern.Group group, View view, Look look) {
        Color colour = Palette.of(group.mark().colourIndex(), look);
        for (Pattern.Ellipse ellipse : group.ellipses()) {
            AffineTransform turn = AffineTransform.getTranslateInstance(view.x(ellipse.offline()),
                    view.y(ellipse.carry()));
            turn.rotate(-Math.toRadians(ellipse.degrees()));
            double a = ellipse.semiMajor() * view.perUnit();
            double b = ellipse.semiMinor() * view.perUnit();
            Shape shape = turn.createTransformedShape(new Ellipse2D.Double(-a, -b, 2 * a, 2 * b));
            graphics.setColor(new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), look.dark() ? 40 : 26));
            if (view.plot().contains(shape.getBounds2D())) {
                graphics.fill(shape);
            }
            graphics.setColor(colour);
            graphics.setStroke(new BasicStroke(1.2f));
            graphics.draw(shape);
        }
    }
}
