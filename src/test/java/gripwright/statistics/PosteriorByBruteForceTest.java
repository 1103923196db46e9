package gripwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The posterior against a quadrature with full covariance matrices that shares nothing with the engine. */
class PosteriorByBruteForceTest {

    private static final double TOLERANCE = 1e-5;

    private static final SimulatedSession UNEVEN = SimulatedSession.of(new int[] {0, 1, 2, 3, 1, 0, 3},
        new int[] {5, 4, 6, 1, 3, 4, 2}, new double[] {0, 0.4, -0.3, 1}, 1.2, 0.5, 11);

    @Test
    void flatPriorOnMeansWithDriftPrior() {
        MixedModelFit fit = UNEVEN.fit(MixedModelFitter.withDefaults());
        DenseCovarianceQuadrature brute = brute(0.5, 1, Double.POSITIVE_INFINITY);

        for (int first = 1; first < 4; first++) {
            compare(fit, brute.difference(first, 0, 0.3, 600), first);
        }
    }

    @Test
    void cautiousPriorWithoutDrift() {
        MixedModelFit fit = UNEVEN.fit(MixedModelFitter.withDefaults().with(BlockPrior.CAUTIOUS).with(DriftPrior.NONE));

        compare(fit, brute(1, 0, Double.POSITIVE_INFINITY).difference(3, 0, 0.3, 600), 3);
    }

    @Test
    void exchangeablePriorOnMeans() {
        MixedModelFit fit = UNEVEN.fit(MixedModelFitter.withDefaults().with(GroupPrior.EXCHANGEABLE));
        DenseCovarianceQuadrature brute = brute(0.5, 1, 1);

        for (int first = 1; first < 4; first += 2) {
            compare(fit, brute.difference(first, 0, 0.3, 120), first);
        }
    }

    private static DenseCovarianceQuadrature brute(double blockScale, double drift, double spread) {
        return new DenseCovarianceQuadrature(UNEVEN.response(), UNEVEN.group(), UNEVEN.scaledOrder(), UNEVEN.block(), 4,
            blockScale, drift, spread);
    }

    private static void compare(MixedModelFit fit, DenseCovarianceQuadrature.Result brute, int first) {
        ContrastPosterior difference = fit.difference(first, 0);
        assertThat(difference.probabilityAbove(0.3)).isCloseTo(brute.probabilityAbove(), within(TOLERANCE));
        assertThat(difference.estimate()).isCloseTo(brute.mean(), within(TOLERANCE));
        assertThat(difference.standardDeviation()).isCloseTo(brute.deviation(), within(TOLERANCE));
        assertThat(fit.blockRatio().estimate()).isCloseTo(brute.tauMean(), within(TOLERANCE));
    }
}
