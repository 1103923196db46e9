package gripwright.desktop.setup;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.desktop.support.DemoSessions;
import gripwright.desktop.support.Workbench;
import gripwright.desktop.support.Workbenches;
import gripwright.model.ClubKind;
import gripwright.model.ClubPart;
import gripwright.model.Direction;
import gripwright.model.Goal;
import gripwright.model.Handedness;
import gripwright.model.Metric;
import gripwright.model.PrimaryMetric;
import gripwright.planning.ReadyGoal;
import gripwright.units.Swingweight;
import gripwright.units.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;

class SetupViewModelsTest {

    private final Workbench workbench = Workbenches.blank();

    private Goal goal() {
        return workbench.session().get().goal();
    }

    @Test
    void aReadySentenceBringsItsMetricsAndIsOneStepOfUndo() {
        GoalViewModel model = new GoalViewModel(workbench);
        model.take(ReadyGoal.BIGGER_MISSES_BACK_IN);
        assertThat(goal().sentence()).isEqualTo("Bigger misses back in");
        assertThat(goal().primaries()).extracting(PrimaryMetric::aspect).containsOnly(PrimaryMetric.Aspect.SPREAD);
        // 2 yd; a yard is 0.9144 m by definition.
        assertThat(goal().guardrails().get(0).mostLoss()).isEqualTo(2 * 0.9144);
        assertThat(workbench.undoLabel().get()).isEqualTo("Set goal: Bigger misses back in");
        workbench.undo();
        assertThat(goal()).isEqualTo(Goal.open());
    }

    @Test
    void fasterMeansTheBallWithADriverAndTheClubWithAnIron() {
        assertThat(ReadyGoal.FASTER.with(ClubKind.DRIVER).primaries().get(0).metric()).isEqualTo(Metric.BALL_SPEED);
        assertThat(ReadyGoal.FASTER.with(ClubKind.IRON).primaries().get(0).metric()).isEqualTo(Metric.CLUB_SPEED);
        assertThat(ReadyGoal.COMFORT_FIRST.with(ClubKind.IRON).comfortFirst()).isTrue();
    }

    @Test
    void fasterHoldsStrikeAndSpread() {
        GoalViewModel model = new GoalViewModel(workbench);
        model.take(ReadyGoal.FASTER);
        assertThat(goal().guardrails()).filteredOn(g -> g.isOnSpread()).extracting(g -> g.metric())
                .containsExactly(Metric.FACE_ANGLE, Metric.STRIKE_SIDEWAYS);
        assertThat(model.guardrails().get(1).serves().kept().getValue()).isEqualTo(GoalViewModel.Serves.STEADIER);
        model.guardrails().get(1).serves().keep().apply(GoalViewModel.Serves.HIGHER);
        assertThat(goal().guardrails().get(1).isOnSpread()).isFalse();
    }

    @Test
    void threePrimaryMetricsAreTheMost() {
        GoalViewModel model = new GoalViewModel(workbench);
        for (int n = 0; n < 4; n++) {
            model.addPrimary();
        }
        assertThat(goal().primaries()).hasSize(3).extracting(PrimaryMetric::metric).doesNotHaveDuplicates();
        assertThat(model.mayAddPrimary().getValue()).isFalse();
        assertThat(workbench.message().get().text()).contains("at most three primary metrics");
    }

    @Test
    void steadierIsTheSpreadAndSmallerServes() {
        GoalViewModel model = new GoalViewModel(workbench);
        model.addPrimary();
        model.primaries().get(0).serves().keep().apply(GoalViewModel.Serves.STEADIER);
        assertThat(goal().primaries().get(0).aspect()).isEqualTo(PrimaryMetric.Aspect.SPREAD);
        assertThat(goal().primaries().get(0).direction()).isEqualTo(Direction.LOWER);
        model.primaries().get(0).metric().keep().apply(Metric.CARRY);
        assertThat(goal().primaries().get(0).aspect()).isEqualTo(PrimaryMetric.Aspect.SPREAD);
    }

    @Test
    void plusIsClosedForALeftHandedPlayer() {
        GoalViewModel model = new GoalViewModel(workbench);
        model.addPrimary();
        assertThat(model.primaries().get(0).metric().kept().getValue()).isEqualTo(Metric.FACE_ANGLE);
        assertThat(model.primaries().get(0).hint()).isEqualTo("+ is open");
        new SetupViewModel(workbench).hand().keep().apply(Handedness.LEFT);
        assertThat(model.primaries().get(0).hint()).isEqualTo("+ is closed");
    }

    @Test
    void theWeightOfFeelIsAShareInPerCent() {
        GoalViewModel model = new GoalViewModel(workbench);
        var feel = model.feelWeight();
        assertThat(feel.text().get()).isEqualTo("25");
        feel.text().set("40");
        assertThat(feel.commit()).isTrue();
        assertThat(goal().feelWeight()).isEqualTo(0.4);
        feel.text().set("140");
        assertThat(feel.commit()).isFalse();
        assertThat(feel.problem().get()).contains("0 to 100");
    }

    @Test
    void aPartIsAddedOnlyWhenItsMassAndPlaceAreTyped() {
        PartsViewModel parts = new PartsViewModel(new ClubViewModel(workbench).club());
        assertThat(parts.add()).contains("Type the mass first.");
        var mass = parts.draftMass();
        mass.text().set("270");
        mass.commit();
        assertThat(parts.add()).contains("Type the balance point first.");
        var place = parts.draftBalancePoint();
        place.text().set("36.4");
        place.commit();
        assertThat(parts.add()).isEmpty();

        ClubPart head = workbench.test().get().club().parts().get(0);
        assertThat(head.kind()).isEqualTo(ClubPart.Kind.HEAD);
        assertThat(head.massGrams()).isEqualTo(270);
        // An inch is 25.4 mm by definition.
        assertThat(head.balancePointMm()).isEqualTo(36.4 * 25.4);
        assertThat(parts.draftKind().kept().getValue()).isEqualTo(ClubPart.Kind.SHAFT);
        assertThat(parts.draftMass().text().get()).isEmpty();
        assertThat(workbench.undoLabel().get()).isEqualTo("Add the head");
    }

    @Test
    void aSwingweightThatIsNoneIsRefusedInWords() {
        ScaleReadingsViewModel readings = new ScaleReadingsViewModel(new ClubViewModel(workbench).club());
        var swingweight = readings.draftSwingweight();
        swingweight.text().set("X2");
        assertThat(swingweight.commit()).isFalse();
        assertThat(swingweight.problem().get()).contains("like D2");
        swingweight.text().set("d 2.5");
        assertThat(swingweight.commit()).isTrue();
        var grip = readings.draftGripMass();
        grip.text().set("52");
        grip.commit();
        assertThat(readings.add()).isEmpty();
        assertThat(workbench.test().get().club().readings().get(0).swingweight()).isEqualTo(new Swingweight(32.5));
        assertThat(readings.rows().get(0).swingweight().text().get()).isEqualTo("D2.5");
    }

    @Test
    void aSessionHoldsOneToThreeTestsAndATestWithShotsStays() {
        Workbench demo = Workbenches.on(DemoSessions.leftHanded());
        ClubViewModel model = new ClubViewModel(demo);
        model.removeTest();
        assertThat(demo.session().get().tests()).hasSize(2);
        assertThat(demo.message().get().text()).contains("has shots");
        model.addTest();
        assertThat(demo.test().get().club().kind()).isEqualTo(ClubKind.WEDGE);
        assertThat(model.mayAdd().getValue()).isFalse();
        model.removeTest();
        assertThat(demo.session().get().tests()).hasSize(2);
        assertThat(demo.undoLabel().get()).isEqualTo("Remove the test with the wedge");
    }

    @Test
    void shaftDiametersStandAtTheirUsualPlacesAndOthersKeepTheirs() {
        ClubViewModel model = new ClubViewModel(workbench);
        assertThat(model.shaftPlaces().getValue().stream().map(model::place).toList())
                .isEqualTo(List.of("butt", "3 in", "6 in", "9 in"));
        var butt = model.shaftDiameter(0);
        butt.text().set("0.600");
        assertThat(butt.commit()).isTrue();
        assertThat(workbench.test().get().club().shaftDiameters().get(0).diameterMm())
                .isCloseTo(0.6 * 25.4, org.assertj.core.api.Assertions.within(1e-9));
        butt.text().set("");
        assertThat(butt.commit()).isTrue();
        assertThat(workbench.test().get().club().shaftDiameters()).isEmpty();
    }

    @Test
    void eachQuantityHasItsOwnUnit() {
        SetupViewModel model = new SetupViewModel(workbench);
        model.useMetric();
        model.unit(gripwright.units.Dimension.SPEED).keep().apply(Unit.MILES_PER_HOUR);
        assertThat(workbench.settings().get().units().of(gripwright.units.Dimension.LENGTH)).isEqualTo(Unit.MILLIMETRE);
        assertThat(workbench.settings().get().units().of(gripwright.units.Dimension.SPEED))
                .isEqualTo(Unit.MILES_PER_HOUR);
        assertThat(workbench.undoLabel().get()).isEqualTo("Set unit of speed");
        workbench.undo();
        workbench.undo();
        assertThat(workbench.settings().get().units().of(gripwright.units.Dimension.LENGTH)).isEqualTo(Unit.INCH);
    }

    @Test
    void theSessionsOwnSmallestDifferenceWinsAndBlankTakesTheShops() {
        DifferencesViewModel model = new DifferencesViewModel(workbench);
        assertThat(model.shown().getValue()).contains(Metric.FACE_ANGLE).doesNotContain(Metric.APEX);
        var row = model.row(Metric.FACE_ANGLE);
        assertThat(row.session().text().get()).isEmpty();
        row.session().text().set("1");
        assertThat(row.session().commit()).isTrue();
        assertThat(workbench.session().get().smallestDifference(Metric.FACE_ANGLE, workbench.settings().get()))
                .isEqualTo(1);
        row.session().text().set("");
        assertThat(row.session().commit()).isTrue();
        assertThat(workbench.session().get().smallestDifferences()).isEmpty();
        model.all().set(true);
        assertThat(model.shown().getValue()).hasSize(Metric.values().length);
    }

    @Test
    void whatIsModelledCanBeSaidMetricByMetric() {
        SetupViewModel model = new SetupViewModel(workbench);
        assertThat(model.modelledText().getValue()).isEqualTo("apex, total");
        model.modelled(Metric.SPIN_RATE).keep().apply(true);
        model.modelled(Metric.APEX).keep().apply(false);
        assertThat(model.modelledText().getValue()).isEqualTo("spin rate, total");
    }

    @Test
    void aDayIsReadInOneOrderOnly() {
        SetupViewModel model = new SetupViewModel(workbench);
        var date = model.date();
        date.text().set("03/04/2026");
        assertThat(date.commit()).isFalse();
        assertThat(date.problem().get()).contains("like 2026-03-14");
        date.text().set("2026-04-03");
        assertThat(date.commit()).isTrue();
        assertThat(workbench.session().get().date()).isEqualTo(java.time.LocalDate.of(2026, 4, 3));
    }

    @Test
    void aProblemAtTheFootLeavesWithTheNextEditThatCanBe() {
        workbench.sayProblem("This can't be.");
        new SetupViewModel(workbench).useMetric();
        assertThat(workbench.message().get().text()).isEmpty();
    }
}
