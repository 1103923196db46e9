package gripwright.charts;

import gripwright.comparison.Comparison;
import gripwright.comparison.ConfigurationFigures;
import gripwright.comparison.Difference;
import gripwright.comparison.Interval;
import gripwright.comparison.MetricComparison;
import gripwright.comparison.VerdictWords;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Grip;
import gripwright.model.Handedness;
import gripwright.model.Metric;
import gripwright.model.ReadingText;
import gripwright.model.Shot;
import gripwright.model.Stint;
import gripwright.units.NumberText;
import gripwright.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Turns one metric of a comparison into a {@link Strip}, in the shop's units and the player's words. */
public final class MetricStrip {

    private static final int TICKS = 7;

    private final ClubTest test;
    private final Comparison comparison;
    private final ReadingText text;
    private final String newestShotId;

    /**
     * @param test the test
     * @param comparison what was made of it
     * @param text the shop's units and the player's hand
     * @param newestShotId the shot drawn larger; null for none
     */
    public MetricStrip(ClubTest test, Comparison comparison, ReadingText text, String newestShotId) {
        this.test = test.withoutRehearsals();
        this.comparison = comparison;
        this.text = text;
        this.newestShotId = newestShotId;
    }

    /** The strip of this metric over all configurations that are compared. */
    public Strip of(MetricComparison metric) {
        return of(metric, test.configurations());
    }

    /** The strip of this metric over some configurations, in the order given. */
    public Strip of(MetricComparison metric, List<Configuration> configurations) {
        Unit unit = text.unit(metric.metric());
        List<Strip.Row> rows = configurations.stream().map(c -> row(metric, c, unit)).toList();
        Strip.Band band = band(metric, unit);
        List<Double> values = new ArrayList<>();
        for (Strip.Row row : rows) {
            row.dots().forEach(dot -> values.add(dot.value()));
            if (row.low() != null && row.high() != null) {
                values.add(row.low());
                values.add(row.high());
            }
        }
        if (band != null) {
            values.add(band.low());
            values.add(band.high());
        }
        Scale scale = Scale.covering(values.stream().mapToDouble(Double::doubleValue).toArray(), TICKS);
        return new Strip(text.heading(metric.metric()), lowWord(metric.metric(), text.hand()),
                highWord(metric.metric(), text.hand()), scale, band, rows, text.decimalMark());
    }

    /** What lower values are called; empty for a plain size. */
    static String lowWord(Metric metric, Handedness hand) {
        return metric.sign().negativeWord(hand);
    }

    /** What higher values are called; empty for a plain size. */
    static String highWord(Metric metric, Handedness hand) {
        return metric.sign().positiveWord(hand);
    }

    private Strip.Band band(MetricComparison metric, Unit unit) {
        ConfigurationFigures reference = comparison.referenceId() == null ? null
                : metric.configuration(comparison.referenceId()).orElse(null);
        Double centre = reference == null ? null : centre(reference);
        if (centre == null || metric.smallestDifference() <= 0) {
            return null;
        }
        return new Strip.Band(unit.fromInternal(centre - metric.smallestDifference()),
                unit.fromInternal(centre + metric.smallestDifference()), "doesn\u2019t matter");
    }

    private static Double centre(ConfigurationFigures figures) {
        return figures.estimate() != null ? Double.valueOf(figures.estimate().value()) : figures.mean();
    }

    private static Interval interval(ConfigurationFigures figures) {
        return figures.estimate() != null ? figures.estimate().interval() : figures.interval();
    }

    private Strip.Row row(MetricComparison metric, Configuration configuration, Unit unit) {
        ConfigurationFigures figures = metric.configuration(configuration.id()).orElse(null);
        Double centre = figures == null ? null : centre(figures);
        Interval interval = figures == null ? null : interval(figures);
        boolean bounded = interval != null && interval.isBounded();
        boolean reference = configuration.id().equals(comparison.referenceId());
        return new Strip.Row(Mark.of(configuration), massText(configuration), dots(metric.metric(), configuration, unit),
                centre == null ? null : unit.fromInternal(centre),
                bounded ? unit.fromInternal(interval.low()) : null,
                bounded ? unit.fromInternal(interval.high()) : null,
                figuresText(metric.metric(), centre, bounded ? interval : null),
                centre == null && !reference ? "" : words(metric, configuration, reference), reference);
    }

    private String massText(Configuration configuration) {
        Grip grip = configuration.grip();
        if (grip.massGrams() == null) {
            return "";
        }
        Unit unit = text.units().of(gripwright.units.Dimension.MASS);
        int decimals = unit == Unit.GRAM ? 0 : 2;
        return NumberText.withDecimalMark(text.decimalMark()).format(unit.fromInternal(grip.massGrams()), decimals)
                + " " + unit.symbol();
    }

    private String figuresText(Metric metric, Double centre, Interval interval) {
        if (centre == null) {
            return "not measured";
        }
        String word = text.word(metric, centre);
        String value = word.isEmpty() ? text.mean(metric, centre) : text.mean(metric, Math.abs(centre)) + " " + word;
        return interval == null ? value : value + " \u00B1 " + text.mean(metric, interval.halfWidth());
    }

    private String words(MetricComparison metric, Configuration configuration, boolean reference) {
        if (reference) {
            return configuration.gamer() ? "gamer, the reference" : "the reference";
        }
        if (comparison.referenceId() == null) {
            return "";
        }
        Difference difference = metric.difference(configuration.id(), comparison.referenceId()).orElse(null);
        return difference == null ? "" : VerdictWords.forHand(text.hand()).of(metric, difference);
    }

    private List<Strip.Dot> dots(Metric metric, Configuration configuration, Unit unit) {
        List<Strip.Dot> dots = new ArrayList<>();
        for (Stint stint : test.stints()) {
            if (!stint.configurationId().equals(configuration.id())) {
                continue;
            }
            for (int at = 0; at < stint.shots().size(); at++) {
                OptionalDouble value = stint.shots().get(at).readings().value(metric);
                if (stint.isScoredAt(at) && value.isPresent()) {
                    dots.add(new Strip.Dot(unit.fromInternal(value.getAsDouble()), state(stint.shots().get(at))));
                }
            }
        }
        return dots;
    }

    private MarkPainter.State state(Shot shot) {
        return stateOf(shot, comparison, newestShotId);
    }

    /** The state a shot is drawn in. */
    static MarkPainter.State stateOf(Shot shot, Comparison comparison, String newestShotId) {
        if (shot.isSetAside()) {
            return MarkPainter.State.SET_ASIDE;
        }
        if (shot.id().equals(newestShotId)) {
            return MarkPainter.State.NEWEST;
        }
        return comparison.flag(shot.id()).isPresent() ? MarkPainter.State.FLAGGED : MarkPainter.State.PLAIN;
    }
}
