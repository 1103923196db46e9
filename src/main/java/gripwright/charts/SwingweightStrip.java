package gripwright.charts;

import gripwright.balance.ConfigurationBalance;
import gripwright.balance.TestBalance;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.units.NumberText;
import gripwright.units.Swingweight;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * The strip of swingweights: one row a configuration, its prediction with its doubt, and hollow what the scale read.
 *
 * @param rows in order
 * @param decimalMark '.' or ','
 */
public record SwingweightStrip(List<Row> rows, char decimalMark) implements Picture {

    private static final double ROW = 2.0;
    private static final double HEAD = 2.9;
    private static final double WIDE = 1.96;
    private static final double LEAST_SPAN_POINTS = 6;

    /**
     * One configuration.
     *
     * @param mark its mark
     * @param detail its grip
     * @param predicted in points; null where it can't be known
     * @param sd doubt of the prediction; null where there is none
     * @param read off the scale, in points; null where not read
     */
    public record Row(Mark mark, String detail, Double predicted, Double sd, Double read) {
    }

    public SwingweightStrip {
        rows = List.copyOf(rows);
    }

    /** The strip of a test. */
    public static SwingweightStrip of(ClubTest test, TestBalance balance, char decimalMark) {
        List<Row> rows = new ArrayList<>();
        for (ConfigurationBalance figures : balance.configurations()) {
            Configuration configuration = test.configuration(figures.configurationId()).orElse(null);
            if (configuration != null) {
                rows.add(new Row(Mark.of(configuration), configuration.grip().name(),
                        figures.swingweight() == null ? null : Double.valueOf(figures.swingweight().points()),
                        figures.swingweightSdPoints(), figures.swingweightRead() == null ? null
                                : Double.valueOf(figures.swingweightRead().points())));
            }
        }
        return new SwingweightStrip(rows, decimalMark);
    }

    @Override
    public double heightFor(double width, Look look) {
        return look.textSize() * (HEAD + ROW * Math.max(1, rows.size()) + 0.4);
    }

    /** Points to the units of the area. */
    private record Axis(double low, double high, double left, double right) {
        double x(double points) {
            return left + (points - low) / (high - low) * (right - left);
        }
    }

    @Override
    public void draw(Graphics2D graphics, Rectangle2D area, Look look) {
        double em = look.textSize();
        Axis axis = axis(graphics, area, look);
        double top = area.getY() + HEAD * em;
        double bottom = top + ROW * em * rows.size();
        text(graphics, look.bold(), look.ink(), "swingweight", area.getX(), area.getY() + 1.05 * em, 0);
        text(graphics, look.small(), look.quiet(), "lighter in the head", axis.left, area.getY() + 1.05 * em, 0);
        text(graphics, look.small(), look.quiet(), "heavier in the head", axis.right, area.getY() + 1.05 * em, 1);
        int step = axis.high - axis.low > 12 ? 5 : axis.high - axis.low > 7 ? 2 : 1;
        for (int tick = (int) Math.ceil(axis.low / step) * step; tick <= axis.high; tick += step) {
            graphics.setColor(look.hairline());
            graphics.setStroke(new BasicStroke(0.5f));
            graphics.draw(new Line2D.Double(axis.x(tick), top, axis.x(tick), bottom));
            text(graphics, look.small(), look.quiet(), new Swingweight(tick).text(0), axis.x(tick), top - 0.45 * em, 0.5);
        }
        double y = top + ROW * em / 2;
        for (Row row : rows) {
            drawRow(graphics, area, axis, row, y, look);
            y += ROW * em;
        }
    }

    private Axis axis(Graphics2D graphics, Rectangle2D area, Look look) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double label = 0;
        double figures = 0;
        for (Row row : rows) {
            label = Math.max(label, TextWidth.of(graphics, look.bold(), row.mark().label())
                    + TextWidth.of(graphics, look.plain(), row.detail()) + look.textSize());
            figures = Math.max(figures, TextWidth.of(graphics, look.plain(), figures(row)));
            double reach = row.sd() == null ? 0 : WIDE * row.sd();
            if (row.predicted() != null) {
                low = Math.min(low, row.predicted() - reach);
                high = Math.max(high, row.predicted() + reach);
            }
            if (row.read() != null) {
                low = Math.min(low, row.read());
                high = Math.max(high, row.read());
            }
        }
        if (low > high) {
            low = 27;
            high = 33;
        }
        double air = Math.max(0.5, (LEAST_SPAN_POINTS - (high - low)) / 2);
        double left = area.getX() + Math.min(label + 3 * look.textSize(), area.getWidth() * 0.4);
        return new Axis(low - air, high + air, left, area.getMaxX() - figures - 1.5 * look.textSize());
    }

    private void drawRow(Graphics2D graphics, Rectangle2D area, Axis axis, Row row, double y, Look look) {
        double em = look.textSize();
        double baseline = y + 0.35 * em;
        MarkPainter.draw(graphics, row.mark(), area.getX() + 0.6 * em, y, 0.8 * em, MarkPainter.State.PLAIN, look);
        double x = area.getX() + 1.7 * em;
        text(graphics, look.bold(), look.ink(), row.mark().label(), x, baseline, 0);
        x += TextWidth.of(graphics, look.bold(), row.mark().label()) + 0.7 * em;
        text(graphics, look.plain(), look.quiet(), shortened(graphics, look, row.detail(), axis.left - em - x), x,
                baseline, 0);
        Color colour = Palette.of(row.mark().colourIndex(), look);
        if (row.predicted() != null) {
            double reach = row.sd() == null ? 0 : WIDE * row.sd();
            double left = axis.x(row.predicted() - reach);
            graphics.setColor(new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), look.dark() ? 90 : 64));
            graphics.fill(new Rectangle2D.Double(left, y - 0.45 * em,
                    Math.max(1, axis.x(row.predicted() + reach) - left), 0.9 * em));
            graphics.setColor(look.ink());
            graphics.setStroke(new BasicStroke((float) (0.14 * em)));
            graphics.draw(new Line2D.Double(axis.x(row.predicted()), y - 0.7 * em, axis.x(row.predicted()), y + 0.7 * em));
        }
        if (row.read() != null) {
            MarkPainter.draw(graphics, row.mark(), axis.x(row.read()), y, 0.8 * em, MarkPainter.State.SET_ASIDE, look);
        }
        text(graphics, look.plain(), look.ink(), figures(row), axis.right + 1.2 * em, baseline, 0);
    }

    private String figures(Row row) {
        if (row.predicted() == null) {
            return row.read() == null ? "\u2013" : "read " + new Swingweight(row.read()).text();
        }
        String text = new Swingweight(row.predicted()).text();
        if (row.sd() != null) {
            text += " \u00B1 " + NumberText.withDecimalMark(decimalMark).format(WIDE * row.sd(), 1);
        }
        return row.read() == null ? text : text + ", read " + new Swingweight(row.read()).text();
    }

    private static String shortened(Graphics2D graphics, Look look, String text, double room) {
        String shown = text;
        while (shown.length() > 1 && TextWidth.of(graphics, look.plain(), shown) > room) {
            shown = shown.substring(0, shown.length() - 2).stripTrailing() + "\u2026";
        }
        return shown;
    }

    private static void text(Graphics2D graphics, Font font, Color colour, String text, double x, double baseline,
            double anchor) {
        double width = TextWidth.of(graphics, font, text);
        graphics.setFont(font);
        graphics.setColor(colour);
        graphics.drawString(text, (float) (x - anchor * width), (float) baseline);
    }
}
