package gripwright.comparison;

import gripwright.model.Metric;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The readings of one metric in the order of play: one row per swing of the test, NaN where the swing isn't scored or the
 * reading is missing, so that the drift is counted in swings and not in readings.
 */
final class MetricRows {

    private final Metric metric;
    private final int configurations;
    private final List<PlayedShot> shots;
    private final double[] values;

    /** @param values one per shot; taken over, not copied */
    MetricRows(Metric metric, int configurations, List<PlayedShot> shots, double[] values) {
        this.metric = metric;
        this.configurations = configurations;
        this.shots = shots;
        this.values = values;
    }

    Metric metric() {
        return metric;
    }

    /** Configurations of the test, also those without a reading. */
    int configurations() {
        return configurations;
    }

    /** How many readings there are. */
    int readings() {
        return (int) rows().count();
    }

    /** One value per swing; NaN where there is none. */
    double[] values() {
        return values.clone();
    }

    /** Configuration of each swing. */
    int[] configurationOfRow() {
        return shots.stream().mapToInt(PlayedShot::configuration).toArray();
    }

    /** Run of each swing. */
    int[] runOfRow() {
        return shots.stream().mapToInt(PlayedShot::run).toArray();
    }

    /** Number of each swing. */
    double[] swingOfRow() {
        return shots.stream().mapToDouble(PlayedShot::swing).toArray();
    }

    /** The readings of one configuration. */
    double[] values(int configuration) {
        return rows().filter(i -> shots.get(i).configuration() == configuration).mapToDouble(i -> values[i]).toArray();
    }

    /** The run of each reading of one configuration. */
    int[] runs(int configuration) {
        return rows().filter(i -> shots.get(i).configuration() == configuration).map(i -> shots.get(i).run())
                .toArray();
    }

    /** In how many runs this configuration has a reading. */
    int runCount(int configuration) {
        return (int) IntStream.of(runs(configuration)).distinct().count();
    }

    private IntStream rows() {
        return IntStream.range(0, values.length).filter(i -> !Double.isNaN(values[i]));
    }
}
