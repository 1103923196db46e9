package gripwright.comparison;

import gripwright.model.Configuration;
import gripwright.model.Metric;
import gripwright.model.ReadingSource;
import gripwright.model.ReadingText;
import gripwright.statistics.GroupPrior;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.stat.StatUtils;

/** Compares the configurations of one test in one metric. */
final class MetricComparer {

    /** Where a half-normal prior has left 10 % above: a posterior mean of the ratio beyond it strains the prior. */
    static final double STRAINED = 1.645;

    private final ComparisonTask task;
    private final PlayedTest played;
    private final ReadingText text;

    MetricComparer(ComparisonTask task) {
        this.task = task;
        this.played = task.played();
        this.text = ReadingText.of(task.shop(), task.session().player().hand());
    }

    MetricComparison compare(FittedMetric fitted) {
        Metric metric = fitted.rows().metric();
        MetricModel model = model(fitted);
        ClassicalFigures classical = new ClassicalComparer(task, fitted).figures();
        return new MetricComparison(metric, fitted.aim().direction(), fitted.aim().target(), fitted.smallest(),
                fitted.isSmallestRaised(), fitted.aim().primary(), isModelled(metric), figures(fitted), model,
                differences(fitted), classical, sentences(fitted, model, classical));
    }

    private boolean isModelled(Metric metric) {
        return task.session().source().modelled().contains(metric);
    }

    private List<ConfigurationFigures> figures(FittedMetric fitted) {
        double[] best = fitted.probabilityBest(new GroupPrior(task.settings().configurationPriorScale()));
        List<ConfigurationFigures> figures = new ArrayList<>();
        for (int k = 0; k < played.configurations().size(); k++) {
            Configuration configuration = played.configurations().get(k);
            double[] values = fitted.rows().values(k);
            int n = values.length;
            Double mean = n == 0 ? null : StatUtils.mean(values);
            Double sd = n < 2 ? null : Math.sqrt(StatUtils.variance(values));
            Interval interval = null;
            if (sd != null) {
                double half = task.tables().criticalT(n - 1) * sd / Math.sqrt(n);
                interval = new Interval(mean - half, mean + half);
            }
            figures.add(new ConfigurationFigures(configuration.id(), configuration.label(), n,
                    fitted.rows().runCount(k), mean, sd, interval, fitted.mean(k), known(best[k])));
        }
        return figures;
    }

    private static Double known(double value) {
        return Double.isNaN(value) ? null : Double.valueOf(value);
    }

    private MetricModel model(FittedMetric fitted) {
        if (!fitted.fit().isAvailable()) {
            return new MetricModel(null, null, null, null, false, fitted.notIdentified());
        }
        Estimate drift = fitted.drift();
        double ratio = fitted.fit().blockRatio().estimate();
        return new MetricModel(finite(fitted.fit().residualStandardDeviation().estimate()),
                finite(fitted.fit().blockStandardDeviation().estimate()),
                drift == null ? null : drift.value() / fitted.fit().covariateRange(), drift,
                ratio > STRAINED * task.settings().stintToNoisePriorScale(), fitted.notIdentified());
    }

    private static Double finite(double value) {
        return Double.isFinite(value) ? value : null;
    }

    private List<Difference> differences(FittedMetric fitted) {
        int present = fitted.present().length;
        Circumstances circumstances = task.circumstances();
        ReasonWriter writer = new ReasonWriter(fitted, played, circumstances, text, present * (present - 1) / 2);
        FittedMetric withSetAside = task.withSetAsideBack(fitted);
        List<Difference> differences = new ArrayList<>();
        for (int[] pair : task.pairs()) {
            Difference difference = difference(fitted, writer, pair[0], pair[1]);
            differences.add(withSetAside == null ? difference
                    : noteSetAside(difference, fitted, withSetAside, pair[0], pair[1]));
        }
        return differences;
    }

    private Difference difference(FittedMetric fitted, ReasonWriter writer, int of, int against) {
        PairFigures f = fitted.pair(of, against);
        VerdictRule rule = new VerdictRule(task.settings());
        VerdictRule.Ruling ruling = rule.ofGain(fitted.aim(), fitted.smallest(), f);
        Change change = rule.ofDifference(fitted.smallest(), f);
        Configuration c = played.configurations().get(of);
        Configuration d = played.configurations().get(against);
        return new Difference(c.id(), c.label(), d.id(), d.label(), known(f.estimate()), f.interval(), f.gain(),
                known(f.higher()), known(f.positive()), known(f.matters()), known(f.mattersAdjusted()),
                known(f.harms()), known(f.harmsAdjusted()), known(f.same()), ruling.verdict(), ruling.leaning(),
                change, writer.reasons(of, against, f, ruling, change));
    }

    /** Adds what the verdict would be with the set-aside shots back in. */
    private Difference noteSetAside(Difference difference, FittedMetric fitted, FittedMetric withSetAside, int of,
            int against) {
        int more = withSetAside.rows().readings(of) - fitted.rows().readings(of)
                + withSetAside.rows().readings(against) - fitted.rows().readings(against);
        if (more == 0) {
            return difference;
        }
        ReasonWriter writer = new ReasonWriter(withSetAside, played, task.circumstances(), text, task.pairs().size());
        Difference other = difference(withSetAside, writer, of, against);
        VerdictWords words = VerdictWords.forHand(task.session().player().hand());
        String now = words.of(fitted.rows().metric(), fitted.aim().direction(), difference);
        String then = words.of(fitted.rows().metric(), fitted.aim().direction(), other);
        List<String> reasons = new ArrayList<>(difference.reasons());
        reasons.add((more == 1 ? "One shot" : more + " shots") + " of these two set aside; with "
                + (more == 1 ? "it" : "them") + " the verdict would be "
                + (now.equals(then) ? "the same." : "'" + then + "'."));
        return difference.withReasons(reasons);
    }

    private List<String> sentences(FittedMetric fitted, MetricModel model, ClassicalFigures classical) {
        Metric metric = fitted.rows().metric();
        List<String> sentences = new ArrayList<>();
        model.notIdentified().forEach(part -> sentences.add(part.sentence()));
        List<String> missing = new ArrayList<>();
        for (int k = 0; k < played.configurations().size(); k++) {
            if (fitted.rows().readings(k) == 0) {
                missing.add(played.configurations().get(k).label());
            }
        }
        if (!missing.isEmpty()) {
            sentences.add("No reading of " + metric.text() + " for " + String.join(", ", missing) + ".");
        }
        if (model.stintPriorStrained()) {
            sentences.add("Stints vary more than is usual here; verdicts are less sure than they say. Look at the "
                    + "cautious figures, and hit more stints rather than longer ones.");
        }
        if (classical.noiseDiffers()) {
            sentences.add("Shots of these configurations don't scatter alike; the Welch figures allow for that, the "
                    + "model takes one figure for all.");
        }
        if (fitted.aim().targetMissing()) {
            sentences.add("Nearer which number would be better? Say a target for " + metric.text()
                    + " in the goal to have it scored.");
        }
        if (isModelled(metric)) {
            sentences.add("The source works " + metric.text() + " out of a model; it was not measured.");
        }
        if (metric == Metric.CLOSURE_RATE && task.session().source().closureAxis()
                == ReadingSource.ClosureAxis.NOT_SAID) {
            sentences.add("About which axis the closure rate is taken isn't said; compare it within this session only.");
        }
        return sentences;
    }
}
