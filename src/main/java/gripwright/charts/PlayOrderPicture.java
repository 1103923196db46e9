package gripwright.charts;

import gripwright.units.NumberText;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Draws a {@link PlayOrder}: the strip turned in time. */
public final class PlayOrderPicture implements Picture {

    private final PlayOrder play;

    public PlayOrderPicture(PlayOrder play) {
        this.play = play;
    }

    @Override
    public double heightFor(double width, Look look) {
        return Math.max(look.textSize() * 14, width * 0.3);
    }

    @Override
    public void draw(Graphics2D graphics, Rectangle2D area, Look look) {
        double left = area.getX() + look.textSize() * 4;
        double top = area.getY() + look.textSize() * 2.7;
        Rectangle2D plot = new Rectangle2D.Double(left, top, Math.max(1, area.getMaxX() - left - look.textSize()),
                Math.max(1, area.getMaxY() - top - look.textSize() * 2));
        drawHead(graphics, area, plot, look);
        int shots = play.stints().stream().mapToInt(run -> run.shots().size()).sum();
        if (shots == 0) {
            return;
        }
        double perShot = plot.getWidth() / shots;
        double x = plot.getX();
        for (int at = 0; at < play.stints().size(); at++) {
            PlayOrder.Run run = play.stints().get(at);
            double width = perShot * run.shots().size();
            if (at % 2 == 1) {
                graphics.setColor(look.band());
                graphics.fill(new Rectangle2D.Double(x, plot.getY(), width, plot.getHeight()));
            }
            drawRun(graphics, plot, run, x, perShot, look);
            x += width;
        }
        drawDrift(graphics, plot, perShot, look);
    }

    private void drawHead(Graphics2D graphics, Rectangle2D area, Rectangle2D plot, Look look) {
        NumberText numbers = NumberText.withDecimalMark(play.decimalMark());
        graphics.setFont(look.bold());
        graphics.setColor(look.ink());
        graphics.drawString(play.title(), (float) area.getX(), (float) (area.getY() + look.textSize()));
        graphics.setFont(look.small());
        for (double tick : play.scale().ticks()) {
            double y = play.scale().place(tick, plot.getMaxY(), plot.getY());
            graphics.setColor(look.hairline());
            graphics.setStroke(new BasicStroke(0.5f));
            graphics.draw(new Line2D.Double(plot.getX(), y, plot.getMaxX(), y));
            String text = numbers.format(tick, play.scale().decimals());
            double width = TextWidth.of(graphics, look.small(), text);
            graphics.setColor(look.quiet());
            graphics.drawString(text, (float) (plot.getX() - width - look.textSize() * 0.5),
                    (float) (y + look.textSize() * 0.3));
        }
        graphics.drawString(play.highWord(), (float) plot.getX(), (float) (plot.getY() - look.textSize() * 0.4));
        graphics.drawString(play.lowWord(), (float) area.getX(), (float) (plot.getMaxY() + look.textSize() * 1.3));
    }

    private void drawRun(Graphics2D graphics, Rectangle2D plot, PlayOrder.Run run, double from, double perShot,
            Look look) {
        List<Strip.Dot> shots = run.shots();
        double size = Math.min(look.textSize() * 0.7, Math.max(look.textSize() * 0.3, perShot * 0.8));
        if (run.mean() != null && !shots.isEmpty()) {
            double y = play.scale().place(run.mean(), plot.getMaxY(), plot.getY());
            graphics.setColor(Palette.of(run.mark().colourIndex(), look));
            graphics.setStroke(new BasicStroke((float) (look.textSize() * 0.12)));
            graphics.draw(new Line2D.Double(from + perShot * 0.15, y, from + perShot * (shots.size() - 0.15), y));
        }
        for (int at = 0; at < shots.size(); at++) {
            Strip.Dot dot = shots.get(at);
            if (Double.isFinite(dot.value())) {
                MarkPainter.draw(graphics, run.mark(), from + perShot * (at + 0.5),
                        play.scale().place(dot.value(), plot.getMaxY(), plot.getY()), size, dot.state(), look);
            }
        }
        graphics.setFont(look.bold());
        graphics.setColor(look.ink());
        double width = TextWidth.of(graphics, look.bold(), run.mark().label());
        graphics.drawString(run.mark().label(), (float) (from + perShot * shots.size() / 2 - width / 2),
                (float) (plot.getMaxY() + look.textSize() * 1.4));
    }

    private void drawDrift(Graphics2D graphics, Rectangle2D plot, double perShot, Look look) {
        if (play.driftFrom() == null || play.driftTo() == null) {
            return;
        }
        graphics.setColor(look.quiet());
        graphics.setStroke(new BasicStroke(1f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10,
                new float[] {4, 3}, 0));
        graphics.draw(new Line2D.Double(plot.getX() + perShot / 2,
                play.scale().place(play.driftFrom(), plot.getMaxY(), plot.getY()), plot.getMaxX() - perShot / 2,
                play.scale().place(play.driftTo(), plot.getMaxY(), plot.getY())));
    }
}
