package gripwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.model.Handedness;
import gripwright.model.Problem;
import gripwright.model.Shot;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WatchedSourcesTest {

    private static final CsvIntake INTAKE = CsvIntake.withDefaults().with(Handedness.RIGHT);
    private static final String HEADER = "Shot,Club speed (m/s),Carry (m)\n";

    @TempDir
    private Path folder;

    private final BlockingQueue<Shot> shots = new LinkedBlockingQueue<>();
    private final BlockingQueue<SourceStatus> statuses = new LinkedBlockingQueue<>();
    private final BlockingQueue<Question> questions = new LinkedBlockingQueue<>();

    private LiveListener listener() {
        return new LiveListener() {
            @Override
            public void arrived(Arrival arrival) {
                arrival.added().forEach(row -> shots.add(row.shot()));
                arrival.replaced().forEach(row -> shots.add(row.shot()));
                questions.addAll(arrival.questions());
            }

            @Override
            public void changed(SourceStatus status) {
                statuses.add(status);
            }
        };
    }

    private static void append(Path file, String text) throws IOException {
        Files.write(file, text.getBytes(StandardCharsets.UTF_8), StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    }

    private Shot awaited() throws InterruptedException {
        Shot shot = shots.poll(20, TimeUnit.SECONDS);
        assertThat(shot).as("a shot within 20 s").isNotNull();
        return shot;
    }

    private void awaitStatus(SourceStatus.State state) throws InterruptedException {
        for (SourceStatus status = statuses.poll(20, TimeUnit.SECONDS); ; status = statuses.poll(20, TimeUnit.SECONDS)) {
            assertThat(status).as("status " + state).isNotNull();
            if (status.state() == state) {
                return;
            }
        }
    }

    @Test
    void aWatchedFileBringsItsShotsAndSaysHowItIs() throws Exception {
        Path file = folder.resolve("live.csv");
        try (WatchedReadings source = WatchedReadings.ofFile(file, INTAKE, List.of(), WatchOptions.usual())) {
            source.start(listener());
            awaitStatus(SourceStatus.State.GONE);
            append(file, HEADER);
            awaitStatus(SourceStatus.State.WAITING);
            append(file, "1,40,150\n");
            assertThat(awaited().source().shotId()).isEqualTo("1");
            awaitStatus(SourceStatus.State.ALIVE);
            append(file, "2,41,152\n3,42,15");
            assertThat(awaited().source().shotId()).isEqualTo("2");
            append(file, "4\n");
            assertThat(awaited().source().shotId()).isEqualTo("3");
            Files.delete(file);
            awaitStatus(SourceStatus.State.GONE);
        }
        assertThat(shots).isEmpty();
    }

    @Test
    void anAnswerIsTakenWhileTheFileIsWatched() throws Exception {
        Path file = folder.resolve("live.csv");
        append(file, "Shot,Club speed,Carry (m)\n1,40,150\n");
        try (WatchedReadings source = WatchedReadings.ofFile(file, INTAKE, List.of(), WatchOptions.usual())) {
            source.start(listener());
            Shot first = awaited();
            Question question = questions.poll(20, TimeUnit.SECONDS);
            assertThat(question).isNotNull();
            source.answer(Answers.none().with(question.id(), "m/s"));
            Shot answered = awaited();
            assertThat(answered.id()).isEqualTo(first.id());
            assertThat(answered.readings().values()).hasSize(2);
        }
    }

    @Test
    void aWatchedFolderBringsAFilePerShot() throws Exception {
        Path dropped = folder.resolve("dropped");
        try (WatchedReadings source = WatchedReadings.ofFolder(dropped, INTAKE, List.of(), WatchOptions.usual())) {
            source.start(listener());
            awaitStatus(SourceStatus.State.GONE);
            Files.createDirectory(dropped);
            for (int shot = 1; shot <= 5; shot++) {
                append(dropped.resolve("shot-" + shot + ".csv"), HEADER + shot + "," + (40 + shot) + ",150\n");
                assertThat(awaited().source().shotId()).isEqualTo(String.valueOf(shot));
            }
        }
    }

    @Test
    void duplicateExportsOfAFolderComeOnce() throws IOException {
        FolderFollower follower = new FolderFollower(SourceDisk.local(), folder, "exports", INTAKE,
                TakenReadings::new, false, Duration.ofSeconds(2));
        Instant now = Instant.parse("2026-03-14T14:00:00Z");
        List<Shot> brought = new ArrayList<>();
        StringBuilder all = new StringBuilder(HEADER);
        for (int export = 1; export <= 8; export++) {
            for (int i = 0; i < 3; i++) {
                int shot = 3 * (export - 1) + i + 1;
                all.append(shot).append(",4").append(shot % 10).append(".5,").append(140 + shot).append('\n');
            }
            append(folder.resolve("export " + export + ".csv"), all.toString());
            append(folder.resolve("~export.csv"), HEADER + "99,40,150\n");
            append(folder.resolve("picture.png"), "no readings");
            now = now.plusSeconds(1);
            follower.look(now).added().forEach(row -> brought.add(row.shot()));
        }
        Files.move(folder.resolve("export 3.csv"), folder.resolve("export 3 copy.csv"), StandardCopyOption.ATOMIC_MOVE);
        now = now.plus(Duration.ofMinutes(5));
        assertThat(follower.look(now).isNothing()).isTrue();
        assertThat(brought).extracting(shot -> Integer.parseInt(shot.source().shotId()))
                .containsExactlyElementsOf(java.util.stream.IntStream.rangeClosed(1, 24).boxed().toList());
        now = now.plus(Duration.ofMinutes(5));
        append(folder.resolve("export 1.csv"), "25,44,170\n");
        Arrival late = follower.look(now);
        assertThat(late.added()).hasSize(1);
        assertThat(late.problems()).extracting(Problem::severity).doesNotContain(Problem.Severity.FATAL);
        follower.close();
        assertThat(follower.status().state()).isEqualTo(SourceStatus.State.STOPPED);
    }
}
