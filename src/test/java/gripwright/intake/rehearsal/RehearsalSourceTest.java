package gripwright.intake.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.intake.Arrival;
import gripwright.intake.LiveListener;
import gripwright.intake.SourceStatus;
import gripwright.intake.demo.Demo;
import gripwright.model.ClubTest;
import gripwright.model.Handedness;
import gripwright.model.Shot;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;

class RehearsalSourceTest {

    private static final Duration NEVER = Duration.ofDays(1);

    private final List<Shot> heard = Collections.synchronizedList(new ArrayList<>());

    private LiveListener listener(CountDownLatch countdown) {
        return new LiveListener() {
            @Override
            public void arrived(Arrival arrival) {
                arrival.added().forEach(row -> heard.add(row.shot()));
                countdown.countDown();
            }

            @Override
            public void changed(SourceStatus status) {
                assertThat(status.source()).isEqualTo("rehearsal");
            }
        };
    }

    @Test
    void playsARecordedTestShotByShotMarkedAsRehearsal() {
        ClubTest recorded = Demo.noDifference().session().tests().get(0);
        RehearsalSource source = new RehearsalSource(RehearsedShots.of(recorded), NEVER, "one");
        source.listen(listener(new CountDownLatch(1)));
        int played = 0;
        while (source.playNext()) {
            played++;
        }
        List<Shot> hit = recorded.stints().stream().flatMap(stint -> stint.shots().stream()).toList();
        assertThat(played).isEqualTo(hit.size());
        assertThat(heard).extracting(Shot::readings).isEqualTo(hit.stream().map(Shot::readings).toList());
        assertThat(heard).allMatch(Shot::rehearsal).extracting(Shot::id).doesNotHaveDuplicates();
        assertThat(source.status().state()).isEqualTo(SourceStatus.State.STOPPED);
    }

    @Test
    void aSimulatedPlayerHitsWhatIsInHandForEightHoursInMoments() {
        AtomicReference<String> inHand = new AtomicReference<>("A");
        RehearsalSource source = new RehearsalSource(RehearsedShots.of(SimulatedPlayer.middling(Handedness.LEFT, 1),
                inHand::get, 60), NEVER, "long");
        source.listen(listener(new CountDownLatch(1)));
        for (int shot = 0; shot < 8 * 60 * 10; shot++) {
            inHand.set(shot % 20 < 10 ? "A" : "B");
            assertThat(source.playNext()).isTrue();
        }
        assertThat(heard).hasSize(4800);
        source.close();
        assertThat(source.playNext()).isFalse();
    }

    @Test
    void playsByItselfAtItsPace() throws InterruptedException {
        CountDownLatch five = new CountDownLatch(5);
        try (RehearsalSource source = new RehearsalSource(RehearsedShots.of(SimulatedPlayer.middling(Handedness.RIGHT, 1),
                () -> "A", 60), Duration.ofMillis(2), "paced")) {
            source.start(listener(five));
            assertThat(five.await(20, TimeUnit.SECONDS)).isTrue();
        }
        assertThat(heard).hasSizeGreaterThanOrEqualTo(5);
    }
}
