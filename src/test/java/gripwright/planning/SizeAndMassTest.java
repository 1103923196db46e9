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
