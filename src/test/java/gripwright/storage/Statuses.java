package gripwright.storage;

import gripwright.session.SavingStatus;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;

/** Remembers what was said of the saving, and waits until something is said. */
final class Statuses implements Consumer<SavingStatus> {

    private final List<SavingStatus> all = new ArrayList<>();

    @Override
    public synchronized void accept(SavingStatus status) {
        all.add(status);
        notifyAll();
    }

    synchronized SavingStatus last() {
        return all.get(all.size() - 1);
    }

    /** Forgets all but the last. */
    synchronized void forget() {
        all.subList(0, all.size() - 1).clear();
    }

    /** The newest status, once it is as wanted. */
    synchronized SavingStatus await(Predicate<SavingStatus> wanted) {
        long deadline = System.nanoTime() + Duration.ofSeconds(30).toNanos();
        while (all.isEmpty() || !wanted.test(last())) {
            long left = (deadline - System.nanoTime()) / 1_000_000;
            if (left <= 0) {
                throw new AssertionError("It was never said; the last was " + (all.isEmpty() ? "nothing" : last()));
            }
            try {
                wait(left);
            } catch (InterruptedException e) {
                throw new AssertionError(e);
            }
        }
        return last();
    }

    SavingStatus awaitSaved() {
        return await(status -> status.state() == SavingStatus.State.KEPT
                && status.savedRevision() == status.revision());
    }
}
