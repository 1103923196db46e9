package gripwright.desktop.plan;

import gripwright.balance.BallastPlan;
import gripwright.charts.Mark;
import gripwright.charts.Scale;
import gripwright.charts.Strip;
import gripwright.comparison.Comparison;
import gripwright.desktop.support.Derived;
import gripwright.desktop.support.NumberStyle;
import gripwright.desktop.support.Quantity;
import gripwright.desktop.support.Words;
import gripwright.desktop.support.Workbench;
import gripwright.model.BuildUp;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Metric;
import gripwright.model.PrimaryMetric;
import gripwright.model.ReadingText;
import gripwright.model.Stint;
import gripwright.planning.DetectableDifference;
import gripwright.planning.PlanCheck;
import gripwright.planning.SessionTime;
import gripwright.session.Edit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.stream.Collectors;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;

/** What the plan can tell and what it can't, in sentences and small strips, and the cure where one can be had. */
public final class FindingsViewModel {

    /** Mean of a standard half-normal, √(2/π): what the shop's prior on stint effects expects. */
    private static final double HALF_NORMAL_MEAN = Math.sqrt(2 / Math.PI);
    private static final double NOTHING_GRAMS = 0.05;
    private static final double NOTHING_POINTS = 0.05;
    private static final int TICKS = 7;

    private final Workbench workbench;
    private final Derived<PlanCheck> check;
    /** Held here: a binding that only a subscriber knows is thrown away with the next garbage. */
    private final ObservableValue<List<Sight>> sights;

    FindingsViewModel(Workbench workbench, Derived<PlanCheck> check) {
        this.workbench = workbench;
        this.check = check;
        sights = Bindings.createObjectBinding(this::sightsNow, workbench.revision(), workbench.comparison().value());
    }

    /** What could be seen of one metric, if anything: the strip and the sentence that stands under it. */
    record Sight(Strip strip, String sentence, boolean visible) {
    }

    /** Sentences on what can be told apart, the most important first. */
    ObservableValue<List<String>> sentences() {
        return check.value().map(now -> {
            List<String> sentences = new ArrayList<>();
            sentences.add(now.sizeAndMass().sentence());
            sentences.addAll(now.otherDifferences());
            sentences.addAll(now.balance().sentences());
            now.columns().values().forEach(column -> sentences.addAll(column.sentences()));
            return sentences;
        });
    }

    /** Whether ballast would let the test tell size from mass. */
    ObservableValue<Boolean> mayCure() {
        return check.value().map(now -> now.sizeAndMass().wantsCure() && now.cure() != null && now.cure().feasible()
                && !wanted(now.cure()).isEmpty()).orElse(false);
    }

    /** What the cure is, in a sentence. */
    ObservableValue<String> cure() {
        return check.value().map(now -> now.cure() == null || !now.sizeAndMass().wantsCure() ? "" : sentence(now.cure()))
                .orElse("");
    }

    private static List<BallastPlan.Row> wanted(BallastPlan plan) {
        return plan.rows().stream().filter(row -> row.grams() > NOTHING_GRAMS).toList();
    }

    private String sentence(BallastPlan plan) {
        NumberStyle mass = workbench.style(Quantity.MASS).getValue();
        NumberStyle length = workbench.style(Quantity.LENGTH).getValue();
        String rows = wanted(plan).stream().map(row -> mass.text().format(mass.unit().fromInternal(row.grams()), 1) + " "
                + mass.unit().symbol() + " in " + row.label() + " at "
                + length.text().format(length.unit().fromInternal(row.positionMm()), length.decimals()) + " "
                + length.unit().symbol()).collect(Collectors.joining(", "));
        Double points = plan.swingweightSpreadPoints();
        String spread = points == null ? "" : points < NOTHING_POINTS ? " Their swingweights then agree."
                : " Their swingweights then lie within " + workbench.numbers().format(points, 1) + " points.";
        return "Ballast inside the butts makes all match in mass, so that only size is left: " + rows + "." + spread
                + " Two more configurations that break the pattern would do as well.";
    }

    /** Puts the ballast of the cure in, as one step. */
    void applyCure() {
        BallastPlan plan = check.value().get().cure();
        String testId = workbench.test().get().id();
        String labels = wanted(plan).stream().map(BallastPlan.Row::label).collect(Collectors.joining(", "));
        workbench.applyOrSay(new Edit("Put ballast into " + labels, session -> {
            ClubTest test = session.test(testId).orElseThrow();
            for (BallastPlan.Row row : wanted(plan)) {
                Configuration now = test.configuration(row.configurationId()).orElse(null);
                test = now == null ? test : test.withConfiguration(now.withBuildUp(with(now.buildUp(), row)));
            }
            return session.withTest(test);
        }));
    }

    /** Ballast beside what is there: masses add, the place is the balance point of both. */
    private static BuildUp with(BuildUp now, BallastPlan.Row row) {
        double grams = now.ballastGrams() + row.grams();
        double before = now.ballastPositionMm() == null ? 0 : now.ballastGrams() * now.ballastPositionMm();
        double place = Math.max(0, (before + row.grams() * row.positionMm()) / grams);
        return now.withBallastPositionMm(place).withBallastGrams(grams);
    }

    /** What was hit, and how long what is still planned will take. */
    ObservableValue<String> time() {
        return workbench.test().map(FindingsViewModel::time);
    }

    private static String time(ClubTest test) {
        List<Stint> hit = test.stints().stream().filter(stint -> !stint.shots().isEmpty()).toList();
        SessionTime ahead = SessionTime.ahead(test);
        if (hit.isEmpty() && ahead.swings() == 0) {
            return "Nothing is planned yet: " + (test.configurations().isEmpty() ? "first add the grips to be tried."
                    : "choose the order of the stints below and make it.");
        }
        if (hit.isEmpty()) {
            return words(ahead, test) + ".";
        }
        int shots = hit.stream().mapToInt(stint -> stint.shots().size()).sum();
        int scored = hit.stream().mapToInt(stint -> stint.scoredShots().size()).sum();
        return Words.count(hit.size(), "stint") + (hit.size() == 1 ? " is hit: " : " are hit: ")
                + Words.count(shots, "shot") + counting(scored)
                + (ahead.swings() == 0 ? "Nothing more is planned." : "Ahead: " + words(ahead, test) + ".");
    }

    private static String counting(int scored) {
        return scored == 0 ? ", of which none counts. " : ", of which " + scored + (scored == 1 ? " counts. " : " count. ");
    }

    private static String words(SessionTime ahead, ClubTest test) {
        return Words.count(ahead.swings(), "swing") + " and " + Words.count(ahead.changes(), "change") + ", about "
                + ahead.minutes() + " minutes at 35 s a swing and " + changeWords(test);
    }

    private static String changeWords(ClubTest test) {
        boolean said = test.configurations().stream().anyMatch(c -> c.physicalClubId() != null);
        return said ? "what each change takes" : "5 min a change with air";
    }

    /** What could be seen of each primary metric; of face angle and club speed while there is none. */
    ObservableValue<List<Sight>> sights() {
        return sights;
    }

    private List<Sight> sightsNow() {
        ClubTest test = workbench.test().get();
        if (test.configurations().size() < 2) {
            return List.of();
        }
        List<Metric> primaries = workbench.session().get().goal().primaries().stream().map(PrimaryMetric::metric)
                .distinct().toList();
        List<Metric> metrics = primaries.isEmpty() ? List.of(Metric.FACE_ANGLE, Metric.CLUB_SPEED) : primaries;
        DetectableDifference.Size size = DetectableDifference.Size.of(test);
        String from = from(test);
        return metrics.stream().map(metric -> sight(test, detectable(metric, size), from)).toList();
    }

    private DetectableDifference detectable(Metric metric, DetectableDifference.Size size) {
        Double own = ownNoise(metric);
        double stint = workbench.settings().get().verdicts().stintToNoisePriorScale() * HALF_NORMAL_MEAN;
        return DetectableDifference.of(metric, size, own == null ? DetectableDifference.typicalNoise(metric) : own,
                own != null, stint);
    }

    private Double ownNoise(Metric metric) {
        Comparison comparison = workbench.comparison().value().get();
        return comparison == null || !comparison.testId().equals(workbench.test().get().id()) ? null
                : comparison.metrics().stream().filter(one -> one.metric() == metric)
                        .map(one -> one.model().residualSd()).filter(sd -> sd != null && sd > 0).findFirst().orElse(null);
    }

    private Sight sight(ClubTest test, DetectableDifference found, String from) {
        ReadingText text = ReadingText.of(workbench.settings().get(), workbench.session().get().player().hand());
        var unit = text.unit(found.metric());
        double matters = unit.fromInternal(workbench.session().get()
                .smallestDifference(found.metric(), workbench.settings().get()));
        double seen = unit.fromInternal(found.difference());
        boolean planned = Double.isFinite(seen);
        double reach = Math.max(matters, planned ? seen : matters) * 1.3;
        Configuration reference = test.reference().orElseThrow();
        Strip.Row row = new Strip.Row(Mark.of(reference), "", List.of(), planned ? 0.0 : null,
                planned ? -seen : null, planned ? seen : null, "", "", true);
        Strip strip = new Strip(text.heading(found.metric()), word(found.metric(), false), word(found.metric(), true),
                Scale.covering(new double[] {-reach, reach}, TICKS), new Strip.Band(-matters, matters, "doesn\u2019t matter"),
                List.of(row), workbench.settings().get().decimalMark());
        return new Sight(strip, sentence(found, text, seen, matters, from), planned);
    }

    private String word(Metric metric, boolean higher) {
        var hand = workbench.session().get().player().hand();
        return higher ? metric.sign().positiveWord(hand) : metric.sign().negativeWord(hand);
    }

    private String sentence(DetectableDifference found, ReadingText text, double seen, double matters,
            String from) {
        if (!Double.isFinite(seen)) {
            return "Nothing can be seen until every configuration has a stint with shots that count.";
        }
        String unit = text.unit(found.metric()).symbol();
        String number = text.mean(found.metric(), found.difference()) + (unit.isEmpty() || "\u00B0".equals(unit) ? unit
                : " " + unit);
        String noise = found.noiseIsOwn() ? "with this player's own scatter"
                : "with a middling amateur's scatter, until this player's own is known";
        return "A true difference of " + number + " is found in four sessions of five, from " + from + ", "
                + noise + (seen > matters ? "." : "; that is as fine as matters.");
    }

    /** The shots and stints that can be reckoned with: hit, planned, or both. */
    private static String from(ClubTest test) {
        Collection<DetectableDifference.Size> sizes = DetectableDifference.Size.ofEach(test).values();
        boolean hit = test.stints().stream().anyMatch(stint -> !stint.scoredShots().isEmpty());
        boolean ahead = test.stints().stream().anyMatch(stint -> stint.state() != Stint.State.DONE);
        String what = !hit ? "" : ahead ? ", hit and planned together" : ", as hit";
        return range(sizes.stream().mapToInt(DetectableDifference.Size::shots).summaryStatistics(), "shot") + " each in "
                + range(sizes.stream().mapToInt(DetectableDifference.Size::stints).summaryStatistics(), "stint") + what;
    }

    private static String range(IntSummaryStatistics counts, String noun) {
        return counts.getMin() == counts.getMax() ? Words.count(counts.getMin(), noun)
                : counts.getMin() + " to " + Words.count(counts.getMax(), noun);
    }
}
