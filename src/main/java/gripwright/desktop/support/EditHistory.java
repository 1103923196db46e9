package gripwright.desktop.support;

import gripwright.session.SessionStore;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * One line of undo over two things that are edited: the session in its store, and the shop.
 *
 * <p>The session's steps live in its store; here is only the order in which session and shop were edited, so that undo
 * takes back what was done last, wherever that was.
 */
final class EditHistory {

    /** A step of the shop; a step of the session is {@code null} in its fields but for the mark. */
    private record Step(boolean ofSession, String label, Shop before, Shop after) {

        static Step session() {
            return new Step(true, null, null, null);
        }
    }

    private final SessionStore store;
    private final Deque<Step> done = new ArrayDeque<>();
    private final Deque<Step> undone = new ArrayDeque<>();
    private Shop shop;
    private boolean moving;

    EditHistory(SessionStore store, Shop shop) {
        this.store = store;
        this.shop = shop;
        store.listen(change -> sessionChanged());
    }

    private void sessionChanged() {
        if (moving) {
            return;
        }
        if (store.undoLabel().isEmpty() && store.redoLabel().isEmpty()) {
            done.clear();
            undone.clear();
            return;
        }
        remember(Step.session());
    }

    private void remember(Step step) {
        undone.clear();
        done.push(step);
        while (done.size() > SessionStore.UNDO_STEPS) {
            done.removeLast();
        }
    }

    Shop shop() {
        return shop;
    }

    /** Applies an edit of the shop; says whether anything changed. */
    boolean apply(ShopEdit edit) {
        Shop after = edit.change().apply(shop);
        if (after.equals(shop)) {
            return false;
        }
        remember(new Step(false, edit.label(), shop, after));
        shop = after;
        return true;
    }

    /** Changes the shop without leaving a step; steps of before and after are changed with it, so undo keeps the change. */
    void replace(UnaryOperator<Shop> change) {
        shop = change.apply(shop);
        changeSteps(done, change);
        changeSteps(undone, change);
    }

    private static void changeSteps(Deque<Step> steps, UnaryOperator<Shop> change) {
        List<Step> changed = steps.stream().map(step -> step.ofSession() ? step
                : new Step(false, step.label(), change.apply(step.before()), change.apply(step.after()))).toList();
        steps.clear();
        steps.addAll(changed);
    }

    /** Takes the last step back; returns its label. */
    Optional<String> undo() {
        if (done.isEmpty()) {
            return Optional.empty();
        }
        Step step = done.pop();
        undone.push(step);
        if (step.ofSession()) {
            return moveSession(true);
        }
        shop = step.before();
        return Optional.of(step.label());
    }

    /** Takes the last undone step again; returns its label. */
    Optional<String> redo() {
        if (undone.isEmpty()) {
            return Optional.empty();
        }
        Step step = undone.pop();
        done.push(step);
        if (step.ofSession()) {
            return moveSession(false);
        }
        shop = step.after();
        return Optional.of(step.label());
    }

    private Optional<String> moveSession(boolean back) {
        moving = true;
        try {
            return back ? store.undo() : store.redo();
        } finally {
            moving = false;
        }
    }

    Optional<String> undoLabel() {
        return Optional.ofNullable(done.peek()).flatMap(s -> s.ofSession() ? store.undoLabel() : Optional.of(s.label()));
    }

    Optional<String> redoLabel() {
        return Optional.ofNullable(undone.peek())
                .flatMap(s -> s.ofSession() ? store.redoLabel() : Optional.of(s.label()));
    }
}
