package gripwright.charts;

import java.util.List;

/**
 * What a strip shows: one horizontal axis for a metric, with every shot as a mark, intervals as bars, and the band of
 * differences that don't matter around the reference. All numbers in the unit shown.
 *
 * @param title the metric with its unit, 'face angle, °'
 * @param leftWord what lower values are called ('closed'); may be empty
 * @param rightWord what higher values are called ('open'); may be empty
 * @param scale the axis
 * @param band the band of what doesn't matter; null where there is none
 * @param rows one a configuration
 * @param decimalMark '.' or ','
 */
public record Strip(String title, String leftWord, String rightWord, Scale scale, Band band, List<Row> rows,
        char decimalMark) {

    /** The differences that don't matter around the reference. */
    public record Band(double low, double high, String label) {
    }

    /** One shot. */
    public record Dot(double value, MarkPainter.State state) {
    }

    /**
     * One configuration.
     *
     * @param mark its mark and label
     * @param detail beside the label, '58 g'; may be empty
     * @param dots its shots
     * @param estimate its mean; null where there is none
     * @param low lower end of its interval; null where there is none
     * @param high upper end
     * @param figures in numbers, '0.8 closed ± 1.0'; may be empty
     * @param words the verdict in words; may be empty
     * @param reference whether it is the reference
     */
    public record Row(Mark mark, String detail, List<Dot> dots, Double estimate, Double low, Double high,
            String figures, String words, boolean reference) {

        public Row {
            dots = List.copyOf(dots);
        }
    }

    public Strip {
        rows = List.copyOf(rows);
    }
}
