package gripwright.statistics;

import static gripwright.statistics.LevelResponse.CovariateUse;
import static gripwright.statistics.LevelResponse.Finding;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LevelResponseTest {

    private static final double INFINITE = Double.POSITIVE_INFINITY;
    private static final LevelResponseFitter FITTER = LevelResponseFitter.withDefaults();

    /**
     * R 4.2.2's lm on the raw values: the group means, weighted by their exact variances sigma^2/n, have the same
     * coefficients and covariance.
     */
    @ParameterizedTest
    @CsvSource({"oats, oats.csv, nitro, yield", "nottem, nottem.csv, month, temp", "cake_temp, cake.csv, temp, angle",
        "mtcars_hp, mtcars_subset.csv, hp, mpg"})
    void curveMatchesR(String name, String file, String x, String y) {
        JsonNode expected = ClassicalReference.json("reference_quadratic.json").get("results").get(name);
        GroupedData data = GroupedData.read(file, y, x);
        double[] levels = data.labels().stream().mapToDouble(Double::parseDouble).toArray();
        double[] means = Arrays.stream(data.groups()).mapToDouble(g -> Arrays.stream(g).average().orElseThrow()).toArray();
        double sigma = expected.get("sigma").asDouble();
        double[] variances = Arrays.stream(data.groups()).mapToDouble(g -> sigma * sigma / g.length).toArray();
        LevelResponse response = FITTER.withoutLackOfFit().fit(levels, means, diagonal(variances),
            expected.get("df").asDouble());
        LevelCurve curve = response.curve().get();
        checkCoefficients(curve, expected);
        TurningPoint turning = response.turningPoint().get();
        close(turning.level(), expected.get("vertex"));
        close(turning.value(), expected.get("value_at_vertex"));
        close(curve.statistic(2), expected.get("curvature_t"));
        close(curve.pValue(2), expected.get("curvature_p"));
        checkFieller(turning.confidenceSet(), expected.get("fieller"));
        assertThat(response.covariateUse()).isEqualTo(CovariateUse.NOT_GIVEN);
    }

    private static void checkCoefficients(LevelCurve curve, JsonNode expected) {
        double c = curve.centre();
        double b2 = curve.coefficient(2);
        JsonNode raw = expected.get("coef_raw");
        close(b2, raw.get(2));
        close(curve.coefficient(1) - 2 * b2 * c, raw.get(1));
        close(curve.coefficient(0) - curve.coefficient(1) * c + b2 * c * c, raw.get(0));
        if (Math.abs(c - expected.get("x_centre").asDouble()) < 1e-12) { // balanced: R centred at the same place
            for (int i = 0; i < 3; i++) {
                close(curve.covariance(i, i), expected.get("vcov_centred").get(i).get(i));
            }
            close(curve.covariance(0, 2), expected.get("vcov_centred").get(0).get(2));
        }
    }

    private static void checkFieller(FiellerSet set, JsonNode expected) {
        boolean finite = expected.get("type").asText().equals("finite interval");
        assertThat(set.shape()).isEqualTo(finite ? FiellerSet.Shape.BOUNDED : FiellerSet.Shape.OUTSIDE_INTERVAL);
        close(set.interval().lower(), expected.get(finite ? "lo" : "excl_lo"));
        close(set.interval().upper(), expected.get(finite ? "hi" : "excl_hi"));
    }

    private static void close(double actual, JsonNode expected) {
        double value = expected.asDouble();
        assertThat(actual).isCloseTo(value, within(1e-8 * Math.abs(value)));
    }

    private static double[][] diagonal(double... variances) {
        double[][] matrix = new double[variances.length][variances.length];
        for (int i = 0; i < variances.length; i++) {
            matrix[i][i] = variances[i];
        }
        return matrix;
    }

    /** With equal variances v the lack of fit has a closed form: residual mean square of ordinary least squares less v. */
    @Test
    void lackOfFitVarianceMatchesItsClosedForm() {
        double[] levels = {0, 1, 2, 3, 4, 5};
        double[] means = {1, 4, 2, 6, 3, 8};
        double v = 0.4;
        LevelCurve line = FITTER.fit(levels, means, diagonal(v, v, v, v, v, v), 20).line().get();
        double slope = 18.0 / 17.5; // sum (x - 2.5)(y - 4) / sum (x - 2.5)^2
        double squares = IntStream.range(0, 6).mapToDouble(i -> means[i] - 4 - slope * (levels[i] - 2.5))
            .map(r -> r * r).sum();
        double lambda = squares / 4 - v;
        assertThat(line.coefficient(1)).isCloseTo(slope, within(1e-12));
        assertThat(line.lackOfFitVariance()).isCloseTo(lambda, within(1e-10));
        assertThat(line.covariance(1, 1)).isCloseTo(squares / 4 / 17.5, within(1e-10));
        assertThat(line.degreesOfFreedom())
            .isCloseTo((v + lambda) * (v + lambda) / (v * v / 20 + lambda * lambda / 4), within(1e-8));
        LevelCurve without = FITTER.withoutLackOfFit().fit(levels, means, diagonal(v, v, v, v, v, v), 20).line().get();
        assertThat(without.lackOfFitVariance()).isZero();
        assertThat(without.degreesOfFreedom()).isEqualTo(20);
        assertThat(without.intervalAt(2.5).width()).isLessThan(line.intervalAt(2.5).width());
    }

    @Property(tries = 60)
    void unitsAndOrderDoNotMatter(@ForAll @DoubleRange(min = 0.01, max = 100) double scale,
                                  @ForAll @DoubleRange(min = -100, max = 100) double shift) {
        double[] levels = {1, 2, 3.5, 5, 7};
        double[] means = {2, 5, 6, 5.5, 1};
        LevelResponse before = FITTER.fit(levels, means, diagonal(.2, .3, .2, .1, .4), 30);
        double[] moved = {7 * scale + shift, scale + shift, 5 * scale + shift, 3.5 * scale + shift, 2 * scale + shift};
        LevelResponse after = FITTER.fit(moved, new double[] {1, 2, 5.5, 6, 5}, diagonal(.4, .2, .1, .2, .3), 30);
        assertThat(after.finding()).isEqualTo(before.finding()).isEqualTo(Finding.PEAK_WITHIN);
        assertThat(after.curve().get().pValue(2)).isCloseTo(before.curve().get().pValue(2), within(1e-8));
        Interval set = before.turningPoint().get().confidenceSet().interval();
        Interval movedSet = after.turningPoint().get().confidenceSet().interval();
        assertThat(movedSet.lower()).isCloseTo(scale * set.lower() + shift, within(1e-6 * (scale + 1)));
        assertThat(movedSet.upper()).isCloseTo(scale * set.upper() + shift, within(1e-6 * (scale + 1)));
    }

    @Test
    void correlatedMeansAgreeWithTheDenseFormula() {
        double[][] covariance = {{2, .5, .3, .1}, {.5, 1, .2, .2}, {.3, .2, 1.5, .4}, {.1, .2, .4, 3}};
        double[] levels = {0, 1, 3, 4};
        double[] means = {1, 2, 4, 3};
        LevelCurve line = FITTER.withoutLackOfFit().fit(levels, means, covariance, INFINITE).line().get();
        var v = new LUDecomposition(
            new Array2DRowRealMatrix(covariance)).getSolver().getInverse();
        var x = new Array2DRowRealMatrix(
            new double[][] {{1, -2}, {1, -1}, {1, 1}, {1, 2}});
        var inverse = new LUDecomposition(x.transpose().multiply(v).multiply(x))
            .getSolver().getInverse();
        double[] expected = inverse.multiply(x.transpose()).multiply(v).operate(means);
        assertThat(line.coefficient(0)).isCloseTo(expected[0], within(1e-12));
        assertThat(line.coefficient(1)).isCloseTo(expected[1], within(1e-12));
        assertThat(line.covariance(0, 1)).isCloseTo(inverse.getEntry(0, 1), within(1e-12));
        assertThat(line.pValue(1)).isCloseTo(
            2 * StandardNormal.upperTail(Math.abs(expected[1]) / Math.sqrt(inverse.getEntry(1, 1))), within(1e-12));
    }

    @Test
    void findingsAreToldApart() {
        double[] levels = {1, 2, 3, 4, 5};
        double[][] sharp = diagonal(.01, .01, .01, .01, .01);
        assertThat(FITTER.fit(levels, new double[] {0, 3, 4, 3, 0}, sharp, 40).finding()).isEqualTo(Finding.PEAK_WITHIN);
        assertThat(FITTER.fit(levels, new double[] {4, 1, 0, 1, 4}, sharp, 40).finding()).isEqualTo(Finding.VALLEY_WITHIN);
        assertThat(FITTER.fit(levels, new double[] {1, 2, 3, 4, 5}, sharp, 40).finding()).isEqualTo(Finding.RISING);
        assertThat(FITTER.fit(levels, new double[] {5, 4, 3, 2, 1}, sharp, 40).finding()).isEqualTo(Finding.FALLING);
        assertThat(FITTER.fit(levels, new double[] {0, 5, 9, 12, 14}, sharp, 40).finding())
            .as("a sure bend that turns beyond the levels").isEqualTo(Finding.RISING);
        LevelResponse unsure = FITTER.fit(levels, new double[] {0, 3, 4, 3, 0}, diagonal(25, 25, 25, 25, 25), 40);
        assertThat(unsure.finding()).isEqualTo(Finding.CANNOT_TELL);
        assertThat(unsure.turningPoint().get().confidenceSet().isBounded()).isFalse();
    }

    @Test
    void aBestPlaceIsBoundedExactlyWhereTheBendIsSure() {
        Random random = new Random(3);
        int bounded = 0;
        for (int i = 0; i < 300; i++) {
            double[] means = random.doubles(5, -2, 2).toArray();
            LevelResponse response = FITTER.fit(new double[] {1, 2, 3, 4, 6}, means, diagonal(.3, .3, .5, .3, .3), 25);
            boolean sure = response.curve().get().pValue(2) < 0.05;
            assertThat(response.turningPoint().get().confidenceSet().isBounded()).isEqualTo(sure);
            assertThat(response.turningPoint().get().confidenceSet().contains(response.turningPoint().get().level())).isTrue();
            bounded += sure ? 1 : 0;
        }
        assertThat(bounded).isBetween(20, 280);
    }

    /** Flat truth, five levels: how often a turning point is claimed, with and without true lack of fit. */
    @ParameterizedTest
    @CsvSource({"0, 0.015, 0.045", "0.5, 0.025, 0.065", "1, 0.06, 0.11"})
    void falseTurningPointsAreAsRareAsStated(double lackOfFit, double least, double most) {
        Random random = new Random(17);
        int claimed = 0;
        int samples = 2000;
        for (int s = 0; s < samples; s++) {
            double[] means = IntStream.range(0, 5)
                .mapToDouble(i -> random.nextGaussian() + lackOfFit * random.nextGaussian()).toArray();
            Finding finding = FITTER.fit(new double[] {0, 1, 2, 3, 4}, means, diagonal(1, 1, 1, 1, 1), 30).finding();
            claimed += finding == Finding.PEAK_WITHIN || finding == Finding.VALLEY_WITHIN ? 1 : 0;
        }
        assertThat(claimed / (double) samples).isBetween(least, most);
    }

    @Test
    void fewLevelsAreSaid() {
        LevelResponse one = FITTER.fit(new double[] {3, 3}, new double[] {1, 2}, diagonal(1, 1), 9);
        assertThat(one.finding()).isEqualTo(Finding.TOO_FEW_LEVELS);
        assertThat(one.line().shortfall()).isEqualTo(Shortfall.TOO_FEW_LEVELS);
        assertThat(FITTER.fit(new double[0], new double[0], new double[0][], 9).finding()).isEqualTo(Finding.TOO_FEW_LEVELS);
        LevelResponse three = FITTER.fit(new double[] {1, 2, 3}, new double[] {1, 2, 1}, diagonal(.1, .1, .1), 9);
        assertThat(three.line().isAvailable()).isTrue();
        assertThat(three.curve().shortfall()).isEqualTo(Shortfall.TOO_FEW_LEVELS);
        assertThat(three.finding()).isEqualTo(Finding.CANNOT_TELL);
        LevelResponse repeated = FITTER.fit(new double[] {1, 1, 2, 2, 3}, new double[] {1, 1.1, 2, 2.1, 1},
            diagonal(.1, .1, .1, .1, .1), 9);
        assertThat(repeated.distinctLevels()).isEqualTo(3);
        assertThat(repeated.curve().isAvailable()).isFalse();
        LevelResponse straight = FITTER.fit(new double[] {0, 1, 2, 3}, new double[] {5, 5, 5, 5}, diagonal(1, 1, 1, 1), 9);
        assertThat(straight.finding()).isEqualTo(Finding.CANNOT_TELL);
        assertThat(straight.curve().get().pValue(2)).isBetween(0.99, 1.0);
    }

    @Test
    void aCovariateEntersOnlyWhereItCanBeToldApart() {
        double[] levels = {1, 2, 3, 4, 5, 6};
        double[][] covariance = diagonal(.1, .1, .1, .1, .1, .1);
        double[] covariate = {50, 42, 55, 41, 53, 44};
        double[] means = IntStream.range(0, 6).mapToDouble(i -> 2 * levels[i] + 0.5 * covariate[i]).toArray();
        LevelResponse used = FITTER.fit(levels, means, covariance, 20, covariate);
        assertThat(used.covariateUse()).isEqualTo(CovariateUse.USED);
        assertThat(used.line().get().coefficient(1)).isCloseTo(2, within(1e-9));
        double[] collinear = {50, 52.1, 54, 56.2, 58, 60};
        LevelResponse without = FITTER.fit(levels, means, covariance, 20);
        LevelResponse leftOut = FITTER.fit(levels, means, covariance, 20, collinear);
        assertThat(leftOut.covariateUse()).isEqualTo(CovariateUse.LEFT_OUT_COLLINEAR);
        assertThat(leftOut.line().get().coefficient(1)).isEqualTo(without.line().get().coefficient(1));
        assertThat(FITTER.fit(levels, means, covariance, 20, new double[] {7, 7, 7, 7, 7, 7}).covariateUse())
            .isEqualTo(CovariateUse.LEFT_OUT_COLLINEAR);
        assertThat(FITTER.fit(new double[] {1, 2, 3}, new double[] {1, 2, 3}, diagonal(1, 1, 1), 9,
            new double[] {5, 9, 2}).covariateUse()).isEqualTo(CovariateUse.LEFT_OUT_TOO_FEW_GROUPS);
    }

    /** Every shape of Fieller's set against the inequality that defines it. */
    @Test
    void fiellersSetIsTheSolutionOfItsInequality() {
        double[][] cases = {{2, 3, .5, .1, .2, 2}, {2, 3, .5, .1, 4, 2}, {.1, .1, 1, .2, 1, 2}, {0, 1, .1, 0, .01, 2},
            {-3, -4, 1, -.3, .8, 2}, {2, 4, 1, 0, 4, 2}, {2, -4, 1, 0, 4, 2}};
        FiellerSet.Shape[] shapes = {FiellerSet.Shape.BOUNDED, FiellerSet.Shape.OUTSIDE_INTERVAL,
            FiellerSet.Shape.WHOLE_LINE, FiellerSet.Shape.BOUNDED, FiellerSet.Shape.BOUNDED, FiellerSet.Shape.RAY,
            FiellerSet.Shape.RAY};
        for (int k = 0; k < cases.length; k++) {
            double[] c = cases[k];
            FiellerSet set = FiellerSet.ofRatio(c[0], c[1], c[2], c[3], c[4], c[5]);
            assertThat(set.shape()).as("case %d", k).isEqualTo(shapes[k]);
            for (double rho = -20; rho <= 20; rho += 0.0137) {
                double distance = c[0] - rho * c[1];
                boolean inside = distance * distance
                    <= c[5] * c[5] * (c[2] - 2 * rho * c[3] + rho * rho * c[4]);
                assertThat(set.contains(rho)).as("case %d at %s", k, rho).isEqualTo(inside);
            }
        }
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> FITTER.fit(new double[2], new double[3], diagonal(1, 1), 9))
            .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("differ in size");
        assertThatThrownBy(() -> FITTER.fit(new double[] {1, Double.NaN}, new double[2], diagonal(1, 1), 9))
            .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("finite");
        assertThatThrownBy(() -> FITTER.fit(new double[] {1, 2}, new double[2], diagonal(1, -1), 9))
            .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("positive definite");
        assertThatThrownBy(() -> FITTER.fit(new double[] {1, 2}, new double[2], diagonal(1, 1), 0))
            .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> FITTER.withConfidence(2)).isInstanceOf(IllegalArgumentException.class);
    }
}
