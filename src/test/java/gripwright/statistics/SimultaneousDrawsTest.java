package gripwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class SimultaneousDrawsTest {

    private static final int DRAWS = 16_384;

    /** Differences of three independent standard normal means: T is the range over sqrt 2. */
    private static SimultaneousDraws threeMeans(double shift) {
        double[][] points = QuasiRandomNormals.points(DRAWS, 3, 9);
        double[][] members = new double[3][DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            members[0][i] = points[i][0] - points[i][1] + shift;
            members[1][i] = points[i][0] - points[i][2];
            members[2][i] = points[i][1] - points[i][2];
        }
        return new SimultaneousDraws(members);
    }

    /** Tukey's rule in its exact case; the studentized range itself is checked against an independent quadrature elsewhere. */
    @Test
    void agreesWithTheStudentizedRange() {
        for (double shift : new double[] {-1, 0.5, 2, 3}) {
            SimultaneousDraws draws = threeMeans(shift);
            double half = StudentizedRange.upperTail(Math.abs(shift), 3, Double.POSITIVE_INFINITY) / 2;
            assertThat(draws.familyProbabilityAbove(0, 0)).isCloseTo(shift > 0 ? 1 - half : half, within(0.004));
            assertThat(draws.familyProbabilityAbove(0, 0) + draws.familyProbabilityBelow(0, 0)).isCloseTo(1, within(1e-9));
        }
    }

    /** By definition: of 1,001 values those with 25 below and 25 above. */
    @Test
    void quantilesAreOrderStatistics() {
        double[] values = new double[1001];
        Arrays.setAll(values, i -> Math.pow(i * 37 % 1001 - 500, 3));
        Interval interval = new SimultaneousDraws(new double[][] {values}).interval(0, 0.95);
        Arrays.sort(values);
        assertThat(interval).isEqualTo(new Interval(values[25], values[975]));
    }

    @Test
    void aMemberThatDoesNotVary() {
        SimultaneousDraws draws = new SimultaneousDraws(new double[][] {{2, 2, 2}});
        assertThat(draws.interval(0, 0.95)).isEqualTo(new Interval(2, 2));
        assertThat(draws.familyProbabilityAbove(0, 1)).isEqualTo(1);
        assertThat(draws.familyProbabilityAbove(0, 3)).isZero();
    }

    @Test
    void refusesUnevenMembers() {
        assertThatThrownBy(() -> new SimultaneousDraws(new double[][] {{1, 2}, {1}}))
            .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("same number of draws");
    }
}
