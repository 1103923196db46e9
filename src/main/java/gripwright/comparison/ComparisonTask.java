package gripwright.comparison;

import gripwright.model.Metric;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.model.VerdictSettings;
import gripwright.statistics.BlockPrior;
import gripwright.statistics.DriftPrior;
import gripwright.statistics.MixedModelFitter;
import java.util.List;

/** One comparison under way: the session, its test in the order of play, the shop's settings, and fits made from them. */
final class ComparisonTask {

    private final Session session;
    private final ShopSettings shop;
    private final PlayedTest played;
    private final String reference;
    private final MixedModelFitter fitter;
    private final ScorePoints points;
    private final RangeTables tables;
    private final List<int[]> pairs;
    private final Circumstances circumstances;
    private final PlayedTest withSetAside;

    ComparisonTask(Session session, ShopSettings shop, PlayedTest played, String reference, MixedModelFitter fitter,
            ScorePoints points, RangeTables tables) {
        this.session = session;
        this.shop = shop;
        this.played = played;
        this.reference = reference;
        this.fitter = fitter.with(new BlockPrior(shop.verdicts().stintToNoisePriorScale()))
                .with(new DriftPrior(shop.verdicts().driftPriorSd()));
        this.points = points;
        this.tables = tables;
        this.pairs = Pairs.of(played.configurations(), reference);
        this.circumstances = new Circumstances(played);
        this.withSetAside = played.shots().stream().anyMatch(s -> s.counts() && s.shot().isSetAside())
                ? played.withSetAsideBack() : null;
    }

    Session session() {
        return session;
    }

    ShopSettings shop() {
        return shop;
    }

    VerdictSettings settings() {
        return shop.verdicts();
    }

    PlayedTest played() {
        return played;
    }

    /** Identity of the reference; null where there is no configuration. */
    String reference() {
        return reference;
    }

    List<int[]> pairs() {
        return pairs;
    }

    Circumstances circumstances() {
        return circumstances;
    }

    ScorePoints points() {
        return points;
    }

    RangeTables tables() {
        return tables;
    }

    /** Index of the reference; 0 where there is no configuration. */
    int referenceIndex() {
        for (int k = 0; k < played.configurations().size(); k++) {
            if (played.configurations().get(k).id().equals(reference)) {
                return k;
            }
        }
        return 0;
    }

    /** The metric with its usual aim. */
    FittedMetric fit(Metric metric) {
        return fit(played.rows(metric), Aim.of(metric, session.goal(), played.test().club().kind()));
    }

    FittedMetric fit(MetricRows rows, Aim aim) {
        return new FittedMetric(rows, aim, fitter.fit(rows.values(), rows.configurationOfRow(), rows.swingOfRow(),
                rows.runOfRow(), rows.configurations()), session.smallestDifference(rows.metric(), shop), settings(),
                points);
    }

    /** The same metric with the set-aside shots back in; null where that changes nothing. */
    FittedMetric withSetAsideBack(FittedMetric fitted) {
        if (withSetAside == null) {
            return null;
        }
        MetricRows rows = withSetAside.rows(fitted.rows().metric());
        return rows.readings() == fitted.rows().readings() ? null : fit(rows, fitted.aim());
    }
}
