package gripwright.charts;

import gripwright.comparison.Comparison;
import gripwright.comparison.ShotPattern;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Metric;
import gripwright.model.ReadingText;
import gripwright.model.Shot;
import gripwright.model.Stint;
import gripwright.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Turns the shot patterns of a comparison into a {@link Pattern}, in the shop's units. */
public final class TestPattern {

    private static final double QUARTER_TURN = 90;

    private TestPattern() {
    }

    /**
     * The patterns of some configurations.
     *
     * @param coverage which ellipse is drawn, 0.5, 0.8 or 0.95; 0 for none
     * @param targetCarry how far the target is, m; null where there is none
     * @param newestShotId the shot drawn larger; null for none
     */
    public static Pattern of(ClubTest test, Comparison comparison, List<Configuration> configurations, double coverage,
            Double targetCarry, ReadingText text, String newestShotId) {
        Unit unit = text.unit(Metric.CARRY);
        List<Pattern.Group> groups = new ArrayList<>();
        for (Configuration configuration : configurations) {
            List<Pattern.Point> points = points(test, configuration, comparison, unit, newestShotId);
            List<Pattern.Ellipse> ellipses = comparison.patterns().stream()
                    .filter(p -> p.configurationId().equals(configuration.id()) && p.ellipse(coverage) != null)
                    .map(p -> ellipse(p, p.ellipse(coverage), unit)).toList();
            groups.add(new Pattern.Group(Mark.of(configuration), points, ellipses));
        }
        return new Pattern(groups, targetCarry == null ? null : unit.fromInternal(targetCarry), 0, unit.symbol(),
                text.decimalMark());
    }

    /** Core angles run from the line of carry towards the right; drawn ones from the right towards the target. */
    private static Pattern.Ellipse ellipse(ShotPattern pattern, ShotPattern.Ellipse ellipse, Unit unit) {
        return new Pattern.Ellipse(unit.fromInternal(pattern.centreOffline()), unit.fromInternal(pattern.centreCarry()),
                unit.fromInternal(ellipse.semiMajor()), unit.fromInternal(ellipse.semiMinor()),
                QUARTER_TURN - ellipse.angleDegrees());
    }

    private static List<Pattern.Point> points(ClubTest test, Configuration configuration, Comparison comparison,
            Unit unit, String newestShotId) {
        List<Pattern.Point> points = new ArrayList<>();
        for (Stint stint : test.withoutRehearsals().stints()) {
            if (!stint.configurationId().equals(configuration.id())) {
                continue;
            }
            for (int at = 0; at < stint.shots().size(); at++) {
                Shot shot = stint.shots().get(at);
                OptionalDouble carry = shot.readings().value(Metric.CARRY);
                OptionalDouble offline = shot.readings().value(Metric.OFFLINE);
                if (stint.isScoredAt(at) && carry.isPresent() && offline.isPresent()) {
                    points.add(new Pattern.Point(unit.fromInternal(offline.getAsDouble()),
                            unit.fromInternal(carry.getAsDouble()),
                            MetricStrip.stateOf(shot, comparison, newestShotId)));
                }
            }
        }
        return points;
    }
}
