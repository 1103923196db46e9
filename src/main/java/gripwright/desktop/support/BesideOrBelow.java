package gripwright.desktop.support;

import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.layout.Region;

/** Two parts of a sheet: the second stands beside the first where there is room for it, else below. */
public final class BesideOrBelow extends Region {

    private static final double GAP = 5 * Sheets.STEP;
    private static final double BELOW = 4 * Sheets.STEP;

    private final Node first;
    private final Node second;
    private final double leastWidth;

    /**
     * @param first as wide as it wants to be
     * @param second takes the rest beside it, or the whole width below
     * @param leastWidth the least width that the second needs to stand beside, px
     */
    public BesideOrBelow(Node first, Node second, double leastWidth) {
        this.first = first;
        this.second = second;
        this.leastWidth = leastWidth;
        getChildren().addAll(first, second);
    }

    private double firstWidth(double width) {
        return Math.min(width, Math.ceil(first.prefWidth(-1)));
    }

    private boolean beside(double width) {
        return width - firstWidth(width) - GAP >= leastWidth;
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefWidth(double height) {
        return first.prefWidth(-1) + GAP + leastWidth;
    }

    @Override
    protected double computeMinWidth(double height) {
        return leastWidth;
    }

    @Override
    protected double computePrefHeight(double width) {
        if (width <= 0 || beside(width)) {
            double wide = width <= 0 ? computePrefWidth(-1) : width;
            double left = firstWidth(wide);
            return Math.max(first.prefHeight(left), second.prefHeight(wide - left - GAP));
        }
        return first.prefHeight(width) + BELOW + second.prefHeight(width);
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        if (beside(width)) {
            double left = firstWidth(width);
            double right = width - left - GAP;
            first.resizeRelocate(0, 0, left, first.prefHeight(left));
            second.resizeRelocate(left + GAP, 0, right, second.prefHeight(right));
        } else {
            double height = first.prefHeight(width);
            first.resizeRelocate(0, 0, width, height);
            second.resizeRelocate(0, height + BELOW, width, second.prefHeight(width));
        }
    }
}
