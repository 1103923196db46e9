package gripwright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class MonotoneCurveTest {

    @Test
    void aStraightLineStaysStraight() {
        MonotoneCurve curve = MonotoneCurve.through(new double[] {0, 1, 5, 6}, new double[] {10, 8, 0, -2});
        for (double x = 0; x <= 6; x += 0.1) {
            assertThat(curve.at(x)).isCloseTo(10 - 2 * x, within(1e-12));
        }
    }

    /** Worked by hand from the formulas of Fritsch and Carlson: secants 1 and 4, slopes 1, 2.5, 4; no limit bites. */
    @Test
    void aKnownPieceAgreesWithTheFormulaByHand() {
        MonotoneCurve curve = MonotoneCurve.through(new double[] {0, 1, 2}, new double[] {0, 1, 5});
        assertThat(curve.at(0.5)).isCloseTo(0.5 + (1 - 2.5) / 8, within(1e-12));
        assertThat(curve.at(1.5)).isCloseTo(3 + (2.5 - 4) / 8, within(1e-12));
    }

    @Test
    void theLimitKeepsASteepStepFromSwinging() {
        MonotoneCurve curve = MonotoneCurve.through(new double[] {0, 1, 2, 3}, new double[] {0, 0.01, 10, 10});
        for (double x = 0; x <= 3; x += 0.001) {
            assertThat(curve.at(x)).isBetween(-1e-12, 10 + 1e-12);
        }
    }

    @Test
    void onePointIsHeldAndNoPointRefused() {
        assertThat(MonotoneCurve.through(new double[] {50}, new double[] {22.8}).at(200)).isEqualTo(22.8);
        assertThatIllegalArgumentException().isThrownBy(() -> MonotoneCurve.through(new double[0], new double[0]))
                .withMessageContaining("at least one point");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MonotoneCurve.through(new double[] {1, 1}, new double[] {2, 3}))
                .withMessageContaining("increase");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MonotoneCurve.through(new double[] {0, 1}, new double[] {2, Double.NaN}));
    }

    @Test
    void aPlaceThatIsNoNumberGivesNone() {
        assertThat(MonotoneCurve.through(new double[] {0, 1}, new double[] {2, 3}).at(Double.NaN)).isNaN();
    }

    @Property
    void itRisesAndFallsOnlyWhereThePointsDo(
            @ForAll @Size(min = 2, max = 8) List<@DoubleRange(min = 0.1, max = 50) Double> gaps,
            @ForAll @Size(9) List<@DoubleRange(min = 15, max = 40) Double> values) {
        double[] x = new double[gaps.size() + 1];
        for (int k = 0; k < gaps.size(); k++) {
            x[k + 1] = x[k] + gaps.get(k);
        }
        double[] y = values.stream().limit(x.length).mapToDouble(Double::doubleValue).toArray();
        MonotoneCurve curve = MonotoneCurve.through(x, y);
        for (int k = 0; k < gaps.size(); k++) {
            double before = y[k];
            for (int step = 1; step <= 20; step++) {
                double at = curve.at(x[k] + gaps.get(k) * step / 20);
                double move = (at - before) * Math.signum(y[k + 1] - y[k]);
                assertThat(move).isGreaterThanOrEqualTo(-1e-9);
                before = at;
            }
            assertThat(curve.at(x[k + 1])).isEqualTo(y[k + 1]);
        }
    }
}
