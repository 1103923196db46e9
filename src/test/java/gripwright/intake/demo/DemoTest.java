package gripwright.intake.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gripwright.intake.CsvIntake;
import gripwright.intake.IntakeResult;
import gripwright.intake.SessionFilling;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Metric;
import gripwright.model.Problem;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.model.Stint;
import gripwright.storage.SessionFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DemoTest {

    private static final Path FOLDER = Path.of("demo-data");

    private static List<Demo> demos() {
        return List.of(Demo.leftHandedEightIron(), Demo.noDifference());
    }

    @Test
    void theFilesOfTheRepositoryAreWhatTheProgramMakes() throws IOException {
        for (Demo demo : demos()) {
            Map<String, byte[]> files = DemoFiles.of(demo);
            assertThat(files).hasSize(4);
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                assertThat(Files.readAllBytes(FOLDER.resolve(file.getKey()))).as(file.getKey()).isEqualTo(file.getValue());
            }
            assertThat(Files.readAllBytes(FOLDER.resolve(demo.name() + ".json"))).as(demo.name())
                    .isEqualTo(new SessionFile().bytes(demo.session()));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"a", "b", "c"})
    void eachCsvFileGivesTheSameSessionToTheRoundingOfTheFile(String dialect) throws IOException {
        for (Demo demo : demos()) {
            byte[] bytes = Files.readAllBytes(FOLDER.resolve(demo.name() + "-" + dialect + ".csv"));
            IntakeResult result = CsvIntake.withDefaults().with(demo.player().hand()).read(bytes, "demo.csv", List.of());
            assertThat(result.questions()).isEmpty();
            assertThat(result.unknownColumns()).isEmpty();
            assertThat(result.problems()).noneMatch(p -> p.severity() != Problem.Severity.NOTE);
            Session blank = Session.blank("filled", demo.session().date());
            Session filled = SessionFilling.wholeTest(blank, "test-1", result).session();
            assertSameShots(filled.tests().get(0), demo.session().tests().get(0));
        }
    }

    private static void assertSameShots(ClubTest filled, ClubTest demo) {
        assertThat(filled.configurations().stream().map(Configuration::label))
                .containsExactlyElementsOf(demo.configurations().stream().map(Configuration::label).toList());
        assertThat(filled.stints()).hasSameSizeAs(demo.stints());
        for (int s = 0; s < demo.stints().size(); s++) {
            Stint expected = demo.stints().get(s);
            Stint actual = filled.stints().get(s);
            assertThat(actual.id()).isEqualTo(expected.id());
            assertThat(actual.configurationId()).isEqualTo(expected.configurationId());
            assertThat(actual.kind()).isEqualTo(expected.kind());
            assertThat(actual.settlingSwings()).isEqualTo(expected.settlingSwings());
            assertThat(actual.changedBefore()).isEqualTo(expected.changedBefore());
            assertThat(actual.shots()).hasSameSizeAs(expected.shots());
            for (int i = 0; i < expected.shots().size(); i++) {
                assertSame(actual.shots().get(i), expected.shots().get(i));
            }
        }
    }

    private static void assertSame(Shot actual, Shot expected) {
        assertThat(actual.at()).isEqualTo(expected.at());
        assertThat(actual.setAsideReason()).isEqualTo(expected.setAsideReason());
        assertThat(actual.readings().values().keySet()).isEqualTo(expected.readings().values().keySet());
        expected.readings().values().forEach((metric, value) ->
                assertThat(actual.readings().given(metric).orElseThrow()).as(metric.key())
                        .isEqualTo(value, within(rounding(metric))));
    }

    /** Half of the last digit of the coarsest of the three files, in internal units, and a hair. */
    private static double rounding(Metric metric) {
        double lastDigit = switch (metric.dimension()) {
            case SPEED -> 0.01 * 0.44704;
            case DISTANCE -> 0.01 * 0.9144;
            case HEIGHT -> 0.01 * 0.3048;
            case LENGTH -> metric.dimension().internalUnit().toInternal(0.01 * 25.4);
            case SPIN, ANGULAR_RATE -> 0.1;
            default -> 0.01;
        };
        return lastDigit * 0.5 + 1e-9 + (metric.dimension() == gripwright.units.Dimension.SPEED ? 0.01 / 3.6 / 2 : 0)
                + (metric.dimension() == gripwright.units.Dimension.DISTANCE ? 0.0005 : 0);
    }

    @Test
    void theScenarioIsTheOneAskedFor() {
        Session session = Demo.leftHandedEightIron().session();
        ClubTest test = session.tests().get(0);
        assertThat(session.invented()).isTrue();
        assertThat(test.configurations()).hasSize(5);
        Configuration c = test.labelled("C").orElseThrow();
        Configuration d = test.labelled("D").orElseThrow();
        assertThat(c.fittedDiameters()).isEqualTo(d.fittedDiameters());
        assertThat(c.grip().massGrams() - d.grip().massGrams()).isGreaterThan(10);
        List<String> order = new ArrayList<>();
        test.stints().stream().filter(s -> s.kind() == Stint.Kind.SCORED).forEach(s -> order.add(s.configurationId()));
        List<String> reversed = new ArrayList<>(order);
        java.util.Collections.reverse(reversed);
        assertThat(order).hasSize(10).isEqualTo(reversed);
        assertThat(test.stints().stream().flatMap(s -> s.shots().stream()).filter(Shot::isSetAside).count())
                .isBetween(1L, 3L);
    }

    @Test
    void theTruthOfTheOtherSessionIsNoDifference() {
        assertThat(Demo.noDifference().player().effects()).isEmpty();
        assertThat(Demo.leftHandedEightIron().player().effects()).hasSize(4);
    }
}
