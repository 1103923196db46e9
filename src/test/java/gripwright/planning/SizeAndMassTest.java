package gripwright.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gripwright.planning.SizeAndMass.Finding;
import gripwright.planning.SizeAndMass.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

class SizeAndMassTest {

    @Test
    void theCorrelationIsPearsons() {
        SizeAndMass result = SizeAndMass.of(List.of(new Point("A", 22.0, 48.0), new Point("B", 23.0, 60.0),
                new Point("C", 24.0, 52.0), new Point("D", 25.0, 60.0)));
        // By hand: deviations −1.5, −0.5, 0.5, 1.5 and −7, 5, −3, 5; r = 14 / √(5 · 108) = 0.60246.
        assertThat(result.correlation()).isCloseTo(14 / Math.sqrt(540), within(1e-12));
        assertThat(result.inflation()).isCloseTo(540.0 / (540 - 196), within(1e-9));
        assertThat(result.finding()).isEqualTo(Finding.SEPARABLE);
    }

    /**
     * By hand: deviations of size −1.5 to 1.5; of mass −6.75, −1.75, 3.25, 5.25, r = 20.5/√(5 · 86.75) = 0.984; and
     * −8.5, 3.5, −0.5, 5.5, r = 19/√(5 · 115) = 0.792. The limits of 0.9 and 0.7 are our judgement, no source.
     */
    @Test
    void theLimitsOfTellingApart() {
        assertThat(four(50, 55, 60, 62).correlation()).isCloseTo(0.98431, within(1e-5));
        assertThat(four(50, 55, 60, 62).finding()).isEqualTo(Finding.CONFOUNDED);
        assertThat(four(50, 62, 58, 64).correlation()).isCloseTo(0.79236, within(1e-5));
        assertThat(four(50, 62, 58, 64).finding()).isEqualTo(Finding.HARDLY_SEPARABLE);
    }

    private static SizeAndMass four(double a, double b, double c, double d) {
        return SizeAndMass.of(List.of(new Point("A", 22.0, a), new Point("B", 23.0, b), new Point("C", 24.0, c),
                new Point("D", 25.0, d)));
    }

    @Test
    void twoGripsThatDifferInBothAreConfounded() {
        SizeAndMass result = SizeAndMass.of(List.of(new Point("A", 22.9, 50.0), new Point("B", 24.4, 66.0)));
        assertThat(result.finding()).isEqualTo(Finding.CONFOUNDED);
        assertThat(result.correlation()).isEqualTo(1);
        assertThat(result.inflation()).isInfinite();
        assertThat(result.sentence()).contains("thicker grips are the heavier").contains("can't tell");
        assertThat(result.wantsCure()).isTrue();
    }

    @Test
    void thickerAndLighterIsConfoundedAsWell() {
        SizeAndMass result = SizeAndMass.of(List.of(new Point("A", 22.9, 50.0), new Point("B", 24.4, 42.0)));
        assertThat(result.sentence()).contains("thicker grips are the lighter").contains("r = \u22121.00");
    }

    @Test
    void ballastThatMakesMassesEqualLeavesSizeAlone() {
        SizeAndMass result = SizeAndMass.of(List.of(new Point("A", 22.9, 66.0), new Point("B", 24.4, 66.0),
                new Point("C", 26.0, 65.0)));
        assertThat(result.finding()).isEqualTo(Finding.SIZE_ALONE);
        assertThat(result.wantsCure()).isFalse();
    }

    @Test
    void oneSizeInSeveralMassesTestsMassAlone() {
        assertThat(SizeAndMass.of(List.of(new Point("A", 22.9, 50.0), new Point("B", 22.95, 66.0))).finding())
                .isEqualTo(Finding.MASS_ALONE);
        assertThat(SizeAndMass.of(List.of(new Point("A", 22.9, 50.0), new Point("B", 22.95, 51.0))).finding())
                .isEqualTo(Finding.ALIKE);
    }

    @Test
    void whatIsNotKnownIsSaidAndNeverGuessed() {
        SizeAndMass result = SizeAndMass.of(List.of(new Point("A", 22.9, 50.0), new Point("B", null, 60.0)));
        assertThat(result.finding()).isEqualTo(Finding.UNKNOWN);
        assertThat(result.correlation()).isNull();
        SizeAndMass more = SizeAndMass.of(List.of(new Point("A", 22.9, 50.0), new Point("B", null, 60.0),
                new Point("C", 24.4, 66.0)));
        assertThat(more.sentence()).contains("unknown: B");
    }
}
