package gripwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;

class GaussianCopulaTest {

    @Test
    void correlationIsOfDeviationsWithinBlocksAndShrunk() {
        // By hand, shrunk by n/(n + 10). Two blocks far apart; within them y = x, then y = -x twice as often: deviations -1, 1 each.
        double[] x = {-1, 1, 99, 101, 99, 101};
        double[] y = {-1, 1, 51, 49, 51, 49};
        int[] block = {0, 0, 1, 1, 1, 1};
        double plain = (2.0 - 4) / 6;
        assertThat(GaussianCopula.ofValues(new double[][] {x, y}, block).correlation(0, 1))
            .isCloseTo(plain * 6 / 16, within(1e-12));
    }

    @Test
    void rowsWithoutBothValuesAndResponsesWithoutVariationTellNothing() {
        double[] x = {1, 2, Double.NaN, 4};
        double[] y = {Double.NaN, Double.NaN, 3, Double.NaN};
        assertThat(GaussianCopula.ofValues(new double[][] {x, y}, new int[4]).correlation(0, 1)).isZero();
        assertThat(GaussianCopula.ofValues(new double[][] {x, {5, 5, 5, 5}}, new int[4]).correlation(0, 1)).isZero();
    }

    @Test
    void tiedScoresHaveTheCorrelationAndStayStandardNormal() {
        Random random = new Random(2);
        double[][] values = new double[3][400];
        for (int i = 0; i < 400; i++) {
            double common = random.nextGaussian();
            for (int m = 0; m < 3; m++) {
                values[m][i] = common + random.nextGaussian();
            }
        }
        GaussianCopula copula = GaussianCopula.ofValues(values, new int[400]);
        double[][][] tied = copula.tie(QuasiRandomNormals.points(4096, 12, 1), 4, 2);
        for (int place = 0; place < 4; place++) {
            double[] first = column(tied[0], place);
            double[] last = column(tied[2], place);
            double expected = place < 2 ? 0 : copula.correlation(0, 2);
            assertThat(new PearsonsCorrelation().correlation(first, last)).isCloseTo(expected, within(0.02));
            double squares = 0;
            for (double value : last) {
                squares += value * value / last.length;
            }
            assertThat(squares).isCloseTo(1, within(0.02));
        }
    }

    private static double[] column(double[][] rows, int place) {
        double[] column = new double[rows.length];
        for (int i = 0; i < column.length; i++) {
            column[i] = rows[i][place];
        }
        return column;
    }

    @Test
    void pairsThatTogetherAreNoCorrelationMatrixAreShrunkUntilTheyAre() {
        // x and y agree on one third of the rows, y and z on another, x and -z on the last.
        int n = 300;
        double[][] values = new double[3][n];
        Random random = new Random(4);
        for (int i = 0; i < n; i++) {
            double v = random.nextGaussian();
            int third = i % 3;
            values[0][i] = third == 1 ? Double.NaN : v;
            values[1][i] = third == 2 ? Double.NaN : v;
            values[2][i] = third == 0 ? Double.NaN : third == 1 ? v : -v;
        }
        GaussianCopula copula = GaussianCopula.ofValues(values, new int[n]);
        double a = copula.correlation(0, 1);
        double b = copula.correlation(1, 2);
        double c = copula.correlation(0, 2);
        assertThat(1 + 2 * a * b * c - a * a - b * b - c * c).isPositive();
        assertThat(a).isPositive();
        assertThat(c).isNegative();
    }

    @Test
    void refusesUnevenResponses() {
        assertThatThrownBy(() -> GaussianCopula.ofValues(new double[][] {{1, 2}}, new int[3]))
            .isInstanceOf(IllegalArgumentException.class);
    }
}
