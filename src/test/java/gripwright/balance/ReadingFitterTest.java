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
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ReadingFitterTest {

    private static final SwingweightScale SCALE = SwingweightScale.usual();
    private static final Estimate PRIOR = new Estimate(4.25 * INCH, 0.25 * INCH);
    private static final ReadingFitter FITTER = new ReadingFitter(SCALE, 0.5, PRIOR, new Estimate(391, 0.5));
    private static final double BARE = SCALE.of(SevenIron.parts().stream()
            .mapToDouble(p -> SCALE.momentGramMm(p.massGrams(), p.balancePointMm())).sum()).points();

    /** What the club would read with this grip at this place, plus an error. */
    private static ScaleReading reading(double grams, double inches, double error) {
        double points = BARE + SCALE.points(grams, inches * INCH) + error;
        return new ScaleReading("reading", null, new Swingweight(points), load(grams));
    }

    private static ScaleReading.Load load(double grams) {
        return new ScaleReading.Load(grams, 0, 0, 0);
    }

    @Test
    void oneReadingIsEnoughToPredictTheOtherSwingweights() {
        ReadingFit fit = FITTER.fit(List.of(reading(50, 4.25, 0)));
        assertThat(new Swingweight(fit.predict(load(60)).value()).text(2)).isEqualTo("C8.23");
        assertThat(new Swingweight(fit.predict(load(45)).value()).text(2)).isEqualTo("D1.18");
        assertThat(fit.gripBalancePointMm().value()).isCloseTo(PRIOR.value(), within(1e-9));
        assertThat(fit.gripBalancePointMm().standardDeviation()).isCloseTo(PRIOR.standardDeviation(), within(1e-6));
    }

    @Test
    void theDoubtGrowsAwayFromTheGripThatWasRead() {
        ReadingFit fit = FITTER.fit(List.of(reading(50, 4.25, 0)));
        double at50 = fit.predict(load(50)).standardDeviation();
        double at80 = fit.predict(load(80)).standardDeviation();
        assertThat(at50).isCloseTo(0.5, within(1e-9));
        // 30 g with a quarter of an inch of doubt in their place: 7.5 g·in, 0.151 points
        assertThat(at80).isCloseTo(Math.hypot(0.5, 30 * 0.25 / 49.6117), within(1e-4));
    }

    /**
     * Recomputable: two readings of 0.5 point noise with grips 25 g apart fix x only to 0.5 √2 49.61 / 25 = 1.4 in, with
     * grips 35 g apart to 1.0 in: 'about an inch'. So the prior of a quarter of an inch decides.
     */
    @Test
    void noiseAloneLeavesAboutAnInchSoThePriorDecides() {
        ReadingFitter flat = new ReadingFitter(SCALE, 0.5, new Estimate(4.25 * INCH, 1e4), new Estimate(391, 0.5));
        List<ScaleReading> two = List.of(reading(45, 4.25, 0.3), reading(80, 4.25, -0.3));
        assertThat(flat.fit(two).gripBalancePointMm().standardDeviation() / INCH).isCloseTo(1.0, within(0.05));
        ReadingFit held = FITTER.fit(two);
        assertThat(held.gripBalancePointMm().value() / INCH).isCloseTo(4.25, within(0.1));
    }

    @Test
    void manyReadingsFindGripsThatBalanceElsewhere() {
        List<ScaleReading> many = new ArrayList<>();
        for (int k = 0; k < 400; k++) {
            many.add(reading(30 + (k % 9) * 10, 4.75, 0));
        }
        assertThat(FITTER.fit(many).gripBalancePointMm().value() / INCH).isCloseTo(4.75, within(0.02));
    }

    /** The posterior once more by brute force over a grid of bare swingweights and balance points. */
    @Test
    void thePosteriorAgreesWithAGrid() {
        List<ScaleReading> readings = List.of(reading(42, 4.25, 0.4), reading(58, 4.5, -0.3), reading(75, 4.5, 0.2));
        double weights = 0;
        double placeSum = 0;
        double placeSquares = 0;
        double predictedSum = 0;
        for (double place = 3 * INCH; place <= 5.5 * INCH; place += 0.05 * INCH) {
            for (double bare = BARE - 4; bare <= BARE + 4; bare += 0.02) {
                double logWeight = -0.5 * Math.pow((place - PRIOR.value()) / PRIOR.standardDeviation(), 2);
                for (ScaleReading reading : readings) {
                    double expected = bare + SCALE.points(reading.load().gripGrams(), place);
                    logWeight -= 0.5 * Math.pow((reading.read().points() - expected) / 0.5, 2);
                }
                double weight = Math.exp(logWeight);
                weights += weight;
                placeSum += weight * place;
                placeSquares += weight * place * place;
                predictedSum += weight * (bare + SCALE.points(100, place));
            }
        }
        double mean = placeSum / weights;
        ReadingFit fit = FITTER.fit(readings);
        assertThat(fit.gripBalancePointMm().value()).isCloseTo(mean, within(0.01));
        assertThat(fit.gripBalancePointMm().standardDeviation())
                .isCloseTo(Math.sqrt(placeSquares / weights - mean * mean), within(0.01));
        assertThat(fit.predict(load(100)).value()).isCloseTo(predictedSum / weights, within(0.002));
    }

    /** Seeded simulation: honest readings are seldom flagged, one that is three points off nearly always. */
    @Test
    void honestReadingsAreSeldomFlaggedAndAWrongOneMostly() {
        Random random = new Random(20260314);
        int falseFlags = 0;
        int found = 0;
        int sessions = 2000;
        for (int session = 0; session < sessions; session++) {
            List<ScaleReading> honest = new ArrayList<>();
            for (double grams : new double[] {42, 50, 52, 58, 70}) {
                honest.add(reading(grams, 4.25, 0.5 * random.nextGaussian()));
            }
            falseFlags += FITTER.fit(honest).hasFlagged() ? 1 : 0;
            List<ScaleReading> wrong = new ArrayList<>(honest);
            wrong.set(2, reading(52, 4.25, 3 + 0.5 * random.nextGaussian()));
            found += FITTER.fit(wrong).residuals().get(2).flagged() ? 1 : 0;
        }
        assertThat(falseFlags / (double) sessions).isLessThan(0.02);
        assertThat(found / (double) sessions).isGreaterThan(0.95);
    }

    @Test
    void theMisfitIsReadLessFitted() {
        ReadingFit fit = FITTER.fit(List.of(reading(50, 4.25, 0.4), reading(50, 4.25, -0.4)));
        assertThat(fit.residuals().get(0).misfitPoints()).isCloseTo(0.4, within(1e-9));
        assertThat(fit.residuals().get(1).misfitPoints()).isCloseTo(-0.4, within(1e-9));
        assertThat(fit.hasFlagged()).isFalse();
    }

    @Test
    void fromThreeReadingsOnOneThatCantBeRightIsFlaggedAndTheRestPredictsIt() {
        ReadingFit fit = FITTER.fit(List.of(reading(45, 4.25, 0.1), reading(50, 4.25, -3), reading(70, 4.25, -0.1)));
        ReadingFit.Residual wrong = fit.residuals().get(1);
        assertThat(wrong.flagged()).isTrue();
        assertThat(fit.residuals().get(0).flagged()).isFalse();
        assertThat(fit.residuals().get(2).flagged()).isFalse();
        assertThat(new Swingweight(wrong.fromTheRest().value()).text()).isEqualTo("D0.2");
        assertThat(wrong.misfitPoints()).isCloseTo(-3, within(0.15));
        assertThat(wrong.sentence()).contains("can't be right").contains("read it again");
        assertThat(fit.predict(load(50)).value()).isCloseTo(30.2, within(0.15));
    }

    @Test
    void twoReadingsThatDisagreeAskForAThirdAndFlagNone() {
        ReadingFit fit = FITTER.fit(List.of(reading(50, 4.25, 0), reading(50, 4.25, 4)));
        assertThat(fit.hasFlagged()).isFalse();
        assertThat(fit.residuals().get(0).sentence()).contains("read a third");
    }

    @Test
    void noReadingIsRefusedWithASentence() {
        assertThatIllegalArgumentException().isThrownBy(() -> FITTER.fit(List.of()))
                .withMessageContaining("Read the swingweight");
    }

    private static ClubTest readOnly(ClubReading... readings) {
        TestClub club = TestClub.named(ClubKind.IRON, "7-iron").withReadings(List.of(readings));
        Grip light = Grip.weighed("l", "light", 50).withCapThicknessMm(4);
        Grip heavy = Grip.weighed("h", "heavy", 60).withCapThicknessMm(4);
        return SevenIron.test(club, light, heavy);
    }

    private static TestBalance balance(ClubTest test) {
        return BalanceCalculator.with(ShopSettings.usual()).of(test);
    }

    @Test
    void fromOneReadingTheSwingweightsAreKnownAndTheRestIsBlankWithASentence() {
        TestBalance balance = balance(readOnly(new ClubReading(new Swingweight(32), 50, null, null, "cA", "")));
        ConfigurationBalance other = balance.labelled("B").orElseThrow();
        assertThat(other.swingweight().points()).isCloseTo(32 - 10 * 9.75 / 49.6117, within(1e-4));
        assertThat(other.totalMassGrams()).isNull();
        assertThat(other.balancePointMm()).isNull();
        assertThat(other.momentGramInches()).isNull();
        assertThat(other.inertiaKgCm2()).isNull();
        assertThat(other.sentences()).anyMatch(s -> s.contains("Weigh the whole club"));
        assertThat(balance.sentences()).anyMatch(s -> s.contains("weigh head and shaft"));
    }

    @Test
    void theTotalMassGivesTheBalancePointToo() {
        TestBalance balance = balance(readOnly(new ClubReading(new Swingweight(30.19), 50, 441.0, null, "cA", "")));
        ConfigurationBalance read = balance.labelled("A").orElseThrow();
        assertThat(read.totalMassGrams()).isCloseTo(441, within(1e-9));
        assertThat(read.balancePointMm() / INCH).isCloseTo(27.747, within(0.002));
        assertThat(balance.labelled("B").orElseThrow().totalMassGrams()).isCloseTo(451, within(1e-9));
        assertThat(read.inertiaKgCm2()).isNull();
    }

    @Test
    void aMeasuredBalancePointWinsOverTheScalesZero() {
        double zeroApart = 3;
        TestBalance balance = balance(readOnly(
                new ClubReading(new Swingweight(30.19 + zeroApart), 50, 441.0, 27.747 * INCH, "cA", "")));
        ConfigurationBalance read = balance.labelled("A").orElseThrow();
        assertThat(read.balancePointMm() / INCH).isCloseTo(27.747, within(1e-6));
        assertThat(read.swingweight().points()).isCloseTo(33.19, within(1e-6));
    }

    @Test
    void nothingKnownIsSaid() {
        TestBalance balance = balance(readOnly());
        assertThat(balance.labelled("A").orElseThrow().swingweight()).isNull();
        assertThat(balance.sentences()).singleElement().asString().contains("read its swingweight with one weighed grip");
    }

    @Test
    void partsAreAnchoredToTheShopsOwnScale() {
        TestClub club = SevenIron.club().withReadings(
                List.of(new ClubReading(new Swingweight(32.2), 52, null, null, "cA", "")));
        TestBalance balance = balance(SevenIron.test(club, SevenIron.grip("50", 50, 4.25), SevenIron.grip("60", 60, 4.25)));
        ConfigurationBalance other = balance.labelled("B").orElseThrow();
        assertThat(balance.scaleOffsetPoints()).isCloseTo(2.0, within(0.01));
        assertThat(other.swingweight().text(1)).isEqualTo("D0.2");
        assertThat(other.momentGramInches()).isCloseTo(5964.8, within(0.005));
        assertThat(balance.sentences()).anyMatch(s -> s.contains("2.0 points higher"));
    }

    @Test
    void aBareReadingCountsWithoutItsCap() {
        TestBalance balance = balance(readOnly(new ClubReading(new Swingweight(40), 0, 391.0, null, null, "")));
        double expected = 40 + 50 * (107.95 - 355.6) / SCALE.pointGramMm() + 391 * 4 / SCALE.pointGramMm();
        assertThat(balance.labelled("A").orElseThrow().swingweight().points()).isCloseTo(expected, within(1e-9));
    }

    /**
     * By hand on the worked 7-iron: with the 50 g grip and its layer of 2 g the moment is 6062.3 g·in, 6062.3 / 49.6117 − 92 =
     * 30.195 points; stripped it is 270 × 22.4 + 115 × 3.8 + 4 × 21 = 6569 g·in, 40.409 points. One club, so either
     * reading predicts the other.
     */
    @Test
    void theHoldingLayerIsWeighedWithTheGripAndMissingOnAStrippedClub() {
        for (ClubReading reading : List.of(new ClubReading(new Swingweight(30.195), 52, null, null, "cA", ""),
                new ClubReading(new Swingweight(40.409), 0, null, null, null, ""))) {
            TestBalance balance = balance(SevenIron.test(SevenIron.club().withReadings(List.of(reading)),
                    SevenIron.grip("50", 50, 4.25)));
            assertThat(balance.labelled("A").orElseThrow().swingweight().points()).isCloseTo(30.195, within(0.001));
            assertThat(balance.scaleOffsetPoints()).isCloseTo(0, within(0.001));
        }
    }

    @Test
    void aReadingWrittenDownWithTheClubAndWithItsConfigurationCountsOnce() {
        TestClub club = SevenIron.club().withReadings(
                List.of(new ClubReading(new Swingweight(30.5), 52, 443.0, null, "cA", "")));
        ClubTest test = SevenIron.test(club, SevenIron.grip("50", 50, 4.25));
        ClubTest twice = test.withConfigurations(test.configurations().stream()
                .map(c -> c.withSwingweightRead(new Swingweight(30.5))).toList());
        assertThat(balance(twice).readings().residuals()).hasSize(1);
        assertThat(balance(twice).readings().bare().standardDeviation())
                .isEqualTo(balance(test).readings().bare().standardDeviation(), within(1e-9));
    }
}
