package gripwright.desktop.support;

import gripwright.balance.BalanceCalculator;
import gripwright.balance.TestBalance;
import gripwright.charts.Look;
import gripwright.comparison.Comparer;
import gripwright.comparison.Comparison;
import gripwright.model.ClubTest;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import gripwright.session.Edit;
import gripwright.session.SessionStore;
import gripwright.units.NumberText;
import gripwright.units.Unit;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyLongProperty;
import javafx.beans.property.ReadOnlyLongWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;

/**
 * What all places of the window look at and work on: the session and the test in view, the shop, undo, and what to say.
 *
 * <p>View-models observe its properties and change things through {@link #apply} alone. Confined to the window's thread;
 * only {@link #inBackground} and {@link #derive} leave it, with immutable snapshots.
 */
public final class Workbench {

    private static final Logger LOG = Logger.getLogger(Workbench.class.getName());

    private final SessionStore store;
    private final EditHistory history;
    private final WorkbenchServices services;
    private final Executor background;
    private final Executor window;
    private final ReadOnlyObjectWrapper<Session> session = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<ClubTest> test = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<ShopSettings> settings = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<Stock> stock = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyLongWrapper revision = new ReadOnlyLongWrapper();
    private final ReadOnlyStringWrapper undoLabel = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper redoLabel = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<StatusMessage> message = new ReadOnlyObjectWrapper<>(StatusMessage.none());
    private final ReadOnlyObjectWrapper<SavingStatus> saving = new ReadOnlyObjectWrapper<>(SavingStatus.inMemory());
    private final ObjectProperty<PlaceKey> place = new SimpleObjectProperty<>(PlaceKey.SETUP);
    private final BooleanProperty sheetOnly = new SimpleBooleanProperty();
    private final BooleanProperty lessMotion = new SimpleBooleanProperty();
    private final ObjectProperty<String> rowsToTake = new SimpleObjectProperty<>();
    private String testInView;
    private StatusMessage passing;
    private Derived<Comparison> comparison;
    private Derived<TestBalance> balance;

    /**
     * @param services the world outside the window
     * @param background where computations run
     * @param window runs a task on the window's thread, later
     */
    public Workbench(WorkbenchServices services, Executor background, Executor window) {
        this.services = services;
        this.background = background;
        this.window = window;
        WorkbenchServices.Opened first = services.first();
        store = new SessionStore(first.session());
        history = new EditHistory(store, services.shop());
        project(first.session());
        services.listenToKeeping(sentence -> window.execute(() -> sayProblem(sentence)));
        store.listen(change -> project(change.after()));
        follow(first);
        place.addListener((observed, before, now) -> leaveBehind());
    }

    // ---- what is shown ------------------------------------------------------------------------------------------

    public ReadOnlyObjectProperty<Session> session() {
        return session.getReadOnlyProperty();
    }

    /** The test in view, always one of the session's. */
    public ReadOnlyObjectProperty<ClubTest> test() {
        return test.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<ShopSettings> settings() {
        return settings.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Stock> stock() {
        return stock.getReadOnlyProperty();
    }

    /** Grows with every change of session, test in view, settings or stock; set after all of them. */
    public ReadOnlyLongProperty revision() {
        return revision.getReadOnlyProperty();
    }

    /** The present state of everything, for work away from this thread. */
    public Snapshot snapshot() {
        return new Snapshot(session.get(), test.get(), settings.get(), stock.get(), revision.get());
    }

    /** The store itself, for the journal of shots and for tests; edits go through {@link #apply}. */
    public SessionStore store() {
        return store;
    }

    public WorkbenchServices services() {
        return services;
    }

    /** How numbers are read and written here. */
    public NumberText numbers() {
        return NumberText.withDecimalMark(settings.get().decimalMark());
    }

    /** How a quantity is read and written here, in the shop's unit; follows the settings. */
    public ObservableValue<NumberStyle> style(Quantity quantity) {
        return settings.map(now -> {
            Unit unit = now.units().of(quantity.dimension());
            return new NumberStyle(NumberText.withDecimalMark(now.decimalMark()), unit, quantity.decimals(unit),
                    quantity.mostDecimals(unit));
        });
    }

    /** The symbol of the unit in which a quantity is read here. */
    public String unit(Quantity quantity) {
        return settings.get().units().of(quantity.dimension()).symbol();
    }

    /** Brings another test of the session into view. */
    public void selectTest(String testId) {
        session.get().test(testId).ifPresent(chosen -> {
            testInView = testId;
            test.set(chosen);
            changed();
        });
    }

    // ---- what is changed ----------------------------------------------------------------------------------------

    /**
     * Applies an edit to the session.
     *
     * @return why it can't be, in a sentence; empty when it is done or changes nothing
     */
    public Optional<String> apply(Edit edit) {
        try {
            if (store.apply(edit)) {
                problemCured();
            }
            return Optional.empty();
        } catch (IllegalArgumentException refused) {
            return Optional.of(refused.getMessage());
        }
    }

    /** Applies an edit to the shop's settings or stock; as {@link #apply(Edit)}. */
    public Optional<String> apply(ShopEdit edit) {
        try {
            if (history.apply(edit)) {
                shopChanged();
                problemCured();
            }
            return Optional.empty();
        } catch (IllegalArgumentException refused) {
            return Optional.of(refused.getMessage());
        }
    }

    /** A problem at the foot was about an edit that could not be; the next one that can leaves it behind. */
    private void problemCured() {
        leaveBehind();
        if (message.get().kind() == StatusMessage.Kind.PROBLEM) {
            message.set(StatusMessage.none());
        }
    }

    /** Applies an edit and, where it can't be, says why at the foot of the window. */
    public void applyOrSay(Edit edit) {
        apply(edit).ifPresent(this::sayRefusal);
    }

    /** Applies an edit of the shop and, where it can't be, says why at the foot of the window. */
    public void applyOrSay(ShopEdit edit) {
        apply(edit).ifPresent(this::sayRefusal);
    }

    private void sayRefusal(String sentence) {
        sayProblem(sentence);
        passing = message.get();
    }

    private void sayInPassing(String sentence) {
        say(sentence);
        passing = message.get();
    }

    /** What was undone, or why an edit could not be, is of no use after the next edit or in another place. */
    private void leaveBehind() {
        if (message.get() == passing) {
            message.set(StatusMessage.none());
        }
    }

    /** Takes back the last edit, of the session or of the shop. */
    public void undo() {
        history.undo().ifPresent(label -> {
            shopChanged();
            sayInPassing("Undone: " + label);
        });
    }

    /** Does again what was taken back last. */
    public void redo() {
        history.redo().ifPresent(label -> {
            shopChanged();
            sayInPassing("Done again: " + label);
        });
    }

    /** What undo would take back; empty for nothing. */
    public ReadOnlyStringProperty undoLabel() {
        return undoLabel.getReadOnlyProperty();
    }

    /** What redo would do again; empty for nothing. */
    public ReadOnlyStringProperty redoLabel() {
        return redoLabel.getReadOnlyProperty();
    }

    /** Shows another session and forgets the history; every place shows its first test. */
    public void open(WorkbenchServices.Opened opened) {
        testInView = null;
        store.open(opened.session());
        follow(opened);
        opened.problems().stream().findFirst().ifPresent(problem -> sayProblem(problem.text()));
    }

    /** Changes between the light and the dark look; kept, but not a step of undo. */
    public void switchLook() {
        history.replace(shop -> shop.withSettings(shop.settings().withDark(!shop.settings().dark())));
        shopChanged();
    }

    // ---- what is said -------------------------------------------------------------------------------------------

    public ReadOnlyObjectProperty<StatusMessage> message() {
        return message.getReadOnlyProperty();
    }

    public void say(String text) {
        message.set(StatusMessage.note(text));
    }

    public void sayProblem(String text) {
        message.set(StatusMessage.problem(text));
    }

    public ReadOnlyObjectProperty<SavingStatus> saving() {
        return saving.getReadOnlyProperty();
    }

    // ---- the window ---------------------------------------------------------------------------------------------

    /** The place that is shown; set it to go there. */
    public ObjectProperty<PlaceKey> place() {
        return place;
    }

    /** Whether the place has the whole window, rail, header and foot hidden, as Review has in front of the player. */
    public BooleanProperty sheetOnly() {
        return sheetOnly;
    }

    /** Pasted rows to be looked at on the sheet before they are taken; null for none. */
    public ObjectProperty<String> rowsToTake() {
        return rowsToTake;
    }

    /** Whether nothing moves by itself. */
    public BooleanProperty lessMotion() {
        return lessMotion;
    }

    // ---- work away from the window's thread ---------------------------------------------------------------------

    /** A value computed from snapshots in the background and kept up to date. */
    public <T> Derived<T> derive(Function<Snapshot, T> work) {
        return new Derived<>(this, work);
    }

    /**
     * The comparison of the test in view; null while there is none, or with its problem. It begins when it is first
     * asked for, and all places share it.
     */
    public Derived<Comparison> comparison() {
        if (comparison == null) {
            comparison = derive(snapshot ->
                    Comparer.withSettings(snapshot.settings()).compare(snapshot.session(), snapshot.test()));
        }
        return comparison;
    }

    /** The balance of each configuration of the test in view; as {@link #comparison()}. */
    public Derived<TestBalance> balance() {
        if (balance == null) {
            balance = derive(snapshot -> BalanceCalculator.with(snapshot.settings()).of(snapshot.test()));
        }
        return balance;
    }

    /** How pictures are drawn now at this size of text; follows the look of the window. */
    public ObservableValue<Look> pictureLook(double textSize) {
        return settings.map(now -> Theme.pictures(now.dark(), textSize));
    }

    /** Runs something on the window's thread, later; for sources of shots, which have threads of their own. */
    public void onWindow(Runnable work) {
        window.execute(work);
    }

    /** Runs work in the background; one of the two is then called on the window's thread. */
    public <T> void inBackground(Callable<T> work, Consumer<T> done, Consumer<Throwable> failed) {
        background.execute(() -> {
            try {
                T result = work.call();
                window.execute(() -> done.accept(result));
            } catch (Exception | LinkageError | StackOverflowError failure) {
                LOG.log(isSentence(failure) ? Level.FINE : Level.WARNING, "Work in the background failed", failure);
                window.execute(() -> failed.accept(failure));
            }
        });
    }

    /** Failures of these kinds carry a sentence for people by agreement; any other is a defect worth a trace. */
    private static boolean isSentence(Throwable failure) {
        return failure instanceof IOException || failure instanceof IllegalArgumentException
                || failure instanceof IllegalStateException;
    }

    private void follow(WorkbenchServices.Opened opened) {
        saving.set(SavingStatus.inMemory());
        services.follow(store, opened, status -> window.execute(() -> saving.set(status)));
    }

    private void project(Session now) {
        session.set(now);
        test.set(now.test(testInView).orElse(now.tests().get(0)));
        testInView = test.get().id();
        shopChanged();
    }

    private void shopChanged() {
        Shop shop = history.shop();
        boolean kept = settings.get() == null
                || shop.settings().equals(settings.get()) && shop.stock().equals(stock.get());
        settings.set(shop.settings());
        stock.set(shop.stock());
        if (!kept) {
            services.keep(shop);
        }
        changed();
    }

    private void changed() {
        undoLabel.set(history.undoLabel().orElse(""));
        redoLabel.set(history.redoLabel().orElse(""));
        revision.set(revision.get() + 1);
    }
}
