package gripwright.comparison;

import gripwright.model.ClubKind;
import gripwright.model.Configuration;
import gripwright.model.Metric;
import gripwright.model.PrimaryMetric;
import gripwright.statistics.BivariatePattern;
import gripwright.statistics.CentreDifference;
import gripwright.statistics.EllipseKind;
import gripwright.statistics.ExceedanceProbability;
import gripwright.statistics.Figure;
import gripwright.statistics.PlaneCovariance;
import gripwright.statistics.PlanePoint;
import gripwright.statistics.TargetDistance;
import gripwright.units.Dimension;
import gripwright.units.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Shot patterns in carry and offline: where the shots of each configuration end, and where the next should. */
final class PatternComparer {

    private static final double[] COVERAGES = {0.5, 0.8, 0.95};
    /** How far off is a miss unless somebody chooses, in the shop's unit of distance: long clubs and others. */
    private static final double MISS_LONG_CLUB = 15;
    private static final double MISS = 10;

    private final ComparisonTask task;
    private final MetricRows carry;
    private final MetricRows offline;
    private final Double carryTarget;
    private final double offlineTarget;

    PatternComparer(ComparisonTask task) {
        this.task = task;
        this.carry = task.played().rows(Metric.CARRY);
        this.offline = task.played().rows(Metric.OFFLINE);
        this.carryTarget = target(Metric.CARRY);
        Double side = target(Metric.OFFLINE);
        this.offlineTarget = side == null ? 0 : side;
    }

    private Double target(Metric metric) {
        return task.session().goal().primaries().stream()
                .filter(p -> p.metric() == metric && p.target() != null).map(PrimaryMetric::target).findFirst()
                .orElseGet(() -> task.session().goal().guardrails().stream()
                        .filter(g -> g.metric() == metric && g.target() != null)
                        .map(g -> g.target()).findFirst().orElse(null));
    }

    /** Where the miss begins unless somebody chooses, m. */
    double usualMiss() {
        Unit unit = task.shop().units().of(Dimension.DISTANCE);
        ClubKind kind = task.played().test().club().kind();
        boolean far = kind == ClubKind.DRIVER || kind == ClubKind.FAIRWAY_WOOD;
        return unit.toInternal(far ? MISS_LONG_CLUB : MISS);
    }

    /** The patterns of all configurations with at least one shot that has both readings. */
    List<ShotPattern> patterns() {
        List<ShotPattern> patterns = new ArrayList<>();
        for (int k = 0; k < task.played().configurations().size(); k++) {
            BivariatePattern pattern = pattern(k);
            if (pattern.count() > 0) {
                patterns.add(pattern(k, pattern));
            }
        }
        return patterns;
    }

    private BivariatePattern pattern(int k) {
        return BivariatePattern.of(column(carry, k), column(offline, k));
    }

    /** One value per swing of this configuration; NaN elsewhere, so that the two columns stay side by side. */
    private static double[] column(MetricRows rows, int k) {
        double[] values = rows.values();
        int[] configuration = rows.configurationOfRow();
        for (int i = 0; i < values.length; i++) {
            values[i] = configuration[i] == k ? values[i] : Double.NaN;
        }
        return values;
    }

    private ShotPattern pattern(int k, BivariatePattern pattern) {
        Configuration configuration = task.played().configurations().get(k);
        PlanePoint centre = pattern.centre().get();
        PlaneCovariance shape = pattern.covariance().toOptional().orElse(null);
        List<ShotPattern.Ellipse> ellipses = new ArrayList<>();
        for (double coverage : COVERAGES) {
            pattern.ellipse(EllipseKind.PREDICTION, coverage).toOptional().ifPresent(e -> ellipses.add(
                    new ShotPattern.Ellipse(coverage, e.semiMajor(), e.semiMinor(), e.angleDegrees(), e.area())));
        }
        return new ShotPattern(configuration.id(), configuration.label(), pattern.count(), centre.x(), centre.y(),
                shape == null ? null : shape.xx(), shape == null ? null : shape.yy(),
                shape == null ? null : shape.xy(), ellipses,
                ellipses.isEmpty() ? "" : EllipseKind.PREDICTION.distribution(), distance(k), misses(k, usualMiss()),
                sentences(pattern));
    }

    private Estimate distance(int k) {
        if (carryTarget == null) {
            return null;
        }
        TargetDistance distance = TargetDistance.of(column(carry, k), column(offline, k),
                new PlanePoint(carryTarget, offlineTarget), FittedMetric.LEVEL);
        return estimate(distance.mean(), distance.interval());
    }

    private static Estimate estimate(Figure<Double> value, Figure<gripwright.statistics.Interval> interval) {
        return value.isAvailable() && interval.isAvailable() ? new Estimate(value.get(),
                new Interval(interval.get().lower(), interval.get().upper())) : null;
    }

    /** The chances of missing by more than a distance, m, to either side and, with a carry target, short and long. */
    List<ShotPattern.Miss> misses(int k, double distance) {
        Map<ShotPattern.Side, Estimate> chances = new TreeMap<>(Comparator.comparing(Enum::ordinal));
        double[] across = column(offline, k);
        chances.put(ShotPattern.Side.LEFT, chance(across, offlineTarget - distance, ExceedanceProbability.Side.BELOW));
        chances.put(ShotPattern.Side.RIGHT, chance(across, offlineTarget + distance, ExceedanceProbability.Side.ABOVE));
        if (carryTarget != null) {
            double[] along = column(carry, k);
            chances.put(ShotPattern.Side.SHORT, chance(along, carryTarget - distance, ExceedanceProbability.Side.BELOW));
            chances.put(ShotPattern.Side.LONG, chance(along, carryTarget + distance, ExceedanceProbability.Side.ABOVE));
        }
        List<ShotPattern.Miss> misses = new ArrayList<>();
        chances.forEach((side, chance) -> {
            if (chance != null) {
                misses.add(new ShotPattern.Miss(side, distance, chance));
            }
        });
        return misses;
    }

    private static Estimate chance(double[] values, double limit, ExceedanceProbability.Side side) {
        ExceedanceProbability chance = ExceedanceProbability.of(values, limit, side, FittedMetric.LEVEL);
        return estimate(chance.nextValue(), chance.longRunShare());
    }

    private List<String> sentences(BivariatePattern pattern) {
        List<String> sentences = new ArrayList<>();
        if (pattern.count() < EllipseKind.PREDICTION.fewestPoints()) {
            sentences.add("Three shots with carry and offline are the least for a pattern; here "
                    + (pattern.count() == 1 ? "is one." : "are " + pattern.count() + "."));
        } else if (pattern.isCollinear()) {
            sentences.add("All shots lie on one line, so that the pattern has no width; look at the source.");
        }
        if (carryTarget == null) {
            sentences.add("Say a target for carry in the goal to see the distance to it.");
        }
        return sentences;
    }

    /** Hotelling's test of the centres, pair by pair, each configuration with its own covariance. */
    List<PatternDifference> differences() {
        List<PatternDifference> differences = new ArrayList<>();
        for (int[] pair : task.pairs()) {
            Configuration c = task.played().configurations().get(pair[0]);
            Configuration d = task.played().configurations().get(pair[1]);
            CentreDifference.unequal(pattern(pair[0]), pattern(pair[1])).toOptional()
                    .ifPresent(t -> differences.add(new PatternDifference(c.id(), c.label(), d.id(), d.label(), t.dx(),
                            t.dy(), t.tSquared(), t.test().pValue())));
        }
        return differences;
    }
}
