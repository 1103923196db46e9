package gripwright.desktop.bay;

import gripwright.charts.Look;
import gripwright.charts.Mark;
import gripwright.charts.MarkPainter;
import gripwright.model.Stint;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import org.jfree.fx.FXGraphics2D;

/** The queue of stints with the one in hand; a row that is clicked opens what can be done with its stint. */
final class QueuePane extends ScrollPane {

    private static final PseudoClass IN_HAND = PseudoClass.getPseudoClass("in-hand");
    private static final PseudoClass DONE = PseudoClass.getPseudoClass("done");

    private static final double ROW_HEIGHT = 33;

    private final VBox rows = new VBox();
    private final List<Row> made = new ArrayList<>();
    private final ObservableValue<Look> look;
    private final Consumer<String> opened;
    private List<QueueRow> shown = List.of();
    private double scale = 1;

    QueuePane(ObservableValue<Look> look, Consumer<String> opened) {
        this.look = look;
        this.opened = opened;
        rows.getStyleClass().add("bay-queue");
        setContent(rows);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        getStyleClass().add("gw-scroll");
        setFocusTraversable(false);
        look.addListener((observed, before, now) -> made.forEach(Row::draw));
    }

    void show(List<QueueRow> queue) {
        if (queue.equals(shown)) {
            return;
        }
        shown = queue;
        while (made.size() < queue.size()) {
            made.add(new Row());
        }
        for (int n = 0; n < queue.size(); n++) {
            made.get(n).show(queue.get(n));
        }
        if (rows.getChildren().size() != queue.size()) {
            rows.getChildren().setAll(made.subList(0, queue.size()));
        }
        bringIntoView(queue);
    }

    /** How much larger than usual everything is. */
    void setScale(double larger) {
        scale = larger;
        made.forEach(Row::draw);
    }

    /** Keeps the stint in hand, or else the next one, in view. */
    private void bringIntoView(List<QueueRow> queue) {
        int at = 0;
        while (at < queue.size() && queue.get(at).state() == Stint.State.DONE) {
            at++;
        }
        double hidden = rows.getHeight() - getViewportBounds().getHeight();
        double share = hidden <= 0 ? 0 : Math.min(1, Math.max(0, (at - 2) * ROW_HEIGHT * scale / hidden));
        if (getVvalue() != share) {
            setVvalue(share);
        }
    }

    /** One row: mark, title, state, and the swings as dots. */
    private final class Row extends HBox {

        private static final double MARK = 16;
        private static final double DOT = 8;
        private static final double STEP = 10;
        private static final int MOST_DOTS = 9;

        private final Canvas mark = new Canvas(MARK, MARK);
        private final Label title = BayLabels.label(BayLabels.MIDDLE);
        private final Label state = BayLabels.whole(BayLabels.SMALL, BayLabels.QUIET);
        private final Canvas dots = new Canvas(STEP * MOST_DOTS, MARK);
        private QueueRow row;

        private Row() {
            getStyleClass().add("bay-queue-row");
            title.setMinWidth(0);
            HBox.setHgrow(title, javafx.scene.layout.Priority.ALWAYS);
            title.setMaxWidth(Double.MAX_VALUE);
            getChildren().addAll(mark, title, dots, state);
            setOnMouseClicked(event -> opened.accept(row.stintId()));
        }

        private void show(QueueRow changed) {
            if (changed.equals(row)) {
                return;
            }
            row = changed;
            BayLabels.write(title, row.title());
            BayLabels.write(state, row.stateText());
            setAccessibleText(row.title() + ", " + row.stateText());
            pseudoClassStateChanged(IN_HAND, row.state() == Stint.State.IN_HAND);
            pseudoClassStateChanged(DONE, row.state() == Stint.State.DONE);
            draw();
        }

        private void draw() {
            if (row == null) {
                return;
            }
            double size = MARK * scale;
            mark.setWidth(size);
            mark.setHeight(size);
            GraphicsContext graphics = mark.getGraphicsContext2D();
            graphics.clearRect(0, 0, size, size);
            Mark own = row.mark();
            MarkPainter.draw(new FXGraphics2D(graphics), own, size / 2, size / 2, size * 0.8,
                    MarkPainter.State.PLAIN, look.getValue());
            drawDots();
        }

        private void drawDots() {
            int count = Math.min(MOST_DOTS, row.dots().size());
            dots.setWidth(count * STEP * scale);
            dots.setHeight(MARK * scale);
            GraphicsContext graphics = dots.getGraphicsContext2D();
            graphics.clearRect(0, 0, dots.getWidth(), dots.getHeight());
            graphics.save();
            graphics.scale(scale, scale);
            Color ink = colour(look.getValue().ink());
            Color quiet = colour(look.getValue().quiet());
            int from = row.dots().size() - count;
            for (int n = 0; n < count; n++) {
                dot(graphics, row.dots().get(from + n), n * STEP + 1, (MARK - DOT) / 2, ink, quiet);
            }
            graphics.restore();
        }

        private void dot(GraphicsContext graphics, QueueRow.Dot dot, double x, double y, Color ink, Color quiet) {
            graphics.setStroke(dot == QueueRow.Dot.OPEN ? quiet : ink);
            graphics.setFill(ink);
            graphics.setLineWidth(1);
            switch (dot) {
                case COUNTED -> graphics.fillOval(x, y, DOT, DOT);
                case OPEN -> graphics.strokeOval(x + 0.5, y + 0.5, DOT - 1, DOT - 1);
                case SETTLING -> graphics.fillOval(x + 2, y + 2, DOT - 4, DOT - 4);
                case SETTLING_OPEN -> graphics.strokeOval(x + 2.5, y + 2.5, DOT - 5, DOT - 5);
                case SET_ASIDE -> {
                    graphics.strokeOval(x + 0.5, y + 0.5, DOT - 1, DOT - 1);
                    graphics.strokeLine(x, y + DOT, x + DOT, y);
                }
            }
        }

        private static Color colour(java.awt.Color awt) {
            return Color.rgb(awt.getRed(), awt.getGreen(), awt.getBlue());
        }
    }
}
