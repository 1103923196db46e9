package gripwright.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import gripwright.model.Problem;
import gripwright.model.ProblemException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Session files that somebody changed in a text editor: the place and what is wrong there are said. */
class DamagedByHandTest {

    private static final String DEMO = demo();

    private static String demo() {
        try {
            return Files.readString(Path.of("demo-data", "left-handed-8-iron.json"));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Problem refusal(String text) {
        return catchThrowableOfType(ProblemException.class,
                () -> new SessionFile().parse(text.getBytes(StandardCharsets.UTF_8), "s.json")).problem();
    }

    private static int lineOf(String text, int at) {
        return (int) text.substring(0, at).chars().filter(c -> c == '\n').count() + 1;
    }

    /** In place of the first club speed. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "1e999; must be a number",
        "\"NaN\"; must be a number",
        "\"36.5\"; must be a number",
        "NaN; is no JSON",
        "36,5; is no JSON",
        "true; must be a number",
    })
    void aNumberThatIsNoneIsSaidOnItsOwnLine(String damaged, String said) {
        String field = "\"clubSpeed\": ";
        int at = DEMO.indexOf(field, DEMO.indexOf("\"shots\": [") + 1) + field.length();
        String rest = DEMO.substring(at).replaceFirst("^[-0-9.]+", java.util.regex.Matcher.quoteReplacement(damaged));

        Problem problem = refusal(DEMO.substring(0, at) + rest);

        assertThat(problem.line()).isEqualTo(lineOf(DEMO, at));
        assertThat(problem.sentence()).contains(said).contains("left as it is").contains("earlier copy");
    }

    @Test
    void aFieldThatStandsTwiceIsNamed() {
        Problem problem = refusal(DEMO.replaceFirst("\"clubSpeed\": ", "\"clubSpeed\": 1, \"clubSpeed\": "));

        assertThat(problem.sentence()).contains("'clubSpeed' stands twice");
    }

    @Test
    void whatFollowsTheEndIsSaidToFollow() {
        Problem problem = refusal(DEMO + DEMO);

        assertThat(problem.line()).isEqualTo(lineOf(DEMO, DEMO.length()));
        assertThat(problem.sentence()).contains("goes on after its end");
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "\"1\"; must be a whole number",
        "1.5; must be a whole number",
        "null; must be a whole number",
        "99999999999999999999; newer version",
    })
    void aVersionThatIsNoneIsSaid(String version, String said) {
        assertThat(refusal(DEMO.replaceFirst("\"formatVersion\": 1", "\"formatVersion\": " + version)).sentence())
                .contains(said);
    }

    @Test
    void anEmptyFileIsSaidToBeEmpty() {
        assertThat(refusal("").sentence()).contains("is empty");
        assertThat(refusal(" \n ").sentence()).contains("is empty");
    }

    @Test
    void anUnknownFieldBesideTheSessionIsReportedToo() throws ProblemException {
        String text = DEMO.replaceFirst("\"formatVersion\": 1,", "\"formatVersion\": 1,\n  \"remark\": \"mine\",");

        Loaded<?> loaded = new SessionFile().parse(text.getBytes(StandardCharsets.UTF_8), "s.json");

        assertThat(loaded.problems()).extracting(Problem::found).containsExactly("remark");
        assertThat(loaded.problems().get(0).line()).isEqualTo(4);
    }

    @Test
    void settingsWithoutADecimalMarkSayWhatIsExpected() {
        byte[] text = "{\"kind\": \"settings\", \"formatVersion\": 1, \"settings\": {}}".getBytes(StandardCharsets.UTF_8);
        ProblemException refused = catchThrowableOfType(ProblemException.class, () -> new VersionedFormat<>("settings", 1,
                gripwright.model.ShopSettings.class, java.util.List.of()).read(text, "settings.json"));

        assertThat(refused.problem().sentence()).doesNotContain("object").contains("'decimalMark' must be");
    }
}
