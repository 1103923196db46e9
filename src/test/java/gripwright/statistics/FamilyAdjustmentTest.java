package gripwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.Test;

/** The family of all pairs: the interpolated studentized range against its quadrature, and known special cases. */
class FamilyAdjustmentTest {

    private static final MixedModelFitter FITTER = MixedModelFitter.withDefaults();

    private final MixedModelFit fit = SimulatedSession.of(new int[] {0, 1, 2, 3, 4, 4, 3, 2, 1, 0},
        SimulatedSession.sizes(10, 3), new double[] {0, 0.5, 1, 1.5, 3}, 0.5, 0.3, 31).fit(FITTER);

    @Test
    void adjustedProbabilitiesAreTheSumsOverNodesOfTheQuadrature() {
        for (int a = 1; a < 5; a++) {
            for (double limit : new double[] {-0.5, 0, 0.25, 2}) {
                double sum = 0;
                double twoSided = 0;
                for (PosteriorNode node : fit.nodes()) {
                    double[][] c = node.unscaledCovariance();
                    double location = node.coefficients()[a] - node.coefficients()[0];
                    double spread = Math.sqrt((c[a][a] + c[0][0] - 2 * c[a][0]) * node.residualSquares()
                        / node.degreesOfFreedom());
                    double half = 0.5 * StudentizedRange.upperTail(Math.sqrt(2) * Math.abs(location - limit) / spread, 5,
                        node.degreesOfFreedom());
                    sum += node.weight() * (location > limit ? 1 - half : half);
                    twoSided += node.weight() * StudentizedRange.upperTail(Math.sqrt(2) * Math.abs(location) / spread, 5,
                        node.degreesOfFreedom());
                }
                ContrastPosterior difference = fit.difference(a, 0);
                assertThat(difference.familyProbabilityAbove(limit)).isCloseTo(sum, within(1e-8));
                assertThat(difference.familyProbabilityBelow(limit)).isCloseTo(1 - sum, within(1e-8));
                assertThat(difference.familyTwoSidedP()).isCloseTo(twoSided, within(1e-8));
            }
        }
    }

    /** Two groups are one pair: nothing to adjust. With a negligible block variance the p-value is that of the t test. */
    @Test
    void twoGroupsNeedNoAdjustment() {
        double[] response = {3.1, 2.7, 3.9, 3.3, 4.4, 4.1, 3.6, 4.9};
        int[] group = {0, 0, 0, 0, 1, 1, 1, 1};
        MixedModelFit two = FITTER.with(DriftPrior.NONE).with(new BlockPrior(1e-6)).fit(response, group, null, group);
        double first = variance(3.1, 2.7, 3.9, 3.3);
        double second = variance(4.4, 4.1, 3.6, 4.9);
        double pooled = (first + second) / 2;
        double t = (4.25 - 3.25) / Math.sqrt(pooled / 2);
        double p = 2 * new TDistribution(null, 6).cumulativeProbability(-t);

        assertThat(two.difference(1, 0).familyTwoSidedP()).isCloseTo(p, within(1e-8));
        assertThat(two.difference(1, 0).familyProbabilityAbove(0)).isCloseTo(1 - p / 2, within(1e-8));
        assertThat(two.difference(1, 0).probabilityAbove(0)).isCloseTo(1 - p / 2, within(1e-8));
    }

    /** Without blocks and drift the adjusted p-value is Tukey and Kramer's: PlantGrowth, printed by R's TukeyHSD. */
    @Test
    void withoutBlocksItIsTukeyAndKramer() {
        double[] control = {4.17, 5.58, 5.18, 6.11, 4.50, 4.61, 5.17, 4.53, 5.33, 5.14};
        double[] first = {4.81, 4.17, 4.41, 3.59, 5.87, 3.83, 6.03, 4.89, 4.32, 4.69};
        double[] second = {6.31, 5.12, 5.54, 5.50, 5.37, 5.29, 4.92, 6.15, 5.80, 5.26};
        double[] response = new double[30];
        int[] group = new int[30];
        System.arraycopy(control, 0, response, 0, 10);
        System.arraycopy(first, 0, response, 10, 10);
        System.arraycopy(second, 0, response, 20, 10);
        for (int i = 0; i < 30; i++) {
            group[i] = i / 10;
        }
        MixedModelFit plants = FITTER.with(DriftPrior.NONE).with(new BlockPrior(1e-6)).fit(response, group, null, group);

        assertThat(plants.difference(1, 0).familyTwoSidedP()).isCloseTo(0.3908711, within(1e-6));
        assertThat(plants.difference(2, 0).familyTwoSidedP()).isCloseTo(0.1979960, within(1e-6));
        assertThat(plants.difference(2, 1).familyTwoSidedP()).isCloseTo(0.0120064, within(1e-6));
    }

    private static double variance(double... values) {
        double mean = java.util.Arrays.stream(values).average().orElseThrow();
        return java.util.Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum() / (values.length - 1);
    }
}
