package gripwright.intake;

import java.util.List;

/**
 * A line of data with the cells of its metric columns taken apart.
 *
 * @param data the line
 * @param cells in the order of the metric columns of its headings
 */
record ParsedLine(DataLine data, List<CellReading> cells) {
}
