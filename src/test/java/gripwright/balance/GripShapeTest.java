package gripwright.balance;

import static gripwright.balance.SevenIron.INCH;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import gripwright.model.BalanceSettings;
import gripwright.model.BuildUp;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Diameter;
import gripwright.model.Grip;
import gripwright.model.ShopSettings;
import gripwright.model.Tape;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GripShapeTest {

    private static final ShopSettings SHOP = ShopSettings.usual();
    private static final Tape TEN = new Tape("t10", "tape, 0.010 in", 0.010 * INCH, 150, false, "");
    private static final ShaftProfile SHAFT_600 = shaft(0.600, 0.600);

    private static ShaftProfile shaft(double butt, double atSix) {
        return new ShaftProfile(List.of(new Diameter(0, butt * INCH), new Diameter(6 * INCH, atSix * INCH)));
    }

    private static Diameter inches(double place, double diameter) {
        return new Diameter(place * INCH, diameter * INCH);
    }

    private static Grip grip(double core) {
        return Grip.weighed("g", "invented", 50).withCoreMm(core * INCH).withLengthMm(10.5 * INCH).withDiameters(
                List.of(inches(2, 0.900), inches(3, 0.880), inches(4, 0.860), inches(5, 0.830), inches(6, 0.800)));
    }

    private static Configuration on(Grip grip, BuildUp buildUp) {
        return Configuration.ofIndex(0, "c", "A", grip, buildUp);
    }

    private static double at(Configuration configuration, ShaftProfile shaft, ShopSettings shop, double inches) {
        return GripShape.of(configuration, shaft, shop).profile().at(inches * INCH) / INCH;
    }

    @Test
    void aCoreThatMatchesTheButtGivesTheMarkedSize() {
        assertThat(at(on(grip(0.600), BuildUp.none()), SHAFT_600, SHOP, 2)).isCloseTo(0.900, within(1e-12));
    }

    /** Taken at the bench, in a published table: a 0.580 core on a 0.600 butt is +0.020 in. */
    @Test
    void theBenchRuleSendsTheWholeMismatchOut() {
        assertThat(at(on(grip(0.580), BuildUp.none()), SHAFT_600, SHOP, 2)).isCloseTo(0.920, within(1e-12));
    }

    /** Exact geometry: √(0.900² − 0.580² + 0.600²) − 0.900 = 0.0130; 0.010 of tape on a 0.580 core 0.0065. */
    @Test
    void aConservedCrossSectionIsTheOtherEnd() {
        ShopSettings conserved = SHOP.withTransferFactor(0);
        assertThat(at(on(grip(0.580), BuildUp.none()), SHAFT_600, conserved, 2)).isCloseTo(0.913, within(0.0005));
        Configuration taped = on(grip(0.580), BuildUp.none().withTape(TEN).withFullWraps(1));
        assertThat(at(taped, shaft(0.580, 0.580), conserved, 2)).isCloseTo(0.9065, within(0.00005));
    }

    @Test
    void aGripsOwnTransferFactorWinsOverTheShops() {
        Grip own = grip(0.580).withTransferFactor(0.8);
        assertThat(at(on(own, BuildUp.none()), SHAFT_600, SHOP, 2)).isCloseTo(0.916, within(1e-12));
    }

    @Test
    void noLessArrivesThanAConservedCrossSectionDemands() {
        double least = GripWall.outsideMm(0.9 * INCH, 0.58 * INCH, 0.6 * INCH, 0);
        assertThat(GripWall.outsideMm(0.9 * INCH, 0.58 * INCH, 0.6 * INCH, 0.2)).isEqualTo(least);
    }

    /** Published: 3/4 in of stretch takes off about one wrap (0.010 in to 1/64 in are published for one). */
    @Test
    void publishedThreeQuartersOfAnInchOfStretchTakesOffAboutOneWrap() {
        double off = 0.900 - at(on(grip(0.600).withDiameters(List.of(inches(2, 0.900))),
                BuildUp.none().withStretchMm(0.75 * INCH)), SHAFT_600, SHOP, 2);
        assertThat(off).isBetween(0.010, 0.018);
    }

    @Test
    void aDiameterMeasuredAsFittedWinsOverBoth() {
        Configuration fitted = on(grip(0.580), BuildUp.none())
                .withFittedDiameters(List.of(inches(2, 0.911), inches(6, 0.815)));
        GripShape shape = GripShape.of(fitted, SHAFT_600, SHOP);
        assertThat(shape.atRuler().get(0).diameterMm()).isCloseTo(0.911 * INCH, within(1e-9));
        assertThat(shape.measuredAsFitted()).isTrue();
        assertThat(at(fitted, SHAFT_600, SHOP, 6)).isCloseTo(0.815, within(1e-9));
    }

    @Test
    void wrapsUnderTheLowerHandStayUnderTheLowerHand() {
        BuildUp lower = BuildUp.none().withTape(TEN).withLowerWraps(3).withLowerFromMm(4.5 * INCH)
                .withLowerToMm(8 * INCH);
        Configuration configuration = on(grip(0.600), lower);
        assertThat(at(configuration, SHAFT_600, SHOP, 4)).isCloseTo(0.860, within(1e-12));
        assertThat(at(configuration, SHAFT_600, SHOP, 5)).isCloseTo(0.860, within(1e-12));
        assertThat(at(configuration, SHAFT_600, SHOP, 6)).isCloseTo(0.830, within(1e-12));
        assertThat(at(configuration, SHAFT_600, SHOP, 9)).isCloseTo(0.800, within(1e-12));
    }

    @Test
    void aShaftThatTapersMakesTheLowerHandThinner() {
        assertThat(at(on(grip(0.600), BuildUp.none()), shaft(0.600, 0.570), SHOP, 6)).isCloseTo(0.770, within(1e-12));
        ShopSettings matching = SHOP.withBalance(BalanceSettings.usual().withMatchingTaper(0.030 / 6));
        assertThat(at(on(grip(0.600), BuildUp.none()), shaft(0.600, 0.570), matching, 6))
                .isCloseTo(0.800, within(1e-12));
    }

    /** Exact geometry with an assumed areal mass: 122 cm² of tape at 100 to 200 g/m² weigh 1.2 to 2.4 g. */
    @ParameterizedTest
    @CsvSource({"100, 1.2", "200, 2.4"})
    void aWrapUnderATenInchGripWeighsOneToTwoGrams(double areal, double grams) {
        Tape tape = new Tape("t", "tape", 0.25, areal, false, "");
        Configuration configuration =
                on(grip(0.600).withLengthMm(10 * INCH), BuildUp.none().withTape(tape).withFullWraps(1));
        assertThat(GripShape.of(configuration, SHAFT_600, SHOP).tapeGrams()).isCloseTo(grams, within(0.05));
    }

    @Test
    void taperAndSizeAreSaidInTheTradesTerms() {
        GripShape shape = GripShape.of(on(grip(0.600), BuildUp.none().withTape(TEN).withFullWraps(3)), SHAFT_600, SHOP);
        assertThat(shape.taper()).isCloseTo(0.100 / 4, within(1e-9));
        assertThat(shape.size().thousandths()).isEqualTo(930);
        assertThat(shape.size().text()).isEqualTo("0.930 in, +1/32");
        assertThat(shape.size().sixtyFourths()).isCloseTo(1.92, within(1e-9));
        assertThat(SizeReading.of(0.902 * INCH, SHOP.balance()).text())
                .isEqualTo("0.902 in, standard and 2 thousandths");
        assertThat(shape.underButtMm()).isCloseTo(0.630 * INCH, within(1e-9));
    }

    /** Published steps of the trade, in inches; 1/64 in is rounded to 0.015. */
    @ParameterizedTest
    @CsvSource({"0.900, standard", "0.850, ladies' standard", "0.915, +1/64", "0.930, +1/32", "0.945, +3/64",
        "0.960, 'midsize, +1/16'", "1.025, 'jumbo, +1/8'"})
    void publishedSizesHaveTheirNames(double inches, String name) {
        assertThat(SizeReading.of(inches * INCH, SHOP.balance()).name()).isEqualTo(name);
    }

    @Test
    void aGripNobodyMeasuredIsBlankWithASentence() {
        GripShape shape = GripShape.of(on(Grip.weighed("g", "x", 50), BuildUp.none()), SHAFT_600, SHOP);
        assertThat(shape.size()).isNull();
        assertThat(shape.atRuler()).isEmpty();
        assertThat(shape.sentences()).singleElement().asString().contains("Measure the outside of A");
    }

    @Test
    void aCoreThickerThanTheGripIsRefusedWithASentence() {
        ClubTest test = SevenIron.test(SevenIron.club(), grip(0.950));
        ConfigurationBalance balance = BalanceCalculator.with(SHOP).of(test).configurations().get(0);
        assertThat(balance.shape()).isNull();
        assertThat(balance.totalMassGrams()).isNotNull();
        assertThat(balance.sentences()).anyMatch(s -> s.contains("not thinner than its outside"));
        assertThatIllegalArgumentException().isThrownBy(() -> GripWall.outsideMm(20, 21, 22, 1));
    }

    @Property
    void theProfileFallsWhereTheMeasurementsDo(@ForAll @DoubleRange(min = 0.56, max = 0.62) double core,
            @ForAll @IntRange(min = 0, max = 6) int wraps, @ForAll @DoubleRange(min = 0, max = 1) double transfer,
            @ForAll @DoubleRange(min = 0, max = 20) double stretch) {
        Configuration configuration = on(grip(core).withTransferFactor(transfer),
                BuildUp.none().withTape(TEN).withFullWraps(wraps).withStretchMm(stretch));
        GripProfile profile = GripProfile.of(configuration, SHAFT_600, SHOP);
        for (double place = 0; place < profile.lengthMm(); place += 1) {
            assertThat(profile.at(place + 1)).isLessThanOrEqualTo(profile.at(place) + 1e-9);
        }
    }

    @Property
    void aWrapNeverMakesAGripThinner(@ForAll @IntRange(min = 0, max = 8) int wraps,
            @ForAll @DoubleRange(min = 0, max = 1) double transfer) {
        Grip grip = grip(0.600).withTransferFactor(transfer);
        double fewer = at(on(grip, BuildUp.none().withTape(TEN).withFullWraps(wraps)), SHAFT_600, SHOP, 2);
        double more = at(on(grip, BuildUp.none().withTape(TEN).withFullWraps(wraps + 1)), SHAFT_600, SHOP, 2);
        assertThat(more - fewer).isBetween(0.0066, 0.0100001);
    }
}
