package gripwright.charts;

import gripwright.model.Configuration;
import gripwright.model.MarkerShape;

/**
 * How a configuration is marked everywhere: colour and shape, with its label beside it.
 *
 * @param colourIndex index into the {@link Palette}
 * @param shape the shape
 * @param label the short label
 */
public record Mark(int colourIndex, MarkerShape shape, String label) {

    public static Mark of(Configuration configuration) {
        return new Mark(configuration.colourIndex(), configuration.marker(), configuration.label());
    }
}
