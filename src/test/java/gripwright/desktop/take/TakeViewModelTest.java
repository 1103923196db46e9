package gripwright.desktop.take;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.desktop.support.Workbench;
import gripwright.desktop.support.Workbenches;
import gripwright.intake.Question;
import gripwright.model.Metric;
import gripwright.model.Session;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
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
        assertThat(model.result().get().sentence()).contains("0 new shots").contains("taken before");
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
    void aColumnSetByHandIsRead() throws IOException {
        model.open(file(TEST));
        assertThat(model.setColumn("mystery", "faceAngle", "", true)).isEmpty();
        model.take();
        assertThat(workbench.test().get().stints().get(0).shots().get(0).readings().given(Metric.FACE_ANGLE))
                .hasValue(-0.5);
        assertThat(model.setColumn("mystery", "clubSpeed", "stone", false)).get().asString().contains("no unit");
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
        assertThat(workbench.undoLabel().get()).isEqualTo("Take 1 shots from shots.csv");
        assertThat(workbench.test().get().stints()).hasSize(1);
    }

    @Test
    void aColumnWithoutAHeadingIsSetByItsPlaceFromOne() throws IOException {
        model.open(file("shot,,club speed (m/s)\n1,0.5,40.1\n2,0.4,39.7\n"));
        assertThat(model.result().get().unknownColumns().get(0).position()).isEqualTo(2);
        assertThat(model.setColumn("#2", "faceAngle", "deg", false)).isEmpty();
        model.take();
        assertThat(workbench.session().get().tray().get(0).readings().given(Metric.FACE_ANGLE)).hasValue(0.5);
    }
}
