package gripwright.desktop.bay;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.desktop.support.Workbench;
import gripwright.desktop.support.Workbenches;
import gripwright.intake.Arrival;
import gripwright.intake.SourceStatus;
import gripwright.model.ClubTest;
import gripwright.model.Metric;
import gripwright.model.Note;
import gripwright.model.PhysicalClub;
import gripwright.model.Readings;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.model.ShotSource;
import gripwright.model.Stint;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class BayViewModelTest {

    /** A clock that a test moves by hand. */
    private static final class HandClock extends Clock {
        private Instant now = Instant.parse("2026-03-14T10:00:00Z");

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    private final HandClock clock = new HandClock();
    private Workbench workbench;
    private BayViewModel bay;
    private int identities;

    @BeforeEach
    void open() {
        on(BaySessions.planned("ABCDE", "ABCDEA", 3, 1));
    }

    private void on(Session session) {
        workbench = Workbenches.on(session);
        bay = new BayViewModel(workbench, clock, () -> "new-" + ++identities);
    }

    private ClubTest test() {
        return workbench.test().get();
    }

    private Stint stint(int index) {
        return test().stints().get(index);
    }

    private void type(String... cells) {
        assertThat(bay.record(List.of(cells))).isInstanceOf(EntryLine.Outcome.Shot.class);
    }

    private void hit(int shots) {
        Random random = new Random(7);
        for (int n = 0; n < shots; n++) {
            arrive(Shot.of("x" + ++identities, BaySessions.readings(random, 0)));
        }
    }

    private void arrive(Shot shot) {
        bay.arrived(BaySessions.arrival(shot));
    }

    private String said() {
        return workbench.message().get().text();
    }

    @Test
    void aTypedShotGoesToTheStintInHandWithTheTimeAndTheKeyboardAsItsSource() {
        bay.startNext();
        type("80.5", "0.8 c", "", "2300", "150", "4 l");
        Shot shot = stint(0).shots().get(0);
        assertThat(shot.at()).isEqualTo(clock.now);
        assertThat(shot.source().kind()).isEqualTo(ShotSource.Kind.KEYBOARD);
        assertThat(bay.sheet().get().hand().progress()).isEqualTo("shot 1 of 3");
        assertThat(bay.sheet().get().last().readings()).extracting(LastShot.Big::name)
                .containsExactly("face angle", "club speed", "carry", "club path");
        assertThat(bay.sheet().get().last().readings().get(0)).isEqualTo(
                new LastShot.Big("face angle", "0.8", "closed", false));
    }

    @Test
    void aWrongCellRecordsNothingAndSaysWhichCell() {
        bay.startNext();
        assertThat(bay.record(List.of("80.5", "x")))
                .isInstanceOfSatisfying(EntryLine.Outcome.Refused.class, r -> assertThat(r.cell()).isEqualTo(1));
        assertThat(stint(0).shots()).isEmpty();
    }

    @Test
    void anUnusualReadingIsTakenAndSaid() {
        bay.startNext();
        type("805");
        assertThat(stint(0).shots()).hasSize(1);
        assertThat(said()).contains("unusual");
        assertThat(bay.sheet().get().last().readings().get(1).unusual()).isTrue();
    }

    @Test
    void shotsBetweenStintsWaitInTheTrayUntilTheyAreGivenAPlace() {
        hit(2);
        assertThat(bay.sheet().get().tray()).isEqualTo(2);
        bay.startNext();
        assertThat(said()).contains("tray");
        bay.tray();
        assertThat(bay.prompt().get().options()).extracting(Prompt.Option::text)
                .containsExactly("all to A, in hand", "the first to A, in hand");
        bay.choose(1);
        assertThat(stint(0).shots()).hasSize(2);
        assertThat(bay.sheet().get().tray()).isZero();
    }

    @Test
    void theLastShotIsSetAsideWithAReasonAndBroughtBack() {
        bay.startNext();
        hit(3);
        bay.setAsideLast();
        bay.choose(1);
        assertThat(stint(0).shots().get(2).setAsideReason()).isEqualTo("mishit");
        assertThat(bay.sheet().get().last().title()).contains("set aside: mishit");
        assertThat(bay.sheet().get().shots().get(0).reason()).isEqualTo("mishit");
        bay.setAsideLast();
        bay.answerWith("dog barked");
        assertThat(stint(0).shots().get(1).setAsideReason()).isEqualTo("dog barked");
        bay.bringBackLast();
        bay.bringBackLast();
        assertThat(stint(0).shots()).noneMatch(Shot::isSetAside);
        bay.bringBackLast();
        assertThat(said()).contains("No shot of this stint is set aside");
    }

    @Test
    void enterOnAnEmptyAnswerTakesTheFirstAndEscapeLeavesTheQuestion() {
        bay.startNext();
        hit(2);
        bay.setAsideLast();
        bay.dismiss();
        assertThat(stint(0).shots()).noneMatch(Shot::isSetAside);
        bay.setAsideLast();
        bay.answerWith("");
        assertThat(stint(0).shots().get(1).setAsideReason()).isEqualTo("mishit");
        bay.choose(3);
        assertThat(bay.prompt().get()).isNull();
    }

    @Test
    void endingAStintAsksForTheFeelAndEveryAnswerCanBeTakenBack() {
        bay.startNext();
        hit(4);
        bay.endStint();
        assertThat(stint(0).state()).isEqualTo(Stint.State.DONE);
        assertThat(bay.feelStint().get().id()).isEqualTo("s-1");
        bay.answer(FeelQuestion.COMFORT, 6);
        bay.answer(FeelQuestion.HEAD_WEIGHT, 5);
        bay.answer(FeelQuestion.WOULD_PLAY, 2);
        assertThat(stint(0).feel().comfort()).isEqualTo(6);
        assertThat(stint(0).feel().headWeight()).isEqualTo(1);
        assertThat(stint(0).feel().wouldPlay()).isEqualTo(gripwright.model.Feel.WouldPlay.UNSURE);
        bay.answer(FeelQuestion.COMFORT, 6);
        bay.answer(FeelQuestion.WOULD_PLAY, 7);
        assertThat(stint(0).feel().comfort()).isNull();
        bay.startNext();
        assertThat(bay.feelStint().get()).isNull();
        assertThat(bay.sheet().get().hand().mark().label()).isEqualTo("B");
    }

    @Test
    void aStintWithoutAShotGoesBackIntoTheQueue() {
        bay.startNext();
        bay.endStint();
        assertThat(stint(0).state()).isEqualTo(Stint.State.PLANNED);
        assertThat(bay.feelStint().get()).isNull();
    }

    @Test
    void aWrongConfigurationIsCorrectedForTheWholeStint() {
        bay.startNext();
        hit(4);
        bay.switchConfiguration();
        assertThat(bay.prompt().get().options()).extracting(Prompt.Option::text).containsExactly("B", "C", "D", "E");
        bay.choose(3);
        bay.choose(1);
        assertThat(bay.sheet().get().hand().mark().label()).isEqualTo("D");
        assertThat(bay.sheet().get().queue()).extracting(QueueRow::title)
                .containsExactly("D", "B", "C", "A", "E", "A, retest");
    }

    @Test
    void aWrongConfigurationIsCorrectedFromAShotOn() {
        bay.startNext();
        hit(4);
        bay.switchConfiguration();
        bay.choose(1);
        assertThat(bay.prompt().get().options()).extracting(Prompt.Option::text)
                .containsExactly("the whole stint", "from 4 on", "from 3 on", "from 2 on");
        bay.answerWith("99");
        assertThat(bay.prompt().get()).as("asked again").isNotNull();
        bay.answerWith("3");
        assertThat(stint(0).shots()).hasSize(2);
        assertThat(stint(1).shots()).hasSize(2);
        assertThat(bay.sheet().get().hand().mark().label()).isEqualTo("B");
        workbench.undo();
        assertThat(stint(0).shots()).hasSize(4);
    }

    @Test
    void betweenStintsAnyConfigurationCanBeTakenInHand() {
        bay.switchConfiguration();
        bay.choose(4);
        assertThat(bay.sheet().get().hand().mark().label()).isEqualTo("D");
        assertThat(test().stints()).hasSize(6);
        hit(1);
        bay.endStint();
        bay.switchConfiguration();
        bay.choose(4);
        assertThat(test().stints()).as("a stint of its own, none being planned").hasSize(7);
        assertThat(bay.sheet().get().hand().mark().label()).isEqualTo("D");
    }

    @Test
    void aStintIsRepeatedNowOrAtTheEnd() {
        bay.startNext();
        hit(4);
        bay.repeat();
        bay.choose(3);
        assertThat(test().stints()).hasSize(7);
        assertThat(stint(6).configurationId()).isEqualTo("c-A");
        bay.repeat();
        bay.choose(1);
        assertThat(stint(1).changedBefore()).isFalse();
    }

    @Test
    void notesOfBallGloveMatAndPainStandInTheRecordWithTheShotTheyCameAfter() {
        bay.startNext();
        hit(2);
        bay.note();
        bay.choose(1);
        bay.note();
        bay.answerWith("grip feels slick");
        bay.note();
        bay.choose(4);
        assertThat(stint(0).notes()).extracting(Note::kind)
                .containsExactly(Note.Kind.BALL_CHANGED, Note.Kind.NOTE, Note.Kind.PAIN);
        assertThat(stint(0).notes().get(1).afterShotId()).isEqualTo(stint(0).shots().get(1).id());
        assertThat(said()).contains("clinician");
        assertThat(bay.sheet().get().next().headline()).startsWith("stop");
    }

    @Test
    void gripsBlownOnRemindOfTheTwistCheckOncePerStint() {
        Session session = BaySessions.planned("AB", "AB", 3, 0);
        ClubTest test = session.tests().get(0).withPhysicalClubs(
                List.of(new PhysicalClub("p1", "the one club", PhysicalClub.Mounting.BLOWN_ON)));
        on(session.withTest(test.withConfigurations(
                test.configurations().stream().map(c -> c.withPhysicalClubId("p1")).toList())));
        bay.startNext();
        assertThat(bay.sheet().get().reminder()).contains("in line");
        bay.twistChecked();
        assertThat(bay.sheet().get().reminder()).isEmpty();
        bay.startNext();
        assertThat(bay.sheet().get().reminder()).isNotEmpty();
    }

    @Test
    void pastedRowsAreTakenTogetherAndWrongOnesAreNamed() {
        bay.startNext();
        bay.paste("80.5\t0.8 c\t\t2300\t150\t4 l\n80.9\tnonsense\n81.0\t1.2 o\t\t\t151\t2 r\n");
        assertThat(stint(0).shots()).hasSize(2);
        assertThat(stint(0).shots().get(0).source().kind()).isEqualTo(ShotSource.Kind.PASTE);
        assertThat(said()).contains("2 pasted, 1 left out").contains("row 2");
        workbench.undo();
        assertThat(stint(0).shots()).isEmpty();
    }

    @Test
    void aWholeSessionGrowsStripsAndVerdictsForEightConfigurations() {
        on(BaySessions.hit("ABCDEFGH", "ABCDEFGHHGFEDCBA", 3, 11));
        BaySheet sheet = bay.sheet().get();
        assertThat(sheet.queue()).hasSize(16);
        assertThat(sheet.strips()).hasSize(3);
        assertThat(sheet.pattern()).isNotNull();
        assertThat(sheet.stintId()).as("the stint hit last").isEqualTo("s-16");
        workbench.applyOrSay(gripwright.session.edits.QueueEdits.of("test-1").start("s-15", clock.now));
        assertThat(bay.sheet().get().strips().get(0).verdict()).isNotBlank().isNotEqualTo("the reference");
        assertThat(bay.sheet().get().strips().get(0).figures()).contains("to A");
    }

    @Test
    void missingReadingsAreDashesAndNothingBreaks() {
        bay.startNext();
        arrive(Shot.of("only-speed", Readings.of(Metric.CLUB_SPEED, 36)));
        assertThat(bay.sheet().get().last().readings().get(0).number()).isEqualTo("\u2013");
        assertThat(bay.sheet().get().pattern()).isNull();
    }

    @Test
    void axesStayWhereTheyAreWhileShotsFit() {
        bay.startNext();
        hit(4);
        var before = bay.sheet().get().strips().get(0).strip().scale();
        workbench.undo();
        assertThat(bay.sheet().get().strips().get(0).strip().scale()).isEqualTo(before);
    }

    @Test
    void anEmptyTestSaysWhatIsMissing() {
        on(Session.blank("empty", java.time.LocalDate.of(2026, 3, 14)));
        assertThat(bay.sheet().get().empty()).contains("Plan");
        bay.startNext();
        bay.endStint();
        bay.setAsideLast();
        bay.switchConfiguration();
        bay.repeat();
        bay.note();
        bay.tray();
        bay.twistChecked();
        bay.toggleFeel();
        assertThat(bay.prompt().get()).isNull();
        assertThat(said()).isNotBlank();
    }

    @Test
    void theSourceSaysHowLongAgoItWasHeardOf() {
        assertThat(bay.sourceText().get()).isEqualTo("shots are typed");
        bay.startNext();
        hit(1);
        bay.sourceChanged(new SourceStatus(SourceStatus.State.ALIVE, "shots.csv", clock.now, ""), false);
        clock.now = clock.now.plusSeconds(4);
        bay.tick();
        assertThat(bay.sourceText().get()).isEqualTo("shots.csv: alive, last reading 4 s ago");
        clock.now = clock.now.plusSeconds(24 * 60);
        bay.tick();
        assertThat(bay.elapsed().get()).isEqualTo("24 min");
    }

    @Test
    void aRehearsalSaysSoAndItsShotsAreMarked() {
        bay.startNext();
        bay.sourceChanged(new SourceStatus(SourceStatus.State.WAITING, "rehearsal", null, "these shots are not hit by anybody"), true);
        arrive(Shot.of("r", Readings.of(Metric.CARRY, 140)).withRehearsal(true));
        assertThat(bay.sourceText().get()).startsWith("rehearsal");
        bay.sourceChanged(null, false);
        assertThat(bay.sheet().get().rehearsal()).as("the session holds rehearsal shots").isTrue();
    }

    @Test
    void aProvisionalShotThatTurnsOutToBeNoneIsWithdrawnAndARealOneStays() {
        bay.startNext();
        arrive(Shot.of("half", Readings.of(Metric.CARRY, 1)).withProvisional(true));
        arrive(Shot.of("whole", Readings.of(Metric.CARRY, 140)));
        bay.arrived(new Arrival(List.of(), List.of(), List.of("half", "whole"), List.of(), List.of()));
        assertThat(stint(0).shots()).extracting(Shot::id).containsExactly("whole");
    }

    @Test
    void aStintThatHasEndedCanStillBeCorrected() {
        bay.startNext();
        hit(4);
        bay.endStint();
        bay.switchConfiguration();
        assertThat(bay.prompt().get().options().get(5).text()).isEqualTo("last was not A");
        bay.choose(6);
        bay.choose(2);
        bay.choose(1);
        assertThat(bay.sheet().get().queue()).extracting(QueueRow::title)
                .containsExactly("C", "B", "A", "D", "E", "A, retest");
        assertThat(stint(0).state()).isEqualTo(Stint.State.DONE);
    }

    @Test
    void hiddenNamesAreNotOnTheCard() {
        bay.startNext();
        assertThat(bay.sheet().get().hand().name()).isEqualTo("standard");
        assertThat(bay.sheet().get().hand().facts()).contains("46\u00A0g");
        bay.hideNext();
        bay.hideNext();
        assertThat(bay.hiding().get().names()).isTrue();
        assertThat(bay.sheet().get().hand().name()).isEmpty();
        assertThat(bay.sheet().get().hand().facts()).isEmpty();
    }

    @Test
    void everyKeyIsItsOwnAndNoneIsADigit() {
        List<String> keys = java.util.stream.Stream.of(BayAction.values()).map(BayAction::key).toList();
        assertThat(keys).doesNotHaveDuplicates().allMatch(key -> key.matches("[A-Z]"));
        List<String> typing = java.util.stream.Stream.of(BayAction.values()).map(BayAction::typingKey)
                .filter(key -> !key.isEmpty()).toList();
        assertThat(typing).doesNotHaveDuplicates().doesNotContain("F1", "F11");
        assertThat(BayAction.ofKey("S")).contains(BayAction.END_STINT);
        assertThat(BayAction.ofTypingKey("F5")).contains(BayAction.END_STINT);
    }
}
