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
    private final int[] counts;
    private final int[] runs;

    /** @param values one per shot; taken over, not copied */
    MetricRows(Metric metric, int configurations, List<PlayedShot> shots, double[] values) {
        this.metric = metric;
        this.configurations = configurations;
        this.shots = shots;
        this.values = values;
        this.counts = new int[configurations];
        this.runs = new int[configurations];
        int[] lastRun = new int[configurations];
        java.util.Arrays.fill(lastRun, -1);
        for (int i = 0; i < values.length; i++) {
            int k = shots.get(i).configuration();
            if (!Double.isNaN(values[i])) {
                counts[k]++;
                runs[k] += shots.get(i).run() == lastRun[k] ? 0 : 1;
                lastRun[k] = shots.get(i).run();
            }
        }
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
        return IntStream.of(counts).sum();
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

    /** How many readings there are of one configuration. */
    int readings(int configuration) {
        return counts[configuration];
    }

    /** In how many runs this configuration has a reading. */
    int runCount(int configuration) {
        return runs[configuration];
    }

    private IntStream rows() {
        return IntStream.range(0, values.length).filter(i -> !Double.isNaN(values[i]));
    }
}
