package gripwright.comparison;

import gripwright.model.Metric;
import gripwright.model.Readings;
import gripwright.model.Shot;
import gripwright.model.Stint;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * One simulated session with its truth.
 *
 * @param rows the readings in the order of play
 * @param truth true means
 */
record StudySession(MetricRows rows, double[] truth) {

    private static final Shot SHOT = Shot.of("shot", Readings.none());
    private static final Stint STINT = Stint.planned("stint", "configuration", Stint.Kind.SCORED, 1, 0);

    /** The n-th session of a cell: its own random numbers, whichever sessions ran before. */
    static StudySession of(StudyCell cell, Random random) {
        double[] truth = new double[cell.configurations()];
        truth[random.nextInt(truth.length)] = cell.better();
        return of(cell, truth, random);
    }

    static StudySession of(StudyCell cell, double[] truth, Random random) {
        List<Integer> stints = cell.order().stints(truth.length, random);
        int n = stints.size() * cell.order().shots();
        List<PlayedShot> shots = new ArrayList<>();
        double[] values = new double[n];
        int row = 0;
        for (int j = 0; j < stints.size(); j++) {
            double effect = cell.tau() * random.nextGaussian();
            for (int i = 0; i < cell.order().shots(); i++) {
                double t = (row - (n - 1) / 2.0) / (n - 1);
                values[row] = truth[stints.get(j)] + cell.drift() * t + effect + random.nextGaussian();
                shots.add(new PlayedShot(SHOT, STINT, stints.get(j), j, row + 1, true));
                row++;
            }
        }
        return new StudySession(new MetricRows(Metric.CLUB_SPEED, truth.length, shots, values), truth);
    }
}
