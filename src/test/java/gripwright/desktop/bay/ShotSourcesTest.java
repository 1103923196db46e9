package gripwright.desktop.bay;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.desktop.support.DemoSessions;
import gripwright.desktop.support.InMemoryServices;
import gripwright.desktop.support.Workbench;
import gripwright.intake.ColumnMapping;
import gripwright.intake.ColumnRule;
import gripwright.model.Metric;
import gripwright.model.Session;
import gripwright.model.Shot;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files, folders and rehearsals as sources of shots; the test's own thread stands for the window's. */
class ShotSourcesTest {

    private static final String HEADER = "Club speed [m/s];Carry [m]\n";
    private static final int PATIENCE_SECONDS = 20;
    private static final int LOOK_AGAIN_MILLIS = 50;

    private final BlockingQueue<Runnable> window = new LinkedBlockingQueue<>();
    private Workbench workbench;
    private BayViewModel bay;
    private ShotSources sources;
    private int identities;

    @TempDir
    private Path folder;

    @BeforeEach
    void open() {
        workbench = new Workbench(new InMemoryServices(BaySessions.planned("AB", "ABA", 3, 0), DemoSessions.shop()),
                Runnable::run, window::add);
        bay = new BayViewModel(workbench, Clock.systemUTC(), () -> "new-" + ++identities);
        sources = new ShotSources(workbench, bay);
        bay.startNext();
    }

    @AfterEach
    void close() {
        sources.stop();
    }

    private List<Shot> shots() {
        return workbench.test().get().stints().get(0).shots();
    }

    /** Does what is asked of the window's thread until the condition holds; fails when it doesn't within reason. */
    private void until(BooleanSupplier condition) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (!condition.getAsBoolean()) {
            assertThat(System.nanoTime()).as("waited in vain").isLessThan(end);
            Runnable next = window.poll(LOOK_AGAIN_MILLIS, TimeUnit.MILLISECONDS);
            if (next != null) {
                next.run();
            }
        }
    }

    private void append(Path file, String text) {
        try {
            Files.write(file, text.getBytes(StandardCharsets.UTF_8), StandardOpenOption.CREATE,
                    StandardOpenOption.APPEND);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    @Test
    void linesAppendedToAWatchedFileGoToTheStintInHand() throws Exception {
        Path file = folder.resolve("shots.csv");
        append(file, HEADER);
        sources.watch(file, false);
        append(file, "36.1;138\n36.4;");
        until(() -> shots().size() == 1);
        append(file, "141\n");
        until(() -> shots().size() == 2);
        assertThat(shots().get(1).readings().given(Metric.CARRY)).hasValue(141);
        until(() -> bay.sourceText().get().startsWith("shots.csv: alive, last reading"));
    }

    @Test
    void aWatchedFileIsReadWithTheMappingThatBelongsToIt() throws Exception {
        workbench.services().keepMapping(ColumnMapping.none().with(ColumnRule.of("Vee", "clubSpeed").withUnit("m/s"))
                .withName("bay two").withFiles(List.of("Vee", "Carry [m]"), ""));
        Path file = folder.resolve("shots.csv");
        append(file, "Vee;Carry [m]\n");
        sources.watch(file, false);
        until(() -> workbench.message().get().text().contains("bay two"));
        append(file, "36.1;138\n");
        until(() -> shots().size() == 1);
        assertThat(shots().get(0).readings().given(Metric.CLUB_SPEED)).hasValue(36.1);
    }

    @Test
    void theStintInHandDecidesWhereAWatchedFileNamesAnotherConfiguration() throws Exception {
        Path file = folder.resolve("shots.csv");
        append(file, "Configuration;Club speed [m/s]\n");
        sources.watch(file, false);
        append(file, "B;36.1\n");
        until(() -> shots().size() == 1);
        assertThat(workbench.message().get().text()).contains("The file says \u2018B\u2019").contains("went to A");
    }

    @Test
    void pastedRowsUnderHeadingsAreLookedAtOnTheSheetAndOthersAreTakenAtOnce() {
        bay.paste("Club speed [m/s]\tCarry [m]\n36.1\t138\n");
        assertThat(shots()).isEmpty();
        assertThat(workbench.rowsToTake().get()).startsWith("Club speed");
        bay.paste("80.5\t0.8 c\n");
        assertThat(shots()).hasSize(1);
    }

    @Test
    void readingsThatAreThereAlreadyAreAskedAbout() throws Exception {
        Path file = folder.resolve("shots.csv");
        append(file, HEADER + "36.1;138\n");
        sources.chosen(file);
        until(() -> bay.prompt().get() != null);
        assertThat(bay.prompt().get().question()).contains("already");
        bay.choose(1);
        // When the file was looked at first nobody says, so lines are appended until one is taken for new.
        until(() -> {
            append(file, "37.0;145\n");
            return !shots().isEmpty();
        });
        assertThat(shots()).allMatch(shot -> shot.readings().given(Metric.CARRY).orElseThrow() == 145);
    }

    @Test
    void filesDroppedIntoAWatchedFolderAreTaken() throws Exception {
        Path drop = Files.createDirectory(folder.resolve("drop"));
        sources.ask(() -> { }, () -> { });
        bay.answerWith(drop.toString());
        append(drop.resolve("one.csv"), HEADER + "36.1;138\n");
        until(() -> shots().size() == 1);
    }

    @Test
    void aSpeedWithoutAUnitIsAskedAboutAndReadAgainOnceAnswered() throws Exception {
        Path file = folder.resolve("shots.csv");
        append(file, "Club speed;Carry [m]\n");
        sources.watch(file, false);
        append(file, "86.4;138\n");
        until(() -> bay.prompt().get() != null);
        int mph = bay.prompt().get().options().stream().map(Prompt.Option::text).toList().indexOf("mph");
        assertThat(mph).isNotNegative();
        bay.choose(mph + 1);
        // 1 mph = 0.44704 m/s by definition.
        until(() -> shots().size() == 1 && shots().get(0).readings().given(Metric.CLUB_SPEED).isPresent());
        assertThat(shots().get(0).readings().given(Metric.CLUB_SPEED)).hasValue(86.4 * 0.44704);
    }

    @Test
    void aRehearsalPlaysMarkedShotsAndIsSaid() throws Exception {
        sources.ask(() -> { }, () -> { });
        bay.choose(3);
        bay.choose(2);
        until(() -> !shots().isEmpty());
        assertThat(shots()).allMatch(Shot::rehearsal);
        assertThat(bay.rehearsal().get()).isTrue();
        assertThat(bay.sheet().get().rehearsal()).isTrue();
    }

    @Test
    void anotherSessionLetsTheSourceGo() throws Exception {
        Path file = folder.resolve("shots.csv");
        append(file, HEADER);
        sources.watch(file, false);
        until(() -> bay.source().get() != null);
        workbench.open(gripwright.desktop.support.WorkbenchServices.Opened.fresh(
                Session.blank("another", LocalDate.of(2026, 3, 15))));
        assertThat(bay.source().get()).isNull();
        assertThat(workbench.message().get().text()).contains("let go");
    }

    @Test
    void whatIsNoPathIsSaid() {
        sources.ask(() -> { }, () -> { });
        bay.answerWith("\0");
        assertThat(workbench.message().get().text()).contains("no path");
    }
}
