package gripwright.desktop.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gripwright.balance.Remedy;
import gripwright.desktop.support.DemoSessions;
import gripwright.desktop.support.ShopEdit;
import gripwright.desktop.support.Workbench;
import gripwright.desktop.support.Workbenches;
import gripwright.model.BuildUp;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Session;
import gripwright.session.Edit;
import gripwright.units.UnitChoice;
import org.junit.jupiter.api.Test;

class BalanceViewModelTest {

    private final Workbench workbench = Workbenches.on(DemoSessions.leftHanded());
    private final BalanceViewModel model = new BalanceViewModel(workbench);

    private Configuration configuration(String label) {
        return workbench.test().get().labelled(label).orElseThrow();
    }

    @Test
    void itBeginsWithTheReferenceAndTheConfigurationFurthestFromIt() {
        assertThat(model.first().get().label()).isEqualTo("A");
        double chosen = apart(model.second().get());
        workbench.test().get().configurations().forEach(c -> assertThat(apart(c)).isLessThanOrEqualTo(chosen));
        assertThat(chosen).isGreaterThan(1);
    }

    private double apart(Configuration configuration) {
        return Math.abs(model.balance(configuration).orElseThrow().swingweight().points()
                - model.balance(model.first().get()).orElseThrow().swingweight().points());
    }

    @Test
    void onTheWayTheFiguresLieBetweenTheTwo() {
        model.share().set(0);
        assertThat(model.onTheWay()).startsWith(model.balance(model.first().get()).orElseThrow().swingweight().text());
        model.share().set(1);
        assertThat(model.onTheWay()).startsWith(model.balance(model.second().get()).orElseThrow().swingweight().text());
        assertThat(model.picture()).isPresent();
    }

    @Test
    void theDifferenceSaysThatGripMassHardlyMovesTheInertia() {
        model.first().set(configuration("A"));
        model.second().set(configuration("C"));
        assertThat(model.difference()).startsWith("C against A: \u2212").contains("points of swingweight")
                .contains("kg·cm² of inertia (+0.");
        model.exchange();
        assertThat(model.first().get().label()).isEqualTo("C");
        assertThat(model.difference()).startsWith("A against C: +");
    }

    @Test
    void figuresFollowTheShopsUnits() {
        assertThat(model.onTheWay()).contains(" in,");
        workbench.applyOrSay(ShopEdit.settings("Set units", shop -> shop.withUnits(UnitChoice.metric())));
        assertThat(model.onTheWay()).contains(" mm,");
    }

    @Test
    void anEditOfAConfigurationMovesTheLever() {
        Configuration before = configuration("A");
        double points = model.balance(before).orElseThrow().swingweight().points();
        edit(test -> test.withConfiguration(before.withBuildUp(
                BuildUp.none().withBallastPositionMm(12.7).withBallastGrams(10))));
        assertThat(model.balance(before).orElseThrow().swingweight().points()).isCloseTo(points - 2.7, within(0.1));
        assertThat(model.first().get().buildUp().ballastGrams()).isEqualTo(10);
    }

    @Test
    void aTestWithoutConfigurationsHasNothingToShow() {
        workbench.selectTest("test-2");
        assertThat(model.hasConfigurations()).isFalse();
        assertThat(model.first().get()).isNull();
        assertThat(model.picture()).isEmpty();
        assertThat(model.difference()).isEmpty();
    }

    @Test
    void aClubNobodyMeasuredSaysWhatToMeasure() {
        edit(test -> test.withClub(test.club().withParts(java.util.List.of())));
        assertThat(model.knowsClub()).isFalse();
        assertThat(model.sentences()).anyMatch(text -> text.contains("read its swingweight with one weighed grip"));
    }

    @Test
    void theSolverBringsAConfigurationBackToTheReference() {
        SolverViewModel solver = new SolverViewModel(model);
        solver.configuration().set(configuration("C"));
        assertThat(solver.wanted().get()).isEqualTo(
                model.balance(configuration("A")).orElseThrow().swingweight().points());
        Remedy head = solver.remedies().get().get(0);
        assertThat(head.feasible()).isTrue();
        assertThat(solver.canApply(head)).isTrue();
        solver.apply(head);
        assertThat(configuration("C").headMassAddedGrams()).isCloseTo(head.amount(), within(0.05));
        assertThat(model.balance(configuration("C")).orElseThrow().swingweight().points())
                .isCloseTo(solver.wanted().get(), within(0.05));
        assertThat(workbench.undoLabel().get()).isEqualTo("Add head mass to C");
        workbench.undo();
        assertThat(configuration("C").headMassAddedGrams()).isZero();
    }

    @Test
    void aWantedSwingweightIsTypedAndNonsenseIsRefused() {
        SolverViewModel solver = new SolverViewModel(model);
        var entry = solver.wantedSwingweight();
        entry.text().set("D4");
        assertThat(entry.commit()).isTrue();
        assertThat(solver.wanted().get()).isEqualTo(34);
        entry.text().set("heavy");
        assertThat(entry.commit()).isFalse();
        assertThat(entry.problem().get()).contains("not a swingweight");
        assertThat(solver.wanted().get()).isEqualTo(34);
    }

    @Test
    void anotherKindOfFigureBeginsAtTheReferences() {
        SolverViewModel solver = new SolverViewModel(model);
        solver.kind().set(SolverViewModel.Kind.INERTIA);
        assertThat(solver.wanted().get())
                .isEqualTo(model.balance(configuration("A")).orElseThrow().inertiaKgCm2());
        solver.kind().set(SolverViewModel.Kind.BALANCE_POINT);
        assertThat(solver.wanted().get())
                .isEqualTo(model.balance(configuration("A")).orElseThrow().balancePointMm());
        assertThat(solver.remedies().get()).hasSize(3);
        assertThat(solver.picture()).isPresent();
    }

    @Test
    void whatCantBeDoneCantBeWrittenIn() {
        SolverViewModel solver = new SolverViewModel(model);
        solver.configuration().set(configuration("A"));
        solver.wanted().set(solver.present() + 2);
        Remedy butt = solver.remedies().get().get(1);
        assertThat(butt.feasible()).isFalse();
        assertThat(solver.canApply(butt)).isFalse();
    }

    private void edit(java.util.function.UnaryOperator<ClubTest> change) {
        String id = workbench.test().get().id();
        assertThat(workbench.apply(new Edit("Change", (Session session) ->
                session.withTest(change.apply(session.test(id).orElseThrow()))))).isEmpty();
    }
}
