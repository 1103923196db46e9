package gripwright.charts;

import gripwright.model.Diameter;
import gripwright.units.Dimension;
import gripwright.units.NumberText;
import gripwright.units.Swingweight;
import gripwright.units.Unit;
import gripwright.units.UnitChoice;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * A club drawn to scale as a lever: its parts as weights that hang where they balance, the fulcrum under it, and over it the
 * balance points of two configurations with the way from one to the other.
 */
public final class LeverPicture implements Picture {

    private static final double MARKS = 3.6;
    private static final double CLUB = 3.2;
    private static final double HANG = 3.5;
    private static final double LEVEL = 2.7;
    private static final int LEVELS = 3;
    private static final int USUAL_PARTS = 5;
    private static final double UNDER = 1.7;
    private static final double RULER = 2.4;
    private static final double HEAD_ACROSS_MM = 50;
    private static final double HEAD_ALONG_MM = 30;

    private final Lever from;
    private final Lever to;
    private final Lever now;
    private final UnitChoice units;
    private final NumberText numbers;

    /**
     * @param from the configuration that is left
     * @param to the one that is gone to; the same for one alone
     * @param share how far on the way, 0 to 1
     * @param units the shop's units
     * @param decimalMark '.' or ','
     */
    public LeverPicture(Lever from, Lever to, double share, UnitChoice units, char decimalMark) {
        this.from = from;
        this.to = to;
        this.now = from.towards(to, share);
        this.units = units;
        this.numbers = NumberText.withDecimalMark(decimalMark);
    }

    @Override
    public double heightFor(double width, Look look) {
        return look.textSize() * (MARKS + CLUB / 2 + HANG + LEVEL * (levels() - 1) + UNDER + RULER);
    }

    /** Labels stand on two levels, on three where more parts than usual hang on the club. */
    private int levels() {
        return Math.max(from.weights().size(), to.weights().size()) > USUAL_PARTS ? LEVELS : LEVELS - 1;
    }

    /** Millimetres to the units of the area, and the height of the club's axis. */
    private record Frame(double left, double perMm, double axis, double bottom, double em) {
        double x(double mm) {
            return left + mm * perMm;
        }
    }

    @Override
    public void draw(Graphics2D graphics, Rectangle2D area, Look look) {
        double em = look.textSize();
        double longest = Math.max(from.lengthMm(), to.lengthMm());
        double perMm = (area.getWidth() - 5 * em) / (longest + HEAD_ALONG_MM / 2);
        Frame frame = new Frame(area.getX() + 1.5 * em, perMm, area.getY() + (MARKS + CLUB / 2) * em,
                area.getMaxY() - RULER * em, em);
        drawRuler(graphics, frame, longest, look);
        drawWeights(graphics, frame, look);
        drawClub(graphics, frame, look);
        drawFulcrum(graphics, frame, look);
        drawBalancePoints(graphics, frame, look);
    }

    private void drawRuler(Graphics2D graphics, Frame frame, double longestMm, Look look) {
        Unit unit = units.of(Dimension.LENGTH);
        double step = unit == Unit.INCH ? 5 : unit == Unit.CENTIMETRE ? 10 : 100;
        double y = frame.bottom + 0.5 * frame.em;
        graphics.setStroke(new BasicStroke(0.6f));
        graphics.setColor(look.hairline());
        graphics.draw(new Line2D.Double(frame.x(0), y, frame.x(longestMm), y));
        for (double tick = 0; unit.toInternal(tick) <= longestMm; tick += step) {
            double x = frame.x(unit.toInternal(tick));
            graphics.setColor(look.hairline());
            graphics.draw(new Line2D.Double(x, y, x, y + 0.4 * frame.em));
            text(graphics, look.small(), look.quiet(), numbers.format(tick, 0) + (tick == 0 ? " " + unit.symbol() : ""), x,
                    y + 1.5 * frame.em, 0.5);
        }
    }

    private void drawClub(Graphics2D graphics, Frame frame, Look look) {
        int grip = Lever.gripPoints();
        List<Diameter> outline = now.outline();
        graphics.setColor(look.hairline());
        graphics.fill(shape(outline.subList(grip, outline.size()), frame));
        graphics.setColor(look.quiet());
        graphics.setStroke(new BasicStroke(0.6f));
        graphics.draw(shape(outline.subList(grip, outline.size()), frame));
        graphics.setColor(Palette.of(now.mark().colourIndex(), look));
        graphics.fill(shape(outline.subList(0, grip), frame));
        double tip = outline.get(outline.size() - 1).positionMm();
        double across = HEAD_ACROSS_MM * frame.perMm;
        double along = HEAD_ALONG_MM * frame.perMm;
        Ellipse2D head = new Ellipse2D.Double(frame.x(tip) - along / 2, frame.axis - across / 2, along, across);
        graphics.setColor(look.band());
        graphics.fill(head);
        graphics.setColor(look.quiet());
        graphics.draw(head);
    }

    private static Path2D shape(List<Diameter> outline, Frame frame) {
        Path2D path = new Path2D.Double();
        for (int at = 0; at < outline.size(); at++) {
            double y = frame.axis - outline.get(at).diameterMm() * frame.perMm / 2;
            if (at == 0) {
                path.moveTo(frame.x(outline.get(at).positionMm()), y);
            } else {
                path.lineTo(frame.x(outline.get(at).positionMm()), y);
            }
        }
        for (int at = outline.size() - 1; at >= 0; at--) {
            path.lineTo(frame.x(outline.get(at).positionMm()),
                    frame.axis + outline.get(at).diameterMm() * frame.perMm / 2);
        }
        path.closePath();
        return path;
    }

    private void drawFulcrum(Graphics2D graphics, Frame frame, Look look) {
        double x = frame.x(now.fulcrumMm());
        double top = frame.axis + 9 * frame.perMm;
        Path2D wedge = new Path2D.Double();
        wedge.moveTo(x, top);
        wedge.lineTo(x + 0.8 * frame.em, top + 1.4 * frame.em);
        wedge.lineTo(x - 0.8 * frame.em, top + 1.4 * frame.em);
        wedge.closePath();
        graphics.setColor(look.ink());
        graphics.fill(wedge);
        text(graphics, look.small(), look.quiet(), "fulcrum " + length(now.fulcrumMm()), x, top + 2.6 * frame.em, 0.5);
    }

    /** A weight with the level that its label stands on. */
    private record Hung(Lever.Weight weight, int level) {
    }

    private void drawWeights(Graphics2D graphics, Frame frame, Look look) {
        for (Hung hung : hung(graphics, frame, look)) {
            Lever.Weight weight = hung.weight;
            double x = frame.x(weight.positionMm());
            double radius = Math.max(0.14, 0.085 * Math.sqrt(weight.grams())) * frame.em;
            double y = frame.axis + (HANG + LEVEL * hung.level) * frame.em;
            graphics.setStroke(new BasicStroke(0.6f));
            graphics.setColor(look.hairline());
            graphics.draw(new Line2D.Double(x, frame.axis, x, y));
            graphics.setColor(look.quiet());
            graphics.fill(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
            double left = x + radius + 0.4 * frame.em;
            boolean onTheLeft = labelOnTheLeft(weight);
            double at = onTheLeft ? x - radius - 0.4 * frame.em : left;
            text(graphics, look.plain(), look.ink(), name(weight), at, y - 0.1 * frame.em, onTheLeft ? 1 : 0);
            text(graphics, look.small(), look.quiet(), points(weight), at, y + 1.0 * frame.em, onTheLeft ? 1 : 0);
        }
    }

    /** Each weight on the first level where its label runs into no other. */
    private List<Hung> hung(Graphics2D graphics, Frame frame, Look look) {
        List<Lever.Weight> sorted = new ArrayList<>();
        // Labels on the right: the rightmost first, so that the threads of later ones pass left of them; and mirrored.
        now.weights().stream().filter(weight -> weight.grams() > 0 && !labelOnTheLeft(weight))
                .sorted(Comparator.comparingDouble(Lever.Weight::positionMm).reversed()).forEach(sorted::add);
        now.weights().stream().filter(weight -> weight.grams() > 0 && labelOnTheLeft(weight))
                .sorted(Comparator.comparingDouble(Lever.Weight::positionMm)).forEach(sorted::add);
        List<Hung> hung = new ArrayList<>();
        List<List<double[]>> taken = new ArrayList<>();
        for (int level = 0; level < LEVELS; level++) {
            taken.add(new ArrayList<>());
        }
        double fulcrum = frame.x(now.fulcrumMm());
        taken.get(0).add(new double[] {fulcrum - 4 * frame.em, fulcrum + 4 * frame.em});
        for (Lever.Weight weight : sorted) {
            double width = Math.max(TextWidth.of(graphics, look.plain(), name(weight)),
                    TextWidth.of(graphics, look.small(), points(weight))) + 3 * frame.em;
            double x = frame.x(weight.positionMm());
            boolean onTheLeft = labelOnTheLeft(weight);
            double[] span = onTheLeft ? new double[] {x - width, x + frame.em} : new double[] {x - frame.em, x + width};
            int level = 0;
            while (level < levels() - 1 && taken.get(level).stream()
                    .anyMatch(other -> other[0] < span[1] && span[0] < other[1])) {
                level++;
            }
            taken.get(level).add(span);
            hung.add(new Hung(weight, level));
        }
        return hung;
    }

    private boolean labelOnTheLeft(Lever.Weight weight) {
        return weight.positionMm() > now.lengthMm() * 0.75;
    }

    private String name(Lever.Weight weight) {
        Unit unit = units.of(Dimension.MASS);
        int decimals = unit == Unit.OUNCE ? 2 : weight.grams() < 10 ? 1 : 0;
        return weight.name().toLowerCase(Locale.ROOT) + " " + numbers.format(unit.fromInternal(weight.grams()), decimals)
                + " " + unit.symbol();
    }

    private String points(Lever.Weight weight) {
        return numbers.formatSigned(weight.points(), 1) + " points";
    }

    private void drawBalancePoints(Graphics2D graphics, Frame frame, Look look) {
        boolean two = !from.mark().equals(to.mark());
        if (two && from.balancePointMm() != null && to.balancePointMm() != null) {
            drawWay(graphics, frame, look);
        }
        boolean fromLeft = from.balancePointMm() == null || to.balancePointMm() == null
                || from.balancePointMm() <= to.balancePointMm();
        if (two) {
            drawBalancePoint(graphics, frame, from, fromLeft, look);
        }
        drawBalancePoint(graphics, frame, to, two && !fromLeft, look);
        if (now.balancePointMm() != null) {
            double x = frame.x(now.balancePointMm());
            graphics.setColor(look.ink());
            graphics.setStroke(new BasicStroke((float) (0.14 * frame.em)));
            graphics.draw(new Line2D.Double(x, frame.axis - CLUB / 2 * frame.em, x, frame.axis + 0.8 * frame.em));
        }
    }

    private void drawWay(Graphics2D graphics, Frame frame, Look look) {
        double y = frame.axis - (CLUB / 2 + 0.35) * frame.em;
        double left = frame.x(from.balancePointMm());
        double right = frame.x(to.balancePointMm());
        graphics.setColor(look.quiet());
        graphics.setStroke(new BasicStroke(0.8f));
        graphics.draw(new Line2D.Double(left, y, right, y));
        if (Math.abs(right - left) > 0.6 * frame.em) {
            double back = Math.signum(left - right) * 0.4 * frame.em;
            graphics.draw(new Line2D.Double(right, y, right + back, y - 0.25 * frame.em));
            graphics.draw(new Line2D.Double(right, y, right + back, y + 0.25 * frame.em));
        }
    }

    private void drawBalancePoint(Graphics2D graphics, Frame frame, Lever lever, boolean labelOnTheLeft, Look look) {
        if (lever.balancePointMm() == null) {
            return;
        }
        double x = frame.x(lever.balancePointMm());
        double y = frame.axis - (CLUB / 2 + 1.1) * frame.em;
        graphics.setColor(look.hairline());
        graphics.setStroke(new BasicStroke(0.8f));
        graphics.draw(new Line2D.Double(x, y, x, frame.axis));
        MarkPainter.draw(graphics, lever.mark(), x, y, frame.em * 0.9, MarkPainter.State.PLAIN, look);
        double at = labelOnTheLeft ? x - 0.9 * frame.em : x + 0.9 * frame.em;
        String name = lever.mark().label() + (lever.swingweight() == null ? "" : "  " + text(lever.swingweight()));
        text(graphics, look.bold(), look.ink(), name, at, y - 0.45 * frame.em, labelOnTheLeft ? 1 : 0);
        text(graphics, look.small(), look.quiet(), "balances at " + length(lever.balancePointMm()), at,
                y + 0.65 * frame.em, labelOnTheLeft ? 1 : 0);
    }

    private static String text(Swingweight swingweight) {
        return swingweight.text();
    }

    private String length(double mm) {
        Unit unit = units.of(Dimension.LENGTH);
        int decimals = unit == Unit.INCH ? 2 : unit == Unit.CENTIMETRE ? 1 : 0;
        String written = numbers.format(unit.fromInternal(mm), decimals);
        return written + " " + unit.symbol();
    }

    private static void text(Graphics2D graphics, Font font, Color colour, String text, double x, double baseline,
            double anchor) {
        double width = TextWidth.of(graphics, font, text);
        graphics.setFont(font);
        graphics.setColor(colour);
        graphics.drawString(text, (float) (x - anchor * width), (float) baseline);
    }
}
