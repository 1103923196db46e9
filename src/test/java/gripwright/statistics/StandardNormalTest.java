package gripwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.special.Erf;
import org.junit.jupiter.api.Test;

class StandardNormalTest {

    @Test
    void agreesWithTheIncompleteGammaFunctionInBothTails() {
        for (double x = -37; x <= 8.3; x += 0.0173) {
            double expected = 0.5 * Erf.erfc(-x / Math.sqrt(2));
            assertThat(StandardNormal.cumulative(x)).as("at %s", x).isCloseTo(expected, within(5e-13 * expected));
            assertThat(StandardNormal.upperTail(-x)).isEqualTo(StandardNormal.cumulative(x));
        }
    }

    /** Values of mpmath 1.3.0 at 40 digits: ncdf(x). */
    @Test
    void agreesWithFortyDigitArithmetic() {
        double[][] table = {
            {-37.5, 4.6053530095819548438e-308}, {-30, 4.9067139271481870595e-198}, {-20.125, 2.2288606383103429402e-90},
            {-12, 1.7764821120776789977e-33}, {-8.5, 9.4795348222033183542e-18}, {-6, 9.865876450376981407e-10},
            {-5.657, 7.7020881721776008424e-9}, {-4, 0.000031671241833119921254}, {-2.5, 0.006209665325776135167},
            {-1.96, 0.024997895148220436213}, {-1, 0.15865525393145705141}, {-0.68, 0.24825223045357051343},
            {-0.67, 0.25142889509531010155}, {-0.3, 0.38208857781104736693}, {-0.01, 0.49601064368536839622},
            {0.5, 0.69146246127401310364}, {0.9, 0.81593987465324051735}, {1.5, 0.933192798731141934},
            {3, 0.99865010196836990547}
        };
        for (double[] row : table) {
            assertThat(StandardNormal.cumulative(row[0])).isCloseTo(row[1], within(3e-15 * row[1]));
        }
    }

    @Test
    void densityIsTheSlope() {
        for (double x = -5; x <= 5; x += 0.37) {
            double slope = (StandardNormal.cumulative(x + 1e-5) - StandardNormal.cumulative(x - 1e-5)) / 2e-5;
            assertThat(StandardNormal.density(x)).isCloseTo(slope, within(1e-10));
        }
    }

    /** SciPy 1.17.1, norm.ppf. */
    @Test
    void quantileIsTheInverse() {
        assertThat(StandardNormal.quantile(1e-300)).isCloseTo(-37.0470963, within(1e-7));
        assertThat(StandardNormal.quantile(1e-20)).isCloseTo(-9.26234009, within(1e-8));
        assertThat(StandardNormal.quantile(0.025)).isCloseTo(-1.959963984540054, within(1e-14));
        for (double x = -30; x <= 6; x += 0.21) {
            assertThat(StandardNormal.quantile(StandardNormal.cumulative(x))).isCloseTo(x,
                within(x < 0 ? 2e-14 * -x + 1e-14 : 1e-7));
        }
        assertThat(StandardNormal.quantile(0)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(StandardNormal.quantile(1)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(StandardNormal.quantile(1.2)).isNaN();
        assertThat(StandardNormal.quantile(Double.NaN)).isNaN();
    }

    @Test
    void endsAndNonsenseAreDefined() {
        assertThat(StandardNormal.cumulative(Double.NEGATIVE_INFINITY)).isZero();
        assertThat(StandardNormal.cumulative(Double.POSITIVE_INFINITY)).isEqualTo(1);
        assertThat(StandardNormal.cumulative(Double.NaN)).isNaN();
        assertThat(StandardNormal.density(Double.POSITIVE_INFINITY)).isZero();
        assertThat(StandardNormal.cumulative(0)).isEqualTo(0.5);
    }
}
