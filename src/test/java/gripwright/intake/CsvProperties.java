package gripwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import gripwright.model.Handedness;
import gripwright.model.Metric;
import gripwright.model.Problem;
import gripwright.model.Readings;
import gripwright.model.Shot;
import gripwright.units.Unit;
import gripwright.units.UnitChoice;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever is written as CSV is read back; whatever is not CSV is met with a sentence. */
class CsvProperties {

    /** Numbers that only the decimal mark of the whole file could tell apart are settled by this answer. */
    private static Answers markOf(CsvFormat format) {
        return Answers.none().with("decimalMark", String.valueOf(format.decimalMark()));
    }

    @Provide
    Arbitrary<CsvFormat> formats() {
        Arbitrary<CsvFormat> marks = Arbitraries.of(
                new Marks(',', '.', null), new Marks(',', '.', ','), new Marks(';', ',', null), new Marks(';', ',', '.'),
                new Marks(';', '.', '\''), new Marks('\t', ',', '\u00A0'), new Marks('\t', '.', '\u202F'),
                new Marks('\t', ',', '.'), new Marks(',', ',', null), new Marks(';', '.', ','))
                .map(m -> CsvFormat.usual(UnitChoice.metric()).withMarks(m.delimiter, m.decimal, m.thousands));
        Arbitrary<Encoding> encodings = Arbitraries.of(new Encoding(StandardCharsets.UTF_8, false),
                new Encoding(StandardCharsets.UTF_8, true), new Encoding(StandardCharsets.UTF_16, true),
                new Encoding(StandardCharsets.UTF_16LE, true), new Encoding(Charset.forName("windows-1252"), false));
        Arbitrary<CsvFormat> written = Combinators.combine(marks, encodings,
                Arbitraries.of(CsvFormat.UnitPlace.values()), Arbitraries.of(CsvFormat.Signs.values()),
                Arbitraries.of(Handedness.values())).as((format, encoding, place, signs, hand) -> format
                        .withEncoding(encoding.charset, encoding.mark).withUnits(place).withSigns(signs, hand));
        return Combinators.combine(written, Arbitraries.of("-", "\u2212", "\u2013"),
                Arbitraries.of("", "-", "n/a", "\u2013", "--"), Arbitraries.of("\n", "\r\n"),
                Arbitraries.of(true, false), Arbitraries.of(List.<String>of(), List.of("Bay 2"),
                        List.of("Readings of the day", "", "printed by the shop")),
                units()).as(CsvProperties::dressed);
    }

    private record Marks(char delimiter, char decimal, Character thousands) {
    }

    private record Encoding(Charset charset, boolean mark) {
    }

    private static CsvFormat dressed(CsvFormat format, String minus, String blank, String lineEnd, boolean summaries,
            List<String> titles, UnitChoice units) {
        boolean eightBits = format.charset().name().startsWith("windows");
        String writable = eightBits && minus.equals("\u2212") ? "\u2013" : minus;
        Character thousands = eightBits && format.thousands() != null && format.thousands() == '\u202F' ? (Character) '\u00A0'
                : format.thousands();
        CsvFormat dressed = format.withMinus(writable).withBlank(blank).withLineEnd(lineEnd).withSummaries(summaries)
                .withTitles(titles).withMarks(format.delimiter(), format.decimalMark(), thousands);
        return new CsvFormat(dressed.charset(), dressed.byteOrderMark(), dressed.delimiter(), dressed.decimalMark(),
                dressed.thousands(), dressed.minus(), units, dressed.unitPlace(), dressed.signs(), dressed.hand(),
                dressed.blank(), dressed.lineEnd(), dressed.titles(), dressed.summaries(), 1, Map.of());
    }

    private Arbitrary<UnitChoice> units() {
        return Combinators.combine(Arbitraries.of(Unit.METRES_PER_SECOND, Unit.KILOMETRES_PER_HOUR, Unit.MILES_PER_HOUR),
                Arbitraries.of(Unit.METRE, Unit.YARD, Unit.FOOT), Arbitraries.of(Unit.MILLIMETRE, Unit.CENTIMETRE, Unit.INCH),
                Arbitraries.of(Unit.METRE_HIGH, Unit.FOOT_HIGH, Unit.YARD_HIGH)).as((speed, distance, length, height) ->
                        UnitChoice.metric().with(speed).with(distance).with(length).with(height));
    }

    @Provide
    Arbitrary<CsvTable> tables() {
        Arbitrary<List<Metric>> metrics = Arbitraries.of(Metric.class).list().uniqueElements().ofMinSize(2).ofMaxSize(9);
        Arbitrary<Boolean> numbered = Arbitraries.of(true, false);
        return Combinators.combine(metrics, numbered, Arbitraries.integers().between(1, 12),
                Arbitraries.longs().between(0, 1L << 40)).as(CsvProperties::table);
    }

    private static CsvTable table(List<Metric> metrics, boolean numbered, int count, long seed) {
        Random random = new Random(seed);
        List<ColumnMeaning> columns = new ArrayList<>();
        columns.add(ColumnMeaning.of(numbered ? ColumnRole.SHOT_ID : ColumnRole.NOTE));
        metrics.forEach(metric -> columns.add(ColumnMeaning.of(metric)));
        List<CsvTable.Row> rows = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Map<Metric, Double> values = new EnumMap<>(Metric.class);
            for (Metric metric : metrics) {
                if (values.isEmpty() || random.nextDouble() < 0.85) {
                    double within = metric.sensibleHigh() - metric.sensibleLow();
                    values.put(metric, metric.sensibleLow() + within * random.nextDouble());
                }
            }
            Map<ColumnRole, String> texts = new EnumMap<>(ColumnRole.class);
            texts.put(numbered ? ColumnRole.SHOT_ID : ColumnRole.NOTE, numbered ? String.valueOf(i + 1)
                    : List.of("", "heavy, off the toe", "a \"good\" one", "two\nlines", "so-so; wet").get(random.nextInt(5)));
            rows.add(new CsvTable.Row(texts, new Readings(values)));
        }
        return new CsvTable(columns, rows);
    }

    private static IntakeResult read(CsvFormat format, byte[] bytes, List<Shot> taken) {
        return CsvIntake.withDefaults().with(format.hand()).with(markOf(format)).read(bytes, "table.csv", taken);
    }

    /** What a value becomes by being written to the file's digits. */
    private static double tolerance(CsvFormat format, Metric metric) {
        Unit unit = format.units().of(metric.dimension());
        return unit.toInternal(Math.pow(10, -format.decimals(metric.dimension()))) * 0.5 * (1 + 1e-6) + 1e-9;
    }

    @Property(tries = 300)
    void anyTableSurvivesWritingAndReadingInAnyDialect(@ForAll("formats") CsvFormat format,
            @ForAll("tables") CsvTable table) {
        IntakeResult result = read(format, CsvWriter.with(format).write(table), List.of());
        assertThat(result.questions()).isEmpty();
        assertThat(result.unknownColumns()).isEmpty();
        assertThat(result.problems()).filteredOn(p -> p.severity() != Problem.Severity.NOTE).isEmpty();
        assertThat(result.rows()).hasSameSizeAs(table.rows());
        for (int i = 0; i < table.rows().size(); i++) {
            Readings expected = table.rows().get(i).readings();
            Readings actual = result.rows().get(i).shot().readings();
            assertThat(actual.values().keySet()).isEqualTo(expected.values().keySet());
            expected.values().forEach((metric, value) -> assertThat(actual.given(metric).orElseThrow())
                    .as(metric.key()).isEqualTo(value, within(tolerance(format, metric))));
        }
    }

    @Property(tries = 80)
    void theSameFileAgainAddsNothing(@ForAll("formats") CsvFormat format, @ForAll("tables") CsvTable table) {
        byte[] bytes = CsvWriter.with(format).write(table);
        IntakeResult first = read(format, bytes, List.of());
        IntakeResult again = read(format, bytes, first.shots());
        assertThat(again.rows()).isEmpty();
        assertThat(again.alreadyTaken()).isEqualTo(first.rows().size());
        assertThat(first.shots()).extracting(Shot::id).doesNotHaveDuplicates();
    }

    @Property(tries = 80)
    void theOrderOfTheColumnsChangesNothing(@ForAll("formats") CsvFormat format, @ForAll("tables") CsvTable table,
            @ForAll long seed) {
        List<ColumnMeaning> columns = new ArrayList<>(table.columns());
        Collections.shuffle(columns, new Random(seed));
        CsvFormat plain = format.withSummaries(false);
        IntakeResult first = read(plain, CsvWriter.with(plain).write(table), List.of());
        IntakeResult other = read(plain, CsvWriter.with(plain).write(table.withColumns(columns)), List.of());
        assertThat(other.shots()).isEqualTo(first.shots());
    }

    @Property(tries = 20)
    void theLocaleOfTheMachineChangesNothing(@ForAll("formats") CsvFormat format, @ForAll("tables") CsvTable table) {
        Locale before = Locale.getDefault();
        try {
            List<IntakeResult> results = new ArrayList<>();
            for (Locale locale : List.of(Locale.US, Locale.GERMANY, Locale.FRANCE, Locale.forLanguageTag("tr-TR"),
                    Locale.forLanguageTag("ar-EG"))) {
                Locale.setDefault(locale);
                results.add(read(format, CsvWriter.with(format).write(table), List.of()));
            }
            assertThat(results).containsOnly(results.get(0));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Property(tries = 1000)
    void randomBytesNeverCrashAndAlwaysGiveASentence(@ForAll byte[] bytes) {
        assertSentence(CsvIntake.withDefaults().read(bytes, "random", List.of()));
    }

    @Property(tries = 800)
    void randomCellsUnderRealHeadingsNeverCrash(@ForAll("cells") List<List<String>> cells,
            @ForAll("delimiters") char delimiter) {
        StringBuilder text = new StringBuilder(String.join(String.valueOf(delimiter), "Shot", "Time", "Club speed (mph)",
                "Face angle", "Spin axis", "Set aside", "Kind")).append('\n');
        cells.forEach(row -> text.append(String.join(String.valueOf(delimiter), row)).append('\n'));
        IntakeResult result = CsvIntake.withDefaults().with(Handedness.LEFT).read(
                text.toString().getBytes(StandardCharsets.UTF_8), "random", List.of());
        assertSentence(result);
        assertThat(result.hasFailed()).isEqualTo(text.indexOf("\0") >= 0);
        result.rows().forEach(row -> assertThat(row.line()).isGreaterThan(1));
    }

    @Provide
    Arbitrary<Character> delimiters() {
        return Arbitraries.of(',', ';', '\t');
    }

    @Provide
    Arbitrary<List<List<String>>> cells() {
        Arbitrary<String> cell = Arbitraries.oneOf(Arbitraries.strings().withChars("0123456789.,-+eE '\"\u2212\u00A0LRHTocinut/:")
                .ofMaxLength(10), Arbitraries.of("", "12.5", "-3", "n/a", "1.234", "1,234", "2.1 open", "Average", "\"", "\"\"",
                "L 2.3", "in-out", "99999999999999999999", "1e309", "-", "03/04/2026", "10:31", "24:61", "Club speed"),
                Arbitraries.strings().ofMaxLength(6));
        return cell.list().ofMaxSize(9).list().ofMaxSize(12);
    }

    private static void assertSentence(IntakeResult result) {
        assertThat(result.sentence()).isNotBlank();
        assertThat(result.problems()).allSatisfy(problem -> assertThat(problem.sentence()).endsWith("."));
        assertThat(result.questions()).allSatisfy(question -> assertThat(question.choices()).isNotEmpty());
        assertThat(result.hasFailed()).isEqualTo(result.problems().stream()
                .anyMatch(p -> p.severity() == Problem.Severity.FATAL));
    }

    /** A second opinion on quotes and line breaks: a general CSV library reads the same cells. */
    @Property(tries = 300)
    void quotesAreReadAsAGeneralLibraryReadsThem(@ForAll("delimiters") char delimiter, @ForAll("texts") List<List<String>> rows)
            throws IOException {
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                text.append(i == 0 ? "" : String.valueOf(delimiter)).append('"').append(row.get(i).replace("\"", "\"\""))
                        .append('"');
            }
            text.append('\n');
        }
        List<List<String>> ours = CsvTokenizer.rows(text.toString(), delimiter, 1).stream().map(CsvRow::cells).toList();
        List<List<String>> theirs = new ArrayList<>();
        try (MappingIterator<String[]> read = new CsvMapper().enable(CsvParser.Feature.WRAP_AS_ARRAY)
                .readerFor(String[].class).with(CsvSchema.emptySchema().withColumnSeparator(delimiter))
                .readValues(text.toString())) {
            read.forEachRemaining(row -> theirs.add(List.of(row)));
        }
        assertThat(ours).isEqualTo(theirs);
    }

    @Provide
    Arbitrary<List<List<String>>> texts() {
        return Arbitraries.strings().withChars("ab ,;\t\"\n'").ofMaxLength(8).list().ofSize(3).list().ofMinSize(1).ofMaxSize(6);
    }
}
