package gripwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StudentizedRangeTest {

    private static final double INFINITE = Double.POSITIVE_INFINITY;

    private static final Map<Integer, StudentizedRangeFamily> FAMILIES = IntStream.rangeClosed(2, 8).boxed()
        .collect(Collectors.toMap(Function.identity(), StudentizedRangeFamily::new));

    /** reference_tukey.json: independent quadrature, 7 numbers of groups by 18 degrees of freedom by 8 values. */
    @Test
    void tailAgreesWithTheReferenceQuadrature() {
        JsonNode rows = ClassicalReference.json("reference_tukey.json").get("ptukey");
        assertThat(rows).hasSize(1008);
        for (JsonNode row : rows) {
            double q = row.get("q").asDouble();
            double nu = ClassicalReference.number(row.get("df"));
            double expected = row.get("sf_hp").asDouble();
            assertThat(StudentizedRange.upperTail(q, row.get("k").asInt(), nu)).as(row.toString())
                .isCloseTo(expected, within(2e-13));
            assertThat(FAMILIES.get(row.get("k").asInt()).upperTail(q, nu)).as(row.toString())
                .isCloseTo(expected, within(2e-11));
        }
    }

    @Test
    void quantilesAgreeWithTheReferenceQuadrature() {
        JsonNode rows = ClassicalReference.json("reference_tukey.json").get("qtukey");
        assertThat(rows).hasSize(357);
        for (int i = 0; i < rows.size(); i++) {
            JsonNode row = rows.get(i);
            double nu = ClassicalReference.number(row.get("df"));
            int groups = row.get("k").asInt();
            double p = row.get("p").asDouble();
            double expected = row.get("q_hp").asDouble();
            assertThat(FAMILIES.get(groups).quantile(p, nu)).as(row.toString()).isCloseTo(expected, within(1e-8 * expected));
            if (i % 8 == 0) { // the slow way is the same function under the same search
                assertThat(StudentizedRange.quantile(p, groups, nu)).as(row.toString())
                    .isCloseTo(expected, within(1e-10 * expected));
            }
        }
    }

    /** Five per cent points as printed in Harter (1960) and most textbooks; checked here from memory. */
    @ParameterizedTest
    @CsvSource({"3, 10, 3.877", "4, 20, 3.958", "5, 60, 3.977", "10, 120, 4.560", "20, 30, 5.475"})
    void fivePerCentPointsAreThePrintedOnes(int groups, double nu, double printed) {
        assertThat(StudentizedRange.quantile(0.95, groups, nu)).isCloseTo(printed, within(6e-4));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.7, 1, 1.5, 2, 3.3, 8, 47, 300, 5000})
    void twoGroupsAreStudentsT(double nu) {
        TDistribution t = new TDistribution(nu);
        for (double q : new double[] {0.01, 0.3, 1, 2.5, 4, 7, 15, 40, 300}) {
            double expected = 2 * t.cumulativeProbability(-q / Math.sqrt(2));
            assertThat(StudentizedRange.upperTail(q, 2, nu)).as("q %s", q)
                .isCloseTo(expected, within(1e-10 * expected + 1e-15));
        }
    }

    /** With many degrees of freedom the tail goes over into that of the normal range, with an error of order 1/nu. */
    @Test
    void manyDegreesOfFreedomApproachTheNormalRange() {
        for (double q : new double[] {1, 3, 5}) {
            double limit = StudentizedRange.upperTail(q, 6, INFINITE);
            double at1e4 = StudentizedRange.upperTail(q, 6, 1e4) - limit;
            double at1e6 = StudentizedRange.upperTail(q, 6, 1e6) - limit;
            assertThat(at1e4).isCloseTo(100 * at1e6, within(5e-3 * Math.abs(at1e4)));
            assertThat(Math.abs(at1e6)).isLessThan(1e-5);
        }
    }

    @ParameterizedTest
    @CsvSource({"2, 1", "2, 6", "3, 1", "3, 1.7", "3, 4", "4, 2", "4, 19", "5, 7.5", "6, 3", "8, 40", "8, 232", "8, 2000",
        "8, 1e5", "12, 5", "20, 1", "20, 60"})
    void interpolantIsWithinItsStatedErrorAndFalls(int groups, double nu) {
        StudentizedRangeInterpolant interpolant = StudentizedRange.interpolated(groups, nu);
        double before = 1;
        double worst = 0;
        for (double x = 0.0005; x < 13; x += 0.0617) {
            double q = Math.sinh(x);
            double value = interpolant.upperTail(q);
            worst = Math.max(worst, Math.abs(value - StudentizedRange.upperTail(q, groups, nu)));
            assertThat(value).as("q %s", q).isBetween(0.0, before + 1e-15);
            before = value;
        }
        assertThat(worst).isLessThan(1e-9);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 8, 20})
    void interpolantOfTheNormalRangeIsWithinItsStatedError(int groups) {
        StudentizedRangeInterpolant interpolant = StudentizedRange.interpolated(groups, INFINITE);
        for (double q = 0; q < 20; q += 0.0123) {
            assertThat(interpolant.upperTail(q)).isCloseTo(StudentizedRange.upperTail(q, groups, INFINITE), within(1e-9));
        }
    }

    @Test
    void interpolatedQuantileMatches() {
        for (double p : new double[] {0.5, 0.9, 0.95, 0.99}) {
            assertThat(StudentizedRange.interpolated(5, 17).quantile(p))
                .isCloseTo(StudentizedRange.quantile(p, 5, 17), within(1e-6));
        }
        assertThat(StudentizedRange.interpolated(5, 17).quantile(0)).isZero();
    }

    @Property(tries = 25)
    void quantileAndTailAreInverse(@ForAll @IntRange(min = 2, max = 12) int groups,
                                   @ForAll @DoubleRange(min = 1, max = 400) double nu,
                                   @ForAll @DoubleRange(min = 0.01, max = 0.99) double p) {
        double q = StudentizedRange.quantile(p, groups, nu);
        assertThat(StudentizedRange.cumulative(q, groups, nu)).isCloseTo(p, within(1e-11));
    }

    @Property(tries = 25)
    void moreGroupsReachFartherAndStayBelowBonferroni(@ForAll @IntRange(min = 2, max = 12) int groups,
                                                      @ForAll @DoubleRange(min = 1, max = 400) double nu,
                                                      @ForAll @DoubleRange(min = 0.05, max = 30) double q) {
        double tail = StudentizedRange.upperTail(q, groups, nu);
        // Near 1 the two differ by less than the last digits of a quadrature.
        assertThat(StudentizedRange.upperTail(q, groups + 1, nu)).isGreaterThanOrEqualTo(tail - 1e-14);
        double pair = StudentizedRange.upperTail(q, 2, nu);
        assertThat(tail).isBetween(pair * (1 - 1e-12), groups * (groups - 1) / 2.0 * pair * (1 + 1e-12));
    }

    @Test
    void endsAreDefined() {
        assertThat(StudentizedRange.upperTail(0, 4, 9)).isEqualTo(1);
        assertThat(StudentizedRange.upperTail(-3, 4, 9)).isEqualTo(1);
        assertThat(StudentizedRange.upperTail(INFINITE, 4, 9)).isZero();
        assertThat(StudentizedRange.upperTail(Double.NaN, 4, 9)).isNaN();
        assertThat(StudentizedRange.upperTail(1e5, 4, 1e9)).isZero();
        assertThat(StudentizedRange.upperTail(60, 3, INFINITE)).isZero();
        StudentizedRangeInterpolant interpolant = StudentizedRange.interpolated(4, 9);
        assertThat(interpolant.upperTail(0)).isEqualTo(1);
        assertThat(interpolant.upperTail(-1)).isEqualTo(1);
        assertThat(interpolant.upperTail(Double.NaN)).isNaN();
        assertThat(interpolant.upperTail(INFINITE)).isZero();
        assertThat(StudentizedRange.quantile(0, 3, 4)).isZero();
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> StudentizedRange.upperTail(1, 1, 5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> StudentizedRange.upperTail(1, 3, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> StudentizedRange.upperTail(1, 3, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> StudentizedRange.quantile(1, 3, 5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> StudentizedRange.interpolated(3, 0.5)).isInstanceOf(IllegalArgumentException.class)
            .hasMessageContaining("quadrature");
        assertThatThrownBy(() -> StudentizedRange.interpolated(3, 9).quantile(1)).isInstanceOf(IllegalArgumentException.class);
    }
}
