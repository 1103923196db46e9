package gripwright.balance;

import static gripwright.balance.SevenIron.INCH;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gripwright.model.BuildUp;
import gripwright.model.ClubKind;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Diameter;
import gripwright.model.Grip;
import gripwright.model.Session;
import gripwright.model.SetClub;
import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import gripwright.model.Tape;
import gripwright.units.Swingweight;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class SetPlannerTest {

    private static final ShopSettings SHOP = ShopSettings.usual();
    private static final Tape TEN = new Tape("t10", "tape, 0.010 in", 0.010 * INCH, 0, false, "");
    /** The worked 7-iron ends half an inch beyond its head's centre. */
    private static final double LENGTH = 36.9 * INCH;

    private static Grip shaped(String id, double grams) {
        return SevenIron.grip(id, grams, 4.25).withCoreMm(0.6 * INCH).withPrice(12.5).withInStock(3)
                .withDiameters(List.of(new Diameter(2 * INCH, 0.9 * INCH), new Diameter(6 * INCH, 0.8 * INCH)));
    }

    private static ClubTest test() {
        ClubTest test = SevenIron.test(SevenIron.club().withLengthMm(LENGTH)
                .withShaftDiameters(List.of(new Diameter(0, 0.6 * INCH))), shaped("50", 50), shaped("60", 60));
        List<Configuration> both = List.of(test.configurations().get(0).withGamer(true), test.configurations().get(1)
                .withBuildUp(BuildUp.none().withTape(TEN).withFullWraps(2)));
        return test.withConfigurations(both);
    }

    private static Session session(SetClub... clubs) {
        return Session.blank("s", LocalDate.of(2026, 1, 1)).withTests(List.of(test())).withSet(List.of(clubs))
                .withAdvisedConfigurationId("cB");
    }

    /** The worked 7-iron as it would come over the counter: D0.2 with a grip of 50 g and 2 g of tape. */
    private static SetClub sevenIron() {
        return SetClub.named("i7", "7-iron", ClubKind.IRON).withLengthMm(LENGTH).withGripOffGrams(52.0)
                .withTotalMassGrams(441.0).withPresentSwingweight(new Swingweight(30.19))
                .withShaftDiameters(List.of(new Diameter(0, 0.6 * INCH)));
    }

    private static SetPlan plan(Session session) {
        return SetPlanner.with(SHOP).of(session);
    }

    @Test
    void aClubIsStrippedRegrippedAndBroughtBack() {
        SetPlan.Row row = plan(session(sevenIron())).rows().get(0);
        SetBalance balance = row.balance();
        assertThat(balance.pass()).isEqualTo(SetBalance.Pass.PREDICTED);
        assertThat(balance.barePredicted().value() - 30.19).isCloseTo(52 * 9.75 / 49.6117, within(1e-3));
        // the new tape layer of 2 g is at the middle of the grip, 1 in nearer to the fulcrum than taken for the old
        assertThat(new Swingweight(balance.regripped().value()).points()).isCloseTo(28.23, within(0.06));
        assertThat(balance.headMass().grams()).isCloseTo((30.19 - balance.regripped().value()) * 49.6117 / 22.4,
                within(1e-3));
        assertThat(balance.headMass().way()).isEqualTo(HeadMass.Way.TAPE);
        assertThat(balance.after().swingweight().points()).isCloseTo(30.19, within(1e-9));
        assertThat(balance.offTargetPoints()).isCloseTo(0, within(1e-9));
        assertThat(balance.regripped().standardDeviation()).isBetween(0.5, 1.0);
        assertThat(row.gripName()).isEqualTo("invented 60");
    }

    @Test
    void theInertiaIsRebuiltFromMassMomentAndLength() {
        LeverFigures after = plan(session(sevenIron())).rows().get(0).balance().after();
        double exact = 2665.7;
        double headMass = (after.massGrams() - 451) * 36.4 * 36.4 * 6.4516e-3;
        assertThat(after.inertiaKgCm2() - headMass).isCloseTo(exact, within(0.005 * exact));
    }

    @Test
    void theBareReadingReplacesThePredictionAndShowsWhatWasOff() {
        SetClub read = sevenIron().withBareSwingweight(new Swingweight(43));
        SetPlan.Row row = plan(session(read)).rows().get(0);
        assertThat(row.balance().pass()).isEqualTo(SetBalance.Pass.BARE_READ);
        assertThat(row.balance().bare().value()).isEqualTo(43);
        assertThat(row.balance().bareOffPoints()).isCloseTo(43 - row.balance().barePredicted().value(), within(1e-9));
        assertThat(row.sentences()).anyMatch(s -> s.contains("stripped club reads") && s.contains("higher"));
        assertThat(row.balance().regripped().value()).isGreaterThan(28.5);
    }

    @Test
    void theFinalReadingShowsWhatWasOff() {
        SetClub done = sevenIron().withBareSwingweight(new Swingweight(40.4)).withFinalSwingweight(new Swingweight(31));
        SetBalance balance = plan(session(done)).rows().get(0).balance();
        assertThat(balance.pass()).isEqualTo(SetBalance.Pass.FINAL_READ);
        assertThat(balance.finalOffPoints()).isCloseTo(31 - 30.19, within(1e-9));
        assertThat(balance.offTargetPoints()).isCloseTo(31 - 30.19, within(1e-9));
    }

    @Test
    void aBareReadingAloneIsEnough() {
        SetClub bare = SetClub.named("i7", "7-iron", ClubKind.IRON).withLengthMm(LENGTH)
                .withBareSwingweight(new Swingweight(40.41)).withTargetSwingweight(new Swingweight(32)).withTarget(SetClub.Target.VALUE);
        SetBalance balance = plan(session(bare)).rows().get(0).balance();
        assertThat(balance.barePredicted()).isNull();
        assertThat(balance.regripped()).isNotNull();
        assertThat(balance.headMass().grams()).isPositive();
        assertThat(balance.after().inertiaKgCm2()).isNull();
    }

    @Test
    void wedgesKeepTheirOwnTarget() {
        SetClub wedge = sevenIron().withId("w").withName("wedge").withKind(ClubKind.WEDGE)
                .withPresentSwingweight(new Swingweight(34));
        SetPlan plan = plan(session(sevenIron(), wedge));
        assertThat(plan.rows().get(1).balance().after().swingweight().points()).isCloseTo(34, within(1e-9));
        assertThat(plan.rows().get(0).balance().after().swingweight().points()).isCloseTo(30.19, within(1e-9));
    }

    @Test
    void aFamilyWithoutATestSaysWhatWasTested() {
        SetPlan plan = plan(session(sevenIron().withKind(ClubKind.HYBRID)));
        assertThat(plan.rows().get(0).sentences()).contains("Tested with the 7-iron only.");
        assertThat(plan(session(sevenIron())).rows().get(0).sentences()).noneMatch(s -> s.contains("only"));
    }

    @Test
    void aCommonInertiaIsReachedByHeadMass() {
        SetClub heavier = sevenIron().withTarget(SetClub.Target.COMMON_INERTIA).withTargetInertiaKgCm2(2720.0);
        SetBalance balance = plan(session(heavier)).rows().get(0).balance();
        assertThat(balance.after().inertiaKgCm2()).isCloseTo(2720, within(1e-6));
        assertThat(balance.headMass().grams()).isBetween(4.0, 9.0);
        SetClub testClubs = heavier.withTargetInertiaKgCm2(null);
        assertThat(plan(session(testClubs)).rows().get(0).balance().wanted())
                .isInstanceOf(Wanted.AtInertia.class);
    }

    @Test
    void anInertiaThatCantBeKnownIsSaid() {
        SetClub light = sevenIron().withTotalMassGrams(null).withTarget(SetClub.Target.COMMON_INERTIA);
        SetPlan.Row row = plan(session(light)).rows().get(0);
        assertThat(row.balance().headMass()).isNull();
        assertThat(row.sentences()).anyMatch(s -> s.contains("needs length, total mass"));
    }

    @Test
    void wholeWrapsBringAThinnerShaftToTheTestedSize() {
        SetClub thin = sevenIron().withShaftDiameters(List.of(new Diameter(0, 0.588 * INCH)));
        SetBuild build = plan(session(thin)).rows().get(0).build();
        assertThat(build.fullWraps()).isEqualTo(3);
        assertThat(build.size().diameterMm() / INCH).isCloseTo(0.918, within(1e-6));
        assertThat(build.offMm() / INCH).isCloseTo(-0.002, within(1e-6));
        assertThat(plan(session(sevenIron())).rows().get(0).build().fullWraps()).isEqualTo(2);
    }

    @Test
    void aSizeMeasuredAsFittedGoesAlongToTheOtherShafts() {
        ClubTest test = test();
        Configuration fitted = test.configurations().get(1)
                .withFittedDiameters(List.of(new Diameter(2 * INCH, 0.914 * INCH)));
        Session session = session(sevenIron()).withTests(List.of(
                test.withConfigurations(List.of(test.configurations().get(0), fitted))));
        SetBuild build = plan(session).rows().get(0).build();
        assertThat(build.fullWraps()).isEqualTo(2);
        assertThat(build.size().diameterMm() / INCH).isCloseTo(0.914, within(1e-6));
    }

    @Test
    void costAndStockAreCountedAndThePutterIsOneRow() {
        SetClub putter = SetClub.named("p", "putter", ClubKind.PUTTER);
        Session session = session(sevenIron(), sevenIron().withId("b"), sevenIron().withId("c"),
                sevenIron().withId("d"), putter);
        SetPlan plan = SetPlanner.with(SHOP).fromStock(new Stock(List.of(), List.of(TEN))).of(session);
        assertThat(plan.cost()).isCloseTo(50, within(1e-9));
        assertThat(plan.stock()).extracting(SetPlan.StockLine::item).containsExactly("invented 60", "tape, 0.010 in",
                "tape for heads", "putter grip, as the player chooses");
        assertThat(plan.stock().get(0).needed()).isEqualTo(4);
        assertThat(plan.stock().get(0).missing()).isEqualTo(1);
        assertThat(plan.stock().get(1).needed()).isEqualTo(8);
        assertThat(plan.rows().get(4).balance()).isNull();
        assertThat(plan.rows().get(4).sentences()).singleElement().asString().contains("Out of the test");
    }

    @Test
    void whatIsMissingIsSaidForEachClub() {
        SetPlan plan = plan(session(SetClub.named("x", "6-iron", ClubKind.IRON)));
        assertThat(plan.rows().get(0).sentences()).anyMatch(s -> s.startsWith("Read its swingweight"))
                .anyMatch(s -> s.startsWith("Measure the butt"));
        assertThat(plan.rows().get(0).balance().after().swingweight()).isNull();
        assertThat(plan.rows().get(0).balance().pass()).isEqualTo(SetBalance.Pass.NOTHING_READ);
    }

    @Test
    void withoutAdviceTheGamerIsPlannedAndSaid() {
        SetPlan plan = plan(session(sevenIron()).withAdvisedConfigurationId(null));
        assertThat(plan.rows().get(0).configurationLabel()).isEqualTo("A");
        assertThat(plan.sentences()).anyMatch(s -> s.startsWith("No grip is advised yet"));
        assertThat(plan(session()).sentences()).anyMatch(s -> s.startsWith("Write down the clubs"));
    }

    @Test
    void anotherGripCanBeAdvisedForAFamily() {
        SetPlan plan = SetPlanner.with(SHOP).advising(ClubKind.IRON, "cA").of(session(sevenIron()));
        assertThat(plan.rows().get(0).configurationLabel()).isEqualTo("A");
    }

    @Test
    void aGripOfTheStockListThatNobodyCountedIsSimplyNotCounted() {
        Stock stock = new Stock(List.of(shaped("60", 60).withInStock(null)), List.of());
        SetPlan plan = SetPlanner.with(SHOP).fromStock(stock).of(session(sevenIron()));
        assertThat(plan.stock()).first().satisfies(line -> {
            assertThat(line.inStock()).isNull();
            assertThat(line.needed()).isEqualTo(1);
            assertThat(line.missing()).isZero();
        });
    }
}
