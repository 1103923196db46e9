package gripwright.desktop.take;

import gripwright.desktop.support.Workbench;
import gripwright.intake.Answers;
import gripwright.intake.Choice;
import gripwright.intake.ColumnMapping;
import gripwright.intake.ColumnMeaning;
import gripwright.intake.ColumnRule;
import gripwright.intake.CsvIntake;
import gripwright.intake.FileColumn;
import gripwright.intake.IntakeResult;
import gripwright.intake.Question;
import gripwright.model.ReadingText;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.session.Edit;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * A CSV file, or pasted rows, on the way into the session: read in the background, read again with each answer and each
 * column set by hand, and taken in one step that undo takes back.
 *
 * <p>Nothing of one file stays for the next: a mapping is in use only where it belongs to the file or was chosen for it.
 */
public final class TakeViewModel {

    private static final double LEAST_PROGRESS = 0.01;

    private final Workbench workbench;
    private final ReadOnlyObjectWrapper<IntakeResult> result = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper reading = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper open = new ReadOnlyBooleanWrapper();
    private final ReadOnlyDoubleWrapper progress = new ReadOnlyDoubleWrapper();
    private final Map<String, Question> asked = new LinkedHashMap<>();
    private List<Shot> takenBefore = List.of();
    private TakeInput input;
    private FirstLook look = FirstLook.nothing();
    private Answers answers = Answers.none();
    private ColumnMapping mapping = ColumnMapping.none();
    private boolean mappingChosen;
    private AtomicBoolean goOn = new AtomicBoolean();

    public TakeViewModel(Workbench workbench) {
        this.workbench = workbench;
    }

    /** What came of the last reading; null before one. */
    public ReadOnlyObjectProperty<IntakeResult> result() {
        return result.getReadOnlyProperty();
    }

    /** Whether something is being read or taken. */
    public ReadOnlyBooleanProperty reading() {
        return reading.getReadOnlyProperty();
    }

    /** Whether there is something to look at; it closes once the shots are taken. */
    public ReadOnlyBooleanProperty isOpen() {
        return open.getReadOnlyProperty();
    }

    /** How much of it is read, 0 to 1. */
    public ReadOnlyDoubleProperty progress() {
        return progress.getReadOnlyProperty();
    }

    /** What is read: a file's name, or that rows were pasted. */
    public String name() {
        return input == null ? "" : input.name();
    }

    // ---- opening and reading ------------------------------------------------------------------------------------

    /** Begins with a file. */
    public void open(Path file) {
        begin(TakeInput.of(file));
    }

    /** Begins with pasted rows, with headings or without. */
    public void openRows(String rows) {
        begin(TakeInput.ofRows(rows));
    }

    private void begin(TakeInput chosen) {
        close();
        input = chosen;
        AtomicBoolean mine = started();
        open.set(true);
        workbench.inBackground(() -> lookAt(chosen), found -> {
            if (mine == goOn && mine.get()) {
                look = found;
                mapping = found.first();
                read();
            }
        }, failure -> failed(mine, failure));
    }

    private FirstLook lookAt(TakeInput chosen) {
        try {
            return FirstLook.of(chosen, workbench.services().mappings(), "");
        } catch (IOException unreadable) {
            return FirstLook.of(chosen, List.of(), unreadable.getMessage());
        }
    }

    private AtomicBoolean started() {
        goOn.set(false);
        goOn = new AtomicBoolean(true);
        reading.set(true);
        progress.set(0);
        return goOn;
    }

    private void read() {
        AtomicBoolean mine = started();
        Session session = workbench.session().get();
        CsvIntake intake = CsvIntake.withDefaults().with(session.player().hand()).with(ZoneId.systemDefault())
                .with(session.date()).with(mapping).with(answers).with((double fraction) -> {
                    workbench.onWindow(() -> advance(mine, fraction));
                    return mine.get();
                });
        TakeInput source = input;
        List<Shot> before = TakePlace.shots(session);
        workbench.inBackground(() -> source.read(intake, before), done -> arrived(mine, before, done),
                failure -> failed(mine, failure));
    }

    private void advance(AtomicBoolean mine, double fraction) {
        if (mine == goOn && fraction >= progress.get() + LEAST_PROGRESS) {
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
            asked.values().removeIf(question -> answers.to(question.id()).isEmpty());
            done.questions().forEach(question -> asked.put(question.id(), question));
            result.set(done);
            progress.set(1);
            reading.set(false);
        }
    }

    /** Breaks the reading off; nothing is taken and what was read before stays. */
    public void cancel() {
        goOn.set(false);
        goOn = new AtomicBoolean();
        reading.set(false);
    }

    /** Leaves it; nothing of it stays. */
    public void close() {
        cancel();
        open.set(false);
        input = null;
        look = FirstLook.nothing();
        answers = Answers.none();
        asked.clear();
        mapping = ColumnMapping.none();
        mappingChosen = false;
        takenBefore = List.of();
        result.set(null);
    }

    // ---- questions ----------------------------------------------------------------------------------------------

    /** The questions about this file, open ones and answered ones, which can be answered anew. */
    List<AskedQuestion> questions() {
        List<AskedQuestion> questions = new ArrayList<>();
        if (look.fitting().size() > 1) {
            List<Choice> choices = new ArrayList<>();
            look.fitting().forEach(each -> choices.add(new Choice(each.name(), "\u2018" + each.name() + "\u2019")));
            choices.add(new Choice(ColumnMapping.none().name(), "as recognised"));
            questions.add(new AskedQuestion(AskedQuestion.WHICH_MAPPING, "Several of the shop\u2019s mappings belong to "
                    + "this file. Which one is it read with?", choices, mappingChosen ? mapping.name() : ""));
        }
        asked.values().forEach(question ->
                questions.add(AskedQuestion.of(question, answers.to(question.id()).orElse(""))));
        return questions;
    }

    /** Answers a question and reads again. */
    public void answer(String questionId, String choiceKey) {
        if (questionId.equals(AskedQuestion.WHICH_MAPPING)) {
            use(look.fitting().stream().filter(each -> each.name().equals(choiceKey)).findFirst().orElse(null));
            return;
        }
        answers = answers.with(questionId, choiceKey);
        read();
    }

    // ---- columns ------------------------------------------------------------------------------------------------

    /** What the shop has said about a column for this file. */
    public Optional<ColumnRule> rule(FileColumn column) {
        return mapping.columns().stream().filter(rule -> rule.heading().equalsIgnoreCase(column.key())).findFirst();
    }

    /** Says what a column holds; null for a column that is not to be read. */
    public void setMeaning(FileColumn column, ColumnMeaning meaning) {
        String key = meaning == null ? "ignore" : meaning.key();
        set(ColumnRule.of(column.key(), key));
    }

    /** Says which unit a column's numbers are in; empty for the unit the file gives. */
    public void setUnit(FileColumn column, String unit) {
        base(column).ifPresent(rule -> set(rule.withUnit(unit)));
    }

    /** Says which way a number without a minus points. */
    public void setSide(FileColumn column, String side) {
        base(column).ifPresent(rule -> set(rule.withPlus(side)));
    }

    private Optional<ColumnRule> base(FileColumn column) {
        return rule(column).or(() -> Optional.ofNullable(column.meaning())
                .map(meaning -> ColumnRule.of(column.key(), meaning.key())));
    }

    private void set(ColumnRule rule) {
        mapping = mapping.with(rule);
        read();
    }

    /** Takes back what was said about a column; it is recognised as usual again. */
    public void takeBack(FileColumn column) {
        rule(column).ifPresent(rule -> {
            mapping = mapping.without(rule.heading());
            read();
        });
    }

    /** The first shot's reading of a column, as the shop reads it; empty where it has none. */
    public String firstReading(FileColumn column) {
        IntakeResult now = result.get();
        if (now == null || column.meaning() == null || column.meaning().metric() == null || column.open()) {
            return "";
        }
        return FirstShot.reading(now, column.meaning().metric(),
                ReadingText.of(workbench.settings().get(), workbench.session().get().player().hand()));
    }

    // ---- mappings -----------------------------------------------------------------------------------------------

    public ColumnMapping mapping() {
        return mapping;
    }

    /** The mappings that the shop has saved, by name. */
    public List<ColumnMapping> saved() {
        return look.saved();
    }

    /** Which mapping the file is read with, and why. */
    public String mappingInUse() {
        return TakeWords.mapping(mapping, look);
    }

    /** Uses a saved mapping for this file, null for none, and reads again. */
    public void use(ColumnMapping chosen) {
        mapping = chosen == null ? ColumnMapping.none() : chosen;
        mappingChosen = true;
        read();
    }

    /** Keeps the columns set by hand and the answers under a name, for files of these headings or of such names. */
    public void save(String name, String files) {
        if (name == null || name.isBlank()) {
            workbench.sayProblem("Give the mapping a name first.");
            return;
        }
        ColumnMapping kept = mapping.withName(name.strip()).with(mapping.answers().and(answers))
                .withFiles(look.headings(), files);
        TakeInput about = input;
        workbench.inBackground(() -> {
            workbench.services().keepMapping(kept);
            return workbench.services().mappings();
        }, saved -> {
            if (about == input) {
                mapping = kept;
                mappingChosen = true;
                look = look.withSaved(saved);
                result.set(copy(result.get()));
            }
            workbench.say("Kept as \u2018" + kept.name() + "\u2019; the next file of this kind is read with it.");
        }, refused -> workbench.sayProblem(refused.getMessage()));
    }

    /** Forgets the mapping in use for good; the file is read as recognised. */
    public void forget() {
        String name = mapping.name();
        TakeInput about = input;
        workbench.inBackground(() -> {
            workbench.services().forgetMapping(name);
            return workbench.services().mappings();
        }, saved -> {
            workbench.say("\u2018" + name + "\u2019 is forgotten.");
            if (about == input) {
                look = look.withSaved(saved);
                use(null);
            }
        }, refused -> workbench.sayProblem(refused.getMessage()));
    }

    /** The same result as another object, so that what shows it shows it again. */
    private static IntakeResult copy(IntakeResult now) {
        return now == null ? null : new IntakeResult(now.source(), now.rows(), now.alreadyTaken(), now.problems(),
                now.questions(), now.recognisedColumns(), now.unknownColumns(), now.columns(), now.skippedLines(),
                now.dialect(), now.cancelled());
    }

    // ---- taking -------------------------------------------------------------------------------------------------

    /** Whether there is anything to take, with no question open. */
    public boolean isReady() {
        IntakeResult now = result.get();
        return now != null && !reading.get() && !now.hasFailed() && !now.cancelled()
                && questions().stream().noneMatch(AskedQuestion::isOpen) && placed(now) > 0;
    }

    /** How many shots would be taken. */
    public long count() {
        return result.get() == null ? 0 : placed(result.get());
    }

    private long placed(IntakeResult now) {
        return now.rows().size() - withoutPlace();
    }

    /** Where the shots will go, in words. */
    public String destination() {
        IntakeResult now = result.get();
        return now == null || now.rows().isEmpty() ? "" : TakePlace.words(workbench.test().get(), now, withoutPlace());
    }

    /** Lines that name no configuration in a file that otherwise does; they have no place in the test and stay out. */
    public long withoutPlace() {
        IntakeResult now = result.get();
        return now == null || !now.isWholeTest() ? 0
                : now.rows().stream().filter(row -> row.configuration().isEmpty()).count();
    }

    /**
     * Takes the shots into the session, as one step, and closes; gives back whether it was begun. Where other shots have
     * come in since the file was read, it is read again first, so that none is taken twice.
     */
    public boolean take() {
        if (!isReady()) {
            return false;
        }
        Session before = workbench.session().get();
        if (!takenBefore.equals(TakePlace.shots(before))) {
            workbench.say("Other shots came in meanwhile; the file was read again. Take them now.");
            read();
            return false;
        }
        AtomicBoolean mine = started();
        IntakeResult now = result.get();
        String testId = workbench.test().get().id();
        String label = "Take " + TakeWords.counted(placed(now), "shot") + " from " + now.source();
        workbench.inBackground(() -> TakePlace.filled(before, testId, now), filled -> {
            if (mine == goOn) {
                reading.set(false);
                apply(new Edit(label, session -> session == before ? filled : TakePlace.filled(session, testId, now)), now);
            }
        }, failure -> failed(mine, failure));
        return true;
    }

    private void apply(Edit edit, IntakeResult now) {
        if (!takenBefore.equals(TakePlace.shots(workbench.session().get()))) {
            workbench.say("Other shots came in meanwhile; the file was read again. Take them now.");
            read();
            return;
        }
        Optional<String> refused = workbench.apply(edit);
        refused.ifPresent(workbench::sayProblem);
        if (refused.isEmpty()) {
            workbench.say(now.sentence());
            close();
        }
    }
}
