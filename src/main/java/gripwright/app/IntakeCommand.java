package gripwright.app;

import gripwright.intake.Answers;
import gripwright.intake.ColumnMapping;
import gripwright.intake.CsvIntake;
import gripwright.intake.FileColumn;
import gripwright.intake.IntakeResult;
import gripwright.intake.Question;
import gripwright.intake.SessionFilling;
import gripwright.intake.SkippedLine;
import gripwright.model.ClubTest;
import gripwright.model.Handedness;
import gripwright.model.Problem;
import gripwright.model.ProblemException;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.model.Stint;
import gripwright.session.FileState;
import gripwright.session.SaveOutcome;
import gripwright.session.SessionRepository;
import gripwright.storage.SessionFiles;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code gripwright intake}: takes the shots of a CSV file into a session file, and asks where the file is ambiguous. */
@Command(name = "intake", mixinStandardHelpOptions = true,
        description = {"Takes the shots of a CSV file into a session, a new one or one that exists.",
            "What the file leaves open is asked, never guessed; answer with --answer."})
final class IntakeCommand implements Callable<Integer> {

    private final Gripwright.Output output;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "FILE.csv", description = "the readings")
    private Path file;

    @Option(names = "--out", required = true, paramLabel = "SESSION.json",
            description = "the session; made when it isn't there, added to when it is")
    private Path out;

    @Option(names = "--handed", paramLabel = "left|right", description = "the player's hand")
    private String handed;

    @Option(names = "--answer", paramLabel = "QUESTION=CHOICE", description = "the answer to a question; may be repeated")
    private List<String> answers = new ArrayList<>();

    @Option(names = "--column", paramLabel = "HEADING=MEANING[,UNIT][,+SIDE]",
            description = {"what a column holds, such as 'Head v=clubSpeed,mph' or 'Remark=ignore'; '#3' is the third "
                + "column; '+closed' says that its numbers without a minus mean closed; may be repeated"})
    private List<String> columns = new ArrayList<>();

    @Option(names = "--mapping", paramLabel = "NAME", description = "a column mapping that was saved before")
    private String mappingName;

    @Option(names = "--save-mapping", paramLabel = "NAME", description = "saves columns and answers under this name")
    private String saveAs;

    @Option(names = "--leave-open", description = "take the file without what its open questions are about")
    private boolean leaveOpen;

    IntakeCommand(Gripwright.Output output) {
        this.output = output;
    }

    @Override
    public Integer call() throws ProblemException {
        Answers given = answers();
        Handedness hand = hand(given);
        SessionFiles files = new SessionFiles(ApplicationFolders.ofProcess().versions());
        SessionRepository.Read found = Files.exists(out) ? files.read(out) : null;
        Session before = found == null ? null : found.session();
        if (before != null) {
            found.problems().stream().map(Problem::text).forEach(output.err()::println);
            refuseAnotherHand(before, hand);
        }
        ColumnMapping mapping = mapping();
        IntakeResult result = read(hand != null ? hand : before == null ? null : before.player().hand(), before,
                mapping, given);
        tell(result);
        if (!isReady(result, given)) {
            return Gripwright.NOT_DONE;
        }
        Session start = before != null ? before : fresh(hand, result);
        if (saveAs != null) {
            mappings().keep(mapping.withName(saveAs).with(mapping.answers().and(given)));
        }
        SessionFilling filling = filled(start, result);
        if (!filling.session().equals(before)) {
            save(files, found == null ? FileState.absent(out) : found.file(), filling.session());
        }
        sayWhatCameOfIt(result, filling);
        return 0;
    }

    /** Whether there is something to take and nothing open; else says what. */
    private boolean isReady(IntakeResult result, Answers given) {
        if (result.hasFailed() || isWithout(result)) {
            return false;
        }
        if (!result.questions().isEmpty() && !leaveOpen) {
            ask(result, given);
            return false;
        }
        if (result.rows().isEmpty() && result.alreadyTaken() == 0) {
            output.err().println("There is no shot in " + file + " that could be taken; nothing was written.");
            return false;
        }
        return true;
    }

    private void sayWhatCameOfIt(IntakeResult result, SessionFilling filling) {
        filling.problems().stream().map(Problem::text).forEach(output.err()::println);
        long placeless = filling.problems().stream().filter(p -> p.severity() == Problem.Severity.REJECTED).count();
        output.out().println(result.sentence()
                + (placeless == 0 ? "" : " " + placeless + " of these have no place in the test and were left out."));
    }

    private void refuseAnotherHand(Session before, Handedness hand) {
        if (hand != null && before.player().hand() != hand) {
            throw new IllegalArgumentException("The player of " + out + " is " + before.player().hand().text()
                    + ", not " + hand.text() + "; take the option --handed away, or choose another session.");
        }
    }

    /** Saves as a window does: never over what a window has in its hands or wrote meanwhile. */
    private void save(SessionFiles files, FileState place, Session filled) throws ProblemException {
        SaveOutcome outcome = files.save(place, filled);
        files.release(out);
        if (outcome instanceof SaveOutcome.InUse inUse) {
            throw new IllegalArgumentException(out + " is in use by " + inUse.by() + "; take the file in there, or close "
                    + "it and try again. Nothing was written.");
        }
        if (!(outcome instanceof SaveOutcome.Saved)) {
            throw new IllegalArgumentException(out + " was changed by somebody else meanwhile; try again. Nothing was "
                    + "written.");
        }
    }

    /** Says what was rejected, what is not known, and which lines were passed over as averages and remarks. */
    private void tell(IntakeResult result) {
        result.problems().stream().map(Problem::text).forEach(output.err()::println);
        result.unknownColumns().forEach(column -> output.err().println("Column " + (column.heading().isEmpty()
                ? String.valueOf(column.position()) : "'" + column.heading() + "'") + " is not known and was left out."));
        for (SkippedLine line : result.skippedLines()) {
            if (line.reason() == SkippedLine.Reason.SUMMARY || line.reason() == SkippedLine.Reason.REMARK) {
                output.err().println("Line " + line.line() + " is no shot but "
                        + (line.reason() == SkippedLine.Reason.SUMMARY ? "sums shots up" : "a remark")
                        + ", and was passed over: " + line.text());
            }
        }
    }

    /** Whether a column set with {@code --column} is not in the file, which a slip of the keyboard makes. */
    private boolean isWithout(IntakeResult result) {
        List<String> missing = columns.stream().map(typed -> IntakeWords.rule(typed).heading())
                .filter(heading -> !result.hasColumn(heading)).toList();
        missing.forEach(heading -> output.err().println("The file has no column '" + heading
                + "', which --column speaks of; nothing was written. Its columns are "
                + result.columns().stream().map(FileColumn::name).collect(Collectors.joining(", ")) + "."));
        return !missing.isEmpty();
    }

    /** The hand from its option or from the answer to the question, which say the same of the same player. */
    private Handedness hand(Answers given) {
        String answered = given.to("hand").orElse(null);
        if (handed != null && answered != null && !handed.equalsIgnoreCase(answered)) {
            throw new ParameterException(spec.commandLine(), "The player is said to be both " + handed + "- and "
                    + answered + "-handed; say one.");
        }
        String said = handed != null ? handed : answered;
        if (said == null) {
            return null;
        }
        return switch (said.toLowerCase(Locale.ROOT)) {
            case "left" -> Handedness.LEFT;
            case "right" -> Handedness.RIGHT;
            default -> throw new ParameterException(spec.commandLine(),
                    "The hand is left or right, not '" + said + "'.");
        };
    }

    private IntakeResult read(Handedness hand, Session before, ColumnMapping mapping, Answers given) {
        CsvIntake intake = CsvIntake.withDefaults().with(mapping).with(given).with(ZoneId.systemDefault());
        if (hand != null) {
            intake = intake.with(hand);
        }
        return intake.read(file, before == null ? List.of() : shots(before));
    }

    private Answers answers() {
        Answers given = Answers.none();
        for (String typed : answers) {
            given = understood(given, typed);
        }
        return given;
    }

    private Answers understood(Answers given, String typed) {
        try {
            return IntakeWords.answered(given, typed);
        } catch (IllegalArgumentException wrong) {
            throw new ParameterException(spec.commandLine(), wrong.getMessage(), wrong);
        }
    }

    private SavedMappings mappings() {
        return new SavedMappings(ApplicationFolders.ofProcess().mappings());
    }

    private ColumnMapping mapping() throws ProblemException {
        ColumnMapping mapping = mappingName == null ? ColumnMapping.none()
                : mappings().named(mappingName).orElseThrow(() -> new IllegalArgumentException(
                        "No column mapping is saved under the name '" + mappingName + "'."));
        try {
            for (String typed : columns) {
                mapping = mapping.with(IntakeWords.rule(typed));
            }
            return saveAs == null ? mapping : mapping.withName(saveAs);
        } catch (IllegalArgumentException wrong) {
            throw new ParameterException(spec.commandLine(), wrong.getMessage(), wrong);
        }
    }

    private static List<Shot> shots(Session session) {
        return Stream.concat(session.tray().stream(), session.tests().stream()
                .flatMap(test -> test.stints().stream()).flatMap(stint -> stint.shots().stream())).toList();
    }

    private void ask(IntakeResult result, Answers given) {
        output.err().println("The file leaves something open; nothing was written. Answer, and run it again:");
        for (Question question : result.questions()) {
            output.err().println("  " + question.sentence());
            given.to(question.id()).ifPresent(answer -> output.err().println("    '" + answer
                    + "' is none of its answers; these are:"));
            question.choices().forEach(choice -> output.err().println("    --answer " + quoted(question.id() + "="
                    + choice.key()) + "   " + choice.text()));
        }
        output.err().println("Or take the file without these with --leave-open.");
    }

    private static String quoted(String text) {
        return text.matches("[A-Za-z0-9_=:./+-]+") ? text : "'" + text.replace("'", "'\\''") + "'";
    }

    private Session fresh(Handedness hand, IntakeResult result) {
        LocalDate day = result.shots().stream().map(Shot::at).filter(at -> at != null).findFirst()
                .map(at -> at.atZone(ZoneId.systemDefault()).toLocalDate()).orElseGet(LocalDate::now);
        // From the shots themselves: two players' files of one name and day must not make one session.
        String shots = result.shots().stream().map(shot -> shot.source().rowKey()).collect(Collectors.joining());
        String id = "session-" + UUID.nameUUIDFromBytes((result.source() + day + shots).getBytes(StandardCharsets.UTF_8));
        Session blank = Session.blank(id, day);
        if (hand == null) {
            output.err().println("Nothing says which way the player stands: the new session takes the player as "
                    + blank.player().hand().text() + ". Where that is wrong, begin again with --handed.");
            return blank;
        }
        return blank.withPlayer(blank.player().withHand(hand));
    }

    /** A file that names configurations fills the first test; any other the stint in hand, or the tray without one. */
    private SessionFilling filled(Session session, IntakeResult result) {
        ClubTest test = session.tests().get(0);
        if (result.isWholeTest()) {
            return SessionFilling.wholeTest(named(session, result), test.id(), result);
        }
        for (ClubTest each : session.tests()) {
            Optional<Stint> inHand = each.stintInHand();
            if (inHand.isPresent()) {
                return SessionFilling.intoStint(session, each.id(), inHand.get().id(), result);
            }
        }
        if (!result.rows().isEmpty()) {
            output.err().println("The file doesn't say which configuration its shots were hit with, and no stint is in "
                    + "hand: they wait in the session's tray for a place.");
        }
        List<Shot> tray = new ArrayList<>(session.tray());
        tray.addAll(result.shots());
        return new SessionFilling(session.withTray(tray), List.of());
    }

    /** A new session takes the name of its club from the file where that names one. */
    private Session named(Session session, IntakeResult result) {
        List<String> clubs = result.rows().stream().map(row -> row.club()).filter(club -> !club.isBlank()).distinct()
                .collect(Collectors.toList());
        ClubTest test = session.tests().get(0);
        return clubs.size() == 1 && test.stints().isEmpty()
                ? session.withTest(test.withClub(test.club().withName(clubs.get(0)))) : session;
    }
}
