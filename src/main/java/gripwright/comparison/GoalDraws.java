package gripwright.comparison;

import gripwright.model.Direction;
import gripwright.model.Goal;
import gripwright.model.Guardrail;
import gripwright.model.Metric;
import gripwright.model.PrimaryMetric;
import gripwright.statistics.GaussianCopula;
import gripwright.statistics.GroupPrior;
import gripwright.statistics.MixedModelFit;
import gripwright.statistics.PosteriorDraws;
import gripwright.statistics.QuasiRandomNormals;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Simultaneous draws of what the goal is about: the gain of every configuration over the reference in each primary
 * metric, in units of its smallest difference, and the loss in each guardrail; metrics tied by their noise.
 */
final class GoalDraws {

    /** Scores of a draw before this one, node of the grid and noise, stay independent between metrics. */
    private static final int TIED_FROM = 2;

    /**
     * One scored aspect of the goal.
     *
     * @param primary as the goal names it
     * @param gains configurations x draws, units of the smallest difference; null for one without a reading
     */
    record Part(PrimaryMetric primary, double[][] gains) {

        String name() {
            return primary.aspect() == PrimaryMetric.Aspect.SPREAD ? "spread of " + primary.metric().text()
                    : primary.metric().text();
        }
    }

    /**
     * One guardrail.
     *
     * @param guardrail as the goal names it
     * @param kept configurations x draws; null for one without a reading
     */
    record Rail(Guardrail guardrail, boolean[][] kept) {
    }

    private final ComparisonTask task;
    private final Map<Metric, FittedMetric> fitted;
    private final Map<Metric, FittedSpread> spreads;
    private final List<Part> parts = new ArrayList<>();
    private final List<Rail> rails = new ArrayList<>();
    private final List<String> leftOut = new ArrayList<>();
    private final Map<Metric, PosteriorDraws> draws = new LinkedHashMap<>();
    private double[][] spare;

    GoalDraws(ComparisonTask task, Map<Metric, FittedMetric> fitted, Map<Metric, FittedSpread> spreads) {
        this.task = task;
        this.fitted = fitted;
        this.spreads = spreads;
        if (!task.played().configurations().isEmpty()) {
            drawMeans();
        }
        task.session().goal().primaries().forEach(this::addPart);
        task.session().goal().guardrails().forEach(this::addRail);
    }

    /** Aspects that could be scored. */
    List<Part> parts() {
        return parts;
    }

    List<Rail> rails() {
        return rails;
    }

    /** Sentences on what the goal names and this session can't score. */
    List<String> leftOut() {
        return leftOut;
    }

    /** Standard normal scores for the player's answers: draws x configurations. */
    double[][] feelScores() {
        return spare;
    }

    private void drawMeans() {
        List<FittedMetric> needed = new ArrayList<>();
        for (Metric metric : metricsOfMeans()) {
            FittedMetric one = fitted.get(metric);
            if (one != null && one.fit().isAvailable()) {
                needed.add(one);
            }
        }
        int configurations = task.played().configurations().size();
        int perMetric = configurations + 3;
        int own = needed.size() * perMetric;
        int rest = (metricsOfSpreads().size() + 1) * configurations;
        double[][] points = task.points().of(Math.min(QuasiRandomNormals.MOST_DIMENSIONS, own + rest));
        this.spare = columns(points, own, rest);
        if (needed.isEmpty()) {
            return;
        }
        double[][] values = needed.stream().map(f -> f.rows().values()).toArray(double[][]::new);
        double[][][] scores = GaussianCopula.ofValues(values, needed.get(0).rows().runOfRow())
                .tie(points, perMetric, TIED_FROM);
        GroupPrior prior = new GroupPrior(task.settings().configurationPriorScale());
        for (int m = 0; m < needed.size(); m++) {
            MixedModelFit fit = needed.get(m).forChoosing(prior);
            draws.put(needed.get(m).rows().metric(), fit.draw(scores[m]));
        }
    }

    private static double[][] columns(double[][] points, int from, int count) {
        double[][] part = new double[points.length][];
        for (int i = 0; i < points.length; i++) {
            part[i] = java.util.Arrays.copyOfRange(points[i], from, from + count);
        }
        return part;
    }

    private List<Metric> metricsOfMeans() {
        List<Metric> metrics = new ArrayList<>();
        for (PrimaryMetric primary : task.session().goal().primaries()) {
            if (primary.aspect() == PrimaryMetric.Aspect.MEAN && !metrics.contains(primary.metric())) {
                metrics.add(primary.metric());
            }
        }
        for (Guardrail guardrail : task.session().goal().guardrails()) {
            if (!guardrail.isOnSpread() && !metrics.contains(guardrail.metric())) {
                metrics.add(guardrail.metric());
            }
        }
        return metrics;
    }

    private List<Metric> metricsOfSpreads() {
        Goal goal = task.session().goal();
        return Stream.concat(goal.primaries().stream().filter(p -> p.aspect() == PrimaryMetric.Aspect.SPREAD)
                .map(PrimaryMetric::metric), goal.guardrails().stream().filter(Guardrail::isOnSpread)
                .map(Guardrail::metric)).distinct().toList();
    }

    private void addPart(PrimaryMetric primary) {
        if (primary.aspect() == PrimaryMetric.Aspect.SPREAD) {
            addSpread(primary);
            return;
        }
        Aim aim = Aim.of(primary.metric(), primary.direction(), primary.target(), true);
        PosteriorDraws drawn = draws.get(primary.metric());
        if (!aim.isScored()) {
            leftOut.add(primary.metric().text() + " is named by the goal, but "
                    + (aim.targetMissing() ? "not which number to be near." : "not which way it serves."));
        } else if (drawn == null) {
            leftOut.add("The goal names " + primary.metric().text() + ", of which too little was read yet, or it never varied.");
        } else if (!hasReference(primary.metric())) {
            leftOut.add("The reference has no reading of " + primary.metric().text() + ".");
        } else {
            parts.add(new Part(primary, gains(drawn, aim, fitted.get(primary.metric()))));
        }
    }

    private boolean hasReference(Metric metric) {
        return fitted.get(metric).fit().hasValues(task.referenceIndex());
    }

    private double[][] gains(PosteriorDraws drawn, Aim aim, FittedMetric metric) {
        int reference = task.referenceIndex();
        double[][] gains = new double[drawn.groups()][];
        for (int k : metric.present()) {
            double[] gain = new double[drawn.size()];
            for (int i = 0; i < gain.length; i++) {
                gain[i] = k == reference ? 0
                        : inUnits(aim.gain(drawn.mean(i, k), drawn.mean(i, reference)), metric.smallest());
            }
            gains[k] = gain;
        }
        return gains;
    }

    private static double inUnits(double gain, double smallest) {
        return smallest > 0 ? gain / smallest : gain;
    }

    private void addSpread(PrimaryMetric primary) {
        FittedSpread spread = spreads.get(primary.metric());
        int reference = task.referenceIndex();
        if (spread == null || !spread.has(reference)) {
            leftOut.add("The goal names the spread of " + primary.metric().text()
                    + ", for which too few shots were hit yet.");
            return;
        }
        double[][] sd = drawSpreads(spread);
        double smallest = spread.smallest();
        double[][] gains = new double[sd.length][];
        for (int k = 0; k < sd.length; k++) {
            if (sd[k] != null) {
                gains[k] = new double[sd[k].length];
                for (int i = 0; i < gains[k].length; i++) {
                    gains[k][i] = inUnits(sd[reference][i] - sd[k][i], smallest);
                }
            }
        }
        parts.add(new Part(primary, gains));
    }

    /** Standard deviations, configurations x draws; the same draws for a primary metric and a guardrail. */
    private double[][] drawSpreads(FittedSpread spread) {
        int configurations = task.played().configurations().size();
        int place = metricsOfSpreads().indexOf(spread.rows().metric());
        return spread.draws(columns(spare, place * configurations, configurations));
    }

    private void addSpreadRail(Guardrail guardrail) {
        FittedSpread spread = spreads.get(guardrail.metric());
        int reference = task.referenceIndex();
        if (spread == null || !spread.has(reference)) {
            leftOut.add("The guardrail on the spread of " + guardrail.metric().text()
                    + " can't be checked: too few shots were hit yet.");
            return;
        }
        double[][] sd = drawSpreads(spread);
        boolean[][] kept = new boolean[sd.length][];
        for (int k = 0; k < sd.length; k++) {
            if (sd[k] != null) {
                kept[k] = new boolean[sd[k].length];
                for (int i = 0; i < kept[k].length; i++) {
                    kept[k][i] = sd[k][i] - sd[reference][i] <= guardrail.mostLoss();
                }
            }
        }
        rails.add(new Rail(guardrail, kept));
    }

    private void addRail(Guardrail guardrail) {
        if (guardrail.isOnSpread()) {
            addSpreadRail(guardrail);
            return;
        }
        Aim aim = Aim.of(guardrail.metric(), guardrail.direction(), guardrail.target(), false);
        PosteriorDraws drawn = draws.get(guardrail.metric());
        if (!aim.isScored() || aim.direction() == Direction.NOT_SCORED || drawn == null
                || !hasReference(guardrail.metric())) {
            leftOut.add("The guardrail on " + guardrail.metric().text() + " can't be checked: "
                    + (aim.targetMissing() ? "it says no number to be near." : "too little was read of it, or it never varied."));
            return;
        }
        int reference = task.referenceIndex();
        boolean[][] kept = new boolean[drawn.groups()][];
        for (int k : fitted.get(guardrail.metric()).present()) {
            kept[k] = new boolean[drawn.size()];
            for (int i = 0; i < drawn.size(); i++) {
                kept[k][i] = k == reference
                        || aim.gain(drawn.mean(i, k), drawn.mean(i, reference)) >= -guardrail.mostLoss();
            }
        }
        rails.add(new Rail(guardrail, kept));
    }
}
