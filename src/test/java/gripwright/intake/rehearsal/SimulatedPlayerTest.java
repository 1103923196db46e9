package gripwright.intake.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gripwright.model.Handedness;
import gripwright.model.Metric;
import gripwright.model.Readings;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SimulatedPlayerTest {

    private static List<Readings> shots(SimulatedPlayer player, int count) {
        SimulatedPlayer.Visit visit = player.visit();
        visit.beginStint("A");
        List<Readings> shots = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            shots.add(visit.hit(0).readings());
        }
        return shots;
    }

    private static double mean(List<Readings> shots, Metric metric) {
        return shots.stream().mapToDouble(r -> r.given(metric).orElseThrow()).average().orElseThrow();
    }

    @Test
    void theSameSeedGivesTheSameShots() {
        SimulatedPlayer player = SimulatedPlayer.middling(Handedness.LEFT, 5);
        assertThat(shots(player, 20)).isEqualTo(shots(player, 20)).isNotEqualTo(shots(player.withSeed(6), 20));
    }

    @Test
    void aLeftHandedPlayerIsTheMirrorImage() {
        Readings right = shots(SimulatedPlayer.middling(Handedness.RIGHT, 5), 1).get(0);
        Readings left = shots(SimulatedPlayer.middling(Handedness.LEFT, 5), 1).get(0);
        for (Metric metric : right.values().keySet()) {
            double sign = switch (metric) {
                case FACE_ANGLE, CLUB_PATH, START_DIRECTION, SPIN_AXIS, OFFLINE -> -1;
                default -> 1;
            };
            assertThat(left.given(metric).orElseThrow()).as(metric.key())
                    .isEqualTo(sign * right.given(metric).orElseThrow(), within(1e-9));
        }
    }

    @Test
    void everyReadingIsSensibleAndTheMeansAreTheTruth() {
        SimulatedPlayer player = SimulatedPlayer.middling(Handedness.RIGHT, 11).undisturbed();
        List<Readings> shots = shots(player, 4000);
        for (Readings readings : shots) {
            readings.values().forEach((metric, value) -> assertThat(metric.isSensible(value))
                    .as(metric.key() + " " + value).isTrue());
        }
        assertThat(mean(shots, Metric.CLUB_SPEED)).isEqualTo(player.mean().clubSpeed(), within(0.05));
        assertThat(mean(shots, Metric.FACE_ANGLE)).isEqualTo(player.mean().face(), within(0.15));
        // An 8-iron at 36.5 m/s (82 mph) carries some 120 to 145 m (from memory).
        assertThat(mean(shots, Metric.CARRY)).isBetween(115.0, 150.0);
        assertThat(mean(shots, Metric.SPEED_RATIO, shots)).isBetween(1.25, 1.40);
    }

    private static double mean(List<Readings> shots, Metric metric, List<Readings> all) {
        return all.stream().mapToDouble(r -> r.value(metric).orElseThrow()).average().orElseThrow();
    }

    @Test
    void effectsShiftTheMeanAndWidenTheSpread() {
        SimulatedPlayer plain = SimulatedPlayer.middling(Handedness.RIGHT, 3).undisturbed();
        SimulatedPlayer changed = plain.withEffects(java.util.Map.of("A",
                new GripEffect(new Swing(1, 0, 2, 0, 0, 0, 0, 0, 0), 2)));
        assertThat(mean(shots(changed, 3000), Metric.CLUB_SPEED) - mean(shots(plain, 3000), Metric.CLUB_SPEED))
                .isEqualTo(1, within(0.1));
        assertThat(spread(shots(changed, 3000)) / spread(shots(plain, 3000))).isEqualTo(2, within(1e-6));
    }

    private static double spread(List<Readings> shots) {
        double mean = mean(shots, Metric.FACE_ANGLE);
        return Math.sqrt(shots.stream().mapToDouble(r -> Math.pow(r.given(Metric.FACE_ANGLE).orElseThrow() - mean, 2))
                .sum() / (shots.size() - 1));
    }

    @Test
    void aBallWithoutSpinFliesStraightAndFallsShortOfTheVacuumParabola() {
        BallFlight flight = BallFlight.of(50, 20, 0, 0, 0);
        assertThat(flight.offlineMetres()).isZero();
        // Without air a projectile goes v²·sin(2α)/g = 163.9 m (mechanics).
        assertThat(flight.carryMetres()).isLessThan(50 * 50 * Math.sin(Math.toRadians(40)) / 9.80665);
        assertThat(flight.carryMetres()).isGreaterThan(80);
    }

    @Test
    void aSpinAxisTiltedRightCurvesRight() {
        BallFlight tilted = BallFlight.of(50, 18, 0, 6500, 8);
        assertThat(tilted.offlineMetres()).isGreaterThan(3);
        assertThat(BallFlight.of(50, 18, 0, 6500, -8).offlineMetres()).isEqualTo(-tilted.offlineMetres(), within(1e-9));
        BallFlight driver = BallFlight.of(67, 11.5, 0, 2700, 0);
        // A drive of 150 mph ball speed carries some 215 to 240 m (from memory).
        assertThat(driver.carryMetres()).isBetween(205.0, 250.0);
        assertThat(driver.apexMetres()).isBetween(18.0, 40.0);
    }
}
