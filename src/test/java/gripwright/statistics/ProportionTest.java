package gripwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class ProportionTest {

    /** SciPy 1.17.1, beta.ppf. */
    @Test
    void jeffreysIntervalsMatch() {
        double[][] rows = {{0, 10, 0, 0.217196267509}, {1, 10, 0.0110116737632, 0.381314771067},
            {3, 12, 0.0759423289195, 0.529191083627}, {5, 5, 0.620622857701, 1},
            {12, 200, 0.0332146659743, 0.0993774979052}};
        for (double[] row : rows) {
            Interval interval = ProportionEstimate.of((int) row[0], (int) row[1], 0.95).interval();
            assertThat(interval.lower()).isCloseTo(row[2], within(1e-11));
            assertThat(interval.upper()).isCloseTo(row[3], within(1e-11));
        }
    }

    /** Newcombe 1998, Table II, method 10: (56/70, 48/80) and (9/10, 3/10); printed to four decimals, from memory. */
    @Test
    void newcombesExamples() {
        Interval first = compare(56, 70, 48, 80).interval();
        assertThat(first.lower()).isCloseTo(0.0524, within(5e-5));
        assertThat(first.upper()).isCloseTo(0.3339, within(5e-5));
        Interval second = compare(9, 10, 3, 10).interval();
        assertThat(second.lower()).isCloseTo(0.1705, within(5e-5));
        assertThat(second.upper()).isCloseTo(0.8090, within(5e-5));
    }

    /** SciPy 1.17.1, adaptive quadrature of beta.pdf times beta.sf. */
    @Test
    void probabilityThatOneIsSmallerMatches() {
        double[][] rows = {{1, 10, 4, 10, 0.9412828608}, {0, 6, 0, 6, 0.5}, {0, 6, 3, 6, 0.9822699391},
            {5, 5, 12, 200, 0.0000001285}, {40, 400, 60, 400, 0.9839446585}};
        for (double[] row : rows) {
            assertThat(compare((int) row[0], (int) row[1], (int) row[2], (int) row[3]).probabilityFirstSmaller())
                .isCloseTo(row[4], within(2e-10));
        }
    }

    @Property(tries = 100)
    void mirrorImagesAgree(@ForAll @IntRange(min = 0, max = 12) int x1, @ForAll @IntRange(min = 0, max = 12) int x2) {
        ProportionComparison there = compare(x1, 12, x2, 15);
        ProportionComparison back = compare(x2, 15, x1, 12);
        ProportionComparison failures = compare(12 - x1, 12, 15 - x2, 15);
        assertThat(there.probabilityFirstSmaller()).isCloseTo(1 - back.probabilityFirstSmaller(), within(1e-9));
        assertThat(there.probabilityFirstSmaller()).isCloseTo(1 - failures.probabilityFirstSmaller(), within(1e-9));
        assertThat(there.interval().lower()).isCloseTo(-back.interval().upper(), within(1e-12));
        assertThat(there.interval().contains(there.difference())).isTrue();
    }

    @Test
    void noTrialsAndNonsense() {
        ProportionEstimate none = ProportionEstimate.of(0, 0, 0.95);
        assertThat(none.proportion().shortfall()).isEqualTo(Shortfall.TOO_FEW_VALUES);
        assertThat(none.interval()).isEqualTo(new Interval(0, 1));
        assertThat(ProportionComparison.of(none, ProportionEstimate.of(1, 2, 0.95)).isAvailable()).isFalse();
        assertThatThrownBy(() -> ProportionEstimate.of(3, 2, 0.95)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ProportionEstimate.of(-1, 2, 0.95)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ProportionComparison.of(none, ProportionEstimate.of(1, 2, 0.9)))
            .isInstanceOf(IllegalArgumentException.class);
    }

    private static ProportionComparison compare(int x1, int n1, int x2, int n2) {
        return ProportionComparison.of(ProportionEstimate.of(x1, n1, 0.95), ProportionEstimate.of(x2, n2, 0.95)).get();
    }
}
