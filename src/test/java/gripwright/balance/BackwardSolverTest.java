package gripwright.balance;

import static gripwright.balance.SevenIron.INCH;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import gripwright.model.ClubKind;
import gripwright.model.ClubReading;
import gripwright.model.ClubTest;
import gripwright.model.Grip;
import gripwright.model.ShopSettings;
import gripwright.model.TestClub;
import gripwright.units.Swingweight;
import java.util.List;
import org.junit.jupiter.api.Test;

class BackwardSolverTest {

    private static final ShopSettings SHOP = ShopSettings.usual();
    private static final TestBalance BALANCE = BalanceCalculator.with(SHOP).of(SevenIron.test());
    private static final BackwardSolver SOLVER = BackwardSolver.with(SHOP);

    private static ConfigurationBalance of(String label) {
        return BALANCE.labelled(label).orElseThrow();
    }

    private static Wanted at(double points) {
        return new Wanted.AtSwingweight(new Swingweight(points));
    }

    /** Exact mechanics: a 70 g grip at 4.5 in like a 50 g one at 4.25 in takes 7.9 g of head and 72 kg·cm². */
    @Test
    void headMassMatchesAHeavierGripAtTheCostOfInertia() {
        Remedy head = SOLVER.head(of("D"), new Wanted.AtSwingweight(of("B").swingweight()));
        assertThat(head.amount()).isCloseTo(7.9, within(0.05));
        assertThat(head.after().inertiaKgCm2() - of("B").inertiaKgCm2()).isCloseTo(72, within(0.5));
        assertThat(head.after().swingweight().points()).isCloseTo(of("B").swingweight().points(), within(1e-9));
        assertThat(head.feasible()).isTrue();
        assertThat(head.sentence()).contains("screw").contains("raises the inertia");
    }

    /** Exact mechanics: 10 g at 0.5 in lower the swingweight by 2.7 points. */
    @Test
    void aButtWeightLowersTheSwingweight() {
        Remedy butt = SOLVER.butt(of("B"), at(of("B").swingweight().points() - 2.7), 0.5 * INCH);
        assertThat(butt.amount()).isCloseTo(10, within(0.1));
        assertThat(butt.feasible()).isTrue();
    }

    @Test
    void aButtWeightToRaiseTheSwingweightIsTheWrongWay() {
        Remedy butt = SOLVER.butt(of("D"), at(32), 0.5 * INCH);
        assertThat(butt.feasible()).isFalse();
        assertThat(butt.amount()).isNegative();
        assertThat(butt.sentence()).startsWith("The wrong way").contains("lowers swingweight");
        assertThat(butt.after().swingweight().points()).isCloseTo(32, within(1e-9));
    }

    /** Common practice, no source: about 6 g of tape at most; twelve points are some 27 g, another head. */
    @Test
    void tapeIsTakenUpToItsLimit() {
        Remedy tape = SOLVER.head(of("B"), at(of("B").swingweight().points() + 2));
        assertThat(tape.amount()).isBetween(0.0, 6.0);
        assertThat(tape.sentence()).contains("tape");
        assertThat(SOLVER.head(of("B"), at(of("B").swingweight().points() + 12)).sentence()).contains("heavier head");
    }

    @Test
    void massOffTheHeadIsSaidNotClipped() {
        Remedy head = SOLVER.head(of("B"), at(28));
        assertThat(head.amount()).isNegative();
        assertThat(head.feasible()).isFalse();
        assertThat(head.sentence()).contains("would have to lose");
    }

    @Test
    void massThatWasAddedCanComeOffAgain() {
        ClubTest test = SevenIron.test(SevenIron.club(), SevenIron.grip("50", 50, 4.25));
        ClubTest heavier = test.withConfigurations(
                List.of(test.configurations().get(0).withHeadMassAddedGrams(6)));
        ConfigurationBalance balance = BalanceCalculator.with(SHOP).of(heavier).configurations().get(0);
        Remedy off = SOLVER.head(balance, at(balance.swingweight().points() - 2));
        assertThat(off.feasible()).isTrue();
        assertThat(off.sentence()).contains("off again");
    }

    /** Exact mechanics: half an inch of the same shaft makes 3.5 points on the worked 7-iron. */
    @Test
    void lengthIsSolvedForAndSaidToBeNoCure() {
        Remedy length = SOLVER.length(of("B"), at(of("B").swingweight().points() + 3.5));
        assertThat(length.amount() / INCH).isBetween(0.45, 0.55);
        assertThat(length.sentence()).contains("no cure");
        assertThat(SOLVER.length(of("B"), at(60)).feasible()).isFalse();
    }

    @Test
    void inertiaAndBalancePointAreSolvedForToo() {
        Remedy inertia = SOLVER.head(of("B"), new Wanted.AtInertia(2700));
        assertThat(inertia.after().inertiaKgCm2()).isCloseTo(2700, within(1e-9));
        Remedy point = SOLVER.head(of("D"), new Wanted.AtBalancePoint(of("B").balancePointMm()));
        assertThat(point.after().balancePointMm()).isCloseTo(of("B").balancePointMm(), within(1e-9));
        assertThat(SOLVER.butt(of("B"), new Wanted.AtInertia(2700), 12.7).sentence()).contains("more than a butt holds");
        assertThat(SOLVER.length(of("B"), new Wanted.AtInertia(2700)).after().inertiaKgCm2())
                .isCloseTo(2700, within(1e-6));
        assertThat(SOLVER.head(of("B"), new Wanted.AtBalancePoint(2000)).feasible()).isFalse();
    }

    @Test
    void fromReadingsOnlyTheSwingweightIsSolvedForWhereTheHeadsLeverIsKnown() {
        TestClub club = TestClub.named(ClubKind.IRON, "8-iron")
                .withReadings(List.of(new ClubReading(new Swingweight(32), 50, null, null, "cA", "")));
        Grip grip = Grip.weighed("g", "x", 50);
        ConfigurationBalance blind = BalanceCalculator.with(SHOP).of(SevenIron.test(club, grip)).configurations().get(0);
        assertThat(SOLVER.head(blind, at(34)).sentence()).contains("Measure the length");
        ConfigurationBalance known = BalanceCalculator.with(SHOP)
                .of(SevenIron.test(club.withLengthMm(37 * INCH), grip)).configurations().get(0);
        Remedy head = SOLVER.head(known, at(33));
        assertThat(head.amount()).isCloseTo(49.6117 / (36.5 - 14), within(1e-4));
        assertThat(head.after().massGrams()).isNull();
        assertThat(SOLVER.length(known, at(33)).amount()).isNull();
        assertThat(SOLVER.head(known, new Wanted.AtInertia(2700)).sentence()).contains("needs the parts");
    }

    @Test
    void nonsenseIsRefusedWithASentence() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Wanted.AtInertia(-1))
                .withMessageContaining("above zero");
        assertThatIllegalArgumentException().isThrownBy(() -> new Wanted.AtBalancePoint(Double.NaN));
    }
}
