package gripwright.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** What a shot's readings refuse, and what they work out. */
class ReadingsTest {

    @Test
    void refusesWhatNoClubOrBallDoes() {
        assertThatThrownBy(() -> Readings.of(Metric.CLUB_SPEED, 1e200)).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("club speed").hasMessageContaining("beyond a billion");
        assertThatThrownBy(() -> Readings.of(Metric.OFFLINE, -1e200)).hasMessageContaining("beyond a billion");
        assertThatThrownBy(() -> Readings.of(Metric.CARRY, Double.NaN)).hasMessageContaining("must be a number");
    }

    @Test
    void worksOutTheRatioWhereItIsOne() {
        Readings both = Readings.of(Metric.BALL_SPEED, 50).with(Metric.CLUB_SPEED, 40);
        assertThat(both.value(Metric.SPEED_RATIO)).hasValue(1.25);
        assertThat(both.with(Metric.CLUB_SPEED, 0).value(Metric.SPEED_RATIO)).isEmpty();
        assertThat(both.with(Metric.CLUB_SPEED, 1e-300).value(Metric.SPEED_RATIO)).isEmpty();
    }
}
