package gripwright.balance;

import static gripwright.balance.SevenIron.INCH;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gripwright.model.ClubPart;
import gripwright.model.ShopSettings;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The trade's rules of thumb beside exact mechanics; where a name says 'common practice' there is no better source. */
class RulesOfThumbTest {

    private static final SwingweightScale SCALE = SwingweightScale.usual();

    private static double gramsForOnePoint(double inches) {
        return 1 / Math.abs(SCALE.points(1, inches * INCH));
    }

    /** Exact: 49.61/|14 − x| g; at the worked 7-iron's head (36.4 in) 2.21 g, at 36.5 in 2.20 g. */
    @ParameterizedTest
    @CsvSource({"4.0, 4.96", "4.25, 5.09", "4.5, 5.22", "0, 3.54", "36.4, 2.21", "36.5, 2.20", "44.5, 1.63"})
    void onePointTakesAMassThatFollowsFromItsPlace(double inches, double grams) {
        assertThat(gramsForOnePoint(inches)).isCloseTo(grams, within(0.005));
    }

    /** 1.75 in·oz a point is from memory; a shop article gives '50 gram-inches', within 0.8 %. */
    @Test
    void fromMemoryOnePointIsFiftyGramInchesWithinLessThanOnePercent() {
        assertThat(SCALE.pointGramInches()).isCloseTo(49.612, within(0.0005));
        assertThat(50 / SCALE.pointGramInches() - 1).isLessThan(0.008);
    }

    /** Letters from memory: A0 161, B0 178.5, C0 196, D0 213.5, E0 231, F0 248.5, G0 266 in·oz. */
    @ParameterizedTest
    @CsvSource({"161, A0.0", "178.5, B0.0", "196, C0.0", "213.5, D0.0", "231, E0.0", "248.5, F0.0", "266, G0.0",
        "283.5, G10.0"})
    void fromMemoryTheLettersStandTenPointsApart(double inchOunces, String text) {
        assertThat(SCALE.of(inchOunces * SwingweightScale.GRAM_MM_PER_INCH_OUNCE).text()).isEqualTo(text);
    }

    @Test
    void commonPracticeFiveGramsOfGripAreOnePointLess() {
        assertThat(SCALE.points(5, 4.25 * INCH)).isBetween(-1.25, -0.9);
    }

    @Test
    void commonPracticeTwoGramsOfHeadAreOnePointMore() {
        assertThat(SCALE.points(2, 36.5 * INCH)).isBetween(0.8, 1.25);
        assertThat(SCALE.points(2, 44.5 * INCH)).isBetween(0.8, 1.25);
    }

    @Test
    void commonPracticeNineGramsOfShaftAreOnePointMore() {
        assertThat(gramsForOnePoint(20)).isCloseTo(8.3, within(0.05));
        assertThat(gramsForOnePoint(18.5)).isCloseTo(11.0, within(0.05));
    }

    /** Exact for the two ways of making a club longer: shaft cut longer 3.5, extension in the butt 3.9 points. */
    @Test
    void commonPracticeHalfAnInchIsThreePointsOrSomeMore() {
        ClubBalance club = SevenIron.balance(50, 4.25);
        double cut = ClubLength.changed(club, 0, 0.5 * INCH).swingweight().points() - club.swingweight().points();
        List<Body> extended = new ArrayList<>();
        for (Body body : club.bodies()) {
            boolean stays = body.role() == Body.Role.GRIP || body.role() == Body.Role.TAPE;
            extended.add(stays ? body : body.movedBy(0.5 * INCH));
        }
        double plugged = ClubBalance.of(extended, SCALE).swingweight().points() - club.swingweight().points();
        assertThat(cut).isCloseTo(3.5, within(0.05));
        assertThat(plugged).isCloseTo(3.9, within(0.05));
    }

    /** Published: a grip 25 g lighter gave five points more; exact 4.9 at 4.25 in. */
    @Test
    void publishedTwentyFiveGramsOfGripWereFivePoints() {
        assertThat(SCALE.points(-25, 4.25 * INCH)).isCloseTo(4.9, within(0.05));
    }

    /** Published: 27 g at the butt took drivers from C8 to C1 and from D2 to C5; exact 7.6 at 0 and 7.1 at 1 in. */
    @Test
    void publishedTwentySevenGramsAtTheButtWereSevenPoints() {
        assertThat(SCALE.points(27, 0)).isCloseTo(-7.6, within(0.05));
        assertThat(SCALE.points(27, INCH)).isCloseTo(-7.1, within(0.05));
    }

    /** Exact: a cap 1/16 in thicker carries everything else away from the butt, about half a point. */
    @Test
    void aCapOneSixteenthThickerAddsAboutHalfAPoint() {
        double bare = 391;
        assertThat(bare * INCH / 16 / SCALE.pointGramMm()).isCloseTo(0.49, within(0.01));
        var thin = SevenIron.grip("g", 50, 4.25);
        var thick = thin.withCapThicknessMm(INCH / 16);
        TestBalance balance = BalanceCalculator.with(ShopSettings.usual())
                .of(SevenIron.test(SevenIron.club(), thin, thick));
        assertThat(balance.configurations().get(1).swingweight().points()
                - balance.configurations().get(0).swingweight().points()).isBetween(0.45, 0.55);
    }

    /** Common practice: across one size run grips differ by 30 g and more, which is about six points on an iron. */
    @Test
    void commonPracticeThirtyGramsAcrossOneSizeRunAreAboutSixPoints() {
        assertThat(SCALE.points(-30, 4.25 * INCH)).isBetween(5.5, 6.5);
    }

    /** Published: men's irons D0 to D2, a grip about 50 g; the worked 7-iron lands inside, which supports the zero. */
    @Test
    void publishedStandardMensIronsReadD0ToD2() {
        assertThat(SevenIron.balance(50, 4.25).swingweight().points()).isBetween(30.0, 32.0);
    }

    @Test
    void commonPracticeTheBareClubReadsAboutTenPointsHigher() {
        double bare = SCALE.of(SevenIron.parts().stream().filter(p -> p.kind() != ClubPart.Kind.TAPE)
                .mapToDouble(p -> SCALE.momentGramMm(p.massGrams(), p.balancePointMm())).sum()).points();
        assertThat(bare - SevenIron.balance(50, 4.25).swingweight().points()).isBetween(9.0, 11.0);
    }

    /** From memory: irons 2600 to 2800 kg·cm² about the butt. */
    @Test
    void fromMemoryIronsLieBetween2600And2800() {
        assertThat(SevenIron.balance(50, 4.25).inertiaAboutButtKgCm2()).isBetween(2600.0, 2800.0);
    }
}
