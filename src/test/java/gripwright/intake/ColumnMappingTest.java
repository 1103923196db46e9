package gripwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gripwright.model.Handedness;
import gripwright.model.Metric;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Mappings by hand: which file they are for, what they say of signs, and files that have no headings at all. */
class ColumnMappingTest {

    private static final ColumnMapping BAY_TWO = ColumnMapping.none().withName("bay two")
            .withFiles(List.of("Shot", "Club Speed", "Mystery"), "Bay2-*.csv");

    private static IntakeResult read(CsvIntake intake, String csv) {
        return intake.read(csv.getBytes(StandardCharsets.UTF_8), "shots.csv", List.of());
    }

    private static double value(IntakeResult result, int row, Metric metric) {
        return result.shots().get(row).readings().given(metric).orElseThrow();
    }

    @Test
    void aMappingIsKnownAgainByTheNameOfTheFileOrByItsHeadings() {
        assertThat(BAY_TWO.fit("bay2-14.csv", List.of("anything"))).isEqualTo(ColumnMapping.Fit.FILE_NAME);
        assertThat(BAY_TWO.fit("other.csv", List.of("mystery", "club_speed", "shot"))).isEqualTo(ColumnMapping.Fit.HEADINGS);
        assertThat(BAY_TWO.fit("other.csv", List.of("mystery", "club speed"))).isEqualTo(ColumnMapping.Fit.NONE);
        assertThat(BAY_TWO.fit("other.csv", List.of("mystery", "club speed", "shot", "carry")))
                .isEqualTo(ColumnMapping.Fit.NONE);
        assertThat(ColumnMapping.none().fit("", List.of())).isEqualTo(ColumnMapping.Fit.NONE);
        assertThat(BAY_TWO.withFiles(List.of(), "a[1].csv").fit("A[1].CSV", List.of()))
                .isEqualTo(ColumnMapping.Fit.FILE_NAME);
    }

    @ParameterizedTest
    @CsvSource({"right,RIGHT,2", "right,LEFT,2", "left,RIGHT,-2", "open,RIGHT,2", "open,LEFT,-2", "closed,LEFT,2"})
    void theWordForPlusFollowsThePlayersHand(String plus, Handedness hand, double expected) {
        ColumnMapping mapping = ColumnMapping.none().with(ColumnRule.of("Face", "faceAngle").withPlus(plus));
        IntakeResult result = read(CsvIntake.withDefaults().with(hand).with(mapping), "Shot,Face (deg)\n1,2\n");
        assertThat(value(result, 0, Metric.FACE_ANGLE)).as("rule for another heading").isEqualTo(2);
        mapping = ColumnMapping.none().with(ColumnRule.of("Face (deg)", "faceAngle").withPlus(plus));
        result = read(CsvIntake.withDefaults().with(hand).with(mapping), "Shot,Face (deg)\n1,2\n");
        assertThat(value(result, 0, Metric.FACE_ANGLE)).isEqualTo(expected);
        assertThat(result.columns().get(1).side()).isEqualTo(plus);
    }

    @Test
    void aUnitSetByHandLeavesTheSignThatTheHeadingStates() {
        String csv = "Shot,Offline (L+/R-)\n1,3\n";
        ColumnMapping mapping = ColumnMapping.none().with(ColumnRule.of("Offline (L+/R-)", "offline").withUnit("m"));
        assertThat(value(read(CsvIntake.withDefaults().with(mapping), csv), 0, Metric.OFFLINE)).isEqualTo(-3);
        ColumnMapping turned = mapping.with(mapping.columns().get(0).withPlus("right"));
        assertThat(value(read(CsvIntake.withDefaults().with(turned), csv), 0, Metric.OFFLINE)).isEqualTo(3);
    }

    @Test
    void aSideThatIsNoneOfTheReadingIsRefused() {
        assertThatThrownBy(() -> ColumnRule.of("Face", "faceAngle").withPlus("heel"))
                .hasMessageContaining("right, left, open, closed");
        assertThatThrownBy(() -> ColumnRule.of("Shot", "shotId").withPlus("left")).isInstanceOf(IllegalArgumentException.class);
        for (Metric metric : Metric.values()) {
            for (String side : ColumnMeaning.of(metric).sides()) {
                assertThat(ColumnRule.of("x", metric.key()).withPlus(side).plus()).isEqualTo(side);
            }
        }
    }

    @Test
    void aRuleTakenBackLeavesTheColumnAsRecognised() {
        ColumnMapping mapping = ColumnMapping.none().with(ColumnRule.of("Carry", "total")).with(ColumnRule.of("Shot", "ignore"));
        assertThat(mapping.without("carry").columns()).extracting(ColumnRule::heading).containsExactly("Shot");
    }

    @Test
    void everyColumnIsToldWithSamplesAndWhatItHolds() {
        IntakeResult result = read(CsvIntake.withDefaults().with(Handedness.LEFT),
                "Shot,Club speed,Face (deg; + = closed),Odd,Odd,\n1,86.1,2,,a,\n2,85.9,1,x,b,\n");
        assertThat(result.columns()).extracting(FileColumn::key)
                .containsExactly("Shot", "Club speed", "Face (deg; + = closed)", "#4", "#5");
        FileColumn speed = result.columns().get(1);
        assertThat(speed.samples()).containsExactly("86.1", "85.9");
        assertThat(speed.open()).isTrue();
        FileColumn face = result.columns().get(2);
        assertThat(face.side()).isEqualTo("closed");
        assertThat(face.unit()).isEqualTo("\u00B0");
        assertThat(result.columns().get(3).isRead()).isFalse();
    }

    @Test
    void aFileWithoutHeadingsIsReadOnceItsColumnsAreSetByPlace() {
        String csv = "86.1;0.5\n85.9;0.4\n";
        IntakeResult unread = read(CsvIntake.withDefaults(), csv);
        assertThat(unread.hasFailed()).isTrue();
        assertThat(unread.columns()).extracting(FileColumn::key).containsExactly("#1", "#2");
        ColumnMapping mapping = ColumnMapping.none().with(ColumnRule.of("#1", "clubSpeed").withUnit("mph"));
        IntakeResult result = read(CsvIntake.withDefaults().with(mapping), csv);
        assertThat(result.rows()).hasSize(2);
        assertThat(value(result, 0, Metric.CLUB_SPEED)).as("1 mph is 0.44704 m/s by definition")
                .isCloseTo(86.1 * 0.44704, within(1e-12));
    }

    @Test
    void theHeadingsOfAFileAreFoundAtItsBeginning() {
        assertThat(CsvIntake.headings("Bay two\n\nShot;Mystery;Club speed\n1;2;3\n"))
                .containsExactly("Shot", "Mystery", "Club speed");
        assertThat(CsvIntake.headings("1;2\n3;4\n")).isEmpty();
    }
}
