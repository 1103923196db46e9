package gripwright.session.edits;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.model.BuildUp;
import gripwright.model.ClubKind;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Feel;
import gripwright.model.Grip;
import gripwright.model.Metric;
import gripwright.model.Note;
import gripwright.model.Readings;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.model.Stint;
import gripwright.model.TestClub;
import gripwright.session.Edit;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Edits of shots and of the queue while a test is played. */
class PlayTest {

    private static final Instant NOON = Instant.parse("2026-03-14T12:00:00Z");
    private static final PlayEdits PLAY = PlayEdits.of("test-1");
    private static final QueueEdits QUEUE = QueueEdits.of("test-1");

    private Session session = session();

    private static Session session() {
        List<Configuration> configurations = Stream.of(0, 1, 2).map(n -> Configuration.ofIndex(n, "c" + n,
                "ABC".substring(n, n + 1), Grip.weighed("g" + n, "Invented " + n, 50), BuildUp.none())).toList();
        List<Stint> stints = Stream.of(1, 2, 3, 4).map(n -> Stint.planned("s" + n, "c" + (n - 1) % 3,
                Stint.Kind.SCORED, 3, 1)).toList();
        return Session.blank("s", LocalDate.of(2026, 3, 14)).withTests(List.of(
                ClubTest.empty("test-1", TestClub.named(ClubKind.IRON, "8-iron"))
                        .withConfigurations(configurations).withStints(stints)));
    }

    private void apply(Edit edit) {
        session = edit.change().apply(session);
    }

    private ClubTest test() {
        return session.tests().get(0);
    }

    private Stint stint(String id) {
        return test().stint(id).orElseThrow();
    }

    private static Shot shot(String id) {
        return Shot.of(id, Readings.of(Metric.CARRY, 140)).withAt(NOON);
    }

    private List<String> order() {
        return test().stints().stream().map(s -> test().configuration(s.configurationId()).orElseThrow().label()
                + ":" + s.state()).toList();
    }

    @Test
    void aShotGoesToTheStintInHandAndBetweenStintsToTheTray() {
        apply(PLAY.takeIn(List.of(shot("x1"))));
        apply(QUEUE.start("s1", NOON));
        apply(PLAY.takeIn(List.of(shot("x2"), shot("x3"))));
        assertThat(session.tray()).extracting(Shot::id).containsExactly("x1");
        assertThat(stint("s1").shots()).extracting(Shot::id).containsExactly("x2", "x3");
    }

    @Test
    void theSameShotAgainReplacesItselfAndKeepsWhatWasSaidOfIt() {
        apply(QUEUE.start("s1", NOON));
        apply(PLAY.takeIn(List.of(shot("x1").withProvisional(true))));
        apply(PLAY.setAside("x1", "mishit"));
        apply(PLAY.takeIn(List.of(shot("x1").withReadings(Readings.of(Metric.CARRY, 141)))));
        assertThat(stint("s1").shots()).hasSize(1);
        Shot grown = stint("s1").shots().get(0);
        assertThat(grown.readings().given(Metric.CARRY)).hasValue(141);
        assertThat(grown.setAsideReason()).isEqualTo("mishit");
        assertThat(grown.provisional()).isFalse();
    }

    @Test
    void settingAsideAndBringingBackLeaveTheShotInTheRecord() {
        apply(QUEUE.start("s1", NOON));
        apply(PLAY.takeIn(List.of(shot("x1"), shot("x2"))));
        apply(PLAY.setAside("x2", "toe"));
        assertThat(stint("s1").shots()).hasSize(2);
        assertThat(stint("s1").scoredShots()).isEmpty();
        apply(PLAY.bringBack("x2"));
        assertThat(stint("s1").scoredShots()).extracting(Shot::id).containsExactly("x2");
    }

    @Test
    void shotsOfTheTrayGetTheirPlaceAndCanGoBack() {
        apply(PLAY.takeIn(List.of(shot("x1"), shot("x2"))));
        apply(PLAY.placeFromTray(Set.of("x1"), "s2"));
        assertThat(stint("s2").shots()).extracting(Shot::id).containsExactly("x1");
        assertThat(session.tray()).extracting(Shot::id).containsExactly("x2");
        apply(PLAY.moveToTray(Set.of("x1")));
        assertThat(session.tray()).extracting(Shot::id).containsExactly("x2", "x1");
    }

    @Test
    void startingTheNextEndsTheOneInHandAndAnEmptyOneGoesBackIntoTheQueue() {
        apply(QUEUE.start("s1", NOON));
        apply(QUEUE.start("s2", NOON));
        assertThat(order()).containsExactly("B:IN_HAND", "A:PLANNED", "C:PLANNED", "A:PLANNED");
        apply(PLAY.takeIn(List.of(shot("x1"))));
        apply(QUEUE.end("s2", NOON.plusSeconds(60)));
        assertThat(order()).containsExactly("B:DONE", "A:PLANNED", "C:PLANNED", "A:PLANNED");
        assertThat(stint("s2").ended()).isEqualTo(NOON.plusSeconds(60));
    }

    @Test
    void aRepeatWithTheGripLeftOnIsNoChange() {
        apply(QUEUE.start("s1", NOON));
        apply(PLAY.takeIn(List.of(shot("x1"))));
        apply(QUEUE.repeat("s1", "s9", QueueEdits.Repeat.NEXT_UNCHANGED));
        assertThat(order()).containsExactly("A:IN_HAND", "A:PLANNED", "B:PLANNED", "C:PLANNED", "A:PLANNED");
        assertThat(stint("s9").changedBefore()).isFalse();
        assertThat(stint("s9").settlingSwings()).isZero();
        apply(QUEUE.repeat("s1", "s10", QueueEdits.Repeat.AT_THE_END));
        assertThat(test().stints().get(5).id()).isEqualTo("s10");
        assertThat(stint("s10").changedBefore()).isTrue();
    }

    @Test
    void aWrongConfigurationOfAWholeStintIsExchangedWithThePlannedOne() {
        apply(QUEUE.start("s1", NOON));
        apply(PLAY.takeIn(List.of(shot("x1"))));
        apply(QUEUE.correct("s1", "c2"));
        assertThat(order()).containsExactly("C:IN_HAND", "B:PLANNED", "A:PLANNED", "A:PLANNED");
    }

    @Test
    void aWrongConfigurationFromAShotOnSplitsTheStint() {
        apply(QUEUE.start("s1", NOON));
        apply(PLAY.takeIn(List.of(shot("x1"), shot("x2"), shot("x3"))));
        apply(QUEUE.note("s1", new Note(NOON, Note.Kind.NOTE, "early", "x1")));
        apply(QUEUE.note("s1", new Note(NOON, Note.Kind.NOTE, "late", "x3")));
        apply(QUEUE.feel("s1", Feel.unanswered().withComfort(5)));
        apply(QUEUE.correctFrom("s1", "x2", "c1", "s9"));
        assertThat(order()).startsWith("A:DONE", "B:IN_HAND");
        assertThat(stint("s1").shots()).extracting(Shot::id).containsExactly("x1");
        assertThat(stint("s9").shots()).extracting(Shot::id).containsExactly("x2", "x3");
        assertThat(stint("s1").notes()).extracting(Note::text).containsExactly("early");
        assertThat(stint("s9").notes()).extracting(Note::text).containsExactly("late");
        assertThat(stint("s9").feel().comfort()).isEqualTo(5);
        assertThat(stint("s1").feel().isUnanswered()).isTrue();
    }

    @Test
    void fromTheFirstShotOnIsTheWholeStint() {
        apply(QUEUE.start("s1", NOON));
        apply(PLAY.takeIn(List.of(shot("x1"))));
        apply(QUEUE.correctFrom("s1", "x1", "c1", "s9"));
        assertThat(test().stints()).hasSize(4);
        assertThat(stint("s1").configurationId()).isEqualTo("c1");
    }

    @Test
    void whatIsGoneChangesNothing() {
        Session before = session;
        apply(QUEUE.start("nowhere", NOON));
        apply(PLAY.setAside("nothing", "mishit"));
        apply(QUEUE.correctFrom("s1", "nothing", "c1", "s9"));
        apply(QueueEdits.of("no test").end("s1", NOON));
        assertThat(session).isEqualTo(before);
    }

    @Test
    void aPlannedStintIsBroughtForward() {
        apply(QUEUE.bringForward("s3"));
        assertThat(order()).containsExactly("C:PLANNED", "A:PLANNED", "B:PLANNED", "A:PLANNED");
    }
}
