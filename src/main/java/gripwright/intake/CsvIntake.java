package gripwright.intake;

import gripwright.model.Handedness;
import gripwright.model.Problem;
import gripwright.model.Shot;
import gripwright.model.ShotSource;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;

/**
 * Reads a CSV file of shots in whatever encoding, dialect, units and order of columns it comes, and asks where it leaves
 * something open.
 *
 * <p>Immutable: {@code CsvIntake.withDefaults().with(hand).with(mapping).read(file, source, taken)}. The same file read
 * again, with the shots already taken, gives no new rows. Rows that are read while questions are open lack what the
 * questions are about: answer first, then take.
 */
public final class CsvIntake {

    /** A larger file is no session: some hundred thousand shots. */
    static final long MOST_BYTES = 200L << 20;
    private static final int BYTES_OF_HEADINGS = 1 << 16;

    private final Handedness hand;
    private final ColumnMapping mapping;
    private final Answers answers;
    private final ZoneId zone;
    private final LocalDate day;
    private final ShotSource.Kind kind;
    private final ReadingProgress progress;
    private final Character delimiter;

    private CsvIntake(Handedness hand, ColumnMapping mapping, Answers answers, ZoneId zone, LocalDate day,
            ShotSource.Kind kind, ReadingProgress progress, Character delimiter) {
        this.hand = hand;
        this.mapping = mapping;
        this.answers = answers;
        this.zone = zone;
        this.day = day;
        this.kind = kind;
        this.progress = progress;
        this.delimiter = delimiter;
    }

    /** Hand not said, no mapping, no answers, times in UTC, rows from a file. */
    public static CsvIntake withDefaults() {
        return new CsvIntake(null, ColumnMapping.none(), Answers.none(), ZoneOffset.UTC, null, ShotSource.Kind.FILE,
                ReadingProgress.SILENT, null);
    }

    /** The player's hand, which words such as 'open' and 'in to out' come from. */
    public CsvIntake with(Handedness hand) {
        return new CsvIntake(hand, mapping, answers, zone, day, kind, progress, delimiter);
    }

    /** Columns set by hand, and answers saved with them. */
    public CsvIntake with(ColumnMapping mapping) {
        return new CsvIntake(hand, mapping, answers, zone, day, kind, progress, delimiter);
    }

    /** Answers to questions of an earlier reading; they win over those saved in the mapping. */
    public CsvIntake with(Answers answers) {
        return new CsvIntake(hand, mapping, answers, zone, day, kind, progress, delimiter);
    }

    /** The time zone of the times in the file, where they don't say. */
    public CsvIntake with(ZoneId zone) {
        return new CsvIntake(hand, mapping, answers, zone, day, kind, progress, delimiter);
    }

    /** The day of times that have none. */
    public CsvIntake with(LocalDate day) {
        return new CsvIntake(hand, mapping, answers, zone, day, kind, progress, delimiter);
    }

    /** Whether the rows come from a file, a paste or a rehearsal. */
    public CsvIntake with(ShotSource.Kind kind) {
        return new CsvIntake(hand, mapping, answers, zone, day, kind, progress, delimiter);
    }

    /** Somebody to be told how far a long reading has come. */
    public CsvIntake with(ReadingProgress progress) {
        return new CsvIntake(hand, mapping, answers, zone, day, kind, progress, delimiter);
    }

    /** What stands between cells, where that is known; it is found out of the text otherwise. */
    public CsvIntake withDelimiter(char delimiter) {
        return new CsvIntake(hand, mapping, answers, zone, day, kind, progress, delimiter);
    }

    /**
     * The headings of a file, by which a mapping for it can be found; only its beginning is looked at.
     *
     * @param file the file
     * @return as written, in their order; empty where there are none
     * @throws IOException when the file can't be read
     */
    public static List<String> headings(Path file) throws IOException {
        try (InputStream stream = Files.newInputStream(file)) {
            byte[] beginning = stream.readNBytes(BYTES_OF_HEADINGS);
            String text = DecodedText.of(wholeLines(beginning)).text();
            return headings(text);
        }
    }

    /** The headings of pasted rows, as {@link #headings(Path)}. */
    public static List<String> headings(String text) {
        String beginning = text.length() <= BYTES_OF_HEADINGS ? text : text.substring(0, BYTES_OF_HEADINGS);
        return withDefaults().readText(beginning, "headings", List.of()).columns().stream().map(FileColumn::heading)
                .filter(heading -> !heading.isBlank()).toList();
    }

    /** Without a last line that may be cut, even within a letter. */
    private static byte[] wholeLines(byte[] beginning) {
        if (beginning.length < BYTES_OF_HEADINGS) {
            return beginning;
        }
        int end = beginning.length;
        while (end > 0 && beginning[end - 1] != '\n' && beginning[end - 1] != '\r') {
            end--;
        }
        return Arrays.copyOf(beginning, end);
    }

    /**
     * Reads a file.
     *
     * @param file the file; its name is the source's name
     * @param alreadyTaken shots that were taken before, of this source or any
     * @return never throws for what is in the file, nor for a file that can't be read: that is a problem in the result
     */
    public IntakeResult read(Path file, Collection<Shot> alreadyTaken) {
        String source = String.valueOf(file.getFileName());
        try {
            if (Files.size(file) > MOST_BYTES) {
                return IntakeResult.failed(source, fatal(source, "The file is larger than 200 MB and was not read. "
                        + "Split it, or look whether it is the right file."));
            }
            return read(Files.readAllBytes(file), source, alreadyTaken);
        } catch (IOException failure) {
            return IntakeResult.failed(source, fatal(source, "The file could not be read (" + reason(failure)
                    + "). Nothing was taken; look whether it is there and not held by another program, then try again."));
        }
    }

    static String reason(IOException failure) {
        String kindOfFailure = failure.getClass().getSimpleName().replaceAll("([a-z])([A-Z])", "$1 $2")
                .replace("Exception", "").strip().toLowerCase(java.util.Locale.ROOT);
        return kindOfFailure.isEmpty() || kindOfFailure.equals("io") ? String.valueOf(failure.getMessage())
                : kindOfFailure;
    }

    /**
     * Reads the bytes of a file.
     *
     * @param bytes the whole file
     * @param sourceName the source's name, by which its readings are known again
     * @param alreadyTaken shots that were taken before, of this source or any
     * @return what came of it; never throws for what is in the file
     */
    public IntakeResult read(byte[] bytes, String sourceName, Collection<Shot> alreadyTaken) {
        DecodedText decoded = DecodedText.of(bytes);
        if (!decoded.isText()) {
            return IntakeResult.failed(sourceName, fatal(sourceName, "This is not a text file: it holds characters that "
                    + "no text has. Nothing was taken; export the readings as CSV and try again."));
        }
        return read(decoded.text(), decoded.encodingName(), sourceName, alreadyTaken);
    }

    /** Reads pasted rows, headings included, as a file is read. */
    public IntakeResult readText(String text, String sourceName, Collection<Shot> alreadyTaken) {
        return read(text.replace("\0", ""), "text", sourceName, alreadyTaken);
    }

    private IntakeResult read(String text, String encoding, String sourceName, Collection<Shot> alreadyTaken) {
        if (text.isBlank()) {
            return IntakeResult.failed(sourceName, fatal(sourceName,
                    "The file is empty. Nothing was taken; try again when there are readings in it."));
        }
        TakenReadings.Pass taken = TakenReadings.of(alreadyTaken, kind, sourceName).beginPass();
        return new FileReading(this, sourceName, taken).whole(text, encoding).result();
    }

    private static Problem fatal(String source, String sentence) {
        return new Problem(Problem.Severity.FATAL, source, null, null, "", sentence);
    }

    Handedness hand() {
        return hand;
    }

    ColumnMapping mapping() {
        return mapping;
    }

    Answers answers() {
        return mapping.answers().and(answers);
    }

    ZoneId zone() {
        return zone;
    }

    LocalDate day() {
        return day;
    }

    ShotSource.Kind kind() {
        return kind;
    }

    ReadingProgress progress() {
        return progress;
    }

    /** What stands between cells; null where it is to be found out. */
    Character delimiter() {
        return delimiter;
    }
}
