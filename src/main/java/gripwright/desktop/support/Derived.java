package gripwright.desktop.support;

import java.util.function.Function;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/**
 * A value computed away from the window's thread from a snapshot of the workbench, and again whenever that has changed.
 *
 * <p>One computation runs at a time. A result whose snapshot is no longer the newest is dropped and the newest one is
 * computed instead, so what is shown never mixes two revisions; until it arrives the last result stays with
 * {@link #computing()} true. Made by {@link Workbench#derive}.
 *
 * @param <T> an immutable result
 */
public final class Derived<T> {

    private final Workbench workbench;
    private final Function<Snapshot, T> work;
    private final ReadOnlyObjectWrapper<T> value = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper computing = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private boolean running;

    Derived(Workbench workbench, Function<Snapshot, T> work) {
        this.workbench = workbench;
        this.work = work;
        workbench.revision().addListener((observed, before, after) -> request());
        request();
    }

    /** The newest result; null before the first one, and when the newest snapshot can't be computed. */
    public ReadOnlyObjectProperty<T> value() {
        return value.getReadOnlyProperty();
    }

    /** Whether a newer result is on its way. */
    public ReadOnlyBooleanProperty computing() {
        return computing.getReadOnlyProperty();
    }

    /** Why there is no result, in a sentence; empty when there is one. */
    public ReadOnlyStringProperty problem() {
        return problem.getReadOnlyProperty();
    }

    private void request() {
        computing.set(true);
        if (running) {
            return;
        }
        running = true;
        Snapshot snapshot = workbench.snapshot();
        workbench.inBackground(() -> work.apply(snapshot), result -> arrived(snapshot, result, ""),
                failure -> arrived(snapshot, null, sentence(failure)));
    }

    private void arrived(Snapshot snapshot, T result, String sentence) {
        running = false;
        if (snapshot.revision() != workbench.revision().get()) {
            request();
            return;
        }
        problem.set(sentence);
        value.set(result);
        computing.set(false);
    }

    private static String sentence(Throwable failure) {
        return failure.getMessage() == null ? "This could not be worked out (" + failure + ")." : failure.getMessage();
    }
}
