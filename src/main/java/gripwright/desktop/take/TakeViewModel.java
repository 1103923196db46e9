package gripwright.desktop.take;

import gripwright.desktop.support.Workbench;
import gripwright.intake.Answers;
import gripwright.intake.ColumnMapping;
import gripwright.intake.ColumnRule;
import gripwright.intake.CsvIntake;
import gripwright.intake.IntakeResult;
import gripwright.intake.SessionFilling;
import gripwright.model.ClubTest;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.model.Stint;
import gripwright.session.Edit;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * A CSV file on its way into the session: read in the background, read again with each answer and each column set by hand,
 * and taken in one step that undo takes back.
 */
public final class TakeViewModel {

    private final Workbench workbench;
    private final ReadOnlyObjectWrapper<IntakeResult> result = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper reading = new ReadOnlyBooleanWrapper();
    private final ReadOnlyDoubleWrapper progress = new ReadOnlyDoubleWrapper();
    private List<Shot> takenBefore = List.of();
    private Path file;
    private Answers answers = Answers.none();
    private ColumnMapping mapping = ColumnMapping.none();
    private AtomicBoolean goOn = new AtomicBoolean();

    public TakeViewModel(Workbench workbench) {
        this.workbench = workbench;
    }

    /** What came of the last reading; null before one. */
    public ReadOnlyObjectProperty<IntakeResult> result() {
        return result.getReadOnlyProperty();
    }

    /** Whether the file is being read. */
    public ReadOnlyBooleanProperty reading() {
        return reading.getReadOnlyProperty();
    }

    /** How much of it is read, 0 to 1. */
    public ReadOnlyDoubleProperty progress() {
        return progress.getReadOnlyProperty();
    }

    public ColumnMapping mapping() {
        return mapping;
    }

    /** Begins with a file; a mapping used before stays chosen, answers do not. */
    public void open(Path chosen) {
        file = chosen;
        answers = Answers.none();
        result.set(null);
        read();
    }

    /** Answers a question and reads again. */
    public void answer(String questionId, String choiceKey) {
        answers = answers.with(questionId, choiceKey);
        read();
    }

    /** Sets a column by hand and reads again; gives back why it can't be, or empty. */
    public Optional<String> setColumn(String heading, String meaning, String unit, boolean flipped) {
        try {
            mapping = mapping.with(new ColumnRule(heading, meaning, unit, flipped));
            read();
            return Optional.empty();
        } catch (IllegalArgumentException refused) {
            return Optional.of(refused.getMessage());
        }
    }

    /** Uses a saved mapping, or none, and reads again. */
    public void use(ColumnMapping chosen) {
        mapping = chosen == null ? ColumnMapping.none() : chosen;
        read();
    }

    /** The mappings that the shop has saved, by name. */
    public List<ColumnMapping> saved() {
        try {
            return workbench.services().mappings();
        } catch (IOException unreadable) {
            workbench.sayProblem(unreadable.getMessage());
            return List.of();
        }
    }

    /** Saves the columns set by hand and the answers given under a name. */
    public void save(String name) {
        if (name == null || name.isBlank()) {
            workbench.sayProblem("Give the mapping a name first.");
            return;
        }
        mapping = mapping.withName(name.strip()).with(mapping.answers().and(answers));
        try {
            workbench.services().keepMapping(mapping);
            workbench.say("Kept as \u2018" + name.strip() + "\u2019.");
        } catch (IOException refused) {
            workbench.sayProblem(refused.getMessage());
        }
    }

    /** Breaks the reading off; nothing is taken. */
    public void cancel() {
        goOn.set(false);
    }

    private void read() {
        if (file == null) {
            return;
        }
        cancel();
        AtomicBoolean mine = new AtomicBoolean(true);
        goOn = mine;
        Session session = workbench.session().get();
        CsvIntake intake = CsvIntake.withDefaults().with(session.player().hand()).with(ZoneId.systemDefault())
                .with(session.date()).with(mapping).with(answers).with((double fraction) -> {
                    workbench.onWindow(() -> advance(mine, fraction));
                    return mine.get();
                });
        reading.set(true);
        progress.set(0);
        Path source = file;
        List<Shot> before = shots(session);
        workbench.inBackground(() -> intake.read(source, before), done -> arrived(mine, before, done),
                failure -> failed(mine, failure));
    }

    private void advance(AtomicBoolean mine, double fraction) {
        if (mine == goOn) {
            progress.set(fraction);
        }
    }

    private void failed(AtomicBoolean mine, Throwable failure) {
        if (mine == goOn) {
            reading.set(false);
            workbench.sayProblem(String.valueOf(failure.getMessage()));
        }
    }

    private void arrived(AtomicBoolean mine, List<Shot> before, IntakeResult done) {
        if (mine == goOn) {
            takenBefore = before;
            reading.set(false);
            progress.set(1);
            result.set(done);
        }
    }

    private static List<Shot> shots(Session session) {
        return Stream.concat(session.tray().stream(), session.tests().stream().flatMap(test -> test.stints().stream())
                .flatMap(stint -> stint.shots().stream())).toList();
    }

    /** Whether there is anything to take, with no question open. */
    public boolean isReady() {
        IntakeResult now = result.get();
        return now != null && !reading.get() && !now.hasFailed() && !now.cancelled() && now.questions().isEmpty()
                && !now.rows().isEmpty();
    }

    /** Where the shots will go, in words. */
    public String destination() {
        IntakeResult now = result.get();
        if (now == null || now.rows().isEmpty()) {
            return "";
        }
        if (now.isWholeTest()) {
            return "The file names configurations: its shots fill the test with the "
                    + workbench.test().get().club().name() + "."
                    + (withoutPlace() == 0 ? "" : " " + withoutPlace() + " without a configuration stay out: write theirs "
                            + "into the file and read it again.");
        }
        return workbench.test().get().stintInHand().flatMap(stint -> workbench.test().get()
                        .configuration(stint.configurationId()))
                .map(configuration -> "They go into the stint in hand, " + configuration.label() + ".")
                .orElse("No stint is in hand: they wait in the tray for a place.");
    }

    /**
     * Takes the shots into the session, as one step; gives back whether it was done. Where other shots have come in since
     * the file was read, it is read again first, so that none is taken twice.
     */
    public boolean take() {
        IntakeResult now = result.get();
        if (!isReady()) {
            return false;
        }
        if (!takenBefore.equals(shots(workbench.session().get()))) {
            workbench.say("Other shots came in meanwhile; the file was read again. Take them now.");
            read();
            return false;
        }
        ClubTest test = workbench.test().get();
        String label = "Take " + (now.rows().size() - withoutPlace()) + " shots from " + now.source();
        Optional<String> refused = workbench.apply(new Edit(label, session -> filled(session, test.id(), now)));
        refused.ifPresent(workbench::sayProblem);
        if (refused.isEmpty()) {
            workbench.say(now.sentence());
        }
        return refused.isEmpty();
    }

    /** Lines that name no configuration in a file that otherwise does; they have no place in the test and stay out. */
    public long withoutPlace() {
        IntakeResult now = result.get();
        return now == null || !now.isWholeTest() ? 0
                : now.rows().stream().filter(row -> row.configuration().isEmpty()).count();
    }

    private static Session filled(Session session, String testId, IntakeResult intake) {
        if (intake.isWholeTest()) {
            return SessionFilling.wholeTest(session, testId, intake).session();
        }
        Optional<Stint> inHand = session.test(testId).flatMap(ClubTest::stintInHand);
        if (inHand.isPresent()) {
            return SessionFilling.intoStint(session, testId, inHand.get().id(), intake).session();
        }
        List<Shot> tray = new ArrayList<>(session.tray());
        tray.addAll(intake.shots());
        return session.withTray(tray);
    }
}
