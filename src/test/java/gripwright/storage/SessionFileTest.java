package gripwright.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import gripwright.model.Problem;
import gripwright.model.ProblemException;
import gripwright.model.Session;
import gripwright.model.SessionArbitraries;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.LocalDate;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How a session file looks, and what is said of files that are not as they should be. */
class SessionFileTest {

    private final SessionFile files = new SessionFile();
    private final Session session = Session.blank("s-1", LocalDate.of(2026, 3, 31));

    @TempDir
    private Path folder;

    @Test
    void headerComesFirstAndFieldsAreInOrder() {
        String text = new String(files.bytes(session), StandardCharsets.UTF_8);
        assertThat(text).startsWith("""
                {
                  "kind": "session",
                  "formatVersion": 1,
                  "session": {
                    "id": "s-1",
                    "date": "2026-03-31",
                    "invented": false,
                    "player": {
                      "label": "",
                      "hand": "right",
                      "handLengthMm": null,
                """);
        assertThat(text).contains("\"modelled\": [\n").contains("\"order\": \"mirrored\"").endsWith("}\n")
                .doesNotContain("\r");
    }

    @Test
    void swingweightsCarryPointsAndTextAndTheTextIsPassedOver() throws ProblemException {
        String text = new String(files.bytes(SessionArbitraries.session(7)), StandardCharsets.UTF_8);
        assertThat(text).containsPattern("\"points\": -?[0-9.E-]+,\\s+\"text\": \"");
        String other = text.replaceAll("(\"points\": [^,]+,\\s+\"text\": )\"[^\"]*\"", "$1\"anything\"");
        assertThat(other).isNotEqualTo(text);
        assertThat(files.parse(other.getBytes(StandardCharsets.UTF_8), "").value())
                .isEqualTo(SessionArbitraries.session(7));
    }

    @Test
    void newerVersionsAreRefusedAndLeftUntouched() throws IOException {
        Problem problem = refusal(text().replace("\"formatVersion\": 1", "\"formatVersion\": 2"));
        assertThat(problem.sentence()).contains("newer version of the program (format 2; this program reads up to "
                + "format 1)").contains("left as it is");
    }

    @Test
    void somethingElseIsRefused() throws IOException {
        assertThat(refusal("{\"kind\": \"stock\", \"formatVersion\": 1}").sentence()).contains("'stock'");
        assertThat(refusal("{\"a\": 1}").sentence()).contains("does not say its format version");
        assertThat(refusal("[]").sentence()).contains("no session file");
        assertThat(refusal("").sentence()).contains("no session file");
        assertThat(refusal("{\"kind\": \"session\", \"formatVersion\": 1}").sentence()).contains("holds nothing");
        assertThat(refusal("{\"kind\": \"session\", \"formatVersion\": 0}").sentence()).contains("no format version 0");
    }

    @Test
    void damageIsSaidWithLineAndColumn() throws IOException {
        Problem cut = refusal(text().substring(0, text().indexOf("handLengthMm")));
        assertThat(cut.line()).isEqualTo(11);
        assertThat(cut.column()).isNotNull();
        assertThat(cut.text()).startsWith("opened.json, line 11, column ").contains("damaged");
    }

    @Test
    void wrongContentIsSaidWithPlaceAndExpectation() throws IOException {
        Problem hand = refusal(text().replace("\"right\"", "\"both\""));
        assertThat(hand.line()).isEqualTo(10);
        assertThat(hand.found()).isEqualTo("both");
        assertThat(hand.sentence()).contains("'player.hand' must be one of right, left");
        assertThat(refusal(text().replace("\"shotsPerStint\": 3", "\"shotsPerStint\": 0")).sentence())
                .contains("number of shots per stint must be at least 1");
        assertThat(refusal(text().replace("\"shotsPerStint\": 3", "\"shotsPerStint\": 3.5")).sentence())
                .contains("'tests[1].plan.shotsPerStint' must be a whole number");
        assertThat(refusal(text().replace("\"feelWeight\": 0.25", "\"feelWeight\": \"0.25\"")).sentence())
                .contains("'goal.feelWeight' must be a number");
        assertThat(refusal(text().replace("\"feelWeight\": 0.25,", "")).sentence()).contains("'goal.feelWeight'");
        assertThat(refusal(text().replace("2026-03-31", "31.3.2026")).sentence()).contains("a date such as");
        assertThat(refusal(text().replace("\"tray\": [ ]", "\"tray\": [ null ]")).sentence())
                .contains("'tray[1]' holds nothing (null)");
    }

    @Test
    void missingOptionalFieldsAreAsEmpty() throws ProblemException {
        String bare = text().replace("\"tray\": [ ],", "").replace("\"handLengthMm\": null,", "")
                .replace("\"smallestDifferences\": { },", "");
        assertThat(bare.length()).isLessThan(text().length());
        assertThat(files.parse(bare.getBytes(StandardCharsets.UTF_8), "").value()).isEqualTo(session);
    }

    @Test
    void unknownFieldsArePassedOverAndReported() throws ProblemException {
        String text = text().replace("\"invented\": false,", "\"invented\": false, \"mood\": {\"a\": [1]},");
        Loaded<Session> loaded = files.parse(text.getBytes(StandardCharsets.UTF_8), "opened.json");
        assertThat(loaded.value()).isEqualTo(session);
        assertThat(loaded.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.severity()).isEqualTo(Problem.Severity.NOTE);
            assertThat(problem.found()).isEqualTo("mood");
            assertThat(problem.line()).isEqualTo(7);
        });
    }

    @Test
    void theSameFieldTwiceIsRefused() throws IOException {
        assertThat(refusal(text().replace("\"invented\": false,", "\"invented\": false, \"invented\": true,"))
                .sentence()).contains("can't be read");
    }

    @Test
    void absurdlyDeepFilesAreRefused() throws IOException {
        assertThat(refusal("[".repeat(200_000)).sentence()).contains("deeper");
    }

    @Test
    void missingFilesAreSaid() {
        ProblemException missing = catchThrowableOfType(ProblemException.class,
                () -> files.read(folder.resolve("none.json")));
        assertThat(missing.problem().text()).startsWith("none.json: The file could not be read because")
                .contains("not there");
    }

    @Test
    void newFilesBelongToTheOwnerAloneAndNothingElseIsLeft() throws Exception {
        Assumptions.assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
        Path file = folder.resolve("s.json");
        files.write(file, session);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file))).isEqualTo("rw-------");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r--"));
        files.write(file, session.withNote("again"));
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file))).isEqualTo("rw-rw----");
        try (var all = Files.list(folder)) {
            assertThat(all).containsExactly(file);
        }
    }

    @Test
    void whatCanNotBeReadIsPutBesideBeforeItsNameIsTaken() throws Exception {
        Path file = folder.resolve("settings.json");
        Files.writeString(file, "{\"kind\": \"settings\", \"formatVersion\": 9}");
        new SettingsFile().write(file, gripwright.model.ShopSettings.usual());
        assertThat(new SettingsFile().read(file).value()).isEqualTo(gripwright.model.ShopSettings.usual());
        try (var all = Files.list(folder)) {
            assertThat(all.filter(path -> !path.equals(file))).singleElement().satisfies(aside -> {
                assertThat(aside.getFileName().toString()).startsWith("settings (replaced ").endsWith(").json");
                assertThat(aside).hasContent("{\"kind\": \"settings\", \"formatVersion\": 9}");
            });
        }
    }

    @Test
    void aLinkStaysALink() throws Exception {
        Path real = Files.createFile(folder.resolve("real.json"));
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), real);
        files.write(link, session);
        assertThat(Files.isSymbolicLink(link)).isTrue();
        assertThat(files.read(real).value()).isEqualTo(session);
    }

    private String text() {
        return new String(files.bytes(session), StandardCharsets.UTF_8);
    }

    private Problem refusal(String text) throws IOException {
        Path file = folder.resolve("opened.json");
        Files.writeString(file, text);
        ProblemException refusal = catchThrowableOfType(ProblemException.class, () -> files.read(file));
        assertThat(refusal).isNotNull();
        assertThat(Files.readString(file)).isEqualTo(text);
        return refusal.problem();
    }
}
