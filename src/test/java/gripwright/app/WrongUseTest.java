package gripwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a hurried hand types by mistake: nothing is overwritten, and a sentence says what is wrong. */
class WrongUseTest {

    private static final Path DEMO = Path.of("demo-data", "left-handed-8-iron.json");

    @TempDir
    Path folder;

    private Path file(String name, String content) throws IOException {
        return Files.writeString(folder.resolve(name), content, StandardCharsets.UTF_8);
    }

    @Test
    void theSummaryNeverTakesThePlaceOfASession() throws IOException {
        Path session = Files.copy(DEMO, folder.resolve("session.json"));
        byte[] before = Files.readAllBytes(session);

        CommandRun run = CommandRun.of("summary", session.toString(), "--out", session.toString());

        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).contains("is there already and is no PDF");
        assertThat(Files.readAllBytes(session)).isEqualTo(before);
    }

    @Test
    void theSummaryNeverTakesThePlaceOfAFolder() throws IOException {
        Path place = Files.createDirectory(folder.resolve("papers"));

        CommandRun run = CommandRun.of("summary", DEMO.toString(), "--out", place.toString());

        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).contains("is a folder");
        assertThat(place).isDirectory();
    }

    @Test
    void anEarlierPdfIsReplacedAndCanBeReadByOthersAsAnyFileCan() throws IOException {
        Path pdf = file("summary.pdf", "%PDF-1.6 of yesterday");
        Path any = file("any.txt", "x");

        CommandRun run = CommandRun.of("summary", DEMO.toString(), "--out", pdf.toString());

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(Files.size(pdf)).isGreaterThan(10_000);
        if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(pdf)))
                    .isEqualTo(PosixFilePermissions.toString(Files.getPosixFilePermissions(any)));
        }
    }

    @Test
    void aColumnThatTheFileDoesNotHaveIsSaidAndNothingWritten() throws IOException {
        Path csv = file("shots.csv", "Shot,Vee (mph),Face angle\n1,120,1\n");
        Path out = folder.resolve("out.json");

        CommandRun slip = CommandRun.of("intake", csv.toString(), "--out", out.toString(), "--column", "Ve=ballSpeed");

        assertThat(slip.code()).isEqualTo(1);
        assertThat(slip.err()).contains("has no column 'Ve'").contains("Vee (mph)");
        assertThat(out).doesNotExist();
    }

    @Test
    void unitAndSideOfAColumnAreSetOnTheCommandLine() throws IOException {
        Path csv = file("shots.csv", "Shot,Vee,Face (+ = ?)\n1,120,1.5\n");
        Path out = folder.resolve("out.json");

        CommandRun run = CommandRun.of("intake", csv.toString(), "--out", out.toString(), "--handed", "left",
                "--column", "Vee=ballSpeed,mph", "--column", "Face (+ = ?)=faceAngle,+open");

        assertThat(run.code()).as(run.err()).isZero();
        // 1 mph is 0.44704 m/s exactly; a left-handed player's open face points to the left of the target, which is minus.
        assertThat(Files.readString(out)).contains("\"ballSpeed\": 53.6448").contains("\"faceAngle\": -1.5");
    }

    @Test
    void whatCanBeNoAnswerOrNoColumnIsWrongUse() throws IOException {
        Path csv = file("shots.csv", "Shot,Speed,Face angle\n1,80,1\n");
        String out = folder.resolve("out.json").toString();

        assertThat(CommandRun.of("intake", csv.toString(), "--out", out, "--answer", "blah=blah").code()).isEqualTo(2);
        assertThat(CommandRun.of("intake", csv.toString(), "--out", out, "--column", "Speed=blah").code()).isEqualTo(2);
        assertThat(CommandRun.of("intake", csv.toString(), "--out", out, "--save-mapping", "").code()).isEqualTo(2);
        CommandRun wrong = CommandRun.of("intake", csv.toString(), "--out", out, "--answer", "meaning:speed=boat");
        assertThat(wrong.code()).isEqualTo(1);
        assertThat(wrong.err()).contains("'boat' is none of its answers");
    }

    @Test
    void shotsWithoutAPlaceAreNotCountedAsTaken() throws IOException {
        Path csv = file("shots.csv", "Shot,Grip,Face angle\n1,A,1\n2,,2\n3,B,3\n");

        CommandRun run = CommandRun.of("intake", csv.toString(), "--out", folder.resolve("out.json").toString());

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("1 of these have no place in the test");
        assertThat(run.err()).contains("shots.csv, line 3");
    }

    @Test
    void settingsThatAreNotThereAreNotPassedOver() {
        CommandRun run = CommandRun.of("compare", DEMO.toString(), "--settings", folder.resolve("none.json").toString());

        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).contains("There is no settings file");
    }

    @Test
    void twoPlayersFilesOfOneNameMakeTwoSessions() throws IOException {
        Path one = Files.createDirectory(folder.resolve("one"));
        Path two = Files.createDirectory(folder.resolve("two"));
        Files.writeString(one.resolve("shots.csv"), "Shot,Face angle\n1,1.5\n");
        Files.writeString(two.resolve("shots.csv"), "Shot,Face angle\n1,-2.5\n");
        for (Path place : java.util.List.of(one, two)) {
            CommandRun.of("intake", place.resolve("shots.csv").toString(), "--out", place.resolve("s.json").toString());
        }

        assertThat(id(one)).isNotEqualTo(id(two));
    }

    private static String id(Path place) throws IOException {
        return new com.fasterxml.jackson.databind.ObjectMapper().readTree(place.resolve("s.json").toFile())
                .at("/session/id").asText();
    }

    @Test
    void averagesThatArePassedOverAreNamed() throws IOException {
        Path csv = file("shots.csv", "Shot,Face angle\n1,1\nAverage,1\n");

        CommandRun run = CommandRun.of("intake", csv.toString(), "--out", folder.resolve("out.json").toString());

        assertThat(run.err()).contains("Line 3 is no shot but sums shots up");
    }

    /** One mapping that was damaged by hand keeps neither another nor its own repair from being used. */
    @Test
    void aDamagedMappingStandsInNoOthersWay() throws IOException {
        Path saved = file("mappings.json", "{\"kind\": \"mappings\", \"formatVersion\": 1, \"mappings\": {\"byName\": {"
                + "\"bad\": 5, \"good\": {\"columns\": [], \"answers\": {}}}}}");
        SavedMappings mappings = new SavedMappings(saved);

        assertThat(org.assertj.core.api.Assertions.catchThrowable(() -> mappings.named("bad")))
                .hasMessageContaining("'bad' can't be read").hasMessageNotContaining("java.");
        assertThat(org.assertj.core.api.Assertions.catchThrowable(() -> mappings.named("good"))).isNull();
        assertThat(org.assertj.core.api.Assertions.catchThrowable(() -> mappings.keep(
                gripwright.intake.ColumnMapping.none().withName("bad")))).isNull();
        assertThat(org.assertj.core.api.Assertions.catchThrowable(() -> mappings.named("bad"))).isNull();
    }

    @Test
    void aMappingThatCanNotBeKeptIsSaidBeforeAnythingIsWritten() throws IOException {
        Path home = Path.of(System.getenv("GRIPWRIGHT_HOME"));
        Files.createDirectories(home);
        Path mappings = Files.writeString(home.resolve("mappings.json"), "{");
        Path csv = file("shots.csv", "Shot,Face angle\n1,1\n");
        Path out = folder.resolve("out.json");
        try {
            CommandRun run = CommandRun.of("intake", csv.toString(), "--out", out.toString(), "--save-mapping", "bay");

            assertThat(run.code()).isEqualTo(1);
            assertThat(run.err()).contains(mappings.toString()).contains("line 1");
            assertThat(out).doesNotExist();
            assertThat(mappings).hasContent("{");
        } finally {
            Files.delete(mappings);
        }
    }

    @Test
    void aSessionThatAWindowHasInItsHandsIsLeftAlone() throws Exception {
        Path csv = file("shots.csv", "Shot,Face angle\n1,1\n");
        Path session = Files.copy(DEMO, folder.resolve("session.json"));
        gripwright.storage.SessionFiles window = new gripwright.storage.SessionFiles(folder.resolve("versions"));
        window.beat(session);
        byte[] before = Files.readAllBytes(session);

        CommandRun run = CommandRun.of("intake", csv.toString(), "--out", session.toString());

        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).contains("in use by another window");
        assertThat(Files.readAllBytes(session)).isEqualTo(before);
        window.release(session);
        assertThat(CommandRun.of("intake", csv.toString(), "--out", session.toString()).code()).isZero();
    }

    /** Else the next file's 'open' would be read for a right-handed player, and nobody would know. */
    @Test
    void theHandThatIsAnsweredIsThePlayersFromThenOn() throws IOException {
        Path out = folder.resolve("out.json");
        Path one = file("one.csv", "Shot,Face angle\n1,2 open\n");
        Path two = file("two.csv", "Shot,Face angle\n1,3 open\n");
        assertThat(CommandRun.of("intake", one.toString(), "--out", out.toString(), "--answer", "hand=left").code()).isZero();
        assertThat(CommandRun.of("intake", two.toString(), "--out", out.toString()).code()).isZero();

        assertThat(Files.readString(out)).contains("\"hand\": \"left\"").contains("\"faceAngle\": -2.0")
                .contains("\"faceAngle\": -3.0");
    }

    @Test
    void theHandOfOnePlayerIsNotSavedForTheNext() throws IOException {
        Path csv = file("one.csv", "Shot,Face angle\n1,2 open\n");
        CommandRun.of("intake", csv.toString(), "--out", folder.resolve("a.json").toString(), "--answer", "hand=left",
                "--save-mapping", "hand of one");
        CommandRun next = CommandRun.of("intake", csv.toString(), "--out", folder.resolve("b.json").toString(),
                "--mapping", "hand of one");

        assertThat(next.code()).isEqualTo(1);
        assertThat(next.err()).contains("right- or left-handed?");
    }

    @Test
    void aHandThatNothingSaysIsSaidToBeTaken() throws IOException {
        Path csv = file("one.csv", "Shot,Face angle\n1,2\n");

        CommandRun run = CommandRun.of("intake", csv.toString(), "--out", folder.resolve("a.json").toString());

        assertThat(run.err()).contains("Nothing says which way the player stands").contains("--handed");
    }

    @Test
    void twoHandsAreWrongUse() throws IOException {
        Path csv = file("one.csv", "Shot,Face angle\n1,2\n");

        assertThat(CommandRun.of("intake", csv.toString(), "--out", folder.resolve("a.json").toString(), "--handed", "left",
                "--answer", "hand=right").code()).isEqualTo(2);
    }

    @Test
    void headingsAndQuestionsMayHoldAnEqualsSign() throws IOException {
        Path csv = file("one.csv", "Shot,Head = v,Face (+ = hook)\n1,80,1\n");
        Path out = folder.resolve("a.json");

        CommandRun run = CommandRun.of("intake", csv.toString(), "--out", out.toString(), "--handed", "right",
                "--column", "Head = v=clubSpeed,mph", "--answer", "signs:face (+ = hook)=closed");

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(Files.readString(out)).contains("\"clubSpeed\": 35.7632").contains("\"faceAngle\": -1.0");
    }
}
