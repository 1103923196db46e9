package gripwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Designs and values that cannot tell everything: a field says so, and no figure is NaN without one. */
class MixedModelEdgeTest {

    private static final MixedModelFitter FITTER = MixedModelFitter.withDefaults();
    private static final int[] NONE = {};

    @Test
    void oneBlockPerGroupLeavesTheBlockVarianceToItsPrior() {
        MixedModelFit fit = SimulatedSession.of(new int[] {0, 1, 2, 3}, SimulatedSession.sizes(4, 6),
            new double[4], 0.5, 0.3, 1).fit(FITTER);

        assertThat(fit.notIdentified()).containsExactly(NotIdentified.BLOCK_VARIANCE);
        assertThat(fit.isAvailable()).isTrue();
        // The posterior of tau is its prior: half-normal(0.5) has the mean 0.5 sqrt(2/pi) and the median 0.33724.
        assertThat(fit.blockRatio().estimate()).isCloseTo(0.5 * Math.sqrt(2 / Math.PI), within(1e-8));
        assertThat(fit.blockRatio().median()).isCloseTo(0.5 * 0.6744897501960817, within(1e-7));
        assertFinite(fit);
        RemlFit reml = fit.reml(true);
        assertThat(reml.isAvailable()).isFalse();
        assertThat(reml.notIdentified()).contains(NotIdentified.BLOCK_VARIANCE);
        assertThat(reml.difference(0, 1).standardError()).isNaN();
        assertThat(reml.criterion()).isNaN();
    }

    @Test
    void oneBlockPerGroupWidensTheIntervalThroughThePrior() {
        SimulatedSession session = SimulatedSession.of(new int[] {0, 1}, SimulatedSession.sizes(2, 12), new double[2], 0,
            0, 2);
        double usual = session.fit(FITTER).difference(0, 1).interval(0.95).width();
        double cautious = session.fit(FITTER.with(BlockPrior.CAUTIOUS)).difference(0, 1).interval(0.95).width();
        double negligible = session.fit(FITTER.with(new BlockPrior(1e-3))).difference(0, 1).interval(0.95).width();

        assertThat(usual).isGreaterThan(1.2 * negligible);
        assertThat(cautious).isGreaterThan(1.2 * usual);
    }

    @Test
    void blocksOfOneValueLeaveTheBlockVarianceToItsPrior() {
        MixedModelFit fit = SimulatedSession.of(new int[] {0, 1, 2, 0, 1, 2, 0, 1, 2}, SimulatedSession.sizes(9, 1),
            new double[3], 0, 0, 3).fit(FITTER);

        assertThat(fit.notIdentified()).containsExactly(NotIdentified.BLOCK_VARIANCE);
        assertFinite(fit);
    }

    @Test
    void aRetestIdentifiesTheBlockVariance() {
        MixedModelFit fit = SimulatedSession.of(new int[] {0, 1, 2, 3, 0}, SimulatedSession.sizes(5, 6), new double[4],
            0.5, 0.3, 4).fit(FITTER);

        assertThat(fit.notIdentified()).isEmpty();
        assertThat(fit.reml(true).isAvailable()).isTrue();
        assertFinite(fit);
    }

    @Test
    void driftConstantWithinGroupsIsNotSeparable() {
        double[] response = {1, 2, 1.5, 3, 2.5, 3.5, 5, 4, 4.2};
        int[] group = {0, 0, 0, 1, 1, 1, 2, 2, 2};
        double[] time = {1, 1, 1, 2, 2, 2, 3, 3, 3};
        MixedModelFit fit = FITTER.fit(response, group, time, group);

        assertThat(fit.notIdentified()).containsExactlyInAnyOrder(NotIdentified.DRIFT, NotIdentified.BLOCK_VARIANCE);
        assertThat(fit.hasDrift()).isTrue();
        // Nothing is learnt of the drift: its posterior is centred where the prior is.
        assertThat(fit.drift().estimate()).isCloseTo(0, within(1e-12));
        assertFinite(fit);
        double withoutDrift = FITTER.with(DriftPrior.NONE).fit(response, group, time, group)
            .difference(2, 0).interval(0.95).width();
        assertThat(fit.difference(2, 0).interval(0.95).width()).isGreaterThan(1.1 * withoutDrift);

        MixedModelFit flat = FITTER.with(DriftPrior.FLAT).fit(response, group, time, group);
        assertThat(flat.isAvailable()).isFalse();
        assertThat(flat.notIdentified()).contains(NotIdentified.DRIFT_WITHOUT_PRIOR);
        assertAllNaN(flat);
    }

    @Test
    void aConstantCovariateLeavesDriftOut() {
        MixedModelFit fit = FITTER.fit(new double[] {1, 2, 3, 5, 4}, new int[] {0, 0, 1, 1, 1},
            new double[] {7, 7, 7, 7, 7}, new int[] {0, 1, 2, 3, 4});

        assertThat(fit.notIdentified()).contains(NotIdentified.COVARIATE_CONSTANT);
        assertThat(fit.hasDrift()).isFalse();
        assertThat(fit.drift().isDefined()).isFalse();
        assertFinite(fit);
    }

    @Test
    void noCovariateIsNoComplaint() {
        MixedModelFit fit = FITTER.fit(new double[] {1, 2, 3, 5, 4, 4.5}, new int[] {0, 0, 1, 1, 0, 0}, null,
            new int[] {0, 0, 1, 1, 2, 2});

        assertThat(fit.notIdentified()).isEmpty();
        assertFinite(fit);
    }

    @Test
    void withoutDegreesOfFreedomThereIsNoFit() {
        MixedModelFit fit = FITTER.fit(new double[] {1, 2}, new int[] {0, 1}, null, new int[] {0, 1});

        assertThat(fit.notIdentified()).contains(NotIdentified.TOO_FEW_VALUES);
        assertThat(fit.degreesOfFreedom()).isZero();
        assertThat(fit.isAvailable()).isFalse();
        assertAllNaN(fit);
    }

    @Test
    void oneDegreeOfFreedomGivesIntervalsButNoDeviations() {
        MixedModelFit fit = FITTER.fit(new double[] {1, 2, 3}, new int[] {0, 1, 1}, null, new int[] {0, 1, 1});

        assertThat(fit.degreesOfFreedom()).isEqualTo(1);
        assertThat(fit.notIdentified()).contains(NotIdentified.STANDARD_DEVIATIONS);
        assertThat(fit.difference(1, 0).standardDeviation()).isInfinite();
        assertThat(fit.residualStandardDeviation().estimate()).isInfinite();
        assertThat(fit.residualStandardDeviation().median()).isFinite();
        assertThat(fit.difference(1, 0).interval(0.95).width()).isFinite().isPositive();
        assertThat(fit.difference(1, 0).probabilityAbove(0)).isBetween(0.5, 1.0);
        assertThat(fit.draw(QuasiRandomNormals.points(64, fit.scoresPerDraw(), 1)).mean(5, 0)).isFinite();
    }

    @Test
    void equalValuesAreRefused() {
        MixedModelFit fit = FITTER.fit(new double[] {70.1, 70.1, 70.1, 70.1, 70.1}, new int[] {0, 0, 1, 1, 0}, null,
            new int[] {0, 0, 1, 1, 2});

        assertThat(fit.notIdentified()).contains(NotIdentified.ALL_VALUES_EQUAL);
        assertAllNaN(fit);
    }

    @Test
    void noVariationWithinBlocksIsRefused() {
        double[] response = {70.1, 70.1, 70.1, 72.3, 72.3, 71.7, 71.7, 71.7};
        int[] block = {0, 0, 0, 1, 1, 2, 2, 2};
        int[] group = {0, 0, 0, 1, 1, 0, 0, 0};
        double[] order = {1, 2, 3, 4, 5, 6, 7, 8};

        for (DriftPrior drift : new DriftPrior[] {DriftPrior.NONE, DriftPrior.USUAL, DriftPrior.FLAT}) {
            MixedModelFit fit = FITTER.with(drift).fit(response, group, order, block);
            assertThat(fit.notIdentified()).contains(NotIdentified.NO_VARIATION_WITHIN_BLOCKS);
            assertAllNaN(fit);
            assertThat(fit.reml(false).isAvailable()).isFalse();
        }
    }

    @Test
    void valuesThatTheModelMeetsExactlyAreRefused() {
        MixedModelFit fit = FITTER.fit(new double[] {1, 1, 2}, new int[] {0, 0, 1}, new double[] {1, 2, 3},
            new int[] {0, 0, 1});

        assertThat(fit.notIdentified()).contains(NotIdentified.NO_VARIATION_WITHIN_BLOCKS);
        assertAllNaN(fit);
    }

    @Test
    void aGroupWithoutValuesIsLeftOutAndNamed() {
        SimulatedSession session = SimulatedSession.of(new int[] {0, 1, 2, 2, 1, 0}, SimulatedSession.sizes(6, 4),
            new double[3], 0, 0.2, 6);
        double[] response = session.response().clone();
        for (int i = 0; i < response.length; i++) {
            response[i] = session.group()[i] == 1 ? Double.NaN : response[i];
        }
        MixedModelFit fit = FITTER.fit(response, session.group(), session.order(), session.block());

        assertThat(fit.notIdentified()).containsExactly(NotIdentified.GROUP_WITHOUT_VALUES);
        assertThat(fit.hasValues(1)).isFalse();
        assertThat(fit.values()).isEqualTo(16);
        assertThat(fit.blocks()).isEqualTo(4);
        assertThat(fit.mean(1).estimate()).isNaN();
        assertThat(fit.difference(1, 0).interval(0.95)).isEqualTo(Interval.UNDEFINED);
        assertThat(fit.contrast(new double[] {0.5, 0.5, -1}).isDefined()).isFalse();
        assertThat(fit.difference(2, 0).estimate()).isFinite();
        double[] best = fit.probabilityBest(true);
        assertThat(best[1]).isNaN();
        assertThat(best[0] + best[2]).isCloseTo(1, within(1e-12));
        double[] drawn = fit.draw(QuasiRandomNormals.points(256, fit.scoresPerDraw(), 1)).probabilityBest(true);
        assertThat(drawn[1]).isNaN();
        assertThat(drawn[0] + drawn[2]).isEqualTo(1);
        // The pair of groups that is left is a family of two: adjusted and plain figures are the same.
        assertThat(fit.difference(2, 0).familyProbabilityAbove(0.1))
            .isCloseTo(fit.difference(2, 0).probabilityAbove(0.1), within(1e-9));
    }

    @Test
    void missingValuesDoNotMoveTheScaleOfTheCovariate() {
        MixedModelFit fit = FITTER.fit(new double[] {Double.NaN, 1, 2, 3, 2, Double.NaN}, new int[] {0, 0, 0, 1, 1, 1},
            new double[] {1, 2, 3, 4, 5, 6}, new int[] {0, 0, 0, 1, 1, 1});

        assertThat(fit.covariateRange()).isEqualTo(5);
    }

    @Test
    void oneGroupHasAMeanAndADriftAndIsTheBest() {
        MixedModelFit fit = SimulatedSession.of(new int[] {0, 0, 0}, SimulatedSession.sizes(3, 5), new double[] {4}, 0,
            0.3, 7).fit(FITTER.with(GroupPrior.EXCHANGEABLE));

        assertThat(fit.notIdentified()).isEmpty();
        assertThat(fit.mean(0).estimate()).isCloseTo(4, within(1.5));
        assertThat(fit.probabilityBest(true)).containsExactly(1);
    }

    @Test
    void noRowsAtAll() {
        MixedModelFit fit = FITTER.fit(new double[0], NONE, new double[0], NONE, 3);

        assertThat(fit.notIdentified()).contains(NotIdentified.NO_VALUES);
        assertAllNaN(fit);
        assertThat(fit.with(GroupPrior.EXCHANGEABLE).mean(0).estimate()).isNaN();
        assertThat(fit.reml(true).isAvailable()).isFalse();
    }

    @Test
    void oneValue() {
        MixedModelFit fit = FITTER.fit(new double[] {3}, new int[] {0}, new double[] {1}, new int[] {0});

        assertThat(fit.isAvailable()).isFalse();
        assertThat(fit.notIdentified()).contains(NotIdentified.TOO_FEW_VALUES);
        assertAllNaN(fit);
    }

    @Test
    void threeValues() {
        MixedModelFit fit = FITTER.fit(new double[] {3, 4, 6}, new int[] {0, 1, 0}, new double[] {1, 2, 3},
            new int[] {0, 1, 2});

        assertThat(fit.isAvailable()).isTrue();
        assertThat(fit.difference(0, 1).interval(0.95).width()).isFinite();
    }

    @Test
    void twoThousandValuesInEightGroups() {
        MixedModelFit fit = SimulatedSession.of(SimulatedSession.mirrored(8), SimulatedSession.sizes(16, 125),
            new double[] {0, 1, 2, 3, 4, 5, 6, 7}, 1, 0.3, 8).fit(FITTER);

        assertThat(fit.notIdentified()).isEmpty();
        assertThat(fit.difference(7, 0).estimate()).isCloseTo(7, within(1.5));
        assertThat(fit.residualStandardDeviation().estimate()).isCloseTo(1, within(0.06));
        assertThat(fit.residualStandardDeviation().interval(0.95).contains(1)).isTrue();
        assertFinite(fit);
    }

    @Test
    void blocksThatDwarfTheNoiseAreFollowedOutAndReported() {
        SimulatedSession session = SimulatedSession.of(SimulatedSession.mirrored(4), SimulatedSession.sizes(8, 6),
            new double[4], 0, 12, 9);
        MixedModelFit fit = session.fit(FITTER);

        assertThat(fit.evidenceForWiderBlockPrior()).isGreaterThan(1000);
        assertFinite(fit);
        // With blocks known so well the fine grid must agree with brute force even far out.
        DenseCovarianceQuadrature.Result brute = new DenseCovarianceQuadrature(session.response(), session.group(),
            session.scaledOrder(), session.block(), 4, 0.5, 1, Double.POSITIVE_INFINITY).difference(1, 0, 0.5, 400);
        assertThat(fit.difference(1, 0).probabilityAbove(0.5)).isCloseTo(brute.probabilityAbove(), within(1e-4));
        assertThat(fit.blockRatio().estimate()).isCloseTo(brute.tauMean(), within(1e-3));
    }

    @Test
    void evidenceForAWiderPriorIsOneWhereValuesSayNothing() {
        MixedModelFit fit = SimulatedSession.of(new int[] {0, 1}, SimulatedSession.sizes(2, 6), new double[2], 0, 0, 10)
            .fit(FITTER);

        assertThat(fit.evidenceForWiderBlockPrior()).isCloseTo(1, within(1e-6));
    }

    @Test
    void badInputIsRefusedWithARowNumber() {
        assertThatThrownBy(() -> FITTER.fit(new double[] {1, 2}, new int[] {0, 3}, null, new int[] {0, 1}, 2))
            .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("Row 1");
        assertThatThrownBy(() -> FITTER.fit(new double[] {1, 2}, new int[] {0}, null, new int[] {0, 1}))
            .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("equally long");
        assertThatThrownBy(() -> FITTER.fit(new double[] {1, Double.POSITIVE_INFINITY}, new int[2], null, new int[2]))
            .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("infinite");
        assertThatThrownBy(() -> FITTER.fit(new double[2], new int[2], new double[] {1, Double.NaN}, new int[2]))
            .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("covariate");
        MixedModelFit fit = FITTER.fit(new double[] {1, 2, 4}, new int[3], null, new int[3]);
        assertThatThrownBy(() -> fit.mean(0).interval(1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> fit.contrast(new double[2])).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> fit.draw(new double[][] {{0, 0}})).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> fit.mean(0).familyTwoSidedP()).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void everyReasonHasASentence() {
        for (NotIdentified reason : NotIdentified.values()) {
            assertThat(reason.explanation()).endsWith(".").hasSizeGreaterThan(15);
        }
    }

    private static void assertFinite(MixedModelFit fit) {
        assertThat(fit.isAvailable()).isTrue();
        for (int a = 0; a < fit.groups(); a++) {
            assertThat(fit.mean(a).estimate()).isFinite();
            for (int b = 0; b < a; b++) {
                ContrastPosterior difference = fit.difference(a, b);
                assertThat(difference.standardDeviation()).isFinite().isPositive();
                assertThat(difference.interval(0.95).contains(difference.estimate())).isTrue();
                assertThat(difference.probabilityAbove(0.2)).isBetween(0.0, 1.0);
                assertThat(difference.familyProbabilityAbove(0.2)).isBetween(0.0, 1.0);
                assertThat(difference.familyTwoSidedP()).isBetween(0.0, 1.0);
            }
        }
        Interval residual = fit.residualStandardDeviation().interval(0.95);
        assertThat(residual.contains(fit.residualStandardDeviation().median())).isTrue();
        Interval blocks = fit.blockStandardDeviation().interval(0.95);
        assertThat(blocks.contains(fit.blockStandardDeviation().estimate())).isTrue();
        assertThat(fit.blockRatio().interval(0.95).contains(fit.blockRatio().median())).isTrue();
        PosteriorDraws draws = fit.with(GroupPrior.EXCHANGEABLE)
            .draw(QuasiRandomNormals.points(128, fit.scoresPerDraw(), 3));
        for (int i = 0; i < draws.size(); i++) {
            assertThat(draws.mean(i, 0)).isFinite();
            assertThat(draws.residualStandardDeviation(i)).isFinite().isPositive();
            assertThat(draws.tau(i)).isFinite();
        }
    }

    private static void assertAllNaN(MixedModelFit fit) {
        assertThat(fit.isAvailable()).isFalse();
        assertThat(fit.notIdentified()).anyMatch(NotIdentified::preventsFit);
        assertThat(fit.nodes()).isEmpty();
        assertThat(fit.mean(0).estimate()).isNaN();
        assertThat(fit.mean(0).standardDeviation()).isNaN();
        assertThat(fit.mean(0).probabilityAbove(0)).isNaN();
        assertThat(fit.mean(0).interval(0.9)).isEqualTo(Interval.UNDEFINED);
        assertThat(fit.blockRatio().estimate()).isNaN();
        assertThat(fit.residualStandardDeviation().interval(0.9)).isEqualTo(Interval.UNDEFINED);
        assertThat(fit.blockStandardDeviation().median()).isNaN();
        assertThat(fit.probabilityBest(true)).containsOnly(Double.NaN);
        assertThat(fit.draw(new double[2][fit.scoresPerDraw()]).mean(1, 0)).isNaN();
        assertThat(fit.evidenceForWiderBlockPrior()).isNaN();
    }
}
