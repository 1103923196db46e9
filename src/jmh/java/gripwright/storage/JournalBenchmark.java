package gripwright.storage;

import gripwright.model.Metric;
import gripwright.model.ProblemException;
import gripwright.model.Readings;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.session.Journal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** One more shot into the journal of a session of 500, forced: what stands between a shot and its being kept. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class JournalBenchmark {

    private static final int SHOTS = 500;

    private Path folder;
    private Journal journal;
    private Session even;
    private Session odd;
    private boolean turn;

    /** Begins a journal in a temporary folder. */
    @Setup(Level.Trial)
    public void begin() throws IOException, ProblemException {
        folder = Files.createTempDirectory("journal");
        List<Shot> shots = new ArrayList<>();
        for (int number = 0; number <= SHOTS; number++) {
            shots.add(Shot.of("shot-" + number, Readings.of(Metric.CARRY, 120 + number % 30).with(Metric.CLUB_SPEED, 38)
                    .with(Metric.FACE_ANGLE, number % 5 - 2).with(Metric.CLOSURE_RATE, 2400 + number)));
        }
        even = Session.blank("benchmark", LocalDate.of(2026, 3, 31)).withTray(shots.subList(0, SHOTS));
        odd = even.withTray(shots);
        journal = new JournalShelf(folder).begin(even, null);
    }

    /** One shot comes or goes. */
    @Benchmark
    public void keep() throws ProblemException {
        turn = !turn;
        journal.keep(turn ? odd : even);
    }

    /** Leaves nothing behind. */
    @TearDown(Level.Trial)
    public void end() throws IOException {
        journal.finish();
        Files.deleteIfExists(folder);
    }
}
