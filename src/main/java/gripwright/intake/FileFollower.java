package gripwright.intake;

import gripwright.model.Problem;
import gripwright.model.Shot;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.function.Supplier;

/**
 * Follows one file that another program appends to, rewrites, rotates or replaces, and brings each of its shots once.
 *
 * <p>Has no thread and no clock of its own: whoever owns it looks as often as it likes, from one thread. The file is held
 * open between looks, so that lines written just before it was moved away are still read.
 */
final class FileFollower implements Follower {

    private final SourceDisk disk;
    private final Path path;
    private final String source;
    private final Duration quiet;
    private final Supplier<TakenReadings> takenBefore;
    private final ShotLedger ledger = new ShotLedger();
    private CsvIntake intake;
    private TakenReadings taken;
    private TakenReadings.Pass pass;
    private FileReading.Continuation continuation;
    private FollowedBytes bytes;
    private long lastSize = -1;
    private Object lastModified;
    private Instant changedAt = Instant.EPOCH;
    private byte[] examinedTail = new byte[0];
    private boolean skipping;
    private Problem failure;
    private SourceStatus.State state = SourceStatus.State.WAITING;
    private String detail = "";
    private Instant lastReading;

    /**
     * Follows a file.
     *
     * @param disk where it is read from
     * @param path the file
     * @param source the source's name
     * @param intake how it is read
     * @param takenBefore the readings taken before; asked for again when an answer makes everything be read anew
     * @param skipExisting whether the shots that are in the file at the first look are somebody else's
     * @param quiet how long a line without an end must stay as it is before it is taken
     */
    FileFollower(SourceDisk disk, Path path, String source, CsvIntake intake, Supplier<TakenReadings> takenBefore,
            boolean skipExisting, Duration quiet) {
        this.disk = disk;
        this.path = path;
        this.source = source;
        this.intake = intake;
        this.takenBefore = takenBefore;
        this.taken = takenBefore.get();
        this.skipping = skipExisting;
        this.quiet = quiet;
    }

    @Override
    public SourceStatus status() {
        return new SourceStatus(state, source, lastReading, detail);
    }

    /** Reads everything again with these answers; what changes replaces what was brought. */
    @Override
    public void answer(Answers answers) {
        intake = intake.with(intake.answers().and(answers));
        taken = takenBefore.get();
        ledger.forgetProvisional();
        restart();
        lastSize = -1;
    }

    /** Looks what is new. */
    @Override
    public Arrival look(Instant now) {
        try {
            follow(now);
            detail = "";
            state = lastReading == null ? SourceStatus.State.WAITING : SourceStatus.State.ALIVE;
        } catch (NoSuchFileException gone) {
            drainAndClose();
            state = SourceStatus.State.GONE;
            detail = "";
        } catch (IOException held) {
            state = SourceStatus.State.HELD;
            detail = CsvIntake.reason(held);
        }
        skipping = false;
        Arrival arrival = ledger.drain();
        if (arrival.hasShots()) {
            lastReading = now;
            state = state == SourceStatus.State.WAITING ? SourceStatus.State.ALIVE : state;
        }
        return arrival;
    }

    private void follow(Instant now) throws IOException {
        SourceDisk.Stamp stamp = disk.stamp(path);
        if (bytes != null && !stamp.identity().equals(bytes.identity())) {
            drainAndClose();
        }
        if (bytes == null) {
            SourceDisk.OpenFile file = disk.open(path);
            bytes = new FollowedBytes(file);
            lastSize = -1;
            restart();
        }
        long size = bytes.size();
        if (size != lastSize || !stamp.modified().equals(lastModified)) {
            if (size > CsvIntake.MOST_BYTES) {
                throw new IOException("the file is larger than 200 MB");
            }
            if (bytes.isRewritten()) {
                restart();
            }
            byte[] piece = bytes.nextPiece(false);
            if (piece != null) {
                take(piece);
            }
            changedAt = size == lastSize ? changedAt : now;
            lastSize = size;
            lastModified = stamp.modified();
            if (skipping) {
                skipTail();
            }
        }
        if (!changedAt.plus(quiet).isAfter(now)) {
            whenQuiet();
        }
    }

    private void restart() {
        bytes.restart();
        continuation = null;
        examinedTail = new byte[0];
        pass = taken.beginPass();
    }

    private void take(byte[] piece) throws IOException {
        String text = bytes.text(piece);
        boolean grown = hasGrown(text, bytes.line());
        FileReading.Outcome outcome = continuation == null ? null : reading().more(continuation, text, bytes.line());
        if (outcome == null) {
            String whole = bytes.wholeText(piece);
            grown = grown || hasGrown(whole, 1);
            pass = taken.beginPass();
            outcome = whole.indexOf('\0') >= 0 ? notText() : reading().whole(whole, bytes.encodingName());
        }
        bytes.consume(piece, text);
        continuation = outcome.continuation();
        failure = outcome.result().hasFailed() ? outcome.result().problems().get(0) : null;
        if (failure == null) {
            ledger.bring(outcome.result(), skipping, grown);
        }
    }

    private FileReading reading() {
        return new FileReading(intake, source, pass);
    }

    private FileReading.Outcome notText() {
        return new FileReading.Outcome(IntakeResult.failed(source, new Problem(Problem.Severity.FATAL, source, null, null,
                "", "This is not a text file: it holds characters that no text has. Nothing was taken; look whether the "
                + "right file is watched.")), null);
    }

    /**
     * Whether the line of the provisional shot is in this text and goes on as it began; then its reading is taken back, so
     * that the whole line can replace it. If the line is another one, the shot stands.
     */
    private boolean hasGrown(String text, int firstLine) {
        ShotLedger.Provisional provisional = ledger.provisional();
        if (provisional == null || provisional.line() < firstLine) {
            return false;
        }
        String[] lines = text.split("\r\n|\r|\n", -1);
        int index = provisional.line() - firstLine;
        if (index >= lines.length) {
            return false;
        }
        if (text.substring(offset(text, index)).startsWith(provisional.text())) {
            pass.forget(provisional.natural());
            return true;
        }
        ledger.confirmProvisional();
        return false;
    }

    private static int offset(String text, int lines) {
        int at = 0;
        for (int passed = 0; passed < lines; at++) {
            char c = text.charAt(at);
            if (c == '\n' || c == '\r' && !(at + 1 < text.length() && text.charAt(at + 1) == '\n')) {
                passed++;
            }
        }
        return at;
    }

    /** Nothing was written for a while: a line without an end may be a whole one after all. */
    private void whenQuiet() throws IOException {
        if (failure != null) {
            ledger.tell(failure);
        }
        if (bytes.tail().length == 0 || Arrays.equals(bytes.tail(), examinedTail)) {
            return;
        }
        byte[] piece = bytes.nextPiece(true);
        if (piece != null) {
            take(piece);
        }
        examinedTail = bytes.tail();
        String text = bytes.text(examinedTail);
        if (!text.isBlank()) {
            takeProvisional(text);
        }
    }

    private void takeProvisional(String text) throws IOException {
        int line = bytes.line();
        ShotLedger.Provisional before = ledger.provisional();
        if (before != null) {
            pass.forget(before.natural());
        }
        FileReading.Outcome outcome = continuation == null ? null : reading().more(continuation, text, line);
        if (outcome == null) {
            pass = taken.beginPass();
            outcome = reading().whole(bytes.wholeText(bytes.tail()), bytes.encodingName());
        }
        ledger.bringProvisional(rowOn(line, outcome), line, text);
    }

    private static IntakeRow rowOn(int line, FileReading.Outcome outcome) {
        return outcome.result().rows().stream().filter(row -> row.line() == line).findFirst().orElse(null);
    }

    /** A last line without an end that was there at the first look is somebody else's too, unless it grows. */
    private void skipTail() throws IOException {
        if (bytes.tail().length == 0 || continuation == null) {
            return;
        }
        FileReading.Outcome outcome = reading().more(continuation, bytes.text(bytes.tail()), bytes.line());
        IntakeRow row = outcome == null ? null : rowOn(bytes.line(), outcome);
        if (row != null) {
            ledger.skip(row.shot());
            pass.forget(row.shot());
            examinedTail = bytes.tail();
        }
    }

    private void drainAndClose() {
        if (bytes == null) {
            return;
        }
        try {
            byte[] piece = bytes.isRewritten() ? null : bytes.nextPiece(true);
            if (piece != null) {
                take(piece);
            }
            if (bytes.tail().length > 0 && !bytes.text(bytes.tail()).isBlank()) {
                take(bytes.tail());
            }
            bytes.close();
        } catch (IOException lost) {
            detail = CsvIntake.reason(lost);
        }
        ledger.confirmProvisional();
        bytes = null;
        lastSize = -1;
    }

    /** Closes the file for now; when it changes again it is read from the beginning and only what is new is brought. */
    void letGo() {
        drainAndClose();
    }

    @Override
    public void close() {
        if (bytes != null) {
            try {
                bytes.close();
            } catch (IOException nothingToLose) {
                detail = CsvIntake.reason(nothingToLose);
            }
            bytes = null;
        }
        state = SourceStatus.State.STOPPED;
    }
}
