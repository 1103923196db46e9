package gripwright.desktop.bay;

import gripwright.balance.TestBalance;
import gripwright.comparison.Comparison;
import gripwright.desktop.support.Derived;
import gripwright.desktop.support.Workbench;
import gripwright.intake.Answers;
import gripwright.intake.Arrival;
import gripwright.intake.SourceStatus;
import gripwright.model.ClubTest;
import gripwright.model.Feel;
import gripwright.model.Note;
import gripwright.model.ReadingText;
import gripwright.model.Shot;
import gripwright.model.Stint;
import gripwright.planning.WhatNext;
import gripwright.session.Edit;
import gripwright.session.edits.PlayEdits;
import gripwright.session.edits.QueueEdits;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;

/**
 * What the bay shows and does, without a view: the sheet of the moment, the question that is asked, the stint whose feel
 * is being noted, and every action.
 */
public final class BayViewModel {

    private final Workbench workbench;
    private final Clock clock;
    private final Supplier<String> identities;
    private final Derived<Comparison> comparison;
    private final Derived<TestBalance> balance;
    private final BaySheets sheets = new BaySheets();
    private final BayPrompts prompts;
    private final FeelDetails details;
    private final ShotTaking taking;
    private final ReadOnlyObjectWrapper<BaySheet> sheet = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<EntryLine> line = new ReadOnlyObjectWrapper<>();
    private final Asking asking = new Asking();
    private final ReadOnlyObjectWrapper<Stint> feelStint = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<SourceStatus> source = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper rehearsal = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper elapsed = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper sourceText = new ReadOnlyStringWrapper("");
    private final ObjectProperty<Hiding> hiding = new SimpleObjectProperty<>(Hiding.NOTHING);
    private boolean active = true;

    /**
     * @param workbench session, shop and undo
     * @param clock what time it is
     * @param identities makes an identity for each new shot or stint
     */
    public BayViewModel(Workbench workbench, Clock clock, Supplier<String> identities) {
        this.workbench = workbench;
        this.clock = clock;
        this.identities = identities;
        this.prompts = new BayPrompts(this);
        this.details = new FeelDetails(this, workbench);
        this.taking = new ShotTaking(this, workbench, clock);
        comparison = workbench.comparison();
        balance = workbench.balance();
        workbench.revision().addListener((observed, before, now) -> refresh());
        comparison.value().addListener((observed, before, now) -> refresh());
        balance.value().addListener((observed, before, now) -> refresh());
        hiding.addListener((observed, before, now) -> refresh());
        refresh();
    }

    // ---- what is shown ------------------------------------------------------------------------------------------

    public ReadOnlyObjectProperty<BaySheet> sheet() {
        return sheet.getReadOnlyProperty();
    }

    /** The columns of the entry line. */
    public ReadOnlyObjectProperty<EntryLine> line() {
        return line.getReadOnlyProperty();
    }

    /** The question that is asked; null for none. */
    public ReadOnlyObjectProperty<Prompt> prompt() {
        return asking.prompt();
    }

    /** The stint whose feel is being noted, as it is now; null for none. */
    public ReadOnlyObjectProperty<Stint> feelStint() {
        return feelStint.getReadOnlyProperty();
    }

    /** How the source of shots is; null where shots are typed. */
    public ReadOnlyObjectProperty<SourceStatus> source() {
        return source.getReadOnlyProperty();
    }

    /** Whether a rehearsal is playing. */
    public ReadOnlyBooleanProperty rehearsal() {
        return rehearsal.getReadOnlyProperty();
    }

    /** How the source is doing, in words that age; see {@link #tick}. */
    public ReadOnlyStringProperty sourceText() {
        return sourceText.getReadOnlyProperty();
    }

    /** How long the session has been played. */
    public ReadOnlyStringProperty elapsed() {
        return elapsed.getReadOnlyProperty();
    }

    public ObjectProperty<Hiding> hiding() {
        return hiding;
    }

    /** Whether the sheet follows the session; off while another place is shown, so that it costs nothing there. */
    public void setActive(boolean active) {
        this.active = active;
        refresh();
    }

    /** Time has gone by: words that say how long ago are written anew. */
    public void tick() {
        Instant now = clock.instant();
        SourceStatus status = source.get();
        sourceText.set(status == null ? "shots are typed"
                : status.text(now));
        elapsed.set(ElapsedTime.of(workbench.session().get(), now));
    }

    private void refresh() {
        if (!active) {
            return;
        }
        ClubTest test = test();
        ReadingText text = ReadingText.of(workbench.settings().get(), workbench.session().get().player().hand());
        EntryLine columns = EntryLine.of(workbench.settings().get(), text);
        if (!columns.equals(line.get())) {
            line.set(columns);
        }
        Comparison compared = comparison.value().get();
        TestBalance balanced = balance.value().get();
        sheet.set(sheets.set(workbench.session().get(), test, workbench.settings().get(),
                compared != null && compared.testId().equals(test.id()) ? compared : null,
                balanced != null && balanced.testId().equals(test.id()) ? balanced : null, hiding.get()));
        if (feelStint.get() != null) {
            feelStint.set(test.stint(feelStint.get().id()).orElse(null));
        }
        tick();
    }

    ClubTest test() {
        return workbench.test().get();
    }

    // ---- shots --------------------------------------------------------------------------------------------------

    /** Records what stands in the cells of the entry line; says what became of it. */
    public EntryLine.Outcome record(List<String> cells) {
        return taking.record(line.get(), cells);
    }

    /** Takes pasted rows in, one shot a line; rows that can't be read are left out and said. */
    public void paste(String rows) {
        taking.paste(line.get(), rows);
    }

    /** Takes in what a source brought at once; between stints shots wait in the tray. */
    public void arrived(Arrival arrival) {
        taking.arrived(arrival);
    }

    /**
     * Says how the source is doing.
     *
     * @param status null where shots are typed
     * @param rehearsing whether it is a rehearsal
     */
    public void sourceChanged(SourceStatus status, boolean rehearsing) {
        source.set(status);
        rehearsal.set(rehearsing);
        tick();
    }

    /** Sets the newest shot of the stint aside; asks for the reason. */
    public void setAsideLast() {
        Optional<Shot> last = lastShots().filter(s -> !s.isSetAside()).reduce((a, b) -> b);
        if (last.isEmpty()) {
            workbench.say("There is no shot to set aside in this stint.");
        } else {
            ask(prompts.whySetAside(last.get()));
        }
    }

    /** Sets a shot of the list aside, or brings it back where it is set aside. */
    public void toggleAside(String shotId) {
        lastShots().filter(s -> s.id().equals(shotId)).findFirst().ifPresent(shot -> {
            if (shot.isSetAside()) {
                workbench.applyOrSay(play().bringBack(shotId));
            } else {
                ask(prompts.whySetAside(shot));
            }
        });
    }

    /** Brings the shot back that was set aside last in this stint. */
    public void bringBackLast() {
        Optional<Shot> last = lastShots().filter(Shot::isSetAside).reduce((a, b) -> b);
        if (last.isEmpty()) {
            workbench.say("No shot of this stint is set aside.");
        } else {
            apply(play().bringBack(last.get().id()), "Back in the comparison.");
        }
    }

    private Stream<Shot> lastShots() {
        return BaySheets.shown(test()).stream().flatMap(stint -> stint.shots().stream());
    }

    // ---- stints -------------------------------------------------------------------------------------------------

    /** Ends the stint in hand and asks for the feel. */
    public void endStint() {
        Optional<Stint> hand = test().stintInHand();
        if (hand.isEmpty()) {
            workbench.say("No stint is in hand; N starts the next one.");
            return;
        }
        boolean nothingHit = hand.get().shots().isEmpty();
        apply(queue().end(hand.get().id(), clock.instant()), nothingHit
                ? "Nothing was hit; the stint went back into the queue." : "Stint ended. N starts the next one.");
        if (!nothingHit) {
            openFeel(hand.get().id());
        }
    }

    /** Starts the next stint of the queue; one that is still in hand is ended. */
    public void startNext() {
        Optional<Stint> next = WhatNext.next(test());
        if (next.isEmpty()) {
            workbench.say("The queue is empty; R repeats a stint, C takes a configuration in hand.");
            return;
        }
        closeFeel();
        start(next.get().id());
    }

    void start(String stintId) {
        Instant now = clock.instant();
        String label = test().stint(stintId).flatMap(s -> test().configuration(s.configurationId()))
                .map(c -> c.label()).orElse("");
        apply(queue().start(stintId, now), label + " is in hand.");
        if (!workbench.session().get().tray().isEmpty()) {
            workbench.say(label + " is in hand. Shots wait in the tray; P gives them a place.");
        }
    }

    /** Opens the feel of the stint shown, or closes it. */
    public void toggleFeel() {
        if (feelStint.get() != null) {
            closeFeel();
        } else {
            BaySheets.shown(test()).ifPresentOrElse(stint -> openFeel(stint.id()),
                    () -> workbench.say("Feel is asked once a stint has been hit."));
        }
    }

    /** Opens the feel of a stint. */
    public void openFeel(String stintId) {
        details.keepAll();
        feelStint.set(test().stint(stintId).orElse(null));
    }

    public void closeFeel() {
        details.keepAll();
        feelStint.set(null);
    }

    /** What is typed at the end of a stint. */
    public FeelDetails details() {
        return details;
    }

    /** Answers a question on the feel of the stint that is asked about; the same button again takes the answer back. */
    public void answer(FeelQuestion question, int button) {
        Stint stint = feelStint.get();
        if (stint == null || button < 1 || button > question.answers().size()) {
            return;
        }
        boolean again = Objects.equals(question.chosen(stint.feel()), button);
        Feel answered = question.answered(stint.feel(), again ? null : Integer.valueOf(button));
        workbench.applyOrSay(queue().feel(stint.id(), answered));
    }

    // ---- questions ----------------------------------------------------------------------------------------------

    public void note() {
        BaySheets.shown(test()).ifPresentOrElse(stint -> ask(prompts.note(stint)),
                () -> workbench.say("Notes belong to a stint; start one first."));
    }

    /** Corrects the configuration of the stint in hand; between stints, chooses the next configuration. */
    public void switchConfiguration() {
        if (test().configurations().isEmpty()) {
            workbench.say("Plan holds no configuration yet.");
            return;
        }
        boolean hit = test().stintInHand().filter(stint -> !stint.shots().isEmpty()).isPresent();
        ask(hit ? prompts.whichWasIt(test().stintInHand().get()) : prompts.whichNext());
    }

    /** Corrects the configuration of any stint, in hand or done. */
    public void correct(String stintId) {
        test().stint(stintId).filter(s -> !s.shots().isEmpty()).ifPresent(s -> ask(prompts.whichWasIt(s)));
    }

    /** Offers to start a planned stint now or next. */
    void offerPlanned(Stint planned) {
        ask(prompts.planned(planned));
    }

    public void repeat() {
        BaySheets.shown(test()).ifPresentOrElse(stint -> ask(prompts.repeat(stint)),
                () -> workbench.say("There is no stint to repeat yet."));
    }

    public void tray() {
        if (workbench.session().get().tray().isEmpty()) {
            workbench.say("The tray is empty.");
        } else {
            ask(prompts.tray(workbench.session().get().tray()));
        }
    }

    /** Notes that the mark across grip and shaft was looked at. */
    public void twistChecked() {
        test().stintInHand().ifPresentOrElse(
                stint -> apply(queue().note(stint.id(), noteNow(stint, Note.Kind.TWIST_CHECKED, "")), "Twist checked."),
                () -> workbench.say("The twist check belongs to a stint in hand."));
    }

    public void hideNext() {
        hiding.set(hiding.get().next());
    }

    void ask(Prompt question) {
        asking.ask(question);
    }

    /** Chooses an answer of the question by its number, from 1; a number without an answer does nothing. */
    public void choose(int number) {
        asking.choose(number);
    }

    /** Answers the question with what was typed; blank text chooses the first answer. */
    public void answerWith(String typed) {
        asking.answerWith(typed);
    }

    /** Leaves the question unanswered. */
    public void dismiss() {
        asking.ask(null);
    }

    // ---- for the prompts ----------------------------------------------------------------------------------------

    PlayEdits play() {
        return PlayEdits.of(test().id());
    }

    QueueEdits queue() {
        return QueueEdits.of(test().id());
    }

    void apply(Edit edit, String said) {
        workbench.apply(edit).ifPresentOrElse(workbench::sayProblem, () -> workbench.say(said));
    }

    Note noteNow(Stint stint, Note.Kind kind, String words) {
        return new Note(clock.instant(), kind, words, BayPictures.newest(stint));
    }

    String newIdentity() {
        return identities.get();
    }
}
