package gripwright.intake;

import gripwright.intake.rehearsal.SimulatedPlayer;
import gripwright.model.Handedness;
import gripwright.model.Metric;
import gripwright.model.Shot;
import gripwright.units.UnitChoice;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Reading a file of 10,000 shots with nineteen readings each, the first time and again; single shots are cold starts. */
@State(Scope.Thread)
@BenchmarkMode({Mode.AverageTime, Mode.SingleShotTime})
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class CsvIntakeBenchmark {

    private static final int SHOTS = 10_000;

    @Param({"PLAIN", "WORD_AFTER"})
    public CsvFormat.Signs signs;

    private byte[] file;
    private List<Shot> taken;

    @Setup
    public void write() {
        SimulatedPlayer.Visit visit = SimulatedPlayer.middling(Handedness.LEFT, 1).visit();
        visit.beginStint("A");
        List<CsvTable.Row> rows = new ArrayList<>();
        for (int shot = 1; shot <= SHOTS; shot++) {
            Map<ColumnRole, String> texts = new EnumMap<>(ColumnRole.class);
            texts.put(ColumnRole.SHOT_ID, String.valueOf(shot));
            rows.add(new CsvTable.Row(texts, visit.hit(0).readings()));
        }
        List<ColumnMeaning> columns = new ArrayList<>(List.of(ColumnMeaning.of(ColumnRole.SHOT_ID)));
        for (Metric metric : Metric.values()) {
            if (!metric.isDerivable()) {
                columns.add(ColumnMeaning.of(metric));
            }
        }
        CsvFormat format = CsvFormat.usual(UnitChoice.imperial()).withMarks(';', ',', null)
                .withSigns(signs, Handedness.LEFT);
        file = CsvWriter.with(format).write(new CsvTable(columns, rows));
        taken = first().shots();
        if (taken.size() != SHOTS) {
            throw new IllegalStateException("Only " + taken.size() + " of " + SHOTS + " shots were read.");
        }
    }

    @Benchmark
    public IntakeResult first() {
        return CsvIntake.withDefaults().with(Handedness.LEFT).read(file, "shots.csv", List.of());
    }

    @Benchmark
    public IntakeResult again() {
        return CsvIntake.withDefaults().with(Handedness.LEFT).read(file, "shots.csv", taken);
    }
}
