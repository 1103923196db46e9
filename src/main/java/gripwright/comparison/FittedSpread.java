package gripwright.comparison;

import gripwright.statistics.SpreadAnalysis;
import gripwright.statistics.SpreadPrior;

/** The spread of one metric's configurations: analysis, and draws for choosing. */
final class FittedSpread {

    /** What of a spread matters: a fifth more or less; our judgement. */
    static final double SMALLEST_SHARE = 0.2;

    private final MetricRows rows;
    private final SpreadAnalysis analysis;

    FittedSpread(MetricRows rows) {
        this.rows = rows;
        this.analysis = SpreadAnalysis.of(rows.values(), rows.configurationOfRow(), rows.runOfRow(),
                rows.configurations(), SpreadPrior.USUAL, FittedMetric.LEVEL);
    }

    MetricRows rows() {
        return rows;
    }

    SpreadAnalysis analysis() {
        return analysis;
    }

    /** Whether any spread can be told. */
    boolean isAvailable() {
        return analysis.pooledStandardDeviation().isAvailable();
    }

    /** Whether this configuration has enough shots. */
    boolean has(int configuration) {
        return analysis.groups().get(configuration).interval().isAvailable();
    }

    /** The smallest difference of two standard deviations that matters: a fifth of what all share. */
    double smallest() {
        return SMALLEST_SHARE * analysis.pooledStandardDeviation().get();
    }

    /** Standard deviations drawn from scores (draws x configurations); null for one without enough shots. */
    double[][] draws(double[][] scores) {
        return analysis.draws(scores);
    }
}
