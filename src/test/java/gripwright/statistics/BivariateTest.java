package gripwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BivariateTest {

    private static final JsonNode RESULTS = ClassicalReference.json("reference_bivariate.json").get("results");

    /** R 4.2.2: eigen(cov), qchisq, qf. */
    @ParameterizedTest
    @CsvSource({"ellipse_sepal, iris.csv, Sepal.Length, Sepal.Width, Species",
        "ellipse_petal, iris.csv, Petal.Length, Petal.Width, Species", "ellipse_mtcars, mtcars_subset.csv, mpg, wt, cyl"})
    void ellipsesMatchR(String name, String file, String x, String y, String group) {
        RESULTS.get(name).fields().forEachRemaining(entry -> {
            BivariatePattern pattern = pattern(file, x, y, group, entry.getKey());
            JsonNode expected = entry.getValue();
            assertThat(pattern.count()).isEqualTo(expected.get("n").asInt());
            close(pattern.centre().get().x(), expected.get("mean").get(0));
            close(pattern.centre().get().y(), expected.get("mean").get(1));
            PlaneCovariance covariance = pattern.covariance().get();
            close(covariance.xx(), expected.get("var_x"));
            close(covariance.yy(), expected.get("var_y"));
            close(covariance.xy(), expected.get("cov"));
            close(covariance.majorVariance(), expected.get("eigenvalues").get(0));
            close(covariance.minorVariance(), expected.get("eigenvalues").get(1));
            close(covariance.angleDegrees(), expected.get("angle_deg"));
            checkEllipse(pattern, EllipseKind.COVERAGE, expected.get("chisq_coverage"));
            checkEllipse(pattern, EllipseKind.PREDICTION, expected.get("F_prediction_next_shot"));
            checkEllipse(pattern, EllipseKind.CONFIDENCE_OF_CENTRE, expected.get("F_confidence_of_mean"));
        });
    }

    private static void checkEllipse(BivariatePattern pattern, EllipseKind kind, JsonNode expected) {
        Ellipse ellipse = pattern.ellipse(kind, 0.95).get();
        close(ellipse.squaredRadius(), expected.get("k2"));
        close(ellipse.semiMajor(), expected.get("semi_major"));
        close(ellipse.semiMinor(), expected.get("semi_minor"));
        close(ellipse.area(), expected.get("area"));
    }

    /** R 4.2.2: manova with Hotelling-Lawley for the pooled test; Krishnamoorthy and Yu's by formula. */
    @ParameterizedTest
    @CsvSource({"hotelling_sepal, iris.csv, Sepal.Length, Sepal.Width, Species",
        "hotelling_petal, iris.csv, Petal.Length, Petal.Width, Species",
        "hotelling_mtcars_4_8cyl, mtcars_subset.csv, mpg, wt, cyl"})
    void hotellingMatchesR(String name, String file, String x, String y, String group) {
        for (JsonNode row : RESULTS.get(name)) {
            BivariatePattern a = pattern(file, x, y, group, row.get("a").asText());
            BivariatePattern b = pattern(file, x, y, group, row.get("b").asText());
            CentreDifference pooled = CentreDifference.pooled(a, b).get();
            close(pooled.tSquared(), row.get("pooled").get("T2"));
            close(pooled.mahalanobis(), row.get("pooled").get("mahalanobis_D"));
            checkF(pooled.test(), row.get("pooled"));
            close(pooled.test().pValue(), row.get("manova_check").get("p"));
            CentreDifference unequal = CentreDifference.unequal(a, b).get();
            close(unequal.tSquared(), row.get("unequal_cov_krishnamoorthy_yu").get("T2"));
            checkF(unequal.test(), row.get("unequal_cov_krishnamoorthy_yu"));
        }
    }

    private static void checkF(FTest test, JsonNode expected) {
        close(test.statistic(), expected.get("F"));
        close(test.numerator(), expected.get("df1"));
        close(test.denominator(), expected.get("df2"));
        close(test.pValue(), expected.get("p"));
    }

    private static BivariatePattern pattern(String file, String x, String y, String group, String label) {
        return BivariatePattern.of(GroupedData.read(file, x, group).group(label),
            GroupedData.read(file, y, group).group(label));
    }

    private static void close(double actual, JsonNode expected) {
        double value = expected.asDouble();
        assertThat(actual).isCloseTo(value, within(1e-9 * Math.abs(value)));
    }

    @Property(tries = 100)
    void turningThePointsTurnsTheEllipse(@ForAll @DoubleRange(min = -80, max = 80) double degrees,
                                         @ForAll @DoubleRange(min = 0.1, max = 20) double scale) {
        double[] x = {1, 4, 2, 8, 5, 7};
        double[] y = {2, 3, 1, 5, 5, 2};
        double cosine = scale * Math.cos(Math.toRadians(degrees));
        double sine = scale * Math.sin(Math.toRadians(degrees));
        double[] turnedX = new double[6];
        double[] turnedY = new double[6];
        for (int i = 0; i < 6; i++) {
            turnedX[i] = cosine * x[i] - sine * y[i] + 40;
            turnedY[i] = sine * x[i] + cosine * y[i] - 7;
        }
        Ellipse before = BivariatePattern.of(x, y).ellipse(EllipseKind.PREDICTION, 0.8).get();
        Ellipse after = BivariatePattern.of(turnedX, turnedY).ellipse(EllipseKind.PREDICTION, 0.8).get();
        assertThat(after.semiMajor()).isCloseTo(scale * before.semiMajor(), within(1e-9 * scale));
        assertThat(after.area()).isCloseTo(scale * scale * before.area(), within(1e-7 * scale * scale));
        double turn = after.angleDegrees() - before.angleDegrees() - degrees;
        assertThat(Math.abs(Math.IEEEremainder(turn, 180))).isLessThan(1e-6);
    }

    /** The next point lies inside the prediction ellipse as often as claimed, over 20,000 samples of five points. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.8, 0.95})
    void predictionEllipsesHoldTheNextPoint(double probability) {
        Random random = new Random(7);
        int inside = 0;
        int samples = 20_000;
        for (int s = 0; s < samples; s++) {
            double[] x = DoubleStream.generate(random::nextGaussian).limit(6).toArray();
            double[] y = Arrays.stream(x).map(v -> 0.7 * v + 2 * random.nextGaussian()).toArray();
            BivariatePattern five = BivariatePattern.of(Arrays.copyOf(x, 5), Arrays.copyOf(y, 5));
            double distance = five.covariance().get().squaredDistance(x[5] - five.centre().get().x(),
                y[5] - five.centre().get().y());
            inside += distance <= five.ellipse(EllipseKind.PREDICTION, probability).get().squaredRadius() ? 1 : 0;
        }
        assertThat(inside / (double) samples).isCloseTo(probability, within(0.011)); // three standard errors
    }

    @Test
    void theOutlineLiesOnTheEllipse() {
        double[] x = {1, 4, 2, 8, 5, 7};
        double[] y = {2, 3, 1, 5, 5, 2};
        BivariatePattern pattern = BivariatePattern.of(x, y);
        Ellipse ellipse = pattern.ellipse(EllipseKind.COVERAGE, 0.5).get();
        for (double turn = 0; turn < 1; turn += 0.13) {
            PlanePoint point = ellipse.pointAt(turn);
            assertThat(pattern.covariance().get().squaredDistance(point.x() - ellipse.centre().x(),
                point.y() - ellipse.centre().y())).isCloseTo(ellipse.squaredRadius(), within(1e-9));
        }
        assertThat(EllipseKind.PREDICTION.distribution()).contains("next point").contains("F on 2 and n-2");
    }

    @Test
    void fewPointsAndPointsOnALineGiveFieldsWithoutNaN() {
        BivariatePattern none = BivariatePattern.of(new double[] {Double.NaN, 2}, new double[] {1, Double.NaN});
        assertThat(none.count()).isZero();
        assertThat(none.centre().shortfall()).isEqualTo(Shortfall.TOO_FEW_VALUES);
        BivariatePattern one = BivariatePattern.of(new double[] {3}, new double[] {4});
        assertThat(one.centre().get()).isEqualTo(new PlanePoint(3, 4));
        assertThat(one.isCollinear()).isTrue();
        assertThat(one.ellipse(EllipseKind.COVERAGE, 0.95).shortfall()).isEqualTo(Shortfall.TOO_FEW_VALUES);
        BivariatePattern two = BivariatePattern.of(new double[] {0, 2}, new double[] {0, 2});
        assertThat(two.ellipse(EllipseKind.PREDICTION, 0.95).shortfall()).isEqualTo(Shortfall.TOO_FEW_VALUES);
        Ellipse segment = two.ellipse(EllipseKind.COVERAGE, 0.95).get();
        assertThat(segment.semiMinor()).isZero();
        assertThat(segment.angleDegrees()).isCloseTo(45, within(1e-9));
        for (double[] y : new double[][] {{1, 3, 5, 7}, {2, 2, 2, 2}}) {
            BivariatePattern line = BivariatePattern.of(new double[] {0, 1, 2, 3}, y);
            assertThat(line.isCollinear()).isTrue();
            Ellipse flat = line.ellipse(EllipseKind.PREDICTION, 0.95).get();
            assertThat(flat.area()).isZero();
            assertThat(flat.semiMajor()).isGreaterThan(1);
            assertThat(flat.angleDegrees()).isBetween(-90.0, 90.0);
        }
        BivariatePattern vertical = BivariatePattern.of(new double[] {1, 1, 1}, new double[] {0, 1, 5});
        assertThat(vertical.ellipse(EllipseKind.PREDICTION, 0.5).get().angleDegrees()).isEqualTo(90);
        BivariatePattern point = BivariatePattern.of(new double[] {1, 1, 1}, new double[] {5, 5, 5});
        assertThat(point.ellipse(EllipseKind.PREDICTION, 0.5).get().semiMajor()).isZero();
    }

    @Test
    void centresThatCannotBeComparedSayWhy() {
        BivariatePattern none = BivariatePattern.of(new double[0], new double[0]);
        BivariatePattern one = BivariatePattern.of(new double[] {3}, new double[] {4});
        BivariatePattern line = BivariatePattern.of(new double[] {0, 1, 2}, new double[] {0, 1, 2});
        BivariatePattern some = BivariatePattern.of(new double[] {0, 1, 2, 5}, new double[] {3, 1, 2, 2});
        assertThat(CentreDifference.pooled(none, some).shortfall()).isEqualTo(Shortfall.TOO_FEW_VALUES);
        assertThat(CentreDifference.pooled(one, one).shortfall()).isEqualTo(Shortfall.TOO_FEW_VALUES);
        assertThat(CentreDifference.pooled(one, line).shortfall()).isEqualTo(Shortfall.COLLINEAR);
        assertThat(CentreDifference.pooled(line, line).shortfall()).isEqualTo(Shortfall.COLLINEAR);
        assertThat(CentreDifference.pooled(one, some).get().test().denominator()).isEqualTo(2);
        assertThat(CentreDifference.unequal(one, some).shortfall()).isEqualTo(Shortfall.TOO_FEW_VALUES);
        assertThat(CentreDifference.unequal(line, line).shortfall()).isEqualTo(Shortfall.COLLINEAR);
        assertThat(CentreDifference.unequal(line, some).get().tSquared()).isPositive();
    }

    @Test
    void distanceFromATarget() {
        TargetDistance distance = TargetDistance.of(new double[] {3, 0, 6, Double.NaN}, new double[] {4, 10, 8, 1},
            new PlanePoint(0, 0), 0.95);
        assertThat(distance.count()).isEqualTo(3);
        assertThat(distance.mean().get()).isCloseTo(25 / 3.0, within(1e-12));
        SampleSummary summary = SampleSummary.of(new double[] {5, 10, 10}, 0.95);
        assertThat(distance.interval().get().upper()).isCloseTo(summary.meanInterval().get().upper(), within(1e-12));
        assertThat(distance.interval().get().lower()).isGreaterThanOrEqualTo(0);
        // Distances 0 and 6: 3 ∓ 12.7 · 6/2 by t on one degree of freedom; no distance is below 0.
        Interval wide = TargetDistance.of(new double[] {0, 6}, new double[] {0, 0}, new PlanePoint(0, 0), 0.95).interval().get();
        assertThat(wide.lower()).isZero();
        assertThat(wide.upper()).isCloseTo(3 + 3 * Math.tan(0.475 * Math.PI), within(1e-9));
        TargetDistance one = TargetDistance.of(new double[] {3}, new double[] {4}, new PlanePoint(0, 0), 0.95);
        assertThat(one.mean().get()).isEqualTo(5);
        assertThat(one.interval().shortfall()).isEqualTo(Shortfall.TOO_FEW_VALUES);
    }

    /** Expected distance of a round normal pattern from its centre: sqrt(pi/2) (Rayleigh's distribution). */
    @Test
    void intervalOfTheDistanceCovers() {
        Random random = new Random(11);
        int covered = 0;
        int samples = 8000;
        for (int s = 0; s < samples; s++) {
            double[] x = DoubleStream.generate(random::nextGaussian).limit(5).toArray();
            double[] y = DoubleStream.generate(random::nextGaussian).limit(5).toArray();
            covered += TargetDistance.of(x, y, new PlanePoint(0, 0), 0.95).interval().get()
                .contains(Math.sqrt(Math.PI / 2)) ? 1 : 0;
        }
        assertThat(covered / (double) samples).isBetween(0.93, 0.96);
    }

    /** SciPy 1.17.1: long run by inverting nct.cdf, next value by t.cdf. */
    @Test
    void probabilityBeyondALimitMatchesTheNoncentralT() {
        double[][] rows = {{5, 2, 3, 6, 0.00542489004, 0.480168766, 0.145220272055},
            {12, -1, 4, 9, 0.000124810644, 0.094688922, 0.017556459621},
            {3, 0, 1, 0.5, 0.0472455384, 0.778342744, 0.353614989058},
            {40, 10, 8, 20, 0.0483859382, 0.20322922, 0.112171893873},
            {6, 5, 2, 5, 0.211811384, 0.788188616, 0.5}};
        for (double[] row : rows) {
            double[] values = standardised((int) row[0], row[1], row[2]);
            ExceedanceProbability above = ExceedanceProbability.of(values, row[3], ExceedanceProbability.Side.ABOVE, 0.95);
            assertThat(above.longRunShare().get().lower()).isCloseTo(row[4], within(1e-7));
            assertThat(above.longRunShare().get().upper()).isCloseTo(row[5], within(1e-7));
            assertThat(above.nextValue().get()).isCloseTo(row[6], within(1e-10));
            double[] mirrored = Arrays.stream(values).map(v -> -v).toArray();
            ExceedanceProbability below =
                ExceedanceProbability.of(mirrored, -row[3], ExceedanceProbability.Side.BELOW, 0.95);
            assertThat(below.longRunShare().get().upper()).isCloseTo(row[5], within(1e-7));
            assertThat(below.observedShare()).isEqualTo(above.observedShare());
        }
    }

    private static double[] standardised(int n, double mean, double deviation) {
        double[] raw = new double[n];
        for (int i = 0; i < n; i++) {
            raw[i] = i + 0.3 * Math.cos(i);
        }
        Sample sample = Sample.of(raw);
        double scale = deviation / Math.sqrt(sample.variance());
        return Arrays.stream(raw).map(v -> mean + scale * (v - sample.mean())).toArray();
    }

    @Test
    void probabilityBeyondALimitOfTooLittleSaysWhy() {
        ExceedanceProbability none = ExceedanceProbability.of(new double[] {Double.NaN}, 1,
            ExceedanceProbability.Side.BELOW, 0.95);
        assertThat(none.observedShare().shortfall()).isEqualTo(Shortfall.TOO_FEW_VALUES);
        ExceedanceProbability one = ExceedanceProbability.of(new double[] {0.5}, 1, ExceedanceProbability.Side.BELOW, 0.95);
        assertThat(one.observedShare().get()).isEqualTo(1);
        assertThat(one.nextValue().shortfall()).isEqualTo(Shortfall.TOO_FEW_VALUES);
        ExceedanceProbability flat = ExceedanceProbability.of(new double[] {2, 2}, 1, ExceedanceProbability.Side.BELOW, 0.95);
        assertThat(flat.longRunShare().shortfall()).isEqualTo(Shortfall.NO_VARIATION);
        assertThat(flat.observedShare().get()).isZero();
        assertThat(ExceedanceProbability.of(new double[] {1, 3}, 9, ExceedanceProbability.Side.ABOVE, 0.95)
            .longRunShare().get().upper()).isBetween(0.0, 1.0);
        assertThatThrownBy(() -> ExceedanceProbability.of(new double[] {1, 3}, Double.NaN,
            ExceedanceProbability.Side.ABOVE, 0.95)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> BivariatePattern.of(new double[1], new double[2]))
            .isInstanceOf(IllegalArgumentException.class);
    }
}
