package gripwright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gripwright.model.ShopSettings;
import gripwright.units.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The worked 7-iron, exact mechanics that anyone can recompute, to all the digits of the table. */
class WorkedSevenIronTest {

    private static final TestBalance BALANCE =
            BalanceCalculator.with(ShopSettings.usual()).of(SevenIron.test());

    @ParameterizedTest
    @CsvSource({
        "A, 436, 28.016, 6111.05, D1.18, 2663.1",
        "B, 441, 27.747, 6062.3, D0.20, 2664.0",
        "C, 451, 27.226, 5964.8, C8.23, 2665.7",
        "D, 461, 26.765, 5884.8, C6.62, 2668.5"})
    void partsGiveTheFiguresOfTheTable(String label, double grams, double inches, double moment, String swingweight,
            double inertia) {
        ConfigurationBalance balance = BALANCE.labelled(label).orElseThrow();
        assertThat(balance.totalMassGrams()).isCloseTo(grams, within(1e-9));
        assertThat(Unit.INCH.fromInternal(balance.balancePointMm())).isCloseTo(inches, within(0.0005));
        assertThat(balance.momentGramInches()).isCloseTo(moment, within(0.005));
        assertThat(balance.swingweight().text(2)).isEqualTo(swingweight);
        assertThat(balance.inertiaKgCm2()).isCloseTo(inertia, within(0.05));
    }

    @Test
    void theOldScalesMomentIsTwoInchesTimesMassMore() {
        ConfigurationBalance balance = BALANCE.labelled("B").orElseThrow();
        assertThat(balance.moment12GramInches())
                .isCloseTo(balance.momentGramInches() + 2 * balance.totalMassGrams(), within(1e-9));
    }

    @Test
    void gripMassMovesTheSwingweightAndHardlyTheInertia() {
        ConfigurationBalance light = BALANCE.labelled("A").orElseThrow();
        ConfigurationBalance heavy = BALANCE.labelled("D").orElseThrow();
        double points = light.swingweight().points() - heavy.swingweight().points();
        double inertia = heavy.inertiaKgCm2() / light.inertiaKgCm2() - 1;
        assertThat(points).isGreaterThan(4);
        assertThat(inertia).isBetween(0.0, 0.003);
    }

    @Test
    void aClubOf350GramsBalancingAt824MillimetresReadsD8() {
        SwingweightScale scale = SwingweightScale.usual();
        double moment = scale.momentGramMm(349.8, 824);
        assertThat(Unit.INCH.fromInternal(moment)).isCloseTo(6450.6, within(0.05));
        assertThat(moment / SwingweightScale.GRAM_MM_PER_INCH_OUNCE).isCloseTo(227.54, within(0.005));
        assertThat(scale.of(moment).text(2)).isEqualTo("D8.02");
    }

    @Test
    void sharesAddUpToTheWhole() {
        ConfigurationBalance balance = BALANCE.labelled("B").orElseThrow();
        assertThat(balance.shares().stream().mapToDouble(ClubBalance.Share::massShare).sum())
                .isCloseTo(1, within(1e-12));
        assertThat(balance.shares().stream().mapToDouble(ClubBalance.Share::inertiaShare).sum())
                .isCloseTo(1, within(1e-12));
        assertThat(balance.shares().stream().mapToDouble(ClubBalance.Share::momentGramInches).sum())
                .isCloseTo(6062.3, within(0.005));
    }

    @Test
    void aLettersNameIsAnchoredByAReading() {
        SwingweightScale scale = SwingweightScale.usual();
        double moment = scale.momentGramMm(441, 27.747 * 25.4);
        SwingweightScale own = scale.anchoredAt(new gripwright.units.Swingweight(32), moment);
        assertThat(own.of(moment).text()).isEqualTo("D2.0");
        assertThat(own.pointGramMm()).isEqualTo(scale.pointGramMm());
    }
}
