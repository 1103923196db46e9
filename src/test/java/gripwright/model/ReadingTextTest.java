package gripwright.model;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.units.UnitChoice;
import org.junit.jupiter.api.Test;

class ReadingTextTest {

    private final ReadingText right = new ReadingText(UnitChoice.imperial(), '.', Handedness.RIGHT);
    private final ReadingText left = new ReadingText(UnitChoice.metric(), ',', Handedness.LEFT);

    @Test
    void aFaceToTheLeftIsClosedForOneHandAndOpenForTheOther() {
        assertThat(right.worded(Metric.FACE_ANGLE, -0.8)).isEqualTo("0.8 closed");
        assertThat(left.worded(Metric.FACE_ANGLE, -0.8)).isEqualTo("0,8 open");
    }

    @Test
    void whatRoundsToZeroTakesNoSide() {
        assertThat(right.worded(Metric.FACE_ANGLE, -0.04)).isEqualTo("0.0");
        assertThat(right.word(Metric.OFFLINE, 0.2)).isEmpty();
    }

    @Test
    void numbersComeInTheShopsUnits() {
        // 38.6 m/s = 86.3 mph, by the exact factor 0.44704.
        assertThat(right.number(Metric.CLUB_SPEED, 38.6)).isEqualTo("86.3");
        assertThat(left.number(Metric.CLUB_SPEED, 38.6)).isEqualTo("139,0");
        assertThat(right.heading(Metric.CLUB_SPEED)).isEqualTo("club speed, mph");
    }

    @Test
    void negativeNumbersCarryATrueMinusAndDifferencesAPlus() {
        assertThat(right.number(Metric.ATTACK_ANGLE, -3.25)).startsWith("\u22123.");
        assertThat(right.difference(Metric.CLUB_SPEED, 0.44704)).isEqualTo("+1.0");
    }

    @Test
    void aMeanShowsADigitMoreThanACoarseReading() {
        assertThat(right.number(Metric.CARRY, 137.16)).isEqualTo("150");
        assertThat(right.mean(Metric.CARRY, 137.16)).isEqualTo("150.0");
        assertThat(right.mean(Metric.CLOSURE_RATE, 2410.4)).isEqualTo("2410");
    }

    @Test
    void whatIsNoNumberIsADash() {
        assertThat(right.number(Metric.CARRY, Double.NaN)).isEqualTo("\u2013");
        assertThat(right.worded(Metric.CARRY, Double.NaN)).isEqualTo("\u2013");
    }
}
