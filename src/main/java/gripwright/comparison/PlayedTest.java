package gripwright.comparison;

import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Metric;
import gripwright.model.Stint;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * A test laid out in the order of play: who hit what, when, and which shots are scored.
 *
 * @param test the test without the rehearsal shots that are left out
 * @param configurations its configurations
 * @param shots all shots in the order of play
 * @param rehearsalsLeftOut rehearsal shots that were left out since the test also holds real ones
 */
record PlayedTest(ClubTest test, List<Configuration> configurations, List<PlayedShot> shots, int rehearsalsLeftOut) {

    /** Lays a test out; rehearsal shots are left out where the test also holds real ones. */
    static PlayedTest of(ClubTest test) {
        Map<String, Integer> indexes = new HashMap<>();
        for (Configuration configuration : test.configurations()) {
            indexes.put(configuration.id(), indexes.size());
        }
        ClubTest compared = test.withoutRehearsals();
        List<PlayedShot> played = new ArrayList<>();
        Stint before = null;
        int run = -1;
        for (Stint stint : compared.stints()) {
            if (stint.shots().isEmpty()) {
                continue;
            }
            run += stint.goesOnFrom(before) ? 0 : 1;
            before = stint;
            for (int index = 0; index < stint.shots().size(); index++) {
                played.add(new PlayedShot(stint.shots().get(index), stint, indexes.get(stint.configurationId()), run,
                        played.size() + 1, stint.isScoredAt(index)));
            }
        }
        int leftOut = shots(test) - shots(compared);
        return new PlayedTest(compared, test.configurations(), List.copyOf(played), leftOut);
    }

    private static int shots(ClubTest test) {
        return test.stints().stream().mapToInt(s -> s.shots().size()).sum();
    }

    /** This test with only some of its shots; swings and runs keep their numbers. */
    PlayedTest only(Predicate<PlayedShot> which) {
        return new PlayedTest(test, configurations, shots.stream().filter(which).toList(), rehearsalsLeftOut);
    }

    /** This test with the set-aside shots taken back in. */
    PlayedTest withSetAsideBack() {
        return new PlayedTest(test, configurations, shots.stream()
                .map(s -> new PlayedShot(s.shot().withSetAsideReason(null), s.stint(), s.configuration(), s.run(),
                        s.swing(), s.counts()))
                .toList(), rehearsalsLeftOut);
    }

    int swings() {
        return shots.isEmpty() ? 0 : shots.get(shots.size() - 1).swing();
    }

    /** Scored shots of this configuration. */
    List<PlayedShot> scored(int configuration) {
        return shots.stream().filter(s -> s.configuration() == configuration && s.isScored()).toList();
    }

    /** The rows of one metric, one per swing in the order of play. */
    MetricRows rows(Metric metric) {
        double[] values = new double[shots.size()];
        for (int i = 0; i < values.length; i++) {
            PlayedShot shot = shots.get(i);
            values[i] = shot.isScored() ? shot.shot().readings().value(metric).orElse(Double.NaN) : Double.NaN;
        }
        return new MetricRows(metric, configurations.size(), shots, values);
    }
}
