package gripwright.desktop.bay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gripwright.model.Handedness;
import gripwright.model.Metric;
import gripwright.model.ReadingText;
import gripwright.model.ShopSettings;
import gripwright.units.UnitChoice;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EntryLineTest {

    private static final ReadingText RIGHT = new ReadingText(UnitChoice.imperial(), '.', Handedness.RIGHT);
    private static final ReadingText LEFT = new ReadingText(UnitChoice.imperial(), ',', Handedness.LEFT);

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "0.8 c|-0.8", "0.8 closed|-0.8", "0.8open|0.8", "o0.8|0.8", "L 0.8|-0.8", "0.8R|0.8", "-0.8|-0.8",
        "\u22120.8|-0.8", "+0.8|0.8", ".8 l|-0.8", "0,8|0.8", "1.2 ° c|-1.2", "0|0"})
    void aFaceAngleIsTypedWithAMinusALetterOrAWord(String typed, double internal) {
        assertThat(value(new EntryColumn(Metric.FACE_ANGLE, RIGHT), typed)).isEqualTo(internal, within(1e-12));
    }

    @Test
    void closedIsTheOtherSideForALeftHandedPlayerAndLeftIsNot() {
        EntryColumn face = new EntryColumn(Metric.FACE_ANGLE, LEFT);
        assertThat(value(face, "0,8 c")).isEqualTo(0.8);
        assertThat(value(face, "0,8 L")).isEqualTo(-0.8);
        assertThat(value(new EntryColumn(Metric.SPIN_AXIS, LEFT), "3 draw")).isEqualTo(3);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"2.1 in to out|2.1", "2.1 i|2.1", "2.1 oti|-2.1", "2.1 out-to-in|-2.1"})
    void aPathTakesItsOwnWords(String typed, double internal) {
        assertThat(value(new EntryColumn(Metric.CLUB_PATH, RIGHT), typed)).isEqualTo(internal);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"3 h|-3", "3 toe|3", "t 3|3", "-3|-3", "3 mm heel|-3"})
    void aStrikeIsTowardsHeelOrToe(String typed, double internal) {
        ReadingText metric = new ReadingText(UnitChoice.metric(), '.', Handedness.RIGHT);
        assertThat(value(new EntryColumn(Metric.STRIKE_SIDEWAYS, metric), typed)).isEqualTo(internal);
    }

    @Test
    void speedsComeInTheShopsUnitUnlessAnotherIsTyped() {
        // 1 mph = 0.44704 m/s by definition.
        EntryColumn speed = new EntryColumn(Metric.CLUB_SPEED, RIGHT);
        assertThat(value(speed, "86.4")).isEqualTo(86.4 * 0.44704, within(1e-12));
        assertThat(value(speed, "38.6 m/s")).isEqualTo(38.6);
        assertThat(value(speed, "139 km/h")).isEqualTo(139 / 3.6, within(1e-12));
    }

    @Test
    void anUnusualValueIsMarkedAndStillTaken() {
        EntryCell cell = new EntryColumn(Metric.CLUB_SPEED, RIGHT).read("864");
        assertThat(cell).isInstanceOfSatisfying(EntryCell.Reading.class, reading -> {
            assertThat(reading.internal()).isEqualTo(864 * 0.44704, within(1e-9));
            assertThat(reading.unusual()).contains("unusual").contains("taken as typed");
        });
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"fast", "12 fast", "0.8 c L", "-0.8 c", "1.2.3", "c", "0.8 x"})
    void whatIsNoReadingGetsASentence(String typed) {
        assertThat(new EntryColumn(Metric.FACE_ANGLE, RIGHT).read(typed))
                .isInstanceOfSatisfying(EntryCell.Wrong.class, wrong -> assertThat(wrong.sentence()).endsWith("."));
    }

    @Test
    void blankMeansNotTakenAndNeverZero() {
        assertThat(new EntryColumn(Metric.CARRY, RIGHT).read("  ")).isEqualTo(new EntryCell.Blank());
    }

    @Test
    void theHintNamesTheLettersOfThisHand() {
        assertThat(new EntryColumn(Metric.FACE_ANGLE, RIGHT).signHint()).isEqualTo("c / o");
        assertThat(new EntryColumn(Metric.FACE_ANGLE, LEFT).signHint()).isEqualTo("o / c");
        assertThat(new EntryColumn(Metric.OFFLINE, RIGHT).signHint()).isEqualTo("l / r");
        assertThat(new EntryColumn(Metric.CARRY, RIGHT).signHint()).isEmpty();
    }

    @Test
    void aLineBecomesAShotWithWhatWasTyped() {
        EntryLine line = EntryLine.of(ShopSettings.usual(), RIGHT);
        assertThat(line.read(List.of("86.4", "", "2 i", "2410", "150", "4 l")))
                .isInstanceOfSatisfying(EntryLine.Outcome.Shot.class, shot -> {
                    assertThat(shot.readings().values()).containsOnlyKeys(Metric.CLUB_SPEED, Metric.CLUB_PATH,
                            Metric.CLOSURE_RATE, Metric.CARRY, Metric.OFFLINE);
                    assertThat(shot.readings().given(Metric.OFFLINE).orElseThrow()).isEqualTo(-4 * 0.9144);
                    assertThat(shot.unusual()).isEmpty();
                });
    }

    @Test
    void aWrongCellRefusesTheLineAndSaysWhich() {
        EntryLine line = EntryLine.of(ShopSettings.usual(), RIGHT);
        assertThat(line.read(List.of("86.4", "x")))
                .isInstanceOfSatisfying(EntryLine.Outcome.Refused.class, r -> assertThat(r.cell()).isEqualTo(1));
        assertThat(line.read(List.of("1", "2", "3", "2000", "150", "6", "7")))
                .isInstanceOfSatisfying(EntryLine.Outcome.Refused.class, r -> assertThat(r.cell()).isEqualTo(6));
        assertThat(line.read(List.of("", " "))).isEqualTo(new EntryLine.Outcome.Empty());
    }

    @Test
    void pastedLinesAreSplitAtTheMarkThatCanOnlyBeASeparator() {
        EntryLine line = EntryLine.of(ShopSettings.usual(), RIGHT);
        assertThat(line.cells("86.4\t0.8 c", '.')).containsExactly("86.4", "0.8 c");
        assertThat(line.cells("86,4;0,8", ',')).containsExactly("86,4", "0,8");
        assertThat(line.cells("86.4, 0.8", '.')).containsExactly("86.4", "0.8");
        assertThat(line.cells("86,4", ',')).containsExactly("86,4");
    }

    private static double value(EntryColumn column, String typed) {
        EntryCell cell = column.read(typed);
        assertThat(cell).as(typed).isInstanceOf(EntryCell.Reading.class);
        return ((EntryCell.Reading) cell).internal();
    }
}
