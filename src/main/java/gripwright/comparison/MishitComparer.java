package gripwright.comparison;

import gripwright.model.Configuration;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.BetaDistribution;

/**
 * How often each configuration was mishit, counted by the shots that the fitter set aside; the interval is Clopper and
 * Pearson's (Biometrika 26 (1934) 404-413), which never covers less than it says.
 */
final class MishitComparer {

    private static final double TAIL = 0.025;

    private final PlayedTest played;

    MishitComparer(PlayedTest played) {
        this.played = played;
    }

    List<MishitRate> rates() {
        List<MishitRate> rates = new ArrayList<>();
        for (int k = 0; k < played.configurations().size(); k++) {
            Configuration configuration = played.configurations().get(k);
            int index = k;
            List<PlayedShot> shots = played.shots().stream().filter(s -> s.configuration() == index && s.counts())
                    .toList();
            int aside = (int) shots.stream().filter(s -> s.shot().isSetAside()).count();
            rates.add(new MishitRate(configuration.id(), configuration.label(), shots.size(), aside,
                    rate(aside, shots.size())));
        }
        return rates;
    }

    private static Estimate rate(int aside, int shots) {
        if (shots == 0) {
            return null;
        }
        double low = aside == 0 ? 0
                : new BetaDistribution(null, aside, shots - aside + 1).inverseCumulativeProbability(TAIL);
        double high = aside == shots ? 1
                : new BetaDistribution(null, aside + 1, shots - aside).inverseCumulativeProbability(1 - TAIL);
        return new Estimate((double) aside / shots, new Interval(low, high));
    }
}
