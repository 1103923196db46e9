package gripwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.model.Handedness;
import gripwright.model.Metric;
import gripwright.model.Problem;
import gripwright.model.Shot;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files written by hand to go wrong: nothing of them may be read as something else in silence. */
class SurprisingFilesTest {

    private static final CsvIntake LEFT = CsvIntake.withDefaults().with(Handedness.LEFT);

    private static IntakeResult read(String text) {
        return read(LEFT, "shots.csv", text, List.of());
    }

    private static IntakeResult read(CsvIntake intake, String name, String text, List<Shot> taken) {
        return intake.read(text.getBytes(StandardCharsets.UTF_8), name, taken);
    }

    /** What a heading says about its signs, for a left-handed player: 10 under it is read as the value expected. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "Path (in-out +); clubPath; -10",
        "Path (+ for in to out); clubPath; -10",
        "Path [°] (positive = in to out); clubPath; -10",
        "Club path (positive is out to in); clubPath; 10",
        "Face (positive = open); faceAngle; -10",
        "Face angle [deg, + open]; faceAngle; -10",
        "Face angle (closed is positive); faceAngle; 10",
        "Offline (m, left positive); offline; -10",
        "Offline m (R = +); offline; 10",
        "Offline (m | L+ R-); offline; -10",
        "Offline [m] (+ is left); offline; -10",
        "Offline (m) (+R/-L); offline; 10",
        "Spin axis (draw negative); spinAxis; -10",
        "Spin axis (° | - = draw); spinAxis; -10",
        "Spin axis (minus means left); spinAxis; 10",
        "Start direction (left = negative); startDirection; 10",
        "Start direction (+left); startDirection; -10",
        "Strike heel toe (mm, heel -); strikeSideways; 10",
        "Strike heel toe (mm, + towards heel); strikeSideways; -10",
        "Attack angle (+ = down); attackAngle; -10",
        "Dynamic lie (+toe down); dynamicLie; -10",
        "Face to path (open=+); faceToPath; -10",
    })
    void whatAHeadingSaysAboutItsSignsIsHeeded(String heading, String metric, double expected) {
        IntakeResult result = read("Shot;" + heading + "\n1;10\n");

        assertThat(result.questions()).isEmpty();
        assertThat(result.rows().get(0).shot().readings().given(Metric.ofKey(metric).orElseThrow()))
                .hasValue(expected);
    }

    @Test
    void signsThatAreNotUnderstoodAreAskedAbout() {
        String text = "Shot;Face angle (+ = hooked)\n1;2\n";
        IntakeResult asked = read(text);
        IntakeResult answered = read(LEFT.with(Answers.none().with("signs:face angle (+ = hooked)", "closed")),
                "shots.csv", text, List.of());

        assertThat(asked.questions()).extracting(Question::kind).containsExactly(Question.Kind.SIGNS);
        assertThat(asked.rows()).allMatch(row -> row.shot().readings().isEmpty());
        // Closed points a left-handed player's face to the right of the target.
        assertThat(answered.rows().get(0).shot().readings().given(Metric.FACE_ANGLE)).hasValue(2.0);
        assertThat(answered.questions()).isEmpty();
    }

    /** A unit that the reading can't have tells that the heading means something else. */
    @ParameterizedTest
    @ValueSource(strings = {"Launch (mph)", "Height (mm)", "Side (°)", "Spin (°)", "Path [m]", "Carry mph", "Face in mm"})
    void aUnitThatDoesNotFitIsAskedAbout(String heading) {
        IntakeResult result = read("Shot;" + heading + "\n1;10\n");

        assertThat(result.questions()).extracting(Question::kind).contains(Question.Kind.MEANING);
        assertThat(result.rows()).allMatch(row -> row.shot().readings().isEmpty());
    }

    @Test
    void aUnitThatDoesNotFitIsAskedAboutWhereItStandsBelowToo() {
        IntakeResult result = read("Shot;Launch;Face\n;mph;deg\n1;120;1\n");

        assertThat(result.questions()).extracting(Question::kind).containsExactly(Question.Kind.MEANING);
    }

    @Test
    void secondsInTheAirAreNoTimeOfDay() {
        IntakeResult result = read("Shot,Time (s),Face (right +)\n1,5.2,1\n2,5.6,2\n");

        assertThat(result.unknownColumns()).extracting(UnknownColumn::heading).containsExactly("Time (s)");
        assertThat(result.problems()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "Closure rate (°/s, shaft); closureRate; 1850; 1850",
        "Club speed (km/h, at impact); clubSpeed; 36; 10",
        "Club speed (m/s | measured); clubSpeed; 36; 36",
        "Club speed in mph; clubSpeed; 100; 44.704",
        "Carry in yards; carry; 100; 91.44",
    })
    void aUnitIsFoundAmongOtherWords(String heading, String metric, String cell, double expected) {
        IntakeResult result = read("Shot;" + heading + "\n1;" + cell + "\n");

        assertThat(result.questions()).isEmpty();
        assertThat(result.rows().get(0).shot().readings().given(Metric.ofKey(metric).orElseThrow()))
                .hasValue(expected);
    }

    /** Words in brackets that make something else of a reading. */
    @ParameterizedTest
    @ValueSource(strings = {"Spin (side)", "Face angle (SD)", "Club speed (avg, mph)", "Carry (target, m)"})
    void wordsThatMakeSomethingElseOfAReadingAreAskedAbout(String heading) {
        IntakeResult result = read("Shot;" + heading + "\n1;10\n");

        assertThat(result.questions()).extracting(Question::kind).containsExactly(Question.Kind.MEANING);
    }

    /** Two retests in one file with the numbering begun again and few digits: lines that are alike are still shots. */
    @Test
    void numberingThatBeginsAgainWithLikeReadingsLosesNoShot() {
        String text = "Shot,Grip,Face angle\n1,A,0.5\n2,A,0.7\n1,B,0.5\n2,B,0.7\n1,A,0.5\n2,A,0.7\n";
        IntakeResult first = read(text);
        IntakeResult again = read(LEFT, "shots.csv", text, first.shots());

        assertThat(first.rows()).hasSize(6);
        assertThat(first.alreadyTaken()).isZero();
        assertThat(first.shots()).extracting(Shot::id).doesNotHaveDuplicates();
        assertThat(again.rows()).isEmpty();
        assertThat(again.alreadyTaken()).isEqualTo(6);
    }

    @Test
    void aLineThatStandsTwiceWithItsNumberAndManyReadingsIsOneShotAndSaidToBe() {
        String line = "1,40.12,150.3,-1.2\n";
        IntakeResult result = read("Shot,Club speed (m/s),Carry (m),Face (right +)\n" + line + "2,41,151,1\n" + line);

        assertThat(result.rows()).hasSize(2);
        assertThat(result.alreadyTaken()).isZero();
        assertThat(result.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.line()).isEqualTo(4);
            assertThat(problem.severity()).isEqualTo(Problem.Severity.NOTE);
        });
    }

    @Test
    void aLineThatStandsTwiceInARowWithItsNumberIsOneShot() {
        String text = "Shot,Club speed (m/s)\n1,40\n1,40\n2,41\n";
        IntakeResult first = read(text);

        assertThat(first.rows()).hasSize(2);
        assertThat(first.problems()).extracting(Problem::line).containsExactly(3);
        assertThat(read(LEFT, "shots.csv", text, first.shots()).rows()).isEmpty();
    }

    /** An export that grows goes by another name each time it is made. */
    @Test
    void theSameShotsUnderAnotherNameAddNothing() {
        String head = "Shot,Time,Face angle\n";
        String early = "1,2026-11-25 14:01:00,1\n2,2026-11-25 14:02:00,2\n";
        IntakeResult first = read(LEFT, "export.csv", head + early, List.of());
        IntakeResult grown = read(LEFT, "export (1).csv", head + early + "3,2026-11-25 14:03:00,1\n", first.shots());

        assertThat(grown.rows()).hasSize(1);
        assertThat(grown.alreadyTaken()).isEqualTo(2);
    }

    @Test
    void likeLinesUnderAnotherNameThatTellNoShotAreTakenWithANote() {
        String text = "Face angle (right +)\n1\n2\n";
        IntakeResult first = read(LEFT, "one.csv", text, List.of());
        IntakeResult second = read(LEFT, "two.csv", text, first.shots());

        assertThat(second.rows()).hasSize(2);
        assertThat(second.problems()).singleElement()
                .satisfies(problem -> assertThat(problem.sentence()).contains("under another name"));
    }

    @Test
    void summariesWhoseWordStandsLastOrInTheMiddleAreNoShots() {
        IntakeResult last = read("Face angle (right +),Club speed (m/s),Note\n1,40,a\n2,41,average grip\n,,\n"
                + "1.5,40.5,Average\n0.7,0.7,Std. dev\n");
        IntakeResult middle = read("Shot;Grip;Club speed (m/s)\n1;A;40\n2;B;41\n;A mean;40\n;B average;41\n;\u00D8;40,5\n");

        assertThat(last.rows()).hasSize(2);
        assertThat(middle.rows()).hasSize(2);
        assertThat(middle.skippedLines()).filteredOn(line -> line.reason() == SkippedLine.Reason.SUMMARY).hasSize(3);
    }

    /** Words of other languages and signs in the place of the shot's number, at the end. */
    @Test
    void linesAtTheEndThatAreNotNumberedLikeTheOthersAreNoShots() {
        IntakeResult result = read("Shot;Club speed (m/s);Face (right +)\n1;40;1\n2;41;2\nMittelwert;40,5;1,5\n"
                + "Standardabweichung;0,7;0,7\n\u03C3;0,7;0,7\n2 shots average;40,5;1,5\n");

        assertThat(result.rows()).hasSize(2);
        assertThat(result.skippedLines()).filteredOn(line -> line.reason() == SkippedLine.Reason.SUMMARY)
                .extracting(SkippedLine::line).containsExactly(4, 5, 6, 7);
    }

    @Test
    void aLastLineWithAnotherWordForItsNumberIsTakenWithANote() {
        IntakeResult result = read("Shot,Club speed (m/s)\n1,40\n2,41\n2 shots average,40.5\nTarget,42\n");

        assertThat(result.rows()).extracting(row -> row.shot().source().shotId()).containsExactly("1", "2", "Target");
        assertThat(result.problems()).extracting(Problem::line).containsExactly(5);
    }

    @Test
    void shotsThatAreNumberedInAnotherWayInBetweenStayShots() {
        IntakeResult result = read("Shot;Face (right +)\n1;1\nextra;2\n2;2\n");

        assertThat(result.rows()).hasSize(3);
    }

    @Test
    void anyDashSaysNotMeasured() {
        IntakeResult result = read("Shot,Club speed (m/s),Face (right +)\n1,-----,1\n2,\u2014\u2014,2\n3,- -,3\n");

        assertThat(result.rows()).hasSize(3);
        assertThat(result.problems()).isEmpty();
    }

    /** Headings as people of the trade write them (common practice, no source), in several abbreviations. */
    @ParameterizedTest
    @CsvSource({
        "Clubhead Spd (mph), clubSpeed", "Swing spd mph, clubSpeed", "V club [m/s], clubSpeed",
        "Ball vel. (m/s), ballSpeed", "Launch speed (km/h), ballSpeed", "Path in/out, clubPath",
        "Face ang., faceAngle", "Face to tgt (deg), faceAngle", "Clubface at impact, faceAngle",
        "Face rel. to path, faceToPath", "Face to path diff, faceToPath", "Att. angle, attackAngle",
        "Effective loft, dynamicLoft", "Strike lateral (mm), strikeSideways",
        "Start line L/R, startDirection", "Horiz. launch, startDirection", "Take-off angle, launchAngle",
        "Peak ht (ft), apex", "Desc. angle, descentAngle", "Tot. spin, spinRate", "Carry flat (yd), carry",
        "Dev. from line (m), offline", "Offline L/R (yd), offline", "Tot. dist. (yd), total",
    })
    void abbreviationsOfTheTradeAreKnown(String heading, String key) {
        assertThat(HeaderText.of(heading).meanings()).extracting(ColumnMeaning::key).containsExactly(key);
    }

    /** What looks like a reading of the catalogue and is none: taken for one, it would be worse than not known. */
    @ParameterizedTest
    @ValueSource(strings = {"Spin loft", "Spin efficiency", "Side spin (rpm)", "Swing plane", "Static loft", "Shaft lean",
        "Low point (in)", "Apex time", "Apex distance", "Hang time (s)", "Flight time", "Landing height", "Descent speed",
        "Carry total", "Target carry", "Distance to pin", "Curve (yd)", "Roll", "Dispersion", "Impact angle", "Handle height",
        "Grip pressure", "Grip size", "Swingweight", "Ball type", "Tempo", "Desc", "Dev", "Max", "Launch L/R", "Temp (°C)"})
    void whatIsNoReadingOfTheCatalogueIsTakenForNone(String heading) {
        assertThat(HeaderText.of(heading).meanings()).isEmpty();
    }

    @Test
    void aNumberBeyondAnythingThatCanBeHitIsRejected() {
        IntakeResult result = read("Shot,Club speed (m/s),Face (right +)\n1,40,1e300\n2,-9999999,1\n");

        assertThat(result.rows()).extracting(row -> row.shot().readings().values().size()).containsExactly(1, 1);
        assertThat(result.problems()).extracting(Problem::severity).containsOnly(Problem.Severity.REJECTED);
        assertThat(result.problems()).extracting(Problem::column).containsExactly(3, 2);
    }

    @Test
    void aFileThatIsNoTableIsRefused() {
        IntakeResult result = read("Face,".repeat(20_000) + "\n" + "1,".repeat(20_000) + "\n");

        assertThat(result.hasFailed()).isTrue();
        assertThat(result.sentence()).contains("line 1").contains("no table of shots");
    }

    /** More broken marks in one record than are each looked after: its marks are letters, and the next line is read. */
    @Test
    void brokenMarksWithoutEndSpoilTheirOwnLineOnly() {
        List<CsvRow> rows = CsvTokenizer.rows("\"a\"b;".repeat(700) + "c\n\"x;y\";z\n", ';', 1);

        assertThat(rows.get(0).cells()).hasSize(701).endsWith("\"a\"b", "c");
        assertThat(rows.get(0).brokenQuote()).isTrue();
        assertThat(rows.get(1).cells()).containsExactly("x;y", "z");
        IntakeResult result = read("Shot;Face (right +)\n1;2;" + "\"a\"b;".repeat(700) + "\n2;3\n");
        assertThat(result.rows()).extracting(row -> row.shot().source().shotId()).containsExactly("2");
    }

    /** Without its letters every number of such a column would point one way. */
    @ParameterizedTest
    @ValueSource(strings = {"Face L/R", "", "Which way"})
    void lettersInAColumnOfTheirOwnBelongToTheNumbersOnTheirLeft(String heading) {
        String text = "Shot;Face angle;" + heading + ";Offline (m);Side?\n1;2,5;L;10;L\n2;1,5;R;12;R\n3;0;;;\n";
        IntakeResult result = read(text);

        assertThat(result.rows()).extracting(row -> row.shot().readings().values().get(Metric.FACE_ANGLE))
                .containsExactly(-2.5, 1.5, 0.0);
        assertThat(result.rows()).extracting(row -> row.shot().readings().values().get(Metric.OFFLINE))
                .containsExactly(-10.0, 12.0, null);
        assertThat(result.unknownColumns()).isEmpty();
        assertThat(result.problems()).filteredOn(p -> p.sentence().contains("letters in this column")).hasSize(2);
    }

    @Test
    void aColumnThatIsNotAllLettersOrNumbersWithSignsStayApart() {
        IntakeResult mixed = read("Shot;Face (right +);X\n1;2;L\n2;1;ok\n");
        IntakeResult signed = read("Shot;Face (right +);X\n1;-2;L\n2;1;R\n");
        IntakeResult open = read("Shot;Face (right +);X\n1;2;L\n2;1;\n");

        for (IntakeResult result : List.of(mixed, signed, open)) {
            assertThat(result.unknownColumns()).hasSize(1);
            assertThat(result.rows().get(1).shot().readings().values()).containsEntry(Metric.FACE_ANGLE, 1.0);
        }
    }
}
