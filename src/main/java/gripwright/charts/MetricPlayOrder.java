package gripwright.charts;

import gripwright.comparison.Comparison;
import gripwright.comparison.MetricComparison;
import gripwright.comparison.MetricModel;
import gripwright.model.ClubTest;
import gripwright.model.Metric;
import gripwright.model.ReadingText;
import gripwright.model.Shot;
import gripwright.model.Stint;
import gripwright.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/** Turns one metric of a comparison into a {@link PlayOrder}, in the shop's units and the player's words. */
public final class MetricPlayOrder {

    private static final int TICKS = 5;

    private MetricPlayOrder() {
    }

    /** Every shot of the scored stints, in the order it was hit; settling swings are left out. */
    public static PlayOrder of(ClubTest test, Comparison comparison, MetricComparison metric, ReadingText text) {
        Unit unit = text.unit(metric.metric());
        List<PlayOrder.Run> runs = new ArrayList<>();
        for (Stint stint : test.withoutRehearsals().stints()) {
            List<Strip.Dot> dots = dots(stint, comparison, metric.metric(), unit);
            if (!dots.isEmpty()) {
                Mark mark = Mark.of(test.configuration(stint.configurationId()).orElseThrow());
                runs.add(new PlayOrder.Run(mark, dots, mean(dots)));
            }
        }
        double[] values = runs.stream().flatMapToDouble(run -> run.shots().stream().mapToDouble(Strip.Dot::value))
                .toArray();
        double middle = DoubleStream.of(values).filter(Double::isFinite).average().orElse(Double.NaN);
        Double drift = driftOverTest(metric.model());
        boolean drawDrift = drift != null && Double.isFinite(middle);
        return new PlayOrder(text.heading(metric.metric()), MetricStrip.lowWord(metric.metric(), text.hand()),
                MetricStrip.highWord(metric.metric(), text.hand()), Scale.covering(values, TICKS), runs,
                drawDrift ? middle - unit.fromInternal(drift) / 2 : null,
                drawDrift ? middle + unit.fromInternal(drift) / 2 : null, text.decimalMark());
    }

    private static Double driftOverTest(MetricModel model) {
        return model == null || model.driftOverSession() == null ? null : model.driftOverSession().value();
    }

    private static List<Strip.Dot> dots(Stint stint, Comparison comparison, Metric metric, Unit unit) {
        List<Strip.Dot> dots = new ArrayList<>();
        for (int at = 0; at < stint.shots().size(); at++) {
            Shot shot = stint.shots().get(at);
            if (stint.isScoredAt(at)) {
                OptionalDouble value = shot.readings().value(metric);
                dots.add(new Strip.Dot(value.isPresent() ? unit.fromInternal(value.getAsDouble()) : Double.NaN,
                        MetricStrip.stateOf(shot, comparison, null)));
            }
        }
        return dots;
    }

    private static Double mean(List<Strip.Dot> dots) {
        return dots.stream().filter(d -> d.state() != MarkPainter.State.SET_ASIDE).mapToDouble(Strip.Dot::value)
                .filter(Double::isFinite).average().stream().boxed().findFirst().orElse(null);
    }
}
