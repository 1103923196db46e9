package gripwright.comparison;

import gripwright.model.Metric;
import java.util.List;
import java.util.stream.IntStream;

/** The readings of one metric over the scored shots of a test, in the order of play. */
final class MetricRows {

    private final Metric metric;
    private final int configurations;
    private final List<PlayedShot> shots;
    private final double[] values;

    MetricRows(Metric metric, int configurations, List<PlayedShot> shots, double[] values) {
        this.metric = metric;
        this.configurations = configurations;
        this.shots = List.copyOf(shots);
        this.values = values;
    }

    Metric metric() {
        return metric;
    }

    /** Configurations of the test, also those without a reading. */
    int configurations() {
        return configurations;
    }

    int size() {
        return values.length;
    }

    List<PlayedShot> shots() {
        return shots;
    }

    /** All readings. */
    double[] values() {
        return values.clone();
    }

    /** The readings of one configuration. */
    double[] values(int configuration) {
        return IntStream.range(0, values.length).filter(i -> shots.get(i).configuration() == configuration)
                .mapToDouble(i -> values[i]).toArray();
    }

    /** How many runs of this configuration have a reading. */
    int runs(int configuration) {
        return (int) shots.stream().filter(s -> s.configuration() == configuration).mapToInt(PlayedShot::run)
                .distinct().count();
    }

    /** Indexes of the configurations that have a reading, rising. */
    int[] present() {
        return shots.stream().mapToInt(PlayedShot::configuration).distinct().sorted().toArray();
    }

    /** Swing numbers. */
    double[] swings() {
        return shots.stream().mapToDouble(PlayedShot::swing).toArray();
    }

    /** Run of each reading, numbered from 0 without gaps. */
    int[] runIndexes() {
        int[] distinct = shots.stream().mapToInt(PlayedShot::run).distinct().sorted().toArray();
        return shots.stream().mapToInt(s -> java.util.Arrays.binarySearch(distinct, s.run())).toArray();
    }

    /** Configuration of each reading as an index into {@link #present()}. */
    int[] presentIndexes() {
        int[] present = present();
        return shots.stream().mapToInt(s -> java.util.Arrays.binarySearch(present, s.configuration())).toArray();
    }
}
