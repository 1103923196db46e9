package gripwright.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gripwright.balance.SetPlan;
import gripwright.model.ClubKind;
import gripwright.model.Direction;
import gripwright.model.Goal;
import gripwright.model.Metric;
import gripwright.model.PrimaryMetric;
import gripwright.model.Session;
import gripwright.model.SetClub;
import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import java.util.List;
import org.junit.jupiter.api.Test;

class AdvisedSetTest {

    private static final ShopSettings SHOP = ShopSettings.usual();
    private static final Goal FASTER = Goal.open().withPrimaries(List.of(PrimaryMetric.mean(Metric.CLUB_SPEED,
            Direction.HIGHER)));

    /** Two grips, the second clearly faster by two m/s; no advice of the fitter. */
    private static Session session(double gain) {
        return SessionBuilder.of("A", "B").goal(FASTER).kind(ClubKind.IRON)
                .stint("A", Metric.CLUB_SPEED, 38, 38.3, 37.7, 38.1)
                .stint("B", Metric.CLUB_SPEED, 38 + gain, 38.2 + gain, 37.8 + gain, 38.1 + gain)
                .stint("A", Metric.CLUB_SPEED, 38.2, 37.9, 38).stint("B", Metric.CLUB_SPEED, 38 + gain, 38.1 + gain)
                .build().withSet(List.of(SetClub.named("8", "8-iron", ClubKind.IRON),
                        SetClub.named("w", "wedge", ClubKind.WEDGE)));
    }

    private static AdvisedSet of(Session session) {
        return AdvisedSet.of(session, SHOP, new Stock(List.of(), List.of()));
    }

    @Test
    void theSetFollowsTheNumbersWhileTheFitterHasAdvisedNothing() {
        SetPlan set = of(session(2)).balance().set();
        assertThat(set.rows()).extracting(SetPlan.Row::configurationLabel).containsExactly("B", "B");
        assertThat(set.sentences()).contains("No grip is advised yet: the set is planned with B, as the numbers choose it; "
                + "the fitter has not confirmed it.").hasSize(1);
        assertThat(of(session(0)).balance().set().rows().get(0).configurationLabel()).isEqualTo("A");
    }

    @Test
    void theFittersAdviceComesBeforeTheNumbers() {
        SetPlan set = of(session(2).withAdvisedConfigurationId("id-A")).balance().set();
        assertThat(set.rows()).extracting(SetPlan.Row::configurationLabel).containsExactly("A", "A");
        assertThat(set.sentences()).isEmpty();
    }

    @Test
    void balanceAndWorkOrderPlanTheSame() {
        Session session = session(2);
        AdvisedSet set = of(session);
        assertThat(set.plan(Comparer.withSettings(SHOP).compareAll(session)).rows()).isEqualTo(set.balance().set().rows());
    }

    @Test
    void theFirstTestOfAFamilyDecides() {
        Session faster = session(2);
        Session slower = session(-2);
        var second = slower.tests().get(0).withId("second");
        Session both = faster.withTests(List.of(faster.tests().get(0), second));
        assertThat(of(both).balance().set().rows().get(0).configurationLabel()).isEqualTo("B");
    }

    @Test
    void asManyComparisonsAsTests() {
        assertThatThrownBy(() -> of(session(2)).plan(List.of())).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("as many comparisons");
    }
}
