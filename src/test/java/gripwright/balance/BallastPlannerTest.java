package gripwright.balance;

import static gripwright.balance.SevenIron.INCH;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gripwright.model.ClubKind;
import gripwright.model.ClubReading;
import gripwright.model.Grip;
import gripwright.model.ShopSettings;
import gripwright.model.TestClub;
import gripwright.units.Swingweight;
import java.util.List;
import org.junit.jupiter.api.Test;

class BallastPlannerTest {

    private static final ShopSettings SHOP = ShopSettings.usual();

    private static List<BallastPlan> plans(Grip... grips) {
        return BallastPlanner.with(SHOP).of(BalanceCalculator.with(SHOP).of(SevenIron.test(SevenIron.club(), grips)));
    }

    /** Exact mechanics: 45 g + 25 g at 4.25 in equals 70 g there in mass and swingweight, inertia within 1.5 kg·cm². */
    @Test
    void ballastAtTheHeavyGripsBalancePointMakesALightGripItsEqual() {
        BallastPlan plan = plans(SevenIron.grip("45", 45, 4.25), SevenIron.grip("70", 70, 4.25)).get(0);
        assertThat(plan.goal()).isEqualTo(BallastPlan.Goal.GRIP_MASS);
        assertThat(plan.rows().get(0).grams()).isCloseTo(25, within(1e-9));
        assertThat(plan.rows().get(0).positionMm()).isCloseTo(4.25 * INCH, within(1e-6));
        assertThat(plan.rows().get(1).grams()).isZero();
        assertThat(plan.gripMassSpreadGrams()).isCloseTo(0, within(1e-9));
        assertThat(plan.swingweightSpreadPoints()).isCloseTo(0, within(1e-9));
        assertThat(plan.inertiaSpreadKgCm2()).isBetween(1.4, 1.5);
        assertThat(plan.feasible()).isTrue();
    }

    /** By hand: 20 g at (70 × 4.5 − 50 × 4.25)/20 = 5.125 in give the first moment of the heavier grip. */
    @Test
    void ballastIsMovedSoThatSwingweightComesOutEqualToo() {
        BallastPlan plan = plans(SevenIron.grip("50", 50, 4.25), SevenIron.grip("70", 70, 4.5)).get(0);
        assertThat(plan.rows().get(0).grams()).isCloseTo(20, within(1e-9));
        assertThat(plan.rows().get(0).positionMm() / INCH).isCloseTo((70 * 4.5 - 50 * 4.25) / 20, within(1e-6));
        assertThat(plan.swingweightSpreadPoints()).isCloseTo(0, within(1e-9));
    }

    @Test
    void equalSwingweightLeavesGripMassApartWhenTheyBalanceElsewhere() {
        BallastPlan plan = plans(SevenIron.grip("50", 50, 4.25), SevenIron.grip("60", 60, 5.5)).get(1);
        assertThat(plan.goal()).isEqualTo(BallastPlan.Goal.SWINGWEIGHT);
        assertThat(plan.swingweightSpreadPoints()).isCloseTo(0, within(1e-9));
        assertThat(plan.gripMassSpreadGrams()).isGreaterThan(1);
        assertThat(plan.sentence()).contains("of grip mass");
    }

    @Test
    void equalInertiaIsComputedAndWhatItLeavesIsShown() {
        BallastPlan plan = plans(SevenIron.grip("45", 45, 4.25), SevenIron.grip("70", 70, 4.5)).get(2);
        assertThat(plan.goal()).isEqualTo(BallastPlan.Goal.INERTIA);
        assertThat(plan.inertiaSpreadKgCm2()).isCloseTo(0, within(1e-9));
        assertThat(plan.rows().get(0).grams()).isBetween(5.0, 10.0);
        assertThat(plan.swingweightSpreadPoints()).isGreaterThan(1);
    }

    @Test
    void whatAButtCannotHoldIsSaid() {
        BallastPlan plan = plans(SevenIron.grip("20", 20, 4.25), SevenIron.grip("130", 130, 4.25)).get(0);
        assertThat(plan.feasible()).isFalse();
        assertThat(plan.sentence()).startsWith("Can't be done: it would take 110 g");
        assertThat(plan.rows().get(0).grams()).isCloseTo(110, within(1e-9));
    }

    @Test
    void fromReadingsAloneInertiaIsLeftOut() {
        TestClub club = TestClub.named(ClubKind.IRON, "8-iron")
                .withReadings(List.of(new ClubReading(new Swingweight(32), 50, null, null, "cA", "")));
        List<BallastPlan> plans = BallastPlanner.with(SHOP).of(BalanceCalculator.with(SHOP).of(
                SevenIron.test(club, Grip.weighed("a", "a", 50), Grip.weighed("b", "b", 60))));
        assertThat(plans).extracting(BallastPlan::goal)
                .containsExactly(BallastPlan.Goal.GRIP_MASS, BallastPlan.Goal.SWINGWEIGHT);
        assertThat(plans.get(0).inertiaSpreadKgCm2()).isNull();
    }

    @Test
    void oneGripAloneNeedsNoPlan() {
        assertThat(plans(SevenIron.grip("45", 45, 4.25))).isEmpty();
    }
}
