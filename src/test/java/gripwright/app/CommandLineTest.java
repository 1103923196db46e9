package gripwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.apache.commons.math3.stat.inference.TTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The main job on the command line: real files in at one end, results out at the other. */
class CommandLineTest {

    private static final Path DEMO = Path.of("demo-data", "left-handed-8-iron.json");
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path folder;

    private static JsonNode json(CommandRun run) throws IOException {
        assertThat(run.code()).as(run.err()).isZero();
        return JSON.readTree(run.out());
    }

    @Test
    void csvFileBecomesASessionAndTheSameFileAgainAddsNothing() throws IOException {
        Path session = folder.resolve("session.json");
        String csv = Path.of("demo-data", "left-handed-8-iron-b.csv").toString();

        CommandRun first = CommandRun.of("intake", csv, "--out", session.toString(), "--handed", "left");
        byte[] afterFirst = Files.readAllBytes(session);
        CommandRun second = CommandRun.of("intake", csv, "--out", session.toString());

        assertThat(first.code()).as(first.err()).isZero();
        assertThat(first.out()).contains("new shots");
        assertThat(second.code()).as(second.err()).isZero();
        assertThat(second.out()).contains("0 new shots").contains("taken before");
        assertThat(JSON.readTree(Files.readAllBytes(session))).isEqualTo(JSON.readTree(afterFirst));
        assertThat(JSON.readTree(afterFirst).at("/session/player/hand").asText()).isEqualTo("left");
    }

    @Test
    void comparisonAsJsonCarriesTheMeansOfTheFileAndWelchsInterval() throws IOException {
        JsonNode result = json(CommandRun.of("compare", DEMO.toString(), "--json"));
        JsonNode speed = find(result.get("metrics"), "metric", "clubSpeed");
        assertThat(speed.get("unit").asText()).isEqualTo("m/s");

        double[] a = scored("A", "clubSpeed");
        double[] c = scored("C", "clubSpeed");
        JsonNode ofC = find(speed.get("configurations"), "label", "C");
        assertThat(ofC.get("shots").asInt()).isEqualTo(c.length);
        assertThat(ofC.get("mean").asDouble()).isCloseTo(new DescriptiveStatistics(c).getMean(), within(1e-9));
        assertThat(ofC.get("sd").asDouble())
                .isCloseTo(new DescriptiveStatistics(c).getStandardDeviation(), within(1e-9));
        JsonNode welch = pair(speed.at("/classical/welch"), "C", "A");
        // An independent implementation of Welch's test: Apache Commons Math.
        assertThat(welch.get("p").asDouble()).isCloseTo(new TTest().tTest(c, a), within(1e-9));
        assertThat(result.get("tests")).hasSize(1);
        assertThat(result.get("tests").get(0).get("metrics")).isEqualTo(result.get("metrics"));
    }

    @Test
    void verdictsAreSpelledAsDocumented() throws IOException {
        JsonNode result = json(CommandRun.of("compare", DEMO.toString(), "--json"));
        List<String> verdicts = new ArrayList<>();
        for (JsonNode metric : result.get("metrics")) {
            for (JsonNode difference : metric.get("differences")) {
                verdicts.add(difference.get("verdict").asText());
                assertThat(difference.get("reasons")).isNotEmpty();
            }
        }
        assertThat(verdicts).isNotEmpty()
                .isSubsetOf("better", "probably-better", "same", "probably-worse", "worse", "not-settled");
        assertThat(result.get("overall")).hasSize(5);
        assertThat(result.get("patterns")).isNotEmpty();
    }

    @Test
    void anotherReferenceIsTakenByItsLabel() throws IOException {
        JsonNode result = json(CommandRun.of("compare", DEMO.toString(), "--json", "--reference", "c"));
        assertThat(result.get("reference").asText()).isEqualTo("C");
        JsonNode speed = find(result.get("metrics"), "metric", "clubSpeed");
        assertThat(pair(speed.get("differences"), "A", "C")).isNotNull();
    }

    @Test
    void unknownReferenceIsRefusedWithTheLabelsThereAre() {
        CommandRun run = CommandRun.of("compare", DEMO.toString(), "--reference", "Z");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).contains("'Z'").contains("A, B, C, D, E").doesNotContain("Exception");
    }

    @Test
    void sensitivityReadsTheSessionInOtherWays() throws IOException {
        JsonNode result = json(CommandRun.of("compare", DEMO.toString(), "--json", "--sensitivity"));
        assertThat(result.get("sensitivity").get(0).findValuesAsText("kind"))
                .contains("without-stint", "cautious-prior", "set-aside-back");
    }

    @Test
    void textSpeaksInTheVerdictsWords() {
        CommandRun run = CommandRun.of("compare", DEMO.toString());
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("invented demo data").contains("not settled").contains("reference")
                .doesNotContain("NaN").doesNotContain("null");
    }

    @Test
    void balanceHoldsWhatTheSchemaPromises() throws IOException {
        JsonNode result = json(CommandRun.of("balance", DEMO.toString(), "--json"));
        JsonNode first = result.get("configurations").get(0);
        assertThat(first.fieldNames()).toIterable().contains("label", "totalMassGrams", "balancePointMm", "swingweight",
                "momentGramInches", "inertiaKgCm2");
        assertThat(first.get("totalMassGrams").asDouble()).isBetween(300.0, 600.0);
    }

    @Test
    void aTargetThatCantBeReachedIsSaid() {
        CommandRun run = CommandRun.of("balance", DEMO.toString());
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("wedge: The head would have to lose");
    }

    @Test
    void missingFileIsASentenceAndExitCodeOne() {
        CommandRun run = CommandRun.of("compare", folder.resolve("none.json").toString());
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).contains("none.json").doesNotContain("Exception").doesNotContain("\tat ");
    }

    @Test
    void wrongUseIsExitCodeTwo() {
        assertThat(CommandRun.of("compare").code()).isEqualTo(2);
        assertThat(CommandRun.of("sing").code()).isEqualTo(2);
        assertThat(CommandRun.of("summary", DEMO.toString()).code()).isEqualTo(2);
        assertThat(CommandRun.of("summary", DEMO.toString(), "--out", folder.resolve("x.pdf").toString(), "--paper",
                "A5").code()).isEqualTo(2);
        assertThat(CommandRun.of("intake", "x.csv", "--out", folder.resolve("x.json").toString(), "--handed", "both")
                .code()).isEqualTo(2);
    }

    @Test
    void newerFormatIsRefusedAndLeftUntouched() throws IOException {
        Path newer = folder.resolve("newer.json");
        String text = Files.readString(DEMO).replaceFirst("\"formatVersion\" *: *\\d+", "\"formatVersion\": 99");
        Files.writeString(newer, text);
        CommandRun compare = CommandRun.of("compare", newer.toString());
        CommandRun intake = CommandRun.of("intake", Path.of("demo-data", "left-handed-8-iron-a.csv").toString(), "--out",
                newer.toString());
        assertThat(compare.code()).isEqualTo(1);
        assertThat(compare.err()).contains("99");
        assertThat(intake.code()).isEqualTo(1);
        assertThat(Files.readString(newer)).isEqualTo(text);
    }

    @Test
    void ambiguityIsAskedAndNothingWrittenUntilItIsAnswered() throws IOException {
        Path csv = folder.resolve("shots.csv");
        Files.writeString(csv, "shot,configuration,stint,club speed,face angle (deg)\n1,A,1,40.1,0.5\n2,A,1,39.7,-0.4\n"
                + "3,B,2,40.4,1.0\n4,B,2,40.2,0.2\n", StandardCharsets.UTF_8);
        Path session = folder.resolve("session.json");

        CommandRun asked = CommandRun.of("intake", csv.toString(), "--out", session.toString(), "--handed", "right");

        assertThat(asked.code()).isEqualTo(1);
        assertThat(asked.err()).contains("--answer").contains("speed");
        assertThat(session).doesNotExist();
        String answer = asked.err().lines().map(String::strip).filter(line -> line.startsWith("--answer")
                && line.contains("m/s")).findFirst().orElseThrow().split("\\s+")[1].replace("'", "");
        CommandRun answered = CommandRun.of("intake", csv.toString(), "--out", session.toString(), "--handed", "right",
                "--answer", answer);
        assertThat(answered.code()).as(answered.err()).isZero();
        assertThat(Files.readString(session)).contains("40.1");
    }

    @Test
    void columnsSetByHandAreSavedUnderANameAndUsedAgain() throws IOException {
        Path csv = folder.resolve("shots.csv");
        Files.writeString(csv, "shot,configuration,stint,vee\n1,A,1,40.1\n2,B,2,39.7\n", StandardCharsets.UTF_8);
        String name = "mapping of " + folder.getFileName();
        CommandRun first = CommandRun.of("intake", csv.toString(), "--out", folder.resolve("one.json").toString(),
                "--handed", "left", "--column", "vee=ballSpeed", "--leave-open", "--save-mapping", name);
        CommandRun unknown = CommandRun.of("intake", csv.toString(), "--out", folder.resolve("two.json").toString(),
                "--mapping", "no such name");
        CommandRun again = CommandRun.of("intake", csv.toString(), "--out", folder.resolve("two.json").toString(),
                "--handed", "left", "--mapping", name);
        assertThat(first.code()).as(first.err()).isZero();
        assertThat(unknown.code()).isEqualTo(1);
        assertThat(unknown.err()).contains("no such name");
        assertThat(again.code()).isEqualTo(1);
        assertThat(again.err()).as("the unit of the column that was set by hand is asked").contains("vee");
    }

    @Test
    void withoutADisplayTheWindowCommandShowsTheDemoAndLeavesItsSummary() throws Exception {
        ProcessBuilder builder = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp",
                System.getProperty("java.class.path"), "gripwright.app.Gripwright", "window", "--demo");
        builder.environment().remove("DISPLAY");
        builder.environment().remove("WAYLAND_DISPLAY");
        builder.environment().put("GRIPWRIGHT_HOME", folder.toString());
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        Process process = builder.redirectOutput(out.toFile()).redirectError(err.toFile()).start();
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        String text = Files.readString(out);
        assertThat(process.exitValue()).as(Files.readString(err)).isZero();
        assertThat(text).contains("no display").contains("club speed").contains("demo-summary.pdf");
        assertThat(folder.resolve("sessions").resolve("demo-summary.pdf")).exists();
        assertThat(Files.readString(err)).doesNotContain("Exception");
    }

    private static JsonNode find(JsonNode list, String key, String value) {
        for (JsonNode node : list) {
            if (node.get(key).asText().equals(value)) {
                return node;
            }
        }
        throw new AssertionError("no " + key + " " + value + " in " + list);
    }

    private static JsonNode pair(JsonNode list, String of, String against) {
        for (JsonNode node : list) {
            if (node.get("of").asText().equals(of) && node.get("against").asText().equals(against)) {
                return node;
            }
        }
        throw new AssertionError("no pair " + of + " against " + against + " in " + list);
    }

    /** The scored readings of a configuration, read from the file without the program. */
    private static double[] scored(String label, String metric) throws IOException {
        JsonNode test = JSON.readTree(DEMO.toFile()).at("/session/tests/0");
        String id = find(test.get("configurations"), "label", label).get("id").asText();
        List<Double> values = new ArrayList<>();
        for (JsonNode stint : test.get("stints")) {
            if (!stint.get("configurationId").asText().equals(id) || !stint.get("kind").asText().equals("scored")) {
                continue;
            }
            for (int at = stint.get("settlingSwings").asInt(); at < stint.get("shots").size(); at++) {
                JsonNode shot = stint.get("shots").get(at);
                JsonNode value = shot.at("/readings/values/" + metric);
                if (shot.get("setAsideReason").isNull() && !value.isMissingNode()) {
                    values.add(value.asDouble());
                }
            }
        }
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
