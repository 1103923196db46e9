package gripwright.desktop.support;

import gripwright.charts.Look;
import gripwright.charts.Mark;
import gripwright.charts.MarkPainter;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;
import javafx.beans.value.WeakChangeListener;
import javafx.scene.canvas.Canvas;
import org.jfree.fx.FXGraphics2D;

/** The mark of a configuration, colour and shape, as it is drawn in every picture; its label stands beside it. */
public final class MarkCanvas extends Canvas {

    private static final double SHARE = 0.72;

    private final ObservableValue<Mark> mark;
    private final ObservableValue<Look> look;
    private final ChangeListener<Object> changed = (observed, before, now) -> draw();

    /**
     * @param mark the mark; null draws nothing
     * @param look of the window, {@link Workbench#pictureLook}
     * @param size side of the square it stands in, px
     */
    public MarkCanvas(ObservableValue<Mark> mark, ObservableValue<Look> look, double size) {
        super(size, size);
        this.mark = mark;
        this.look = look;
        mark.addListener(new WeakChangeListener<>(changed));
        look.addListener(new WeakChangeListener<>(changed));
        draw();
    }

    /** Draws it on a square of another size. */
    public void setSize(double size) {
        setWidth(size);
        setHeight(size);
        draw();
    }

    private void draw() {
        getGraphicsContext2D().clearRect(0, 0, getWidth(), getHeight());
        if (mark.getValue() != null) {
            MarkPainter.draw(new FXGraphics2D(getGraphicsContext2D()), mark.getValue(), getWidth() / 2,
                    getHeight() / 2, getWidth() * SHARE, MarkPainter.State.PLAIN, look.getValue());
        }
    }
}
