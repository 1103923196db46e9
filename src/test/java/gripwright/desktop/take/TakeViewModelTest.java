package gripwright.desktop.take;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.desktop.support.DemoSessions;
import gripwright.desktop.support.InMemoryServices;
import gripwright.desktop.support.Workbench;
import gripwright.desktop.support.Workbenches;
import gripwright.intake.Choice;
import gripwright.intake.ColumnMeaning;
import gripwright.intake.FileColumn;
import gripwright.intake.Question;
import gripwright.model.ClubTest;
import gripwright.model.Metric;
import gripwright.model.Readings;
import gripwright.model.Session;
import gripwright.model.ShotSource;
import gripwright.model.Stint;
import gripwright.session.Edit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Deque;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A CSV file on its way into the session by hand. */
class TakeViewModelTest {

    private static final String TEST = "shot,configuration,stint,club speed (m/s),mystery\n"
            + "1,A,1,40.1,0.5\n2,A,1,39.7,0.4\n3,B,2,40.4,1.0\n4,B,2,abc,0.2\n";

    @TempDir
    Path folder;

    private final Workbench workbench = Workbenches.on(Session.blank("s", LocalDate.of(2026, 3, 1)));
    private final TakeViewModel model = new TakeViewModel(workbench);

    private FileColumn column(String name) {
        return model.result().get().columns().stream().filter(column -> column.key().equals(name)).findFirst().orElseThrow();
    }

    private static ColumnMeaning meaning(String key) {
        return ColumnMeaning.ofKey(key).orElseThrow();
    }

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("shots.csv"), text);
    }

    @Test
    void aFileThatNamesConfigurationsFillsTheTestInOneStepThatUndoTakesBack() throws IOException {
        model.open(file(TEST));

        assertThat(model.isReady()).isTrue();
        assertThat(model.destination()).contains("fill the test");
        assertThat(model.result().get().problems()).anyMatch(problem -> problem.line() != null && problem.line() == 5);
        assertThat(model.take()).isTrue();
        assertThat(workbench.test().get().configurations()).hasSize(2);
        assertThat(workbench.test().get().stints()).hasSize(2);
        assertThat(workbench.undoLabel().get()).isEqualTo("Take 4 shots from shots.csv");
        workbench.undo();
        assertThat(workbench.test().get().configurations()).isEmpty();
    }

    @Test
    void theSameFileAgainHasNothingToTake() throws IOException {
        Path file = file(TEST);
        model.open(file);
        model.take();
        model.open(file);
        assertThat(model.isReady()).isFalse();
        assertThat(TakeWords.outcome(model.result().get())).contains("All 4 shots").contains("adds nothing");
    }

    @Test
    void withoutConfigurationsAndStintInHandTheShotsWaitInTheTray() throws IOException {
        model.open(file("shot,club speed (m/s)\n1,40.1\n2,39.7\n"));
        assertThat(model.destination()).contains("tray");
        assertThat(model.take()).isTrue();
        assertThat(workbench.session().get().tray()).hasSize(2);
    }

    @Test
    void aQuestionIsAskedAndNothingTakenBeforeItIsAnswered() throws IOException {
        model.open(file("shot,club speed\n1,40.1\n2,39.7\n"));
        assertThat(model.isReady()).isFalse();
        assertThat(model.take()).isFalse();
        Question question = model.result().get().questions().get(0);
        String metres = question.choices().stream().filter(choice -> choice.text().contains("m/s")).findFirst()
                .orElseThrow().key();
        model.answer(question.id(), metres);
        assertThat(model.isReady()).isTrue();
        model.take();
        assertThat(workbench.session().get().tray().get(0).readings().given(Metric.CLUB_SPEED)).hasValue(40.1);
    }

    @Test
    void aColumnSetByHandIsReadAndTheRuleCanBeTakenBack() throws IOException {
        model.open(file(TEST));
        model.setMeaning(column("mystery"), meaning("faceAngle"));
        model.setSide(column("mystery"), "left");
        assertThat(column("mystery").side()).isEqualTo("left");
        assertThat(model.firstReading(column("mystery"))).isEqualTo("0.5\u00B0 closed");
        model.takeBack(column("mystery"));
        assertThat(column("mystery").isRead()).isFalse();
        assertThat(model.mapping().columns()).isEmpty();
        model.setMeaning(column("mystery"), meaning("faceAngle"));
        model.setSide(column("mystery"), "left");
        model.setUnit(column("club speed (m/s)"), "mph");
        model.take();
        Readings readings = workbench.test().get().stints().get(0).shots().get(0).readings();
        assertThat(readings.given(Metric.FACE_ANGLE)).hasValue(-0.5);
        assertThat(readings.given(Metric.CLUB_SPEED)).as("1 mph is 0.44704 m/s by definition").hasValue(40.1 * 0.44704);
    }

    @Test
    void aColumnCanBeLeftOut() throws IOException {
        model.open(file("shot,club speed (m/s),carry (m)\n1,40.1,140\n"));
        model.setMeaning(column("carry (m)"), null);
        model.take();
        assertThat(workbench.session().get().tray().get(0).readings().given(Metric.CARRY)).isEmpty();
    }

    @Test
    void aKeptMappingIsOfferedForTheSameHeadingsAndNotForOthers() throws IOException {
        String odd = "shot,club speed (m/s),mystery\n1,40.1,0.5\n";
        model.open(file(odd));
        model.setMeaning(column("mystery"), meaning("faceAngle"));
        model.save("bay two", "never *.csv");
        assertThat(model.mappingInUse()).contains("bay two");
        model.close();

        model.open(Files.writeString(folder.resolve("other.csv"), "shot,club speed (m/s),carry (m)\n7,40,141\n"));
        assertThat(model.mapping().isNamed()).as("the last mapping stays for no other kind of file").isFalse();
        model.open(Files.writeString(folder.resolve("next.csv"), "mystery,shot,club speed (m/s)\n0.5,8,40.1\n"));
        assertThat(model.mappingInUse()).contains("bay two").contains("headings");
        assertThat(column("mystery").isRead()).isTrue();
        model.use(null);
        assertThat(column("mystery").isRead()).isFalse();
        model.open(Files.writeString(folder.resolve("Never 3.csv"), "shot,mystery\n1,2\n"));
        assertThat(model.mappingInUse()).contains("never *.csv");
        model.forget();
        assertThat(model.saved()).isEmpty();
        assertThat(model.mapping().isNamed()).isFalse();
    }

    @Test
    void severalMappingsThatBelongToAFileAreAskedAbout() throws IOException {
        String odd = "shot,club speed (m/s),mystery\n1,40.1,0.5\n";
        model.open(file(odd));
        model.setMeaning(column("mystery"), meaning("faceAngle"));
        model.save("one", "");
        model.save("two", "");
        model.open(file(odd));
        assertThat(model.isReady()).isFalse();
        AskedQuestion which = model.questions().get(0);
        assertThat(which.choices()).extracting(Choice::key).containsExactly("one", "two", "as recognised");
        model.answer(which.id(), "two");
        assertThat(model.isReady()).isTrue();
        assertThat(model.mapping().name()).isEqualTo("two");
    }

    @Test
    void pastedRowsGoTheSameWayAndTheSameRowsAgainAddNothing() {
        String rows = "shot\tclub speed (m/s)\n1\t40,1\n2\t39,7\n";
        model.openRows(rows);
        assertThat(TakeWords.dialect(model.result().get())).isEqualTo("Tabs between cells, decimal comma, headings on line 1.");
        assertThat(model.take()).isTrue();
        assertThat(workbench.session().get().tray()).extracting(shot -> shot.source().kind())
                .containsOnly(ShotSource.Kind.PASTE).hasSize(2);
        model.openRows(rows);
        assertThat(TakeWords.outcome(model.result().get())).contains("All 2 shots").contains("adds nothing");
        assertThat(model.isReady()).isFalse();
    }

    @Test
    void rowsWithoutHeadingsAreReadOnceTheirColumnsAreSet() {
        model.openRows("40.1\t0.5\n39.7\t0.2\n");
        assertThat(model.isReady()).isFalse();
        model.setMeaning(column("#1"), meaning("clubSpeed"));
        model.setUnit(column("#1"), "m/s");
        assertThat(model.count()).isEqualTo(2);
        assertThat(model.take()).isTrue();
        assertThat(workbench.session().get().tray()).hasSize(2);
    }

    @Test
    void theStintInHandGetsTheShotsAndUndoIsOneNamedStep() throws IOException {
        model.open(file(TEST));
        model.take();
        ClubTest test = workbench.test().get();
        Stint second = test.stints().get(1);
        workbench.apply(new Edit("Take in hand", session -> session.withTest(
                test.withStint(second.withState(Stint.State.IN_HAND)))));
        model.open(Files.writeString(folder.resolve("more.csv"), "shot,club speed (m/s)\n9,40.1\n"));
        assertThat(model.destination()).isEqualTo("They go into the stint in hand, B.");
        model.take();
        assertThat(workbench.test().get().stints().get(1).shots()).hasSize(3);
        assertThat(workbench.undoLabel().get()).isEqualTo("Take 1 shot from more.csv");
        workbench.undo();
        assertThat(workbench.test().get().stints().get(1).shots()).hasSize(2);
    }

    @Test
    void brokenOffNothingIsTakenAndClosedNothingStays() throws IOException {
        Deque<Runnable> work = new ArrayDeque<>();
        Workbench slow = new Workbench(new InMemoryServices(Session.blank("s", LocalDate.of(2026, 3, 1)),
                DemoSessions.shop()), work::add, Runnable::run);
        TakeViewModel late = new TakeViewModel(slow);
        late.open(file(TEST));
        assertThat(late.reading().get()).isTrue();
        work.remove().run();
        late.cancel();
        work.forEach(Runnable::run);
        assertThat(late.reading().get()).isFalse();
        assertThat(late.result().get()).isNull();
        assertThat(late.take()).isFalse();
        late.close();
        assertThat(late.questions()).isEmpty();
        assertThat(slow.undoLabel().get()).isEmpty();
    }

    @Test
    void aFileThatHasGrownSaysWhatIsNewAndWhatIsThere() throws IOException {
        model.open(file("shot,club speed (m/s)\n1,40.1\n"));
        model.take();
        model.open(file("shot,club speed (m/s)\n1,40.1\n2,39.7\n"));
        assertThat(TakeWords.outcome(model.result().get())).isEqualTo("1 new shot; 1 taken before.");
    }

    @Test
    void howTheFileIsWrittenIsSaidInWords() throws IOException {
        model.open(file("\uFEFFBay two\n\nshot;club speed;carry\n;[mph];[yd]\n1;86,1;150\nAverage;86,1;150\n"));
        assertThat(TakeWords.dialect(model.result().get())).isEqualTo("Semicolons between cells, decimal comma, UTF-8, "
                + "headings on line 3, units on line 4, 1 title line passed over, 1 summary line passed over.");
    }

    @Test
    void shotsThatCameInMeanwhileAreNotTakenTwice() throws IOException {
        Path file = file("shot,club speed (m/s)\n1,40.1\n2,39.7\n");
        TakeViewModel other = new TakeViewModel(workbench);
        model.open(file);
        other.open(file);
        assertThat(other.take()).isTrue();
        assertThat(model.take()).isFalse();
        assertThat(model.isReady()).isFalse();
        assertThat(workbench.session().get().tray()).hasSize(2);
    }

    @Test
    void linesWithoutAConfigurationAreSaidBeforehandAndStayOut() throws IOException {
        model.open(file("shot,configuration,club speed (m/s)\n1,A,40.1\n2,,39.7\n"));
        assertThat(model.destination()).contains("1 without a configuration stay out");
        assertThat(model.take()).isTrue();
        assertThat(workbench.undoLabel().get()).isEqualTo("Take 1 shot from shots.csv");
        assertThat(workbench.test().get().stints()).hasSize(1);
    }

    @Test
    void aColumnWithoutAHeadingIsSetByItsPlaceFromOne() throws IOException {
        model.open(file("shot,,club speed (m/s)\n1,0.5,40.1\n2,0.4,39.7\n"));
        assertThat(column("#2").position()).isEqualTo(2);
        model.setMeaning(column("#2"), meaning("faceAngle"));
        model.take();
        assertThat(workbench.session().get().tray().get(0).readings().given(Metric.FACE_ANGLE)).hasValue(0.5);
    }
}
