package gripwright.comparison;

import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Metric;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.StatUtils;

/** Compares the configurations of one test in one metric. */
final class MetricComparer {

    private static final double LEVEL = 0.975;

    private final Session session;
    private final ClubTest test;
    private final ShopSettings shop;
    private final String reference;

    MetricComparer(Session session, ClubTest test, ShopSettings shop, String reference) {
        this.session = session;
        this.test = test;
        this.shop = shop;
        this.reference = reference;
    }

    MetricComparison compare(MetricRows rows) {
        Metric metric = rows.metric();
        Aim aim = Aim.of(metric, session.goal(), test.club().kind());
        double smallest = session.smallestDifference(metric, shop);
        return new MetricComparison(metric, aim.direction(), aim.target(), smallest, false, aim.primary(),
                session.source().modelled().contains(metric), figures(rows), null, differences(rows),
                ClassicalFigures.none(), List.of());
    }

    private List<ConfigurationFigures> figures(MetricRows rows) {
        List<ConfigurationFigures> figures = new ArrayList<>();
        for (int k = 0; k < rows.configurations(); k++) {
            Configuration configuration = test.configurations().get(k);
            double[] values = rows.values(k);
            int n = values.length;
            Double mean = n == 0 ? null : StatUtils.mean(values);
            Double sd = n < 2 ? null : Math.sqrt(StatUtils.variance(values));
            Interval interval = null;
            if (sd != null) {
                double half = new TDistribution(null, n - 1).inverseCumulativeProbability(LEVEL) * sd / Math.sqrt(n);
                interval = new Interval(mean - half, mean + half);
            }
            figures.add(new ConfigurationFigures(configuration.id(), configuration.label(), n, rows.runs(k), mean, sd,
                    interval, null, null));
        }
        return figures;
    }

    private List<Difference> differences(MetricRows rows) {
        List<Difference> differences = new ArrayList<>();
        for (int[] pair : Pairs.of(test.configurations(), reference)) {
            differences.add(difference(rows, pair[0], pair[1]));
        }
        return differences;
    }

    private Difference difference(MetricRows rows, int of, int against) {
        double[] a = rows.values(of);
        double[] b = rows.values(against);
        Double estimate = a.length == 0 || b.length == 0 ? null : StatUtils.mean(a) - StatUtils.mean(b);
        Interval interval = null;
        if (a.length > 1 && b.length > 1) {
            double u = StatUtils.variance(a) / a.length;
            double v = StatUtils.variance(b) / b.length;
            if (u + v > 0) {
                double df = (u + v) * (u + v) / (u * u / (a.length - 1) + v * v / (b.length - 1));
                double half = new TDistribution(null, df).inverseCumulativeProbability(LEVEL) * Math.sqrt(u + v);
                interval = new Interval(estimate - half, estimate + half);
            }
        }
        Configuration c = test.configurations().get(of);
        Configuration d = test.configurations().get(against);
        return new Difference(c.id(), c.label(), d.id(), d.label(), estimate, interval, null, null, null, null, null,
                null, null, null, Verdict.NOT_SETTLED, Leaning.NONE, Change.NOT_SETTLED, List.of());
    }
}
