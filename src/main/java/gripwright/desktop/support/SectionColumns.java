package gripwright.desktop.support;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.layout.Region;

/**
 * Sections set in as many columns as fit side by side, in reading order: down the first column, then the next.
 *
 * <p>Columns are filled to about the same height without breaking the order, so that Tab follows the eye.
 */
public final class SectionColumns extends Region {

    private static final double GAP = 5 * Sheets.STEP;
    private static final double BELOW = 4 * Sheets.STEP;

    private final double leastWidth;

    /**
     * @param leastWidth the least width of a column, px
     * @param sections in reading order
     */
    public SectionColumns(double leastWidth, Node... sections) {
        this.leastWidth = leastWidth;
        getChildren().addAll(sections);
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    private List<Node> shown() {
        return getManagedChildren();
    }

    private int columns(double width) {
        int fitting = (int) Math.max(1, Math.floor((width + GAP) / (leastWidth + GAP)));
        return Math.min(fitting, Math.max(1, shown().size()));
    }

    private static double columnWidth(double width, int columns) {
        return Math.floor((width - (columns - 1) * GAP) / columns);
    }

    /** For each section its column: the split in reading order whose highest column is lowest. */
    private List<Integer> split(double width) {
        int columns = columns(width);
        double each = columnWidth(width, columns);
        List<Double> heights = shown().stream().map(node -> node.prefHeight(each) + BELOW).toList();
        double low = heights.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        double high = heights.stream().mapToDouble(Double::doubleValue).sum();
        while (high - low > 1) {
            double middle = (low + high) / 2;
            if (filled(heights, middle) <= columns) {
                high = middle;
            } else {
                low = middle;
            }
        }
        List<Integer> places = new ArrayList<>();
        double used = 0;
        int column = 0;
        for (double height : heights) {
            if (used > 0 && used + height > high) {
                column++;
                used = 0;
            }
            used += height;
            places.add(Math.min(column, columns - 1));
        }
        return places;
    }

    private static int filled(List<Double> heights, double limit) {
        int columns = 1;
        double used = 0;
        for (double height : heights) {
            if (used > 0 && used + height > limit) {
                columns++;
                used = 0;
            }
            used += height;
        }
        return columns;
    }

    @Override
    protected double computePrefHeight(double width) {
        double wide = width <= 0 ? leastWidth : width;
        double each = columnWidth(wide, columns(wide));
        List<Integer> places = split(wide);
        double[] heights = new double[columns(wide)];
        for (int index = 0; index < shown().size(); index++) {
            heights[places.get(index)] += shown().get(index).prefHeight(each) + BELOW;
        }
        double highest = 0;
        for (double height : heights) {
            highest = Math.max(highest, height);
        }
        return Math.max(0, highest - BELOW);
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computePrefWidth(double height) {
        return leastWidth;
    }

    @Override
    protected double computeMinWidth(double height) {
        return leastWidth;
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double each = columnWidth(width, columns(width));
        List<Integer> places = split(width);
        double[] down = new double[columns(width)];
        for (int index = 0; index < shown().size(); index++) {
            int column = places.get(index);
            double height = shown().get(index).prefHeight(each);
            shown().get(index).resizeRelocate(Math.floor(column * (each + GAP)), Math.floor(down[column]), each, height);
            down[column] += height + BELOW;
        }
    }
}
