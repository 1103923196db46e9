package gripwright.session;

import gripwright.model.Problem;
import gripwright.model.ProblemException;
import gripwright.model.Session;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;

/**
 * One window's sessions: new, opened, recovered, saved under another name, and kept on disk all the while.
 *
 * <p>{@link #first}, {@link #open}, {@link #saveAs} and {@link #close} may wait for a disk or network and belong off the
 * window's thread; the others return at once.
 */
public final class Workspace {

    /**
     * A session to be shown.
     *
     * @param session the session
     * @param file its file as it was read; empty while it has none
     * @param unsaved whether the session is newer than its file, as after a recovery
     * @param sentences what is to be said, such as that it was recovered
     * @param problems what was passed over in the file
     * @param safe run once the session is safe in a journal of this window
     */
    public record Opened(Session session, Optional<FileState> file, boolean unsaved, List<String> sentences,
            List<Problem> problems, Runnable safe) {

        public Opened {
            sentences = List.copyOf(sentences);
            problems = List.copyOf(problems);
        }
    }

    private final SessionRepository repository;
    private final JournalFolder journals;
    private final RecentSessions recent;
    private final NewNames names;
    private final SavingPace pace;
    private final Clock clock;
    private final List<CompletableFuture<Optional<String>>> farewells = new ArrayList<>();
    private SessionKeeper keeper;

    /** @param newSessions the folder for sessions that nobody gave a file yet */
    public Workspace(SessionRepository repository, JournalFolder journals, RecentSessions recent, Path newSessions,
            SavingPace pace, Clock clock) {
        this.repository = repository;
        this.journals = journals;
        this.recent = recent;
        this.names = new NewNames(newSessions, repository);
        this.pace = pace;
        this.clock = clock;
    }

    /** What to show at the start: what a crash left unsaved, else the session open last, else a new one. */
    public Opened first() {
        List<String> sentences = new ArrayList<>();
        Optional<Opened> left = Optional.empty();
        try {
            left = new Recovery(repository, names).newest(journals.left(), sentences);
        } catch (ProblemException e) {
            sentences.add("The journals could not be looked through. " + e.problem().text());
        }
        Opened first = left.or(this::last).orElseGet(this::fresh);
        List<String> all = new ArrayList<>(first.sentences());
        all.addAll(sentences);
        return new Opened(first.session(), first.file(), first.unsaved(), all, first.problems(), first.safe());
    }

    /** A new, empty session of today. */
    public Opened fresh() {
        return without(Session.blank(UUID.randomUUID().toString(), LocalDate.now(clock)));
    }

    /** A copy of a session, with an identity of its own and no file yet. */
    public Opened copyOf(Session session) {
        return without(session.withId(UUID.randomUUID().toString()));
    }

    /**
     * The session in a file; of a damaged file the newest earlier version, with the damaged one kept beside it.
     *
     * @throws ProblemException with a sentence; nothing was changed
     */
    public Opened open(Path file) throws ProblemException {
        settle(file);
        try {
            return opened(repository.read(file), false);
        } catch (ProblemException e) {
            return opened(repository.rescue(file).orElseThrow(() -> e), true);
        }
    }

    /**
     * Keeps the store's session from now on; what was kept before is brought to its end in the background.
     *
     * @param opened what the store holds now
     * @param listener told of every change in how safe the session is, on any thread, one call at a time
     */
    public synchronized void follow(SessionStore store, Opened opened, Consumer<SavingStatus> listener) {
        leaveKeeper();
        AtomicBoolean told = new AtomicBoolean();
        AtomicBoolean remembered = new AtomicBoolean(opened.file().isPresent());
        opened.file().ifPresent(this::remember);
        keeper = new SessionKeeper(store, opened.file().orElse(null), opened.unsaved(), repository, journals, names::of,
                pace, status -> {
                    if (status.keptRevision() >= status.revision() && told.compareAndSet(false, true)) {
                        opened.safe().run();
                    }
                    if (status.savedRevision() == status.revision() && status.file().isPresent()
                            && remembered.compareAndSet(false, true)) {
                        remember(status.file().get());
                    }
                    listener.accept(status);
                });
    }

    /** How safe the session is now; empty before {@link #follow}. */
    public synchronized Optional<SavingStatus> status() {
        return Optional.ofNullable(keeper).map(SessionKeeper::status);
    }

    /**
     * Gives the session another file, written when this returns; a file that is there is replaced, an earlier version of
     * it kept.
     *
     * @throws ProblemException with a sentence; the session keeps its old file
     */
    public void saveAs(Path file) throws ProblemException {
        SessionKeeper now;
        synchronized (this) {
            now = keeper;
        }
        if (now == null) {
            throw new IllegalStateException("No session is kept yet.");
        }
        now.saveAs(file, pace.farewell());
        remember(FileState.absent(file));
    }

    /** Session files in use lately, newest first; none where the list can't be read. */
    public List<Path> recent() {
        try {
            return recent.read();
        } catch (ProblemException e) {
            return List.of();
        }
    }

    /**
     * Ends everything, after what is not saved yet is.
     *
     * @return sentences about what waits in the journal for the next start; none where all is saved
     */
    public List<String> close() {
        synchronized (this) {
            leaveKeeper();
        }
        return awaitFarewells();
    }

    private Opened opened(SessionRepository.Read read, boolean unsaved) {
        List<String> sentences = repository.inUseBy(read.file().path()).map(by -> "The session is open in " + by
                + ". What you change here is kept on this computer and saved once it is closed there, or beside it.")
                .map(List::of).orElse(List.of());
        return new Opened(read.session(), Optional.of(read.file()), unsaved, sentences, read.problems(), () -> { });
    }

    private Opened without(Session session) {
        return new Opened(session, Optional.empty(), false, List.of(), List.of(), () -> { });
    }

    private Optional<Opened> last() {
        for (Path file : recent()) {
            try {
                return Optional.of(open(file));
            } catch (ProblemException e) {
                // It can still be opened by hand, with its sentence; the start goes on with a new session.
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** Before a file is read, this window's own savings of it come to their end. */
    private void settle(Path file) {
        awaitFarewells();
        SessionKeeper now;
        synchronized (this) {
            now = keeper;
        }
        if (now != null) {
            now.flush();
        }
    }

    private void leaveKeeper() {
        if (keeper != null) {
            SessionKeeper leaving = keeper;
            leaving.stop();
            keeper = null;
            farewells.add(CompletableFuture.supplyAsync(leaving::close, task -> {
                Thread thread = new Thread(task, "farewell");
                thread.setDaemon(true);
                thread.start();
            }));
        }
    }

    private List<String> awaitFarewells() {
        List<CompletableFuture<Optional<String>>> waiting;
        synchronized (this) {
            waiting = List.copyOf(farewells);
            farewells.clear();
        }
        List<String> sentences = new ArrayList<>();
        for (CompletableFuture<Optional<String>> farewell : waiting) {
            try {
                farewell.get(4 * pace.farewell().toMillis(), TimeUnit.MILLISECONDS).ifPresent(sentences::add);
            } catch (ExecutionException | TimeoutException e) {
                sentences.add("The disk or the network does not answer; what was not saved waits in the journal.");
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
        return sentences;
    }

    private void remember(FileState file) {
        try {
            recent.remember(file.path());
        } catch (ProblemException e) {
            // The list only saves a search; the session itself is safe.
            return;
        }
    }
}
