package gripwright.session;

import gripwright.model.Problem;
import gripwright.model.ProblemException;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * One thread that does a piece of work with the newest value it was given, and tries again, ever more patiently, while
 * the work fails.
 *
 * @param <T> what is worked on; a newer value makes an older one that still waits needless
 */
final class LatestWins<T> {

    private static final Logger LOG = Logger.getLogger(LatestWins.class.getName());

    /** The work. */
    interface Work<T> {
        void on(T value) throws ProblemException;
    }

    /** Told on the working thread after each attempt. */
    interface Outcome<T> {
        void done(T value, Optional<Problem> failure);
    }

    private final ScheduledThreadPoolExecutor thread;
    private final SavingPace pace;
    private final Duration delay;
    private final Work<T> work;
    private final Outcome<T> outcome;
    private T waiting;
    private int failures;
    private ScheduledFuture<?> next;

    /** @param delay how long a value waits for a newer one before it is worked on */
    LatestWins(String name, SavingPace pace, Duration delay, Work<T> work, Outcome<T> outcome) {
        this.thread = new ScheduledThreadPoolExecutor(1, task -> {
            // A network that never answers must not keep the program from ending.
            Thread made = new Thread(task, name);
            made.setDaemon(true);
            return made;
        });
        // An attempt that was to come later must not come after the end, when the file is already another's.
        thread.setExecuteExistingDelayedTasksAfterShutdownPolicy(false);
        thread.setRemoveOnCancelPolicy(true);
        this.pace = pace;
        this.delay = delay;
        this.work = work;
        this.outcome = outcome;
    }

    /** Gives the newest value; returns at once. */
    synchronized void offer(T value) {
        if (thread.isShutdown()) {
            return;
        }
        waiting = value;
        soon(delay);
    }

    /** Whether nothing waits. */
    synchronized boolean isIdle() {
        return waiting == null;
    }

    /** Works on what waits now and waits for it, if the work answers in time. */
    void flush(Duration patience) {
        call(() -> {
            attempt();
            return null;
        }, patience);
    }

    /** Does something else on the working thread; empty where it does not answer in time or the thread has ended. */
    <R> Optional<R> call(Callable<R> task, Duration patience) {
        try {
            Future<R> answer = thread.submit(task);
            return Optional.ofNullable(answer.get(patience.toMillis(), TimeUnit.MILLISECONDS));
        } catch (TimeoutException | RejectedExecutionException e) {
            return Optional.empty();
        } catch (ExecutionException e) {
            LOG.log(Level.WARNING, "A task beside the saving failed", e.getCause());
            return Optional.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }

    /** Does something else on the working thread, some time. */
    void execute(Runnable task) {
        if (!thread.isShutdown()) {
            thread.execute(task);
        }
    }

    /** Does something on the working thread again and again. */
    void every(Duration period, Runnable task) {
        thread.scheduleWithFixedDelay(() -> {
            try {
                task.run();
            } catch (RuntimeException e) {
                LOG.log(Level.WARNING, "A regular task beside the saving failed", e);
            }
        }, period.toMillis(), period.toMillis(), TimeUnit.MILLISECONDS);
    }

    /**
     * Ends the thread: work that runs is finished, what waits to be tried again is not, and nothing new begins.
     *
     * @param patience how long to wait for work that runs
     */
    void end(Duration patience) {
        synchronized (this) {
            thread.shutdown();
            if (next != null) {
                next.cancel(false);
            }
        }
        try {
            if (!thread.awaitTermination(patience.toMillis(), TimeUnit.MILLISECONDS)) {
                LOG.log(Level.FINE, "Work beside the saving goes on after the end; the disk or network is slow");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private synchronized void soon(Duration wait) {
        if (next != null && !next.isDone()) {
            if (next.getDelay(TimeUnit.NANOSECONDS) <= wait.toNanos()) {
                return;
            }
            next.cancel(false);
        }
        next = thread.schedule(this::attempt, wait.toNanos(), TimeUnit.NANOSECONDS);
    }

    private void attempt() {
        T value;
        synchronized (this) {
            value = waiting;
            waiting = null;
            next = null;
        }
        if (value == null) {
            return;
        }
        Optional<Problem> failure = tried(value);
        synchronized (this) {
            failures = failure.isPresent() ? failures + 1 : 0;
            if (failure.isPresent()) {
                waiting = waiting == null ? value : waiting;
                if (!thread.isShutdown()) {
                    soon(pace.retry(failures));
                }
            }
        }
        outcome.done(value, failure);
    }

    private Optional<Problem> tried(T value) {
        try {
            work.on(value);
            return Optional.empty();
        } catch (ProblemException e) {
            LOG.log(Level.FINE, "Saving failed and is tried again", e);
            return Optional.of(e.problem());
        } catch (RuntimeException e) {
            LOG.log(Level.WARNING, "Saving failed unexpectedly and is tried again", e);
            return Optional.of(new Problem(Problem.Severity.FATAL, "", null, null, e.toString(),
                    "The program could not save because of a fault of its own (" + e.getClass().getSimpleName()
                            + "); save the session under another name and report it."));
        }
    }
}
