package gripwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.StatUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Draws against the quadratures that they stand in for. */
class PosteriorDrawsTest {

    private static final SimulatedSession SESSION = SimulatedSession.of(new int[] {0, 1, 2, 3, 3, 1},
        new int[] {6, 6, 6, 2, 6, 5}, new double[] {0, 0.4, 0.6, 0.2}, 0.8, 0.3, 21);
    private static final int DRAWS = 1 << 15;

    private static final double[] EXACT = SESSION.fit(MixedModelFitter.withDefaults()).probabilityBest(true);

    private final MixedModelFit flat = SESSION.fit(MixedModelFitter.withDefaults());
    private final MixedModelFit choosing = flat.with(GroupPrior.EXCHANGEABLE);
    private final double[][] points = QuasiRandomNormals.points(DRAWS, flat.scoresPerDraw(), 20260101);

    @Test
    void probabilityBestAgreesWithQuadrature() {
        double[] drawn = flat.draw(points).probabilityBest(true);

        assertThat(drawn).containsExactly(EXACT, within(2e-3));
        assertThat(Arrays.stream(EXACT).sum()).isCloseTo(1, within(1e-12));
        assertThat(flat.draw(points).probabilityBest(false))
            .containsExactly(flat.probabilityBest(false), within(2e-3));
    }

    @Test
    void probabilityBestAgreesWithQuadratureUnderTheExchangeablePrior() {
        MixedModelFit withoutDrift = SESSION
            .fit(MixedModelFitter.withDefaults().with(DriftPrior.NONE).with(GroupPrior.EXCHANGEABLE));

        assertThat(withoutDrift.draw(points).probabilityBest(true))
            .containsExactly(withoutDrift.probabilityBest(true), within(2e-3));
    }

    @Test
    void fourThousandDrawsAreEnoughForTheScreen() {
        double[][] few = QuasiRandomNormals.points(4096, flat.scoresPerDraw(), 1);

        assertThat(flat.draw(few).probabilityBest(true)).containsExactly(EXACT, within(0.012));
    }

    @Test
    void momentsOfDrawsAgreeWithTheMixture() {
        for (MixedModelFit fit : new MixedModelFit[] {flat, choosing}) {
            PosteriorDraws draws = fit.draw(points);
            for (int g = 0; g < 4; g++) {
                ContrastPosterior mean = fit.mean(g);
                double[] drawn = draws.means(g);
                assertThat(StatUtils.mean(drawn)).isCloseTo(mean.estimate(), within(2e-3));
                assertThat(Math.sqrt(StatUtils.variance(drawn))).isCloseTo(mean.standardDeviation(), within(5e-3));
                double above = Arrays.stream(drawn).filter(x -> x > 0.5).count() / (double) DRAWS;
                assertThat(above).isCloseTo(mean.probabilityAbove(0.5), within(3e-3));
            }
            assertThat(average(draws, draws::tau)).isCloseTo(fit.blockRatio().estimate(), within(1e-3));
            assertThat(average(draws, draws::residualStandardDeviation))
                .isCloseTo(fit.residualStandardDeviation().estimate(), within(1e-3));
            assertThat(average(draws, i -> draws.tau(i) * draws.residualStandardDeviation(i)))
                .isCloseTo(fit.blockStandardDeviation().estimate(), within(1e-3));
            assertThat(average(draws, draws::drift)).isCloseTo(fit.drift().estimate(), within(2e-3));
        }
    }

    @Test
    void quantilesOfDeviationsAgreeWithTheirDistributions() {
        PosteriorDraws draws = flat.draw(points);
        double[] residual = sorted(draws, draws::residualStandardDeviation);
        double[] blocks = sorted(draws, i -> draws.tau(i) * draws.residualStandardDeviation(i));
        for (double p : new double[] {0.025, 0.5, 0.975}) {
            int place = (int) (p * DRAWS);
            assertThat(flat.residualStandardDeviation().quantile(p)).isCloseTo(residual[place], within(6e-3));
            // tau comes in steps in the draws, hence the coarser comparison
            assertThat(flat.blockStandardDeviation().quantile(p)).isCloseTo(blocks[place], within(0.02));
        }
    }

    @Test
    void theExchangeablePriorDrawsMeansTogetherAndDoesNotCrownTheLeastTested() {
        int[] sizes = {8, 8, 8, 8, 2};
        double least = 0;
        double leastFlat = 0;
        double[][] few = QuasiRandomNormals.points(512, 8, 1);
        int sessions = 120;
        for (int s = 0; s < sessions; s++) {
            MixedModelFit fit = SimulatedSession.of(new int[] {0, 1, 2, 3, 4}, sizes, new double[5], 0, 0, 1000 + s)
                .fit(MixedModelFitter.withDefaults());
            leastFlat += fit.draw(few).probabilityBest(true)[4] / sessions;
            least += fit.with(GroupPrior.EXCHANGEABLE).draw(few).probabilityBest(true)[4] / sessions;
        }

        // Equal groups: a fair share is .2. The flat prior gives the least tested group far more.
        assertThat(leastFlat).isGreaterThan(0.24);
        assertThat(least).isLessThan(leastFlat - 0.01).isGreaterThan(0.15);
    }

    @Test
    void aGreaterScoreGivesAGreaterValue() {
        for (MixedModelFit fit : new MixedModelFit[] {flat, choosing}) {
            double[] base = new double[fit.scoresPerDraw()];
            for (int g = 0; g < 4; g++) {
                double[] raised = base.clone();
                raised[3 + g] = 1;
                PosteriorDraws draws = fit.draw(new double[][] {base, raised});
                assertThat(draws.mean(1, g)).isGreaterThan(draws.mean(0, g));
            }
            double[] raised = base.clone();
            raised[1] = 1;
            raised[2] = 1;
            PosteriorDraws draws = fit.draw(new double[][] {base, raised});
            assertThat(draws.residualStandardDeviation(1)).isGreaterThan(draws.residualStandardDeviation(0));
            assertThat(draws.drift(1)).isGreaterThan(draws.drift(0));
        }
    }

    @Test
    void responsesTiedByTheirScoresAreCorrelated() {
        SimulatedSession other = SimulatedSession.of(new int[] {0, 1, 2, 3, 3, 1}, new int[] {6, 6, 6, 2, 6, 5},
            new double[4], 0, 0.3, 22);
        double[][] tied = new double[points.length][];
        double rho = 0.8;
        double[][] fresh = QuasiRandomNormals.points(DRAWS, 2 * flat.scoresPerDraw(), 5);
        double[][] first = new double[DRAWS][];
        for (int i = 0; i < DRAWS; i++) {
            first[i] = Arrays.copyOf(fresh[i], flat.scoresPerDraw());
            tied[i] = new double[flat.scoresPerDraw()];
            for (int c = 0; c < tied[i].length; c++) {
                tied[i][c] = rho * first[i][c] + Math.sqrt(1 - rho * rho) * fresh[i][flat.scoresPerDraw() + c];
            }
        }
        double[] one = flat.draw(first).means(2);
        double[] two = other.fit(MixedModelFitter.withDefaults()).draw(tied).means(2);

        assertThat(new org.apache.commons.math3.stat.correlation.PearsonsCorrelation().correlation(one, two))
            .isBetween(0.65, 0.85);
    }

    @Test
    void theSamePointsAlways() {
        double[][] again = QuasiRandomNormals.points(DRAWS, flat.scoresPerDraw(), 20260101);

        assertThat(again[17]).containsExactly(points[17]);
        assertThat(flat.draw(again).means(1)).containsExactly(flat.draw(points).means(1));
        assertThat(QuasiRandomNormals.points(4, 3, 1)[2]).isNotEqualTo(QuasiRandomNormals.points(4, 3, 2)[2]);
    }

    @Test
    void pointsAreStandardNormalAndFinite() {
        double[][] some = QuasiRandomNormals.points(4096, 12, 99);
        for (int d = 0; d < 12; d++) {
            int column = d;
            double[] values = Arrays.stream(some).mapToDouble(row -> row[column]).toArray();
            assertThat(values).doesNotContain(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);
            assertThat(StatUtils.mean(values)).isCloseTo(0, within(2e-3));
            assertThat(StatUtils.variance(values)).isCloseTo(1, within(1e-2));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 2, 3, 8, 25, 231, 2000})
    void chiScoresAgreeWithTheQuantile(double nu) {
        ChiScores scores = new ChiScores(nu);
        ChiSquaredDistribution chi = new ChiSquaredDistribution(null, nu, 1e-14);
        NormalDistribution normal = new NormalDistribution(null, 0, 1);
        for (double z = -4.5; z <= 4.5; z += 0.37) {
            double exact = Math.sqrt(1 / chi.inverseCumulativeProbability(normal.cumulativeProbability(-z)));
            assertThat(scores.inverseChi(z)).isCloseTo(exact, within(1e-6 * exact));
        }
        assertThat(scores.inverseChi(9)).isGreaterThan(scores.inverseChi(6)).isFinite();
        assertThat(scores.inverseChi(-9)).isLessThan(scores.inverseChi(-6)).isPositive();
    }

    private static double average(PosteriorDraws draws, java.util.function.IntToDoubleFunction value) {
        return java.util.stream.IntStream.range(0, draws.size()).mapToDouble(value).average().orElseThrow();
    }

    private static double[] sorted(PosteriorDraws draws, java.util.function.IntToDoubleFunction value) {
        return java.util.stream.IntStream.range(0, draws.size()).mapToDouble(value).sorted().toArray();
    }
}
