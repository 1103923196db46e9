package gripwright.balance;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.model.ShopSettings;
import gripwright.units.Swingweight;
import org.junit.jupiter.api.Test;

class WordingTest {

    @Test
    void numbersHaveTheShopsMarkAndSwingweightsKeepTheirPoint() {
        assertThat(new Wording(',').format("%.1f g from D2.5 to G10.0, 0.%d in", 3.25, 5))
                .isEqualTo("3,3 g from D2.5 to G10.0, 0,5 in");
        assertThat(new Wording('.').format("%.1f g.", 3.2)).isEqualTo("3.2 g.");
    }

    @Test
    void aCommaShopReadsItsSentencesWithCommas() {
        ShopSettings comma = ShopSettings.usual().withDecimalMark(',');
        ConfigurationBalance balance =
                BalanceCalculator.with(comma).of(SevenIron.test()).labelled("C").orElseThrow();
        assertThat(BackwardSolver.with(comma).head(balance, new Wanted.AtSwingweight(new Swingweight(30.19))).sentence())
                .contains("4,3 g of tape");
    }
}
