package gripwright.session;

import gripwright.model.Session;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

/**
 * The one mutable thing of a running workbench: the session as it is now, with a bounded undo history.
 *
 * <p>Confined to one thread (the window's own, or the command's). Listeners are told after each change, on that thread.
 * The revision grows by one with each change, undo and redo included, so that work done on a snapshot can tell whether
 * it is stale.
 */
public final class SessionStore {

    /** How many steps can be taken back; bounded so that a long day stays flat in memory. */
    public static final int UNDO_STEPS = 200;

    /**
     * What happened: the session after it, its revision, the label of the edit or of the undo, and whether another
     * session altogether took the place of the one before.
     */
    public record Change(Session before, Session after, long revision, String label, boolean opening) {
    }

    private record Step(String label, Session before, Session after) {
    }

    private final Deque<Step> done = new ArrayDeque<>();
    private final Deque<Step> undone = new ArrayDeque<>();
    private final List<Consumer<Change>> listeners = new CopyOnWriteArrayList<>();
    private Session session;
    private long revision;

    public SessionStore(Session session) {
        this.session = Objects.requireNonNull(session, "session");
    }

    public Session session() {
        return session;
    }

    public long revision() {
        return revision;
    }

    /**
     * Applies an edit; an edit that gives back an equal session leaves no step.
     *
     * @return whether anything changed
     * @throws IllegalArgumentException when the edit would make a session that can't be; nothing has changed then
     */
    public boolean apply(Edit edit) {
        Session after = edit.change().apply(session);
        if (after.equals(session)) {
            return false;
        }
        undone.clear();
        done.push(new Step(edit.label(), session, after));
        while (done.size() > UNDO_STEPS) {
            done.removeLast();
        }
        move(after, edit.label(), false);
        return true;
    }

    /** Takes the last step back, if there is one; returns its label. */
    public Optional<String> undo() {
        if (done.isEmpty()) {
            return Optional.empty();
        }
        Step step = done.pop();
        undone.push(step);
        move(step.before(), "Undo: " + step.label(), false);
        return Optional.of(step.label());
    }

    /** Takes the last undone step again, if there is one; returns its label. */
    public Optional<String> redo() {
        if (undone.isEmpty()) {
            return Optional.empty();
        }
        Step step = undone.pop();
        done.push(step);
        move(step.after(), "Redo: " + step.label(), false);
        return Optional.of(step.label());
    }

    /** What undo would take back. */
    public Optional<String> undoLabel() {
        return Optional.ofNullable(done.peek()).map(Step::label);
    }

    /** What redo would take again. */
    public Optional<String> redoLabel() {
        return Optional.ofNullable(undone.peek()).map(Step::label);
    }

    /** Replaces the whole session by another one (new, opened, recovered) and forgets the history. */
    public void open(Session other) {
        done.clear();
        undone.clear();
        move(Objects.requireNonNull(other, "session"), "Open session", true);
    }

    /** Calls the listener after every change until the returned handle is run. */
    public Runnable listen(Consumer<Change> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    private void move(Session after, String label, boolean opening) {
        Session before = session;
        session = after;
        revision++;
        Change change = new Change(before, after, revision, label, opening);
        listeners.forEach(listener -> listener.accept(change));
    }
}
