package gripwright.desktop.compare;

import gripwright.comparison.Comparison;
import gripwright.comparison.ConfigurationFigures;
import gripwright.comparison.Interval;
import gripwright.comparison.MetricComparison;
import gripwright.model.ReadingText;
import java.util.List;

/**
 * One configuration in one metric, as text.
 *
 * @param label its label
 * @param shots scored shots and the stints they were hit in
 * @param mean plain mean
 * @param sd plain standard deviation
 * @param estimate the model's mean
 * @param interval its 95 % interval
 * @param best chance that it serves best, for choosing
 */
record ConfigurationRow(String label, String shots, String mean, String sd, String estimate, String interval,
        String best) {

    private static final String NONE = "\u2013";

    static List<ConfigurationRow> of(Comparison comparison, MetricComparison metric, ReadingText text) {
        return metric.configurations().stream().map(figures -> of(comparison, metric, figures, text)).toList();
    }

    private static ConfigurationRow of(Comparison comparison, MetricComparison metric, ConfigurationFigures figures,
            ReadingText text) {
        boolean reference = figures.configurationId().equals(comparison.referenceId());
        Interval interval = figures.estimate() == null ? figures.interval() : figures.estimate().interval();
        return new ConfigurationRow(figures.label() + (reference ? ", reference" : ""),
                figures.shots() + (figures.stints() == 1 ? " in 1 stint" : " in " + figures.stints() + " stints"),
                mean(metric, figures.mean(), text), mean(metric, figures.sd(), text),
                figures.estimate() == null ? NONE : mean(metric, figures.estimate().value(), text),
                interval == null || !interval.isBounded() ? NONE : mean(metric, interval.low(), text) + " to "
                        + mean(metric, interval.high(), text),
                PairRow.chance(figures.probabilityBest()));
    }

    private static String mean(MetricComparison metric, Double value, ReadingText text) {
        return value == null ? NONE : text.mean(metric.metric(), value);
    }
}
