package gripwright.comparison;

import gripwright.model.Direction;
import gripwright.model.VerdictSettings;
import gripwright.statistics.ContrastPosterior;
import gripwright.statistics.GroupPrior;
import gripwright.statistics.MixedModelFit;
import gripwright.statistics.NotIdentified;
import gripwright.statistics.PosteriorDraws;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.stat.StatUtils;

/** One metric with its model: figures of pairs and configurations, for claims and for choosing. */
final class FittedMetric {

    static final double LEVEL = 0.95;

    private final MetricRows rows;
    private final Aim aim;
    private final MixedModelFit fit;
    private final double smallest;
    private final boolean raised;
    private final double probable;
    private final ScorePoints points;
    private NearTargetGains gains;
    private Estimate[] means;
    private Estimate drift;

    /**
     * @param smallest the smallest difference that matters as set, internal units
     * @param settings thresholds; among them the least share of the noise that it is taken as
     */
    FittedMetric(MetricRows rows, Aim aim, MixedModelFit fit, double smallest, VerdictSettings settings,
            ScorePoints points) {
        this.rows = rows;
        this.aim = aim;
        this.fit = fit;
        this.points = points;
        this.probable = settings.probable();
        double leastShare = settings.leastDifferenceInNoise();
        double noise = fit.isAvailable() ? noise(fit) : 0;
        this.raised = leastShare * noise > smallest;
        this.smallest = Math.max(smallest, leastShare * noise);
    }

    private static double noise(MixedModelFit fit) {
        double mean = fit.residualStandardDeviation().estimate();
        return Double.isFinite(mean) ? mean : fit.residualStandardDeviation().median();
    }

    MetricRows rows() {
        return rows;
    }

    Aim aim() {
        return aim;
    }

    MixedModelFit fit() {
        return fit;
    }

    /** The smallest difference that matters as used. */
    double smallest() {
        return smallest;
    }

    /** The probability from which 'probably' is said. */
    double probable() {
        return probable;
    }

    boolean isSmallestRaised() {
        return raised;
    }

    /** The model's mean of a configuration at the middle of the test; null where it can't be had. */
    Estimate mean(int configuration) {
        if (means == null) {
            means = new Estimate[rows.configurations()];
            for (int k = 0; k < means.length; k++) {
                means[k] = estimate(fit.mean(k));
            }
        }
        return means[configuration];
    }

    /** The drift from the first swing to the last; null where it is not in the model. */
    Estimate drift() {
        if (drift == null && fit.isAvailable() && fit.hasDrift()) {
            drift = estimate(fit.drift());
        }
        return drift;
    }

    private static Estimate estimate(ContrastPosterior posterior) {
        return posterior.isDefined() ? new Estimate(posterior.estimate(), interval(posterior)) : null;
    }

    static Interval interval(ContrastPosterior posterior) {
        gripwright.statistics.Interval interval = posterior.interval(LEVEL);
        return new Interval(interval.lower(), interval.upper());
    }

    /** What can be said of one configuration against another. */
    PairFigures pair(int of, int against) {
        ContrastPosterior difference = fit.difference(of, against);
        if (!difference.isDefined()) {
            return PairFigures.plain(StatUtils.mean(rows.values(of)) - StatUtils.mean(rows.values(against)));
        }
        double up = difference.familyProbabilityAbove(smallest);
        double down = difference.familyProbabilityBelow(-smallest);
        double above = difference.probabilityAbove(smallest);
        double below = difference.probabilityBelow(-smallest);
        double higher = difference.probabilityAbove(0);
        double level = Math.max(0, 1 - above - below);
        double estimate = difference.estimate();
        Interval interval = interval(difference);
        Estimate plain = new Estimate(estimate, interval);
        return switch (aim.direction()) {
            case HIGHER -> new PairFigures(estimate, interval, plain, higher, higher, above, up, below, down, level,
                    up, down, level);
            case LOWER -> new PairFigures(estimate, interval, plain.negated(), higher, 1 - higher, below, down, above,
                    up, level, up, down, level);
            case NOT_SCORED -> new PairFigures(estimate, interval, null, higher, higher, above, up, below, down, level,
                    up, down, level);
            case NEAR_TARGET -> gains().figures(of, against,
                    new PairFigures(estimate, interval, null, higher, higher, above, up, below, down, level, up, down,
                            level), smallest);
        };
    }

    private NearTargetGains gains() {
        if (gains == null) {
            gains = new NearTargetGains(draws(fit), present(), aim.target());
        }
        return gains;
    }

    private PosteriorDraws draws(MixedModelFit of) {
        return of.draw(points.of(of.scoresPerDraw()));
    }

    /** Configurations with a reading. */
    int[] present() {
        return java.util.stream.IntStream.range(0, rows.configurations()).filter(fit::hasValues).toArray();
    }

    /**
     * The covariance matrix of these configurations' means, on the scale of their t distributions: each entry from the
     * variances of two means and of their difference.
     */
    double[][] covariance(int[] which) {
        double nu = fit.degreesOfFreedom();
        double scale = (nu - 2) / nu;
        double[][] matrix = new double[which.length][which.length];
        for (int i = 0; i < which.length; i++) {
            matrix[i][i] = scale * variance(fit.mean(which[i]));
            for (int j = 0; j < i; j++) {
                double difference = scale * variance(fit.difference(which[i], which[j]));
                matrix[i][j] = (matrix[i][i] + matrix[j][j] - difference) / 2;
                matrix[j][i] = matrix[i][j];
            }
        }
        return matrix;
    }

    private static double variance(ContrastPosterior posterior) {
        return posterior.standardDeviation() * posterior.standardDeviation();
    }

    /** The same metric under the prior for choosing. */
    MixedModelFit forChoosing(GroupPrior prior) {
        return fit.with(prior);
    }

    /** P(best) of each configuration under the prior for choosing; NaN where it can't be had or isn't scored. */
    double[] probabilityBest(GroupPrior prior) {
        double[] shares = new double[rows.configurations()];
        java.util.Arrays.fill(shares, Double.NaN);
        if (!fit.isAvailable() || aim.direction() == Direction.NOT_SCORED) {
            return shares;
        }
        PosteriorDraws draws = draws(forChoosing(prior));
        if (aim.direction() != Direction.NEAR_TARGET) {
            return draws.probabilityBest(aim.direction() == Direction.HIGHER);
        }
        int[] present = present();
        double[] wins = new double[rows.configurations()];
        for (int i = 0; i < draws.size(); i++) {
            int best = present[0];
            double nearest = Double.POSITIVE_INFINITY;
            for (int k : present) {
                double distance = Math.abs(draws.mean(i, k) - aim.target());
                if (distance < nearest) {
                    nearest = distance;
                    best = k;
                }
            }
            wins[best]++;
        }
        for (int k : present) {
            shares[k] = wins[k] / draws.size();
        }
        return shares;
    }

    /** What this session can't tell of the metric. */
    List<NotIdentifiedPart> notIdentified() {
        List<NotIdentifiedPart> parts = new ArrayList<>();
        for (NotIdentified what : fit.notIdentified()) {
            NotIdentifiedPart part = switch (what) {
                case NO_VALUES, TOO_FEW_VALUES -> NotIdentifiedPart.TOO_FEW_SHOTS;
                case ALL_VALUES_EQUAL -> NotIdentifiedPart.ALL_EQUAL;
                case NO_VARIATION_WITHIN_BLOCKS -> NotIdentifiedPart.NO_VARIATION_IN_STINTS;
                case BLOCK_VARIANCE -> NotIdentifiedPart.STINT_VARIATION;
                case DRIFT, DRIFT_WITHOUT_PRIOR -> NotIdentifiedPart.DRIFT;
                case STANDARD_DEVIATIONS -> NotIdentifiedPart.WIDE;
                case COVARIATE_CONSTANT, GROUP_WITHOUT_VALUES -> null;
            };
            if (part != null && !parts.contains(part)) {
                parts.add(part);
            }
        }
        return parts;
    }
}
