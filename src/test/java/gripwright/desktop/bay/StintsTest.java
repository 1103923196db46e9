package gripwright.desktop.bay;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.desktop.bay.QueueRow.Dot;
import gripwright.model.ClubTest;
import gripwright.model.Readings;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.model.Stint;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Progress of a stint, the queue, the count of swings, what is hidden. */
class StintsTest {

    private static Stint withShots(int shots, int... aside) {
        Stint stint = Stint.planned("s", "c-A", Stint.Kind.SCORED, 6, 2).withState(Stint.State.IN_HAND);
        List<Shot> hit = new ArrayList<>();
        for (int index = 0; index < shots; index++) {
            Shot shot = Shot.of("shot-" + index, Readings.none());
            for (int which : aside) {
                shot = which == index ? shot.withSetAsideReason("mishit") : shot;
            }
            hit.add(shot);
        }
        return stint.withShots(hit);
    }

    @Test
    void settlingSwingsComeFirstAndDoNotCount() {
        StintProgress progress = StintProgress.of(withShots(1));
        assertThat(progress.settles()).isTrue();
        assertThat(progress.text()).isEqualTo("settling swing 2 of 2");
        assertThat(progress.left()).isEqualTo(6);
    }

    @Test
    void aShotSetAsideIsHitAgain() {
        StintProgress progress = StintProgress.of(withShots(6, 3));
        assertThat(progress.counted()).isEqualTo(3);
        assertThat(progress.left()).isEqualTo(3);
        assertThat(progress.text()).isEqualTo("shot 4 of 6");
    }

    @Test
    void moreShotsThanPlannedAreSaidAndNeverNegative() {
        assertThat(StintProgress.of(withShots(8)).text()).isEqualTo("all 6 in");
        StintProgress over = StintProgress.of(withShots(10));
        assertThat(over.left()).isZero();
        assertThat(over.text()).isEqualTo("8 in, 6 planned");
    }

    @Test
    void aWarmUpHasNoSettlingSwingsOfItsOwn() {
        Stint warmUp = withShots(2).withKind(Stint.Kind.WARM_UP);
        assertThat(StintProgress.of(warmUp).text()).isEqualTo("shot 3 of 6");
    }

    @Test
    void theQueueShowsWhatIsDoneInHandNextAndARetest() {
        ClubTest test = BaySessions.planned("ABC", "ABCA", 3, 1).tests().get(0);
        List<Stint> stints = new ArrayList<>(test.stints());
        stints.set(0, stints.get(0).withShots(withShots(4, 2).shots()).withState(Stint.State.DONE));
        List<QueueRow> queue = QueueRow.queue(test.withStints(stints));
        assertThat(queue).extracting(QueueRow::title).containsExactly("A", "B", "C", "A, retest");
        assertThat(queue).extracting(QueueRow::stateText).containsExactly("done", "next", "", "");
        assertThat(queue.get(0).dots()).containsExactly(Dot.SETTLING, Dot.COUNTED, Dot.SET_ASIDE, Dot.COUNTED);
        assertThat(queue.get(1).dots()).containsExactly(Dot.SETTLING_OPEN, Dot.OPEN, Dot.OPEN, Dot.OPEN);
    }

    @Test
    void everySwingIsCountedAndPainLowersTheLimit() {
        Session session = BaySessions.hit("AB", "ABABABAB", 6, 1);
        session = session.withTray(List.of(Shot.of("t", Readings.none())));
        assertThat(SwingCount.of(session).swings()).isEqualTo(49);
        assertThat(SwingCount.of(session).caution()).isEmpty();
        Session hurting = session.withPlayer(session.player().withPainSites("left thumb"));
        assertThat(SwingCount.of(hurting).caution()).contains("49 swings").contains("clinician");
    }

    @Test
    void hidingGoesRoundItsFourWays() {
        Hiding hiding = Hiding.NOTHING;
        List<String> seen = new ArrayList<>();
        for (int n = 0; n < 4; n++) {
            seen.add(hiding.text());
            hiding = hiding.next();
        }
        assertThat(seen).containsExactly("", "figures hidden", "names hidden", "figures and names hidden");
        assertThat(hiding).isEqualTo(Hiding.NOTHING);
    }
}
