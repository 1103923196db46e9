package gripwright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import gripwright.model.BalanceSettings;
import gripwright.model.ClubPart;
import gripwright.model.ClubTest;
import gripwright.model.Grip;
import gripwright.model.ShopSettings;
import gripwright.model.TestClub;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Nonsense is refused with a sentence, the unusual is warned about. */
class RefusalsTest {

    private static TestBalance balance(TestClub club, Grip grip) {
        return BalanceCalculator.with(ShopSettings.usual()).of(SevenIron.test(club, grip));
    }

    private static TestClub with(ClubPart... parts) {
        return SevenIron.club().withParts(List.of(parts));
    }

    private static final ClubPart HEAD = new ClubPart(ClubPart.Kind.HEAD, "", 270, 925, 0, null);
    private static final ClubPart SHAFT = new ClubPart(ClubPart.Kind.SHAFT, "", 115, 452, 914, null);
    private static final Grip GRIP = SevenIron.grip("g", 50, 4.25);

    @Test
    void aNegativeMass() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ClubPart(ClubPart.Kind.HEAD, "", -1, 925, 0, null))
                .withMessageContaining("can't be negative");
        assertThatIllegalArgumentException().isThrownBy(() -> Body.point(Body.Role.HEAD, "", -1, 925))
                .withMessageContaining("weigh it");
    }

    @Test
    void aBalancePointOutsideThePart() {
        TestBalance balance = balance(with(HEAD, new ClubPart(ClubPart.Kind.SHAFT, "", 115, 950, 914, null)), GRIP);
        assertThat(balance.sentences()).anyMatch(s -> s.contains("outside its own length of 914 mm"));
        assertThat(balance.configurations().get(0).totalMassGrams()).isNull();
        assertThatIllegalArgumentException().isThrownBy(() -> GRIP.withBalancePointMm(300.0))
                .withMessageContaining("outside the grip");
        assertThat(balance(with(HEAD, SHAFT, new ClubPart(ClubPart.Kind.TAPE, "", 2, -5, 250, null)), GRIP).sentences())
                .anyMatch(s -> s.contains("in front of the butt end"));
    }

    @Test
    void aCounterweightBeyondTheShaft() {
        assertThat(balance(with(HEAD, SHAFT, new ClubPart(ClubPart.Kind.COUNTERWEIGHT, "", 10, 920, 0, null)), GRIP)
                .sentences()).anyMatch(s -> s.contains("outside the shaft of 914 mm"));
    }

    @Test
    void aGripLongerThanTheShaft() {
        TestBalance balance = balance(with(HEAD, SHAFT), GRIP.withLengthMm(920));
        assertThat(balance.configurations().get(0).sentences())
                .anyMatch(s -> s.contains("(920 mm) is longer than the shaft (914 mm)"));
        assertThat(balance.configurations().get(0).totalMassGrams()).isNull();
    }

    @Test
    void aFulcrumBeyondTheClub() {
        ShopSettings far = ShopSettings.usual().withBalance(BalanceSettings.usual().withFulcrumMm(1200));
        TestBalance balance = BalanceCalculator.with(far).of(SevenIron.test(with(HEAD, SHAFT), GRIP));
        assertThat(balance.configurations().get(0).sentences())
                .anyMatch(s -> s.contains("The fulcrum at 1200 mm lies beyond the club"));
        assertThatIllegalArgumentException().isThrownBy(() -> new SwingweightScale(-1, 1.75, 161))
                .withMessageContaining("in front of the butt end");
        assertThatIllegalArgumentException().isThrownBy(() -> new SwingweightScale(355.6, 0, 161));
        assertThatIllegalArgumentException().isThrownBy(() -> new SwingweightScale(355.6, 1.75, Double.NaN));
    }

    @Test
    void aClubWithoutMass() {
        assertThatIllegalArgumentException().isThrownBy(() -> ClubBalance.of(List.of(), SwingweightScale.usual()))
                .withMessageContaining("without mass");
    }

    @Test
    void theUnusualIsWarnedAboutAndComputedAllTheSame() {
        TestBalance balance = balance(with(new ClubPart(ClubPart.Kind.HEAD, "", 400, 925, 0, null),
                new ClubPart(ClubPart.Kind.SHAFT, "", 115, 640, 914, null)), SevenIron.grip("g", 160, 4.25));
        assertThat(balance.warnings()).anyMatch(s -> s.contains("head of 400 g"))
                .anyMatch(s -> s.contains("balances at 0.70"));
        assertThat(balance.configurations().get(0).warnings()).anyMatch(s -> s.contains("grip of 160 g"));
        assertThat(balance.configurations().get(0).swingweight()).isNotNull();
    }

    @Test
    void partsWithoutAHeadAreNoClub() {
        TestBalance balance = balance(with(SHAFT), GRIP);
        assertThat(balance.configurations().get(0).inertiaKgCm2()).isNull();
        assertThat(balance.sentences()).anyMatch(s -> s.contains("parts"));
    }

    @Test
    void aGripNobodyWeighedLeavesItsConfigurationBlank() {
        ClubTest test = SevenIron.test(SevenIron.club(), GRIP.withMeasuredMassGrams(null));
        ConfigurationBalance blank = BalanceCalculator.with(ShopSettings.usual()).of(test).configurations().get(0);
        assertThat(blank.totalMassGrams()).isNull();
        assertThat(blank.swingweight()).isNull();
        assertThat(blank.sentences()).anyMatch(s -> s.startsWith("Weigh the grip of A"));
    }

    @Test
    void aClubThatWeighsOtherThanItsPartsIsWarnedAbout() {
        ClubTest test = SevenIron.test(SevenIron.club(), GRIP);
        ConfigurationBalance close = weighed(test, 442);
        assertThat(close.warnings()).isEmpty();
        assertThat(weighed(test, 452).warnings())
                .contains("A weighs 452 g on the scale, 11 g more than its parts: weigh the parts again.");
    }

    private static ConfigurationBalance weighed(ClubTest test, double grams) {
        return BalanceCalculator.with(ShopSettings.usual()).of(test.withConfigurations(
                List.of(test.configurations().get(0).withTotalMassReadGrams(grams)))).configurations().get(0);
    }
}
