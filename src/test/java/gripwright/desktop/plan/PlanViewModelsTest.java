package gripwright.desktop.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gripwright.desktop.support.DemoSessions;
import gripwright.desktop.support.Workbench;
import gripwright.desktop.support.Workbenches;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Plan;
import gripwright.model.Session;
import gripwright.model.Stint;
import gripwright.planning.SizeAndMass;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlanViewModelsTest {

    private final Workbench workbench = Workbenches.on(withoutStints());
    private final MatrixViewModel matrix = new MatrixViewModel(workbench);
    private final FindingsViewModel findings = new FindingsViewModel(workbench, matrix.check());
    private final OrderViewModel order = new OrderViewModel(workbench);

    private static Session withoutStints() {
        Session demo = DemoSessions.leftHanded();
        return demo.withTest(demo.tests().get(0).withStints(List.of()));
    }

    private ClubTest test() {
        return workbench.test().get();
    }

    private List<String> queue() {
        return test().stints().stream().map(stint -> test().configuration(stint.configurationId()).orElseThrow().label())
                .toList();
    }

    @Test
    void aConfigurationFromStockTakesTheNextLetterAndItsLook() {
        matrix.add(matrix.stockGrips().get(5));
        Configuration added = test().configurations().get(5);
        assertThat(added.label()).isEqualTo("F");
        assertThat(added.colourIndex()).isEqualTo(5);
        assertThat(workbench.undoLabel().get()).isEqualTo("Add configuration F");
        assertThat(matrix.columns()).hasSize(6);
    }

    @Test
    void wrapsAreOfTheShopsTapeAndBallastSitsWhereGripsBalance() {
        MatrixViewModel.Column a = matrix.columns().get(0);
        var wraps = a.fullWraps();
        wraps.text().set("2");
        assertThat(wraps.commit()).isTrue();
        assertThat(test().configurations().get(0).buildUp().tape().id()).isEqualTo("tape-1");
        var ballast = a.ballast();
        ballast.text().set("16");
        assertThat(ballast.commit()).isTrue();
        assertThat(test().configurations().get(0).buildUp().ballastPositionMm())
                .isEqualTo(workbench.settings().get().gripBalancePointMm());
    }

    @Test
    void exactlyOneIsPlayedNowAndTheReferenceFollowsIt() {
        MatrixViewModel.Column b = matrix.columns().get(1);
        b.makeGamer(true);
        assertThat(test().configurations().stream().filter(Configuration::gamer).map(Configuration::label))
                .containsExactly("B");
        assertThat(b.isReference().getValue()).isTrue();
        matrix.columns().get(2).makeReference();
        assertThat(b.isReference().getValue()).isFalse();
        assertThat(test().reference().orElseThrow().label()).isEqualTo("C");
    }

    @Test
    void aMeasuredDiameterWinsOverThePrediction() {
        MatrixViewModel.Column c = matrix.columns().get(2);
        MatrixFigures figures = new MatrixFigures(workbench);
        var shown = c.figure(column -> figures.diameter(column, 50.8));
        String predicted = shown.getValue();
        assertThat(predicted).matches("0\\.9\\d\\d");
        var fitted = c.fitted(50.8);
        fitted.text().set("0.951");
        assertThat(fitted.commit()).isTrue();
        assertThat(shown.getValue()).isEqualTo("0.951").isNotEqualTo(predicted);
    }

    @Test
    void theCureMakesAllMatchInMassAndIsOneStep() {
        assertThat(matrix.check().value().get().sizeAndMass().finding()).isEqualTo(SizeAndMass.Finding.CONFOUNDED);
        assertThat(findings.mayCure().getValue()).isTrue();
        assertThat(findings.cure().getValue()).contains("16.0 g in A");
        findings.applyCure();
        assertThat(matrix.check().value().get().sizeAndMass().finding()).isEqualTo(SizeAndMass.Finding.SIZE_ALONE);
        assertThat(findings.mayCure().getValue()).isFalse();
        List<Double> masses = matrix.check().value().get().columns().values().stream()
                .map(column -> column.gripMassGrams()).toList();
        assertThat(masses).allSatisfy(mass -> assertThat(mass).isCloseTo(masses.get(0), within(0.01)));
        workbench.undo();
        assertThat(test()).isEqualTo(withoutStints().tests().get(0));
    }

    @Test
    void theOrderIsMadeByItsRuleAndCanBeChangedByHand() {
        assertThat(order.mayMake().getValue()).isTrue();
        order.make();
        assertThat(queue()).isEqualTo(List.of("A", "B", "C", "D", "E", "E", "D", "C", "B", "A"));
        order.rows().get(0).down().run();
        assertThat(queue()).startsWith("B", "A");
        assertThat(test().plan().order()).isEqualTo(Plan.Order.BY_HAND);
        assertThat(order.mayMake().getValue()).isFalse();
        order.rows().get(9).remove().run();
        order.add(test().configurations().get(2), Stint.Kind.SCORED);
        assertThat(queue()).endsWith("C");
        var shots = order.rows().get(0).shots();
        shots.text().set("5");
        assertThat(shots.commit()).isTrue();
        assertThat(test().stints().get(0).plannedShots()).isEqualTo(5);
    }

    @Test
    void aSeededRandomOrderIsTheSameEachTime() {
        order.order().keep().apply(Plan.Order.RANDOM);
        var seed = order.seed();
        seed.text().set("7");
        seed.commit();
        order.make();
        List<String> once = queue();
        order.make();
        assertThat(queue()).isEqualTo(once);
        seed.text().set("8");
        seed.commit();
        order.make();
        assertThat(queue()).isNotEqualTo(once).containsExactlyInAnyOrderElementsOf(once);
    }

    @Test
    void timeAndDetectableDifferenceFollowThePlan() {
        assertThat(findings.time().getValue()).startsWith("Nothing is planned yet");
        assertThat(findings.sights().getValue()).hasSize(2)
                .allSatisfy(sight -> assertThat(sight.sentence()).contains("until every configuration has a stint"));
        order.make();
        assertThat(findings.time().getValue()).startsWith("39 swings and 9 changes");
        var few = findings.sights().getValue().get(0);
        assertThat(few.strip().leftWord()).as("a left-handed player's negative face angle").isEqualTo("open");
        assertThat(few.sentence()).contains("6 shots each in").contains("middling amateur");
        var shots = order.shotsPerStint();
        shots.text().set("12");
        shots.commit();
        order.make();
        assertThat(findings.sights().getValue().get(0).strip().rows().get(0).high())
                .isLessThan(few.strip().rows().get(0).high());
    }

    @Test
    void aPlanThatIsHitSpeaksOfItsShotsAndOfWhatIsStillAhead() {
        Workbench hit = Workbenches.on(DemoSessions.leftHanded());
        FindingsViewModel found = new FindingsViewModel(hit, new MatrixViewModel(hit).check());
        ClubTest test = hit.test().get();
        int shots = test.stints().stream().mapToInt(stint -> stint.shots().size()).sum();
        int scored = test.stints().stream().mapToInt(stint -> stint.scoredShots().size()).sum();
        assertThat(found.time().getValue()).contains(shots + " shots, of which " + scored + " count").contains("Ahead: ");
        assertThat(found.sights().getValue()).isNotEmpty()
                .allSatisfy(sight -> assertThat(sight.sentence()).contains("hit and planned together"));

        hit.apply(new gripwright.session.Edit("End", session -> session.withTest(test.withStints(test.stints().stream()
                .filter(stint -> !stint.shots().isEmpty()).map(stint -> stint.withState(Stint.State.DONE)).toList()))));
        assertThat(found.time().getValue()).endsWith("Nothing more is planned.");
    }

    @Test
    void stintsThatWereHitStandAtAGlanceAndOnlyPlannedOnesAreRows() {
        Workbench hit = Workbenches.on(DemoSessions.leftHanded());
        OrderViewModel model = new OrderViewModel(hit);
        List<Stint> stints = hit.test().get().stints();
        long planned = stints.stream().filter(stint -> stint.state() == Stint.State.PLANNED).count();
        assertThat(planned).isPositive().isLessThan(stints.size());
        assertThat(model.rows()).hasSize((int) planned);
        assertThat(model.cells().getValue()).hasSameSizeAs(stints);
        Stint first = stints.get(0);
        assertThat(model.cells().getValue().get(0).words())
                .contains(first.scoredShots().size() + " of " + first.shots().size() + " count");
    }

    @Test
    void aClubThatIsTakenAwayLeavesItsConfigurationsOnNone() {
        order.addClub();
        String club = test().physicalClubs().get(0).id();
        matrix.columns().get(0).physicalClub().keep().apply(club);
        assertThat(test().configurations().get(0).physicalClubId()).isEqualTo(club);
        order.clubs().get(0).remove().run();
        assertThat(test().configurations().get(0).physicalClubId()).isNull();
        workbench.undo();
        assertThat(test().configurations().get(0).physicalClubId()).isEqualTo(club);
    }

    @Test
    void aGripIsNamedFirstAndKnownLaterAndTheTestKeepsItAsItWas() {
        StockViewModel stock = new StockViewModel(workbench);
        assertThat(stock.addGrip()).contains("Type the name of the grip first.");
        var name = stock.draftName();
        name.text().set("Ribbed, soft");
        name.commit();
        assertThat(stock.addGrip()).isEmpty();
        int index = stock.chosenIndex().getValue();
        assertThat(stock.grip(index).get().name()).isEqualTo("Ribbed, soft");
        assertThat(stock.grip(index).get().massGrams()).as("no mass is invented").isNull();
        assertThat(workbench.undoLabel().get()).isEqualTo("Add 'Ribbed, soft' to the stock list");

        workbench.apply(gripwright.desktop.support.ShopEdit.stock("Weigh a grip", now -> now.withGrips(
                now.grips().stream().map(grip -> grip.id().equals("grip-1") ? grip.withMeasuredMassGrams(49.0) : grip)
                        .toList())));
        assertThat(test().configurations().get(0).grip().massGrams()).isEqualTo(50);
        assertThat(matrix.columns().get(0).changedInStock()).isPresent();
        assertThat(matrix.columns().get(1).changedInStock()).isEmpty();
        matrix.columns().get(0).takeGrip(matrix.columns().get(0).changedInStock().orElseThrow());
        assertThat(test().configurations().get(0).grip().massGrams()).isEqualTo(49);
    }
}
