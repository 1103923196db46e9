package gripwright.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.model.Direction;
import gripwright.model.Goal;
import gripwright.model.Metric;
import gripwright.model.PrimaryMetric;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import java.util.List;
import org.junit.jupiter.api.Test;

class SensitivityTest {

    private static final Goal FASTER =
            Goal.open().withPrimaries(List.of(PrimaryMetric.mean(Metric.CLUB_SPEED, Direction.HIGHER)));

    private static Sensitivity of(Session session) {
        Sensitivity sensitivity = Comparer.withSettings(ShopSettings.usual())
                .sensitivity(session, session.tests().get(0));
        assertThat(NoNanAnywhere.places(sensitivity)).isEmpty();
        return sensitivity;
    }

    /** B gains a lot once its bad shot is set aside, and nothing that could be claimed with it. */
    private static SessionBuilder carriedByOneSetAside() {
        return SessionBuilder.of("A", "B").goal(FASTER)
                .stint("A", Metric.CLUB_SPEED, 38, 38.3, 37.7, 38.1)
                .stint("B", Metric.CLUB_SPEED, 30, 40.2, 39.8, 40.1, 39.9).aside(1)
                .stint("A", Metric.CLUB_SPEED, 38.2, 38.3, 37.9, 38.0)
                .stint("B", Metric.CLUB_SPEED, 40.1, 40.3, 39.7, 40.0);
    }

    @Test
    void setAsideShotsBackIn() {
        Sensitivity.Variation back = of(carriedByOneSetAside().build()).variations().get(0);
        assertThat(back.kind()).isEqualTo(Sensitivity.Kind.SET_ASIDE_BACK);
        assertThat(back.description()).isEqualTo("with the shot that was set aside");
        assertThat(back.changes()).hasSize(1);
        assertThat(back.changes().get(0).verdict()).isEqualTo(Verdict.BETTER);
        assertThat(back.changes().get(0).otherVerdict()).isEqualTo(Verdict.NOT_SETTLED);
    }

    @Test
    void eachStintOutInTurnAndTheCautiousPrior() {
        Sensitivity sensitivity = of(carriedByOneSetAside().build());
        assertThat(sensitivity.variations()).extracting(Sensitivity.Variation::description).containsExactly(
                "with the shot that was set aside", "without the first stint (A)", "without the second stint (B)",
                "without the third stint (A)", "without the fourth stint (B)",
                "with the cautious figure for stint-to-stint variation");
        Comparison without = sensitivity.variations().get(2).comparison();
        assertThat(without.metric(Metric.CLUB_SPEED).orElseThrow().configuration("id-B").orElseThrow().shots())
                .isEqualTo(4);
    }

    @Test
    void nothingSetAsideAndOneStint() {
        Sensitivity sensitivity = of(SessionBuilder.of("A").goal(FASTER)
                .stint("A", Metric.CLUB_SPEED, 38, 38.3, 37.7).build());
        assertThat(sensitivity.variations()).extracting(Sensitivity.Variation::kind)
                .containsExactly(Sensitivity.Kind.CAUTIOUS_PRIOR);
    }
}
