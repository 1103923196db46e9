package gripwright.comparison;

import gripwright.model.Configuration;
import gripwright.statistics.ProportionEstimate;
import java.util.ArrayList;
import java.util.List;

/**
 * How often each configuration was mishit, counted by the shots that the fitter set aside among those that would have
 * been scored: rate x / n with Jeffreys' interval, the tails of Beta(x + ½, n − x + ½); see {@link ProportionEstimate}.
 * Without a shot there is no rate.
 */
final class MishitComparer {

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
        ProportionEstimate share = ProportionEstimate.of(aside, shots, FittedMetric.LEVEL);
        return new Estimate(share.proportion().get(), new Interval(share.interval().lower(), share.interval().upper()));
    }
}
