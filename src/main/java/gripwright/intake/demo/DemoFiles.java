package gripwright.intake.demo;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import gripwright.intake.ColumnMeaning;
import gripwright.intake.CsvFormat;
import gripwright.intake.CsvTable;
import gripwright.intake.CsvWriter;
import gripwright.intake.rehearsal.GripEffect;
import gripwright.intake.rehearsal.SimulatedPlayer;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Metric;
import gripwright.model.Readings;
import gripwright.model.Shot;
import gripwright.units.Unit;
import gripwright.units.UnitChoice;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** The files that stand beside a demo session: its shots as CSV in three dialects of our own mixing, and its truth. */
public final class DemoFiles {

    private static final int SHOTS_FOR_THE_TRUTH = 20_000;

    private DemoFiles() {
    }

    /** Each file's name and content. */
    public static Map<String, byte[]> of(Demo demo) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(demo.name() + "-truth.json", truth(demo));
        csv(demo).forEach((ending, bytes) -> files.put(demo.name() + "-" + ending + ".csv", bytes));
        return files;
    }

    private static Map<String, byte[]> csv(Demo demo) {
        CsvTable table = CsvTable.ofTest(demo.session().tests().get(0), ZoneOffset.UTC);
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("a", CsvWriter.with(commaDecimals()).write(table));
        files.put("b", CsvWriter.with(titlesAndLetters()).write(shuffled(table, 2)));
        files.put("c", CsvWriter.with(unitsInCells(demo)).write(shuffled(table, 3)));
        return files;
    }

    private static CsvFormat commaDecimals() {
        return CsvFormat.usual(UnitChoice.metric()).withEncoding(Charset.forName("windows-1252"), false)
                .withMarks(';', ',', '.').withUnits(CsvFormat.UnitPlace.LINE_BELOW).withLineEnd("\r\n").withBlank("-")
                .withMinus("\u2013").withMoreDecimals(1);
    }

    private static CsvFormat titlesAndLetters() {
        return CsvFormat.usual(UnitChoice.imperial()).withMarks(',', '.', ',').withSigns(CsvFormat.Signs.LETTER_AFTER, null)
                .withUnits(CsvFormat.UnitPlace.PARENTHESES).withBlank("n/a").withSummaries(true)
                .withTitles(List.of("Invented readings of an invented player", "\"Bay 2, mat\"", ""))
                .withMoreDecimals(1)
                .withHeadings(Map.of(Metric.CLUB_SPEED, "Clubhead speed", Metric.ATTACK_ANGLE, "Angle of attack",
                        Metric.START_DIRECTION, "Launch direction", Metric.OFFLINE, "Side", Metric.APEX, "Peak height",
                        Metric.CLOSURE_RATE, "Rate of closure", Metric.STRIKE_SIDEWAYS, "Strike\nheel/toe"));
    }

    private static CsvFormat unitsInCells(Demo demo) {
        UnitChoice units = UnitChoice.metric().with(Unit.METRES_PER_SECOND).with(Unit.INCH);
        return CsvFormat.usual(units).withEncoding(StandardCharsets.UTF_16, true).withMarks('\t', '.', '\u202F')
                .withUnits(CsvFormat.UnitPlace.CELLS).withSigns(CsvFormat.Signs.WORD_AFTER, demo.player().hand())
                .withMoreDecimals(2)
                .withHeadings(Map.of(Metric.FACE_ANGLE, "Face to target", Metric.SPIN_RATE, "Total spin",
                        Metric.CLUB_PATH, "Swing path", Metric.DESCENT_ANGLE, "Landing angle", Metric.CARRY,
                        "Carry distance", Metric.DYNAMIC_LOFT, "Delivered loft"));
    }

    /** The same table with its columns in another order. */
    private static CsvTable shuffled(CsvTable table, long seed) {
        List<ColumnMeaning> columns = new ArrayList<>(table.columns());
        Collections.shuffle(columns.subList(1, columns.size()), new Random(seed));
        return table.withColumns(columns);
    }

    /** What the player is truly like with each configuration, apart from drift, stint and mishits. */
    static byte[] truth(Demo demo) {
        SimulatedPlayer player = demo.player();
        Map<String, Object> truth = new LinkedHashMap<>();
        truth.put("invented", true);
        truth.put("about", "The truth behind the session " + demo.name() + ".json; means and standard deviations are of "
                + SHOTS_FOR_THE_TRUTH + " simulated shots without drift, stint effect and mishits, in internal units "
                + "(m/s, m, degrees, deg/s, mm, rpm).");
        truth.put("story", demo.story());
        truth.put("seed", player.seed());
        truth.put("hand", player.hand().text());
        truth.put("stintToStintShareOfShotToShotSd", player.stintShare());
        truth.put("driftOverTheSession", Map.of("clubSpeed", player.drift().clubSpeed()));
        truth.put("shareOfMishits", player.mishitRate());
        ClubTest test = demo.session().tests().get(0);
        truth.put("mishits", test.stints().stream().flatMap(stint -> stint.shots().stream()).filter(Shot::isSetAside)
                .map(Shot::id).toList());
        truth.put("configurations", test.configurations().stream().map(c -> truth(c, player)).toList());
        try {
            return new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT).writeValueAsString(truth)
                    .concat("\n").getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("Numbers and texts can always be written.", impossible);
        }
    }

    private static Map<String, Object> truth(Configuration configuration, SimulatedPlayer player) {
        GripEffect effect = player.effect(configuration.label());
        Map<String, Object> truth = new LinkedHashMap<>();
        truth.put("label", configuration.label());
        truth.put("diameterMm", configuration.fittedDiameters().get(0).diameterMm());
        truth.put("gripMassGrams", configuration.grip().massGrams());
        truth.put("spreadTimes", effect.spread());
        SimulatedPlayer.Visit visit = player.undisturbed().visit();
        visit.beginStint(configuration.label());
        Map<Metric, double[]> sums = new java.util.EnumMap<>(Metric.class);
        for (int i = 0; i < SHOTS_FOR_THE_TRUTH; i++) {
            Readings readings = visit.hit(0).readings();
            readings.values().forEach((metric, value) -> {
                double[] sum = sums.computeIfAbsent(metric, m -> new double[2]);
                sum[0] += value;
                sum[1] += value * value;
            });
        }
        Map<String, Object> means = new LinkedHashMap<>();
        Map<String, Object> spreads = new LinkedHashMap<>();
        sums.forEach((metric, sum) -> {
            double mean = sum[0] / SHOTS_FOR_THE_TRUTH;
            means.put(metric.key(), rounded(mean));
            spreads.put(metric.key(), rounded(Math.sqrt(sum[1] / SHOTS_FOR_THE_TRUTH - mean * mean)));
        });
        truth.put("mean", means);
        truth.put("sd", spreads);
        return truth;
    }

    private static double rounded(double value) {
        return Math.round(value * 1000) / 1000.0;
    }
}
