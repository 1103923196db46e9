package gripwright.charts;

import gripwright.units.NumberText;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Draws a {@link Strip}: the recurring picture of the program, small in the plan and alone in the review. */
public final class StripPicture implements Picture {

    private static final double GAP = 0.7;
    private static final double ROW = 2.0;
    private static final double HEAD = 2.9;

    private final Strip strip;
    /** The rows that share their columns: those of this strip and of the strips it is stacked with. */
    private final List<Strip.Row> sharing;

    public StripPicture(Strip strip) {
        this(strip, strip.rows());
    }

    private StripPicture(Strip strip, List<Strip.Row> sharing) {
        this.strip = strip;
        this.sharing = sharing;
    }

    /** Pictures to be stacked at one width: their plots begin and end at the same place. */
    public static List<StripPicture> stacked(List<Strip> strips) {
        List<Strip.Row> rows = strips.stream().flatMap(strip -> strip.rows().stream()).toList();
        return strips.stream().map(strip -> new StripPicture(strip, rows)).toList();
    }

    @Override
    public double heightFor(double width, Look look) {
        return look.textSize() * (HEAD + ROW * Math.max(1, strip.rows().size()) + (hasBand() ? 1.5 : 0.4));
    }

    @Override
    public void draw(Graphics2D graphics, Rectangle2D area, Look look) {
        Columns columns = columns(graphics, area, look);
        double top = area.getY() + HEAD * look.textSize();
        double bottom = top + ROW * look.textSize() * strip.rows().size();
        drawBand(graphics, columns, top, bottom, look);
        drawHead(graphics, area, columns, top, bottom, look);
        double y = top + ROW * look.textSize() / 2;
        for (Strip.Row row : strip.rows()) {
            drawRow(graphics, area, columns, row, y, look);
            y += ROW * look.textSize();
        }
    }

    /** Where the plot begins and ends, and where the figures and the words stand. */
    private record Columns(double plotLeft, double plotRight, double figures, double words) {
    }

    private Columns columns(Graphics2D graphics, Rectangle2D area, Look look) {
        double label = 0;
        double figures = 0;
        double words = 0;
        for (Strip.Row row : sharing) {
            double detail = row.detail().isEmpty() ? 0
                    : TextWidth.of(graphics, look.plain(), row.detail()) + look.textSize() * GAP;
            label = Math.max(label, TextWidth.of(graphics, look.bold(), row.mark().label()) + detail);
            figures = Math.max(figures, TextWidth.of(graphics, look.plain(), row.figures()));
            words = Math.max(words, TextWidth.of(graphics, look.plain(), row.words()));
        }
        double gap = look.textSize() * 1.2;
        double left = area.getX() + look.textSize() * 1.7 + label + gap;
        double right = area.getMaxX() - (words > 0 ? words + gap : 0) - (figures > 0 ? figures + gap : 0)
                - (words > 0 || figures > 0 ? 1 : gap);
        boolean cramped = right - left < area.getWidth() * 0.25;
        if (cramped) {
            right = Math.max(left + area.getWidth() * 0.25, area.getMaxX() - (figures > 0 ? figures + gap : 0) - 1);
        }
        return new Columns(left, right, right + gap, cramped ? Double.NaN : right + gap + (figures > 0 ? figures + gap : 0));
    }

    private boolean hasBand() {
        return strip.band() != null && !strip.band().label().isEmpty();
    }

    private void drawBand(Graphics2D graphics, Columns columns, double top, double bottom, Look look) {
        if (strip.band() == null || strip.rows().isEmpty()) {
            return;
        }
        double left = clamp(place(strip.band().low(), columns), columns);
        double right = clamp(place(strip.band().high(), columns), columns);
        graphics.setColor(look.band());
        graphics.fill(new Rectangle2D.Double(left, top, Math.max(0.5, right - left), bottom - top));
        if (hasBand()) {
            text(graphics, look.small(), look.quiet(), strip.band().label(), (left + right) / 2,
                    bottom + look.textSize() * 1.1, 0.5, columns);
        }
    }

    private void drawHead(Graphics2D graphics, Rectangle2D area, Columns columns, double top, double bottom,
            Look look) {
        double baseline = area.getY() + look.textSize() * 1.05;
        text(graphics, look.bold(), look.ink(), strip.title(), area.getX(), baseline, 0, null);
        double axis = top - look.textSize() * 0.45;
        NumberText numbers = NumberText.withDecimalMark(strip.decimalMark());
        for (double tick : strip.scale().ticks()) {
            double x = place(tick, columns);
            graphics.setColor(look.hairline());
            graphics.setStroke(new BasicStroke(0.5f));
            graphics.draw(new Line2D.Double(x, top, x, bottom));
            text(graphics, look.small(), look.quiet(), numbers.format(tick, strip.scale().decimals()), x, axis, 0.5,
                    null);
        }
        double titleEnd = area.getX() + graphics.getFontMetrics(look.bold()).stringWidth(strip.title())
                + 2 * look.textSize();
        text(graphics, look.small(), look.quiet(), strip.leftWord(), Math.max(columns.plotLeft(), titleEnd), baseline,
                0, null);
        text(graphics, look.small(), look.quiet(), strip.rightWord(), columns.plotRight(), baseline, 1, null);
    }

    private void drawRow(Graphics2D graphics, Rectangle2D area, Columns columns, Strip.Row row, double y, Look look) {
        double size = look.textSize() * 0.62;
        double baseline = y + look.textSize() * 0.35;
        double x = area.getX() + look.textSize() * 0.6;
        MarkPainter.draw(graphics, row.mark(), x, y, look.textSize() * 0.8, MarkPainter.State.PLAIN, look);
        x += look.textSize() * 1.1;
        text(graphics, look.bold(), look.ink(), row.mark().label(), x, baseline, 0, null);
        x += TextWidth.of(graphics, look.bold(), row.mark().label()) + look.textSize() * GAP;
        text(graphics, look.plain(), look.quiet(), row.detail(), x, baseline, 0, null);
        drawInterval(graphics, columns, row, y, look);
        for (Strip.Dot dot : row.dots()) {
            if (Double.isFinite(dot.value())) {
                double at = clamp(place(dot.value(), columns), columns);
                MarkPainter.draw(graphics, row.mark(), at, y, size, dot.state(), look);
            }
        }
        drawEstimate(graphics, columns, row, y, look);
        text(graphics, look.plain(), look.ink(), row.figures(), columns.figures(), baseline, 0, null);
        if (Double.isFinite(columns.words())) {
            text(graphics, look.plain(), look.ink(), row.words(), columns.words(), baseline, 0, null);
        }
    }

    private void drawInterval(Graphics2D graphics, Columns columns, Strip.Row row, double y, Look look) {
        if (row.low() == null || row.high() == null) {
            return;
        }
        double left = clamp(place(row.low(), columns), columns);
        double right = clamp(place(row.high(), columns), columns);
        double thick = look.textSize() * 0.9;
        Color colour = Palette.of(row.mark().colourIndex(), look);
        graphics.setColor(new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), look.dark() ? 90 : 64));
        graphics.fill(new Rectangle2D.Double(left, y - thick / 2, Math.max(1, right - left), thick));
    }

    private void drawEstimate(Graphics2D graphics, Columns columns, Strip.Row row, double y, Look look) {
        if (row.estimate() == null) {
            return;
        }
        double x = clamp(place(row.estimate(), columns), columns);
        double half = look.textSize() * 0.75;
        graphics.setColor(look.ground());
        graphics.setStroke(new BasicStroke((float) (look.textSize() * 0.3)));
        graphics.draw(new Line2D.Double(x, y - half, x, y + half));
        graphics.setColor(look.ink());
        graphics.setStroke(new BasicStroke((float) (look.textSize() * 0.14)));
        graphics.draw(new Line2D.Double(x, y - half, x, y + half));
    }

    private double place(double value, Columns columns) {
        return strip.scale().place(value, columns.plotLeft(), columns.plotRight());
    }

    private static double clamp(double x, Columns columns) {
        return Math.max(columns.plotLeft(), Math.min(columns.plotRight(), x));
    }

    private static void text(Graphics2D graphics, Font font, Color colour, String text, double x, double baseline,
            double anchor, Columns within) {
        if (text.isEmpty()) {
            return;
        }
        graphics.setFont(font);
        graphics.setColor(colour);
        double width = TextWidth.of(graphics, font, text);
        double left = x - anchor * width;
        if (within != null) {
            left = Math.max(within.plotLeft(), Math.min(left, within.plotRight() - width));
        }
        graphics.drawString(text, (float) left, (float) baseline);
    }
}
