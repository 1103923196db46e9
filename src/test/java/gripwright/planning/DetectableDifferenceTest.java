package gripwright.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.within;

import gripwright.model.BuildUp;
import gripwright.model.ClubKind;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Grip;
import gripwright.model.Metric;
import gripwright.model.PhysicalClub;
import gripwright.model.Stint;
import gripwright.model.TestClub;
import java.util.List;
import org.junit.jupiter.api.Test;

class DetectableDifferenceTest {

    private static final Configuration A = configuration(0, "A");
    private static final Configuration B = configuration(1, "B");

    private static Configuration configuration(int index, String label) {
        return Configuration.ofIndex(index, label, label, Grip.weighed("grip-" + label, label, 50), BuildUp.none());
    }

    private static ClubTest test(Stint... stints) {
        return ClubTest.empty("test-1", TestClub.named(ClubKind.IRON, "7-iron")).withConfigurations(List.of(A, B))
                .withStints(List.of(stints));
    }

    private static Stint stint(String id, Configuration configuration, int shots) {
        return Stint.planned(id, configuration.id(), Stint.Kind.SCORED, shots, 1);
    }

    /**
     * Without stint effects: 64 a group detect 0.5 standard deviations with 80 % power at 5 % two-sided (Cohen 1988,
     * table 2.4.1); the normal formula gives 62.8.
     */
    @Test
    void agreesWithTheTextbookSampleSizeForTwoMeans() {
        DetectableDifference found = DetectableDifference.of(Metric.FACE_ANGLE, new DetectableDifference.Size(64, 1), 1,
                true, 0);
        assertThat(found.difference()).isCloseTo(0.5, within(0.006));
    }

    @Test
    void moreStintsHelpWhereMoreShotsNoLongerDo() {
        var size = new DetectableDifference.Size(1_000_000, 2);
        double two = DetectableDifference.of(Metric.FACE_ANGLE, size, 3, true, 0.4).difference();
        double eight = DetectableDifference.of(Metric.FACE_ANGLE, new DetectableDifference.Size(1_000_000, 8), 3, true,
                0.4).difference();
        assertThat(two).isCloseTo(2.801585 * 3 * 0.4, within(0.01));
        assertThat(eight).isCloseTo(two / 2, within(0.01));
    }

    @Test
    void countsTheConfigurationThatHasFewest() {
        assertThat(DetectableDifference.Size.of(test(stint("1", A, 3), stint("2", B, 3), stint("3", A, 3))))
                .isEqualTo(new DetectableDifference.Size(3, 1));
        assertThat(DetectableDifference.of(Metric.CARRY, DetectableDifference.Size.of(test(stint("1", A, 3))), 8, false,
                0.4).difference()).isInfinite();
    }

    @Test
    void twoStintsInARowWithoutAChangeAreOne() {
        assertThat(DetectableDifference.Size.of(test(stint("1", A, 3), stint("2", B, 3),
                stint("3", B, 3).withChangedBefore(false), stint("4", A, 3))))
                .isEqualTo(new DetectableDifference.Size(6, 1));
    }

    @Test
    void aStintThatGoesOnFromTheWarmUpCountsAsOne() {
        Stint warmUp = Stint.planned("1", A.id(), Stint.Kind.WARM_UP, 5, 0);
        ClubTest test = test(warmUp, stint("2", A, 3).withChangedBefore(false), stint("3", B, 3), stint("4", B, 3),
                stint("5", A, 3));
        assertThat(DetectableDifference.Size.ofEach(test)).containsExactly(
                entry(A.id(), new DetectableDifference.Size(6, 2)), entry(B.id(), new DetectableDifference.Size(6, 2)));
    }

    @Test
    void aStintThatIsDoneCountsByItsScoredShots() {
        ClubTest test = test(stint("1", A, 3).withState(Stint.State.DONE), stint("2", A, 3), stint("3", B, 3));
        assertThat(DetectableDifference.Size.ofEach(test).get(A.id())).isEqualTo(new DetectableDifference.Size(3, 1));
    }

    @Test
    void timeCountsSwingsQuestionsAndChanges() {
        ClubTest blown = test(stint("1", A, 3), stint("2", B, 3));
        assertThat(SessionTime.ahead(blown)).isEqualTo(new SessionTime(8, 2, 8 * 35 + 2 * 45 + 2 * 300));
        ClubTest twins = blown.withPhysicalClubs(List.of(
                        new PhysicalClub("one", "club 1", PhysicalClub.Mounting.TWIN)))
                .withConfigurations(List.of(A.withPhysicalClubId("one"), B.withPhysicalClubId("one")));
        assertThat(SessionTime.ahead(twins).seconds()).isEqualTo(8 * 35 + 2 * 45 + 2 * 20);
        assertThat(SessionTime.ahead(twins).minutes()).isEqualTo(10);
        assertThat(SessionTime.ahead(test(stint("1", A, 3).withState(Stint.State.DONE))).swings()).isZero();
    }

    @Test
    void whatElseDiffersIsSaid() {
        ClubTest test = test().withConfigurations(List.of(A.withGrip(A.grip().withTexture(gripwright.model.Texture.CORD)
                        .withCondition(gripwright.model.GripCondition.WORN)),
                B.withGrip(B.grip().withTexture(gripwright.model.Texture.RUBBER))));
        assertThat(OtherDifferences.of(test)).hasSize(2).anySatisfy(s -> assertThat(s).contains("A cord, B rubber"))
                .anySatisfy(s -> assertThat(s).contains("not equally worn").contains("fresh copy"));
        assertThat(OtherDifferences.of(test())).isEmpty();
    }
}
