package gripwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gripwright.model.Handedness;
import gripwright.model.Metric;
import gripwright.model.Problem;
import gripwright.model.Readings;
import gripwright.model.Shot;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CsvIntakeTest {

    private static final CsvIntake RIGHT = CsvIntake.withDefaults().with(Handedness.RIGHT);

    private static IntakeResult read(String text) {
        return read(RIGHT, text);
    }

    private static IntakeResult read(CsvIntake intake, String text) {
        return intake.read(text.getBytes(StandardCharsets.UTF_8), "shots.csv", List.of());
    }

    private static double reading(IntakeResult result, int row, Metric metric) {
        return result.rows().get(row).shot().readings().given(metric).orElseThrow();
    }

    @Test
    void readsAPlainFileWithUnitsInTheHeader() {
        IntakeResult result = read("""
                Shot,Club speed (mph),Face angle [deg],Carry (yd),Colour of the sky
                1,86.4,-1.2,151.5,blue
                2,85.9,0.4,,grey
                """);
        assertThat(result.problems()).isEmpty();
        assertThat(result.questions()).isEmpty();
        assertThat(result.rows()).hasSize(2);
        // 1 mph = 0.44704 m/s and 1 yd = 0.9144 m exactly (international yard, 1959).
        assertThat(reading(result, 0, Metric.CLUB_SPEED)).isEqualTo(86.4 * 0.44704, within(1e-12));
        assertThat(reading(result, 0, Metric.CARRY)).isEqualTo(151.5 * 0.9144, within(1e-12));
        assertThat(reading(result, 0, Metric.FACE_ANGLE)).isEqualTo(-1.2);
        assertThat(result.rows().get(1).shot().readings().given(Metric.CARRY)).isEmpty();
        assertThat(result.rows().get(1).shot().source().shotId()).isEqualTo("2");
        assertThat(result.unknownColumns()).extracting(UnknownColumn::heading).containsExactly("Colour of the sky");
    }

    @Test
    void readsSemicolonsDecimalCommasUnitsLineTitlesAndSummaries() {
        IntakeResult result = read("""
                Practice bay 2
                Day of the visit: Saturday

                "Club
                head speed";Spin rate;Carry;Offline
                km/h;rpm;m;m
                139,0;7.100;138,2;L 3,4
                140,5;n/a;-;2,0 R
                Average;7.100;138,2;
                """);
        assertThat(result.problems()).isEmpty();
        assertThat(result.questions()).isEmpty();
        assertThat(result.rows()).hasSize(2);
        assertThat(reading(result, 0, Metric.CLUB_SPEED)).isEqualTo(139 / 3.6, within(1e-12));
        assertThat(reading(result, 0, Metric.SPIN_RATE)).isEqualTo(7100);
        assertThat(reading(result, 0, Metric.OFFLINE)).isEqualTo(-3.4);
        assertThat(reading(result, 1, Metric.OFFLINE)).isEqualTo(2.0);
        assertThat(result.skippedLines()).extracting(SkippedLine::reason).containsExactly(SkippedLine.Reason.TITLE,
                SkippedLine.Reason.TITLE, SkippedLine.Reason.HEADER, SkippedLine.Reason.UNITS,
                SkippedLine.Reason.SUMMARY);
        assertThat(result.dialect()).isEqualTo(new Dialect("UTF-8", ';', ','));
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16", "windows-1252", "UTF-8 with mark", "UTF-16LE with mark"})
    void readsEveryEncoding(String name) {
        String text = "Club speed (m/s)\tFace angle (\u00B0)\n38.5\t1.5\u00B0\n";
        String marked = name.contains("mark") ? "\uFEFF" + text : text;
        byte[] bytes = marked.getBytes(Charset.forName(name.split(" ")[0]));
        IntakeResult result = RIGHT.read(bytes, "shots.csv", List.of());
        assertThat(result.rows()).hasSize(1);
        assertThat(reading(result, 0, Metric.FACE_ANGLE)).isEqualTo(1.5);
        assertThat(result.dialect().encoding()).isEqualToIgnoringCase(
                name.startsWith("UTF-16") ? "UTF-16" : name.split(" ")[0]);
    }

    @ParameterizedTest
    @CsvSource({
        "Face angle, 2.1 open, 2.1, -2.1", "Face angle, closed 1.4, -1.4, 1.4", "Face angle, L 2, -2, -2",
        "Face angle, 2.5R, 2.5, 2.5", "Face angle, O1.5, 1.5, -1.5", "Club path, 3.0 in-out, 3, -3",
        "Club path, out to in 2.2, -2.2, 2.2", "Club path, I-O 1, 1, -1", "Spin axis, 5 draw, -5, 5",
        "Spin axis, F 6.5, 6.5, -6.5", "Attack angle, 3.2 down, -3.2, -3.2", "Attack angle, U 1, 1, 1",
        "Strike heel toe (mm), 4 heel, -4, -4", "Strike heel toe (mm), T 6, 6, 6", "Strike heel toe, 6 mm toe, 6, 6",
        "Strike height (mm), L 3, -3, -3", "Dynamic lie, 1.5 toe down, -1.5, -1.5", "Start direction, 1.2\u00B0 L, -1.2, -1.2",
        "Start direction, \u22121.2, -1.2, -1.2", "Start direction, \u2013 1.2, -1.2, -1.2",
        "Face to path, closed to path 2, -2, 2"
    })
    void readsLettersAndWordsForDirections(String heading, String cell, double right, double left) {
        String text = heading + "\tClub speed (m/s)\n" + cell + "\t40\n";
        IntakeResult forRight = read(text);
        assertThat(forRight.problems()).isEmpty();
        Metric metric = forRight.recognisedColumns().get(0).meaning().metric();
        assertThat(reading(forRight, 0, metric)).isEqualTo(right);
        assertThat(reading(read(CsvIntake.withDefaults().with(Handedness.LEFT), text), 0, metric)).isEqualTo(left);
    }

    @Test
    void asksForTheHandOnlyWhereAWordNeedsIt() {
        String text = "Club speed (mph),Face angle\n86.1,2.0 open\n86.0,1.0 R\n";
        IntakeResult result = read(CsvIntake.withDefaults(), text);
        assertThat(result.questions()).extracting(Question::kind).containsExactly(Question.Kind.HANDEDNESS);
        assertThat(result.rows().get(0).shot().readings().given(Metric.FACE_ANGLE)).isEmpty();
        IntakeResult answered = read(CsvIntake.withDefaults().with(Answers.none().with("hand", "left")), text);
        assertThat(answered.questions()).isEmpty();
        assertThat(reading(answered, 0, Metric.FACE_ANGLE)).isEqualTo(-2.0);
    }

    @Test
    void asksForTheUnitOfASpeedAndNeverGuesses() {
        String text = "Club speed,Carry (m)\n38.5,140\n";
        IntakeResult result = read(text);
        assertThat(result.questions()).extracting(Question::id).containsExactly("unit:speed");
        assertThat(result.rows().get(0).shot().readings().given(Metric.CLUB_SPEED)).isEmpty();
        assertThat(reading(result, 0, Metric.CARRY)).isEqualTo(140);
        IntakeResult answered = read(RIGHT.with(Answers.none().with("unit:speed", "m/s")), text);
        assertThat(answered.questions()).isEmpty();
        assertThat(reading(answered, 0, Metric.CLUB_SPEED)).isEqualTo(38.5);
    }

    @Test
    void asksWhatAnUnclearHeadingHoldsAndWhichOfTwoColumns() {
        IntakeResult speed = read("Speed (mph),Face angle\n86,1\n");
        assertThat(speed.questions()).extracting(Question::kind).containsExactly(Question.Kind.MEANING);
        assertThat(speed.questions().get(0).choices()).extracting(Choice::key)
                .containsExactly("clubSpeed", "ballSpeed", "ignore");
        String two = "Club speed (mph),Swing speed (mph)\n86,84\n";
        IntakeResult both = read(two);
        assertThat(both.questions()).extracting(Question::id).containsExactly("which:clubSpeed");
        IntakeResult answered = read(RIGHT.with(Answers.none().with("which:clubSpeed", "swing speed (mph)")), two);
        assertThat(reading(answered, 0, Metric.CLUB_SPEED)).isEqualTo(84 * 0.44704, within(1e-12));
    }

    @Test
    void asksForTheDecimalMarkOnlyWhereNothingDecides() {
        IntakeResult open = read("Spin rate;Shot\n2.710;1\n3.105;2\n");
        assertThat(open.questions()).extracting(Question::kind).containsExactly(Question.Kind.DECIMAL_MARK);
        IntakeResult answered = read(RIGHT.with(Answers.none().with("decimalMark", ",")), "Spin rate;Shot\n2.710;1\n");
        assertThat(reading(answered, 0, Metric.SPIN_RATE)).isEqualTo(2710);
        IntakeResult shown = read("Spin rate;Attack angle\n2.710;-1,5\n");
        assertThat(shown.questions()).isEmpty();
        assertThat(reading(shown, 0, Metric.SPIN_RATE)).isEqualTo(2710);
        IntakeResult possible = read("Closure rate (deg/s);Shot\n2.410;1\n");
        assertThat(possible.questions()).isEmpty();
        assertThat(reading(possible, 0, Metric.CLOSURE_RATE)).isEqualTo(2410);
    }

    @Test
    void asksForTheOrderOfADateThatCouldBeEither() {
        String text = "Date,Time,Club speed (m/s)\n03/04/2026,10:31:05,40\n";
        IntakeResult result = read(text);
        assertThat(result.questions()).extracting(Question::kind).containsExactly(Question.Kind.DATE_ORDER);
        assertThat(result.rows().get(0).shot().at()).isNull();
        IntakeResult answered = read(RIGHT.with(Answers.none().with("dateOrder", "dayFirst")), text);
        assertThat(answered.rows().get(0).shot().at()).isEqualTo(Instant.parse("2026-04-03T10:31:05Z"));
        IntakeResult shown = read("Date,Time,Club speed (m/s)\n03/04/2026,10:31:05,40\n03/14/2026,10:32:05,41\n");
        assertThat(shown.questions()).isEmpty();
        assertThat(shown.rows().get(0).shot().at()).isEqualTo(Instant.parse("2026-03-04T10:31:05Z"));
    }

    @Test
    void reportsRejectedCellsAndLinesAndTakesTheRest() {
        IntakeResult result = read("""
                Shot,Club speed (mph),Face angle
                1,86.4,1.0
                2,fast,2.0
                3,86,4,1.5
                4,85.0,2.5
                """);
        assertThat(result.rows()).hasSize(3);
        assertThat(result.problems()).hasSize(2);
        Problem cell = result.problems().get(0);
        assertThat(cell.severity()).isEqualTo(Problem.Severity.REJECTED);
        assertThat(List.of(cell.line(), cell.column())).containsExactly(3, 2);
        assertThat(cell.found()).isEqualTo("fast");
        assertThat(cell.sentence()).contains("club speed");
        assertThat(result.problems().get(1).line()).isEqualTo(4);
        assertThat(result.problems().get(1).sentence()).contains("4 cells").contains("3 columns");
    }

    @Test
    void takesUnusualReadingsWithANote() {
        IntakeResult result = read("Club speed (m/s),Spin rate (rpm)\n386,2500\n");
        assertThat(reading(result, 0, Metric.CLUB_SPEED)).isEqualTo(386);
        assertThat(result.problems()).extracting(Problem::severity).containsExactly(Problem.Severity.NOTE);
    }

    @Test
    void theSameFileAgainAddsNothing() {
        String text = "Club speed (m/s),Carry (m)\n40,150\n40,150\n41,152\n";
        List<Shot> taken = read(text).shots();
        assertThat(taken).hasSize(3);
        assertThat(taken).extracting(Shot::id).doesNotHaveDuplicates();
        IntakeResult again = RIGHT.read(text.getBytes(StandardCharsets.UTF_8), "shots.csv", taken);
        assertThat(again.rows()).isEmpty();
        assertThat(again.alreadyTaken()).isEqualTo(3);
        IntakeResult grown = RIGHT.read((text + "40,150\n").getBytes(StandardCharsets.UTF_8), "shots.csv", taken);
        assertThat(grown.rows()).hasSize(1);
        assertThat(grown.rows().get(0).shot().source().occurrence()).isEqualTo(2);
    }

    @Test
    void numberingThatBeginsAgainLosesNoShot() {
        String text = "Shot,Club speed (m/s),Carry (m)\n1,40,150\n2,41,152\n1,38.2,139\n2,37.5,141\n";
        IntakeResult first = read(text);
        assertThat(first.rows()).hasSize(4);
        assertThat(first.problems()).extracting(Problem::line).containsExactly(4);
        IntakeResult again = RIGHT.read(text.getBytes(StandardCharsets.UTF_8), "shots.csv", first.shots());
        assertThat(again.rows()).isEmpty();
    }

    @Test
    void aShotKnownByItsIdIsNotTakenAgainWhenTheFileIsRounded() {
        IntakeResult first = read("Shot,Club speed (m/s),Carry (m)\n1,40.12,150.31\n2,41.55,152.68\n");
        IntakeResult again = RIGHT.read("Shot,Carry (m),Club speed (m/s)\n1,150.3,40.1\n2,152.7,41.6\n".getBytes(
                StandardCharsets.UTF_8), "shots.csv", first.shots());
        assertThat(again.rows()).isEmpty();
    }

    @Test
    void mappingByHandWinsAndFlipsSigns() {
        ColumnMapping mapping = ColumnMapping.none().withName("bay 2")
                .with(ColumnRule.of("Zip", "clubSpeed").withUnit("mph"))
                .with(ColumnRule.of("#2", "faceAngle").withFlipped(true));
        IntakeResult result = read(RIGHT.with(mapping), "Zip,Zap\n86,1.5\n");
        assertThat(result.problems()).isEmpty();
        assertThat(reading(result, 0, Metric.CLUB_SPEED)).isEqualTo(86 * 0.44704, within(1e-12));
        assertThat(reading(result, 0, Metric.FACE_ANGLE)).isEqualTo(-1.5);
        assertThat(result.recognisedColumns()).allMatch(RecognisedColumn::byHand);
    }

    @Test
    void aLegendInTheHeadingSetsTheSign() {
        IntakeResult result = read("Offline (m) (L+/R-);Face angle (deg, + = closed)\n3;1\n");
        assertThat(reading(result, 0, Metric.OFFLINE)).isEqualTo(-3);
        assertThat(reading(result, 0, Metric.FACE_ANGLE)).isEqualTo(-1);
    }

    @Test
    void repeatedHeadingsAreSkippedAndOthersChangeTheColumns() {
        IntakeResult result = read("""
                Club speed (m/s),Carry (m)
                40,150
                Club speed (m/s),Carry (m)
                41,151
                Carry (m),Club speed (m/s)
                152,42
                """);
        assertThat(result.rows()).hasSize(3);
        assertThat(reading(result, 2, Metric.CLUB_SPEED)).isEqualTo(42);
        assertThat(result.skippedLines()).extracting(SkippedLine::reason).containsExactly(SkippedLine.Reason.HEADER,
                SkippedLine.Reason.REPEATED_HEADER, SkippedLine.Reason.HEADER);
    }

    @Test
    void aBrokenQuoteSpoilsItsOwnLineOnly() {
        IntakeResult result = read("Club speed (m/s),Note\n40,\"open\n41,fine\n42,\"good\"\n");
        assertThat(result.rows()).hasSize(3);
        assertThat(result.problems()).extracting(Problem::line).containsExactly(2);
    }

    @Test
    void nothingReadableIsASentence() {
        assertThat(read("").sentence()).contains("empty");
        assertThat(read("1,2\n3,4\n").hasFailed()).isTrue();
        assertThat(read("one,two\n3,4\n").hasFailed()).isTrue();
        assertThat(RIGHT.read(new byte[] {1, 0, 0, 7}, "x", List.of()).sentence()).contains("not a text file");
        assertThat(read("one,two\n3,4\n").unknownColumns()).hasSize(2);
    }

    @Test
    void breakingOffTakesNothing() {
        IntakeResult result = read(RIGHT.with((ReadingProgress) fraction -> false), "Carry (m),Total (m)\n1,2\n");
        assertThat(result.cancelled()).isTrue();
        assertThat(result.rows()).isEmpty();
        assertThat(new Readings(java.util.Map.of()).isEmpty()).isTrue();
    }

    @Test
    void asksWhoseRowsAreTakenWhereThereAreSeveralClubs() {
        String text = "Club,Club speed (m/s)\n8-iron,40\nDriver,48\n";
        assertThat(read(text).questions()).extracting(Question::id).containsExactly("rows:club");
        assertThat(read(text).rows()).isEmpty();
        assertThat(read(RIGHT.with(Answers.none().with("rows:club", "Driver")), text).rows()).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"clubSpeed (mph)", "Club Speed [mph]", "Speed, club head (mph)", "CHS mph", "CLUB_SPEED mph",
        "club-head speed {mph}", "Swing speed, mph", "ClubSpeedMph"})
    void oneMetricGoesByManyHeadings(String heading) {
        IntakeResult result = read(heading + ";Shot\n86;1\n");
        assertThat(result.recognisedColumns()).extracting(c -> c.meaning().key() + " " + c.unit())
                .containsExactly("clubSpeed mph", "shotId ");
        assertThat(reading(result, 0, Metric.CLUB_SPEED)).isEqualTo(86 * 0.44704, within(1e-12));
    }

    @Test
    void everyMetricIsKnownByItsOwnNameAndKey() {
        for (Metric metric : Metric.values()) {
            for (String heading : List.of(metric.text(), metric.key())) {
                assertThat(HeaderText.of(heading).meanings()).as(heading).containsExactly(ColumnMeaning.of(metric));
            }
        }
    }

    @Test
    void summariesUnderALabelAreSkippedAtTheEndAndALabelIsNot() {
        IntakeResult result = read("""
                Configuration;Club speed (m/s);Carry (m)
                Max;40;150
                A;41;151
                Max;39;149
                Average;40;150
                Max;41;151
                """);
        assertThat(result.rows()).extracting(IntakeRow::configuration).containsExactly("Max", "A", "Max", "Max");
        assertThat(result.skippedLines()).extracting(SkippedLine::reason)
                .containsExactly(SkippedLine.Reason.HEADER, SkippedLine.Reason.SUMMARY);
    }

    @Test
    void aShotWithoutReadingsIsTakenWhereItIsNumberedAndJunkIsRejected() {
        IntakeResult result = read("Shot,Club speed (m/s),Carry (m)\n1,40,150\n2,,\nend of file,x,y\n");
        assertThat(result.rows()).hasSize(2);
        assertThat(result.problems()).filteredOn(p -> p.severity() == Problem.Severity.REJECTED)
                .extracting(Problem::line).containsExactly(4, 4, 4);
    }

    @Test
    void aLeftHandedPlayersPlainSignsAreTakenAsRightWithANote() {
        IntakeResult result = read(CsvIntake.withDefaults().with(Handedness.LEFT), "Face angle;Club speed (m/s)\n1.5;40\n");
        assertThat(reading(result, 0, Metric.FACE_ANGLE)).isEqualTo(1.5);
        assertThat(result.problems()).hasSize(1);
        assertThat(result.problems().get(0).sentence()).contains("left-handed");
    }
}
