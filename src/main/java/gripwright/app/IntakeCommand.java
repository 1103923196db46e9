package gripwright.app;

import gripwright.intake.Answers;
import gripwright.intake.ColumnMapping;
import gripwright.intake.ColumnRule;
import gripwright.intake.CsvIntake;
import gripwright.intake.IntakeResult;
import gripwright.intake.Question;
import gripwright.intake.SessionFilling;
import gripwright.model.ClubTest;
import gripwright.model.Handedness;
import gripwright.model.Problem;
import gripwright.model.ProblemException;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.model.Stint;
import gripwright.storage.SessionFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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
    private Map<String, String> answers = new LinkedHashMap<>();

    @Option(names = "--column", paramLabel = "HEADING=MEANING",
            description = "what a column holds, such as 'Head v=clubSpeed' or 'Remark=ignore'; may be repeated")
    private Map<String, String> columns = new LinkedHashMap<>();

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
        Handedness hand = hand();
        Session before = Files.exists(out) ? new SessionInput(output).session(out) : null;
        if (before != null && hand != null && before.player().hand() != hand) {
            throw new IllegalArgumentException("The player of " + out + " is " + before.player().hand().text()
                    + ", not " + hand.text() + "; take the option --handed away, or choose another session.");
        }
        IntakeResult result = read(hand != null ? hand : before == null ? null : before.player().hand(), before);
        result.problems().stream().map(Problem::text).forEach(output.err()::println);
        result.unknownColumns().forEach(column -> output.err().println("Column '" + column.heading()
                + "' is not known and was left out."));
        if (result.hasFailed()) {
            return Gripwright.NOT_DONE;
        }
        if (!result.questions().isEmpty() && !leaveOpen) {
            ask(result);
            return Gripwright.NOT_DONE;
        }
        if (result.rows().isEmpty() && result.alreadyTaken() == 0) {
            output.err().println("There is no shot in " + file + " that could be taken; nothing was written.");
            return Gripwright.NOT_DONE;
        }
        Session start = before != null ? before : fresh(hand, result);
        new SessionFile().write(out, filled(start, result));
        output.out().println(result.sentence());
        return 0;
    }

    private Handedness hand() {
        if (handed == null) {
            return null;
        }
        return switch (handed.toLowerCase(Locale.ROOT)) {
            case "left" -> Handedness.LEFT;
            case "right" -> Handedness.RIGHT;
            default -> throw new ParameterException(spec.commandLine(),
                    "The hand is left or right, not '" + handed + "'.");
        };
    }

    private IntakeResult read(Handedness hand, Session before) throws ProblemException {
        Answers given = Answers.none();
        for (Map.Entry<String, String> answer : answers.entrySet()) {
            given = given.with(answer.getKey(), answer.getValue());
        }
        CsvIntake intake = CsvIntake.withDefaults().with(mapping(given)).with(given)
                .with(ZoneId.systemDefault());
        if (hand != null) {
            intake = intake.with(hand);
        }
        return intake.read(file, before == null ? List.of() : shots(before));
    }

    private ColumnMapping mapping(Answers given) throws ProblemException {
        SavedMappings saved = new SavedMappings(ApplicationFolders.ofProcess().mappings());
        ColumnMapping mapping = mappingName == null ? ColumnMapping.none()
                : saved.named(mappingName).orElseThrow(() -> new IllegalArgumentException(
                        "No column mapping is saved under the name '" + mappingName + "'."));
        for (Map.Entry<String, String> column : columns.entrySet()) {
            mapping = mapping.with(ColumnRule.of(column.getKey(), column.getValue()));
        }
        if (saveAs != null) {
            saved.keep(mapping.withName(saveAs).with(mapping.answers().and(given)));
        }
        return mapping;
    }

    private static List<Shot> shots(Session session) {
        return Stream.concat(session.tray().stream(), session.tests().stream()
                .flatMap(test -> test.stints().stream()).flatMap(stint -> stint.shots().stream())).toList();
    }

    private void ask(IntakeResult result) {
        output.err().println("The file leaves something open; nothing was written. Answer, and run it again:");
        for (Question question : result.questions()) {
            output.err().println("  " + question.sentence());
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
        String id = "session-" + java.util.UUID.nameUUIDFromBytes(
                (result.source() + result.shots().size() + day).getBytes(java.nio.charset.StandardCharsets.UTF_8));
        Session blank = Session.blank(id, day);
        return hand == null ? blank : blank.withPlayer(blank.player().withHand(hand));
    }

    /** A file that names configurations fills the first test; any other the stint in hand, or the tray without one. */
    private Session filled(Session session, IntakeResult result) {
        ClubTest test = session.tests().get(0);
        if (result.isWholeTest()) {
            SessionFilling filling = SessionFilling.wholeTest(named(session, result), test.id(), result);
            filling.problems().stream().map(Problem::text).forEach(output.err()::println);
            return filling.session();
        }
        for (ClubTest each : session.tests()) {
            Optional<Stint> inHand = each.stintInHand();
            if (inHand.isPresent()) {
                return SessionFilling.intoStint(session, each.id(), inHand.get().id(), result).session();
            }
        }
        List<Shot> tray = new ArrayList<>(session.tray());
        tray.addAll(result.shots());
        output.err().println("The file doesn't say which configuration its shots were hit with, and no stint is in hand: "
                + "they wait in the session's tray for a place.");
        return session.withTray(tray);
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
