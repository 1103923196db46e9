package gripwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Conversions against their definitions: the international yard and pound of 1959 (1 yd = 0.9144 m, 1 lb = 453.59237 g,
 * 16 oz to the pound), 12 in to the foot, 3 ft to the yard, 1760 yd to the mile; the rest is arithmetic on them.
 */
class UnitTest {

    private static final double YARD = 0.9144;

    @ParameterizedTest
    @CsvSource({"YARD, 0.9144", "FOOT, 0.3048", "YARD_HIGH, 0.9144", "FOOT_HIGH, 0.3048", "INCH, 25.4", "CENTIMETRE, 10",
        "OUNCE, 28.349523125", "METRES_PER_SECOND, 1", "METRE, 1", "METRE_HIGH, 1", "MILLIMETRE, 1", "GRAM, 1", "DEGREE, 1",
        "DEGREE_PER_SECOND, 1", "REVOLUTION_PER_MINUTE, 1", "SECOND, 1", "NONE, 1"})
    void oneOfEachInInternalUnits(Unit unit, double internal) {
        assertThat(unit.toInternal(1)).isEqualTo(internal);
    }

    @Test
    void derivedUnitsFollowFromTheDefinitions() {
        assertThat(Unit.MILES_PER_HOUR.toInternal(1)).isCloseTo(1760 * YARD / 3600, within(1e-15));
        assertThat(Unit.KILOMETRES_PER_HOUR.toInternal(3.6)).isCloseTo(1, within(1e-15));
        assertThat(Unit.INCH.toInternal(36)).isCloseTo(1000 * YARD, within(1e-12));
        assertThat(Unit.FOOT.toInternal(3)).isCloseTo(YARD, within(1e-15));
        assertThat(Unit.OUNCE.toInternal(16)).isCloseTo(453.59237, within(1e-12));
        assertThat(Unit.RADIAN_PER_SECOND.toInternal(Math.PI)).isCloseTo(180, within(1e-12));
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void thereAndBackAgain(Unit unit) {
        assertThat(unit.fromInternal(unit.toInternal(37.25))).isCloseTo(37.25, within(1e-12));
        assertThat(unit.toInternal(Double.NaN)).isNaN();
        assertThat(unit.fromInternal(Double.NaN)).isNaN();
    }
}
