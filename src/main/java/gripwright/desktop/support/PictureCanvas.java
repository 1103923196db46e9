package gripwright.desktop.support;

import gripwright.charts.Look;
import gripwright.charts.Picture;
import gripwright.charts.ShippedFonts;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Orientation;
import javafx.scene.canvas.Canvas;
import javafx.scene.layout.Region;
import org.jfree.fx.FXGraphics2D;

/**
 * Shows a {@link Picture} on the screen, redrawn when it, its look or its size changes.
 *
 * <p>Its accessible text should be set by whoever shows it: a picture alone tells a screen reader nothing.
 */
public final class PictureCanvas extends Region {

    private final Canvas canvas = new Canvas();
    private final ObjectProperty<Picture> picture = new SimpleObjectProperty<>(this, "picture");
    private final ObjectProperty<Look> look = new SimpleObjectProperty<>(this, "look", Look.light(14));
    private final DoubleProperty leastHeight = new SimpleDoubleProperty(this, "leastHeight", 40);

    public PictureCanvas() {
        ShippedFonts.register();
        getStyleClass().add("picture-canvas");
        getChildren().add(canvas);
        canvas.setManaged(false);
        setMinSize(0, 0);
        picture.addListener((observable, before, after) -> changed());
        look.addListener((observable, before, after) -> changed());
    }

    /** The picture shown; null for none. */
    public ObjectProperty<Picture> pictureProperty() {
        return picture;
    }

    public void setPicture(Picture shown) {
        picture.set(shown);
    }

    /** Colours and letter size. */
    public ObjectProperty<Look> lookProperty() {
        return look;
    }

    public void setLook(Look shown) {
        look.set(shown);
    }

    private void changed() {
        requestLayout();
        draw();
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefHeight(double width) {
        Picture shown = picture.get();
        if (shown == null) {
            return leastHeight.get();
        }
        return Math.ceil(shown.heightFor(width > 0 ? width : 600, look.get()));
    }

    @Override
    protected double computePrefWidth(double height) {
        return 600;
    }

    @Override
    protected void layoutChildren() {
        double width = Math.floor(getWidth());
        double height = Math.floor(getHeight());
        if (canvas.getWidth() != width || canvas.getHeight() != height) {
            canvas.setWidth(width);
            canvas.setHeight(height);
            draw();
        }
    }

    private void draw() {
        double width = canvas.getWidth();
        double height = canvas.getHeight();
        if (width < 1 || height < 1) {
            return;
        }
        canvas.getGraphicsContext2D().clearRect(0, 0, width, height);
        Picture shown = picture.get();
        if (shown == null) {
            return;
        }
        FXGraphics2D graphics = new FXGraphics2D(canvas.getGraphicsContext2D());
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        canvas.getGraphicsContext2D().save();
        shown.draw(graphics, new Rectangle2D.Double(0, 0, width, height), look.get());
        canvas.getGraphicsContext2D().restore();
    }
}
