package gripwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.model.Handedness;
import gripwright.model.Metric;
import gripwright.model.Shot;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FileFollowerTest {

    private static final String HEADER = "Shot;Time;Club speed (m/s);Face angle;Carry (m)";
    private static final Duration QUIET = Duration.ofSeconds(2);

    @TempDir
    private Path folder;

    private Path file;
    private Instant now = Instant.parse("2026-03-14T14:00:00Z");
    private final Map<String, IntakeRow> brought = new LinkedHashMap<>();
    private final List<Arrival> arrivals = new ArrayList<>();
    private final FlakyDisk disk = new FlakyDisk();
    private FileFollower follower;

    @BeforeEach
    void follow() {
        file = folder.resolve("shots.csv");
        follower = follower(false, List.of());
    }

    private FileFollower follower(boolean skipExisting, List<Shot> taken) {
        CsvIntake intake = CsvIntake.withDefaults().with(Handedness.RIGHT);
        return new FileFollower(disk, file, "shots.csv", intake,
                () -> TakenReadings.of(taken, intake.kind(), "shots.csv"), skipExisting, QUIET);
    }

    /** A disk on which reading a region can fail, as where another program has locked it. */
    private static final class FlakyDisk implements SourceDisk {
        private final SourceDisk local = SourceDisk.local();
        private long lockedFrom = Long.MAX_VALUE;

        @Override
        public Stamp stamp(Path path) throws IOException {
            return local.stamp(path);
        }

        @Override
        public OpenFile open(Path path) throws IOException {
            OpenFile opened = local.open(path);
            return new OpenFile() {
                @Override
                public Object identity() {
                    return opened.identity();
                }

                @Override
                public long size() throws IOException {
                    return opened.size();
                }

                @Override
                public byte[] read(long from, int most) throws IOException {
                    byte[] bytes = opened.read(from, most);
                    if (from + bytes.length > lockedFrom) {
                        throw new IOException("a portion of the file is locked by another program");
                    }
                    return bytes;
                }

                @Override
                public void close() throws IOException {
                    opened.close();
                }
            };
        }
    }

    private static String line(int shot, Random random) {
        return String.format(Locale.ROOT, "%d;14:%02d:%02d;%.2f;%.1f;%.1f", shot, shot / 60 % 60, shot % 60,
                38 + random.nextGaussian(), 2 * random.nextGaussian(), 140 + 5 * random.nextGaussian());
    }

    private void append(String text) throws IOException {
        append(text.getBytes(StandardCharsets.UTF_8));
    }

    private void append(byte[] bytes) throws IOException {
        Files.write(file, bytes, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    }

    private Arrival look() {
        Arrival arrival = follower.look(now);
        arrivals.add(arrival);
        arrival.added().forEach(row -> assertThat(brought.put(row.shot().id(), row)).as("twice").isNull());
        arrival.replaced().forEach(row -> assertThat(brought.put(row.shot().id(), row)).as("replaced").isNotNull());
        arrival.withdrawn().forEach(id -> assertThat(brought.remove(id)).as("withdrawn").isNotNull());
        return arrival;
    }

    private Arrival lookLater() {
        now = now.plus(QUIET).plusMillis(1);
        return look();
    }

    @Test
    void bringsEachLineWhenItHasEnded() throws IOException {
        assertThat(look().isNothing()).isTrue();
        assertThat(follower.status().state()).isEqualTo(SourceStatus.State.GONE);
        append(HEADER + "\n1;14:00:01;38.1;1.0;1");
        assertThat(look().added()).isEmpty();
        assertThat(follower.status().state()).isEqualTo(SourceStatus.State.WAITING);
        append("40\n");
        assertThat(look().added()).hasSize(1);
        assertThat(brought.values().iterator().next().shot().readings().given(Metric.CARRY)).hasValue(140);
        assertThat(follower.status().text(now.plusSeconds(4))).isEqualTo("shots.csv: alive, last reading 4 s ago");
        assertThat(look().isNothing()).isTrue();
    }

    @Test
    void aLastLineWithoutEndIsTakenWhenQuietAndReplacedWhenItGrows() throws IOException {
        append(HEADER + "\n1;14:00:01;38.1;1.0;140\n2;14:00:02;38.5;0.5;14");
        assertThat(look().added()).hasSize(1);
        Arrival quiet = lookLater();
        assertThat(quiet.added()).hasSize(1);
        Shot provisional = quiet.added().get(0).shot();
        assertThat(provisional.provisional()).isTrue();
        assertThat(provisional.readings().given(Metric.CARRY)).hasValue(14);
        assertThat(lookLater().isNothing()).isTrue();
        append("1.5\n3;14:00:03;38.2;0.1;139\n");
        Arrival grown = look();
        assertThat(grown.replaced()).hasSize(1);
        Shot whole = grown.replaced().get(0).shot();
        assertThat(whole.id()).isEqualTo(provisional.id());
        assertThat(whole.provisional()).isFalse();
        assertThat(whole.readings().given(Metric.CARRY)).hasValue(141.5);
        assertThat(grown.added()).hasSize(1);
        assertThat(brought).hasSize(3);
    }

    @Test
    void aLineThatEndsAsItWasIsConfirmed() throws IOException {
        append(HEADER + "\n1;14:00:01;38.1;1.0;140");
        look();
        assertThat(lookLater().added()).hasSize(1);
        append("\r\n");
        look();
        append("2;14:00:02;38.1;1.0;140\r\n");
        look();
        assertThat(brought.values()).hasSize(2).noneMatch(row -> row.shot().provisional());
    }

    @Test
    void aProvisionalLineThatTurnsOutToBeASummaryIsWithdrawn() throws IOException {
        append(HEADER + "\n1;14:00:01;38.1;1.0;140\nAver;;38.1;");
        look();
        assertThat(lookLater().added()).hasSize(1);
        append("1.0;140\n");
        look();
        assertThat(brought).hasSize(2);
    }

    @Test
    void aRewrittenFileBringsOnlyWhatIsNew() throws IOException {
        Random random = new Random(1);
        List<String> lines = new ArrayList<>(List.of(HEADER));
        for (int shot = 1; shot <= 50; shot++) {
            lines.add(line(shot, random));
            Files.write(file, lines);
            look();
        }
        assertThat(brought).hasSize(50);
        lines.remove(1);
        Files.write(file, lines);
        look();
        assertThat(brought).hasSize(50);
    }

    @Test
    void linesWrittenJustBeforeARotationAreStillRead() throws IOException {
        append(HEADER + "\n1;14:00:01;38.1;1.0;140\n");
        look();
        append("2;14:00:02;38.4;1.2;141\n3;14:00:03;38.7;1.1;142");
        Files.move(file, folder.resolve("shots.old"));
        look();
        assertThat(brought).hasSize(3);
        append(HEADER + "\n1;14:01:01;37.1;-1.0;131\n");
        look();
        assertThat(brought).hasSize(4);
    }

    @Test
    void aLockedLineIsReadWhenItIsFree() throws IOException {
        append(HEADER + "\n1;14:00:01;38.1;1.0;140\n");
        look();
        disk.lockedFrom = Files.size(file);
        append("2;14:00:02;38.4;1.2;141\n");
        assertThat(look().isNothing()).isTrue();
        assertThat(follower.status().state()).isEqualTo(SourceStatus.State.HELD);
        assertThat(follower.status().text(now)).contains("locked by another program");
        disk.lockedFrom = Long.MAX_VALUE;
        assertThat(look().added()).hasSize(1);
        assertThat(follower.status().state()).isEqualTo(SourceStatus.State.ALIVE);
    }

    @Test
    void whatWasThereAtTheStartCanBeLeftAlone() throws IOException {
        append(HEADER + "\n1;14:00:01;38.1;1.0;140\n2;14:00:02;38.4;1.2;141");
        follower = follower(true, List.of());
        look();
        lookLater();
        append("\n3;14:00:03;38.6;1.2;142\n");
        look();
        assertThat(brought.values()).extracting(row -> row.shot().source().shotId()).containsExactly("3");
    }

    @Test
    void shotsTakenBeforeAreNotBroughtAgain() throws IOException {
        append(HEADER + "\n1;14:00:01;38.1;1.0;140\n2;14:00:02;38.4;1.2;141\n");
        look();
        List<Shot> taken = brought.values().stream().map(IntakeRow::shot).toList();
        append("3;14:00:03;38.6;1.2;142\n");
        brought.clear();
        follower = follower(false, taken);
        look();
        assertThat(brought.values()).extracting(row -> row.shot().source().shotId()).containsExactly("3");
    }

    @Test
    void anAnswerReplacesWhatWasBroughtWithoutIt() throws IOException {
        append("Club speed,Carry (m)\n38.1,140\n38.4,141\n");
        Arrival open = look();
        assertThat(open.questions()).extracting(Question::id).containsExactly("unit:speed");
        assertThat(open.added()).hasSize(2);
        follower.answer(Answers.none().with("unit:speed", "m/s"));
        Arrival answered = look();
        assertThat(answered.added()).isEmpty();
        assertThat(answered.replaced()).hasSize(2);
        assertThat(answered.replaced().get(0).shot().readings().given(Metric.CLUB_SPEED)).hasValue(38.1);
        append("38.9,143\n");
        assertThat(look().added()).hasSize(1);
    }

    @Test
    void questionsAreAnsweredOneAfterTheOther() throws IOException {
        append("Speed,Carry,Shot\n86,150,1\n");
        assertThat(look().questions()).extracting(Question::id).containsExactly("meaning:speed", "unit:distance");
        assertThat(brought).hasSize(1);
        follower.answer(Answers.none().with("meaning:speed", "clubSpeed"));
        assertThat(look().questions()).extracting(Question::id).containsExactlyInAnyOrder("unit:speed", "unit:distance");
        follower.answer(Answers.none().with("unit:speed", "mph"));
        look();
        follower.answer(Answers.none().with("unit:distance", "yd"));
        look();
        assertThat(brought.values()).hasSize(1).allMatch(row -> row.shot().readings().values().size() == 2);
        assertThat(arrivals).allMatch(arrival -> arrival.problems().isEmpty());
    }

    @Test
    void aLineBreakInsideAQuotedCellDoesNotEndTheLine() throws IOException {
        append("Club speed (m/s),Note\n38.1,\"first\n");
        assertThat(look().added()).isEmpty();
        append("second\"\n");
        assertThat(look().added()).hasSize(1);
        assertThat(brought.values().iterator().next().shot().note()).isEqualTo("first second");
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16", "windows-1252"})
    void twoThousandShotsByteByByteRewrittenRotatedReplacedAndLockedComeOnceEach(String encoding) throws IOException {
        Charset charset = Charset.forName(encoding);
        Random random = new Random(7);
        List<String> shots = new ArrayList<>();
        for (int shot = 1; shot <= 2000; shot++) {
            shots.add(line(shot, random) + (encoding.equals("UTF-8") ? "\r\n" : "\n"));
        }
        StringBuilder whole = new StringBuilder("Shot;Time;Club speed (m/s);Face angle (\u00B0);Carry (m)\n");
        Files.write(file, whole.toString().getBytes(charset));
        for (int i = 0; i < shots.size(); i++) {
            whole.append(shots.get(i));
            write(i, shots.get(i), whole, charset);
            if (i % 97 == 0) {
                lookLater();
            }
        }
        lookLater();
        assertThat(brought.values()).extracting(row -> Integer.parseInt(row.shot().source().shotId()))
                .containsExactlyElementsOf(java.util.stream.IntStream.rangeClosed(1, 2000).boxed().toList());
        assertThat(brought.values()).noneMatch(row -> row.shot().provisional());
        assertThat(brought.values()).allMatch(row -> row.shot().readings().values().size() == 3);
    }

    /** One more shot reaches the file, in one of the ways that programs write. */
    private void write(int index, String line, StringBuilder whole, Charset charset) throws IOException {
        byte[] bytes = charset.equals(StandardCharsets.UTF_16) ? line.getBytes(StandardCharsets.UTF_16BE)
                : line.getBytes(charset);
        switch (index % 10) {
            case 3 -> Files.write(file, whole.toString().getBytes(charset));
            case 5 -> {
                Path other = folder.resolve("written-beside.tmp");
                Files.write(other, whole.toString().getBytes(charset));
                Files.move(other, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            }
            case 7 -> {
                append(bytes);
                Files.move(file, folder.resolve("shots-until-" + index));
                look();
                whole.setLength(whole.indexOf("\n") + 1);
                Files.write(file, whole.toString().getBytes(charset));
            }
            case 9 -> {
                disk.lockedFrom = Files.size(file);
                append(bytes);
                look();
                disk.lockedFrom = Long.MAX_VALUE;
            }
            default -> {
                for (byte one : bytes) {
                    append(new byte[] {one});
                    look();
                }
            }
        }
        look();
    }
}
