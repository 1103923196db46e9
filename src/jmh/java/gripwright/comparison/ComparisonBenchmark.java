package gripwright.comparison;

import gripwright.model.BuildUp;
import gripwright.model.ClubKind;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Diameter;
import gripwright.model.Direction;
import gripwright.model.Goal;
import gripwright.model.Grip;
import gripwright.model.Guardrail;
import gripwright.model.Metric;
import gripwright.model.PrimaryMetric;
import gripwright.model.Readings;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.model.Shot;
import gripwright.model.Stint;
import gripwright.model.TestClub;
import java.lang.management.ManagementFactory;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A full comparison: 20 metrics, 8 configurations, there and back, all pairs, choosing with 4,096 draws. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ComparisonBenchmark {

    private static final int CONFIGURATIONS = 8;
    private static final int METRICS = 20;

    /** Shots of the whole test. */
    @Param({"240", "480", "2400"})
    public int shots;

    private Session session;
    private Comparer comparer;

    /** Builds the session. */
    @Setup
    public void build() {
        session = session(shots, new Random(1));
        comparer = Comparer.withSettings(ShopSettings.usual());
    }

    static Session session(int shots, Random random) {
        List<Configuration> configurations = new ArrayList<>();
        for (int k = 0; k < CONFIGURATIONS; k++) {
            Grip grip = Grip.weighed("g" + k, "Invented grip " + k, 45 + 3 * k)
                    .withDiameters(List.of(new Diameter(50.8, 22 + 0.4 * k), new Diameter(152.4, 20 + 0.3 * k)));
            configurations.add(Configuration.ofIndex(k, "c" + k, String.valueOf((char) ('A' + k)), grip,
                    BuildUp.none()).withGamer(k == 0));
        }
        List<Stint> stints = new ArrayList<>();
        int perStint = shots / (2 * CONFIGURATIONS);
        for (int j = 0; j < 2 * CONFIGURATIONS; j++) {
            int k = j < CONFIGURATIONS ? j : 2 * CONFIGURATIONS - 1 - j;
            stints.add(stint(j, k, perStint, random));
        }
        ClubTest test = ClubTest.empty("test", TestClub.named(ClubKind.DRIVER, "driver"))
                .withConfigurations(configurations).withStints(stints);
        Goal goal = Goal.open().withPrimaries(List.of(PrimaryMetric.mean(Metric.CLUB_SPEED, Direction.HIGHER),
                PrimaryMetric.mean(Metric.FACE_ANGLE, Direction.NEAR_TARGET),
                new PrimaryMetric(Metric.OFFLINE, PrimaryMetric.Aspect.SPREAD, Direction.LOWER, null, 1)))
                .withGuardrails(List.of(Guardrail.mean(Metric.CARRY, Direction.HIGHER, null, 2)));
        return Session.blank("session", LocalDate.of(2026, 1, 1)).withGoal(goal).withTests(List.of(test));
    }

    private static Stint stint(int j, int k, int shots, Random random) {
        List<Shot> played = new ArrayList<>();
        double[] effects = random.doubles(METRICS).map(u -> 0.3 * random.nextGaussian() + 0.2 * (k % 3)).toArray();
        for (int i = 0; i < shots; i++) {
            Readings readings = Readings.none();
            double common = random.nextGaussian();
            for (int m = 0; m < METRICS; m++) {
                Metric metric = Metric.values()[m];
                double middle = (metric.sensibleLow() + metric.sensibleHigh()) / 2;
                readings = readings.with(metric, middle + 3 * metric.defaultSmallestDifference()
                        * (effects[m] + 0.6 * common + 0.8 * random.nextGaussian()));
            }
            played.add(Shot.of("s" + j + "-" + i, readings));
        }
        return Stint.planned("stint" + j, "c" + k, Stint.Kind.SCORED, shots, 0).withState(Stint.State.DONE)
                .withShots(played);
    }

    /** Processor time of the thread, which a busy machine does not stretch: divide the one by the other. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Processor {
        public long comparisons;
        public double processorMillis;
    }

    /** Everything that Compare shows, save the sensitivity and the textbook figures. */
    @Benchmark
    public Comparison compare(Processor processor) {
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        Comparison comparison = comparer.compare(session, session.tests().get(0));
        processor.processorMillis += (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e6;
        processor.comparisons++;
        return comparison;
    }

    /** The textbook figures of all metrics, which are worked out when somebody asks, on top. */
    @Benchmark
    public int compareWithTextbookFigures(Processor processor) {
        Comparison comparison = compare(processor);
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        int pairs = comparison.metrics().stream().mapToInt(m -> m.classical().gamesHowell().size()).sum();
        processor.processorMillis += (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e6;
        return pairs;
    }
}
