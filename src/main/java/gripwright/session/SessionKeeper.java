package gripwright.session;

import gripwright.model.Problem;
import gripwright.model.ProblemException;
import gripwright.model.Session;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Keeps the session of a store on disk: every change in the journal at once, the file soon after, both tried again while
 * they fail, and says at any time how safe the session is.
 *
 * <p>The store is only listened to, on its own thread. The journal and the file have one thread each, so that a slow
 * network never delays the journal. The listener is called on those threads, one call at a time.
 */
public final class SessionKeeper {

    /** A session and its revision in the store. */
    private record Version(Session session, long revision) {
    }

    private final SessionRepository repository;
    private final JournalFolder journals;
    private final Function<Session, Path> newName;
    private final SavingPace pace;
    private final Consumer<SavingStatus> listener;
    private final LatestWins<Version> journalWork;
    private final LatestWins<Version> fileWork;
    private final Runnable stopListening;
    private final Object telling = new Object();
    private final List<String> notices = new ArrayList<>();
    private FileState file;
    private Version latest;
    private long journaled;
    private long saved;
    private Problem journalProblem;
    private Problem fileProblem;
    private String inUseBy;
    /** Confined to the journal's thread. */
    private Journal journal;

    /**
     * Begins to keep the store's session.
     *
     * @param file its file as it was read; null where it has none yet
     * @param unsaved whether the session is not in its file as it is, as after a recovery
     * @param newName the file of a session that has none yet, asked for at its first saving
     */
    public SessionKeeper(SessionStore store, FileState file, boolean unsaved, SessionRepository repository,
            JournalFolder journals, Function<Session, Path> newName, SavingPace pace,
            Consumer<SavingStatus> listener) {
        this.repository = repository;
        this.journals = journals;
        this.newName = newName;
        this.pace = pace;
        this.listener = listener;
        this.file = file;
        this.latest = new Version(store.session(), store.revision());
        this.journaled = store.revision();
        this.saved = store.revision();
        this.journalWork = new LatestWins<>("journal", pace, Duration.ZERO, this::keep, this::kept);
        this.fileWork = new LatestWins<>("session file", pace, pace.fileDelay(), this::save, this::saved);
        fileWork.execute(this::beat);
        fileWork.every(pace.beat(), this::beat);
        if (unsaved) {
            journaled = saved = store.revision() - 1;
            journalWork.offer(latest);
        }
        stopListening = store.listen(this::changed);
        tell();
    }

    /** How safe the session is now. */
    public SavingStatus status() {
        synchronized (this) {
            long kept = Math.max(journaled, saved);
            long revision = latest.revision();
            Optional<FileState> at = Optional.ofNullable(file);
            if (kept < revision) {
                String sentence = journalProblem == null ? SavingStatus.ON_ITS_WAY : "Not on disk yet. "
                        + journalProblem.text() + " The session goes on in memory and is written as soon as it can be.";
                return new SavingStatus(SavingStatus.State.NOT_ON_DISK_YET, revision, kept, saved, at, sentence,
                        notices);
            }
            if (saved < revision && fileProblem != null) {
                String sentence = "Not saved to the file yet. " + fileProblem.text()
                        + " Everything is kept on this computer, and saving is tried again by itself.";
                return new SavingStatus(SavingStatus.State.NOT_SAVED_TO_FILE, revision, kept, saved, at, sentence,
                        notices);
            }
            String sentence = at.map(known -> "Kept in " + known.name()).orElse("Kept on this computer");
            return new SavingStatus(SavingStatus.State.KEPT, revision, kept, saved, at, sentence, notices);
        }
    }

    /**
     * Gives the session another file, which is its own from then on; blocks until it is written.
     *
     * @param patience how long to wait for a disk or network that does not answer
     * @throws ProblemException with a sentence when it could not be; the session keeps its old file
     */
    public void saveAs(Path path, Duration patience) throws ProblemException {
        List<ProblemException> failure = new ArrayList<>();
        Optional<Boolean> answered = fileWork.call(() -> {
            try {
                adopt(path);
            } catch (ProblemException e) {
                failure.add(e);
            }
            return true;
        }, patience);
        if (!failure.isEmpty()) {
            throw failure.get(0);
        }
        if (answered.isEmpty()) {
            throw problem(path, "The disk or the network does not answer, so it is not known whether the session was "
                    + "saved there. The session keeps its old file.");
        }
    }

    /** Writes what is not written yet, if disk and network answer in time. */
    public void flush() {
        journalWork.flush(pace.farewell());
        if (isUnsaved()) {
            fileWork.flush(pace.farewell());
        }
    }

    /** Stops to listen to the store, on the store's own thread, before another session takes its place. */
    public void stop() {
        stopListening.run();
    }

    /**
     * Ends the keeping: what is not saved yet is, if disk and network answer in time.
     *
     * @return what could not be saved to the file and waits in the journal for the next start; empty where all is saved
     */
    public Optional<String> close() {
        stop();
        flush();
        if (isUnsaved() && isInUse()) {
            fileWork.call(() -> {
                saveCopyOnLeaving();
                return true;
            }, pace.farewell());
        }
        boolean all = !isUnsaved();
        journalWork.call(() -> {
            endJournal(all);
            return true;
        }, pace.farewell());
        FileState last = fileNow();
        if (last != null) {
            fileWork.execute(() -> repository.release(last.path()));
            fileWork.call(() -> true, pace.farewell());
        }
        journalWork.end(pace.farewell());
        fileWork.end(pace.farewell());
        return all ? Optional.empty() : Optional.of(status().sentence());
    }

    private void changed(SessionStore.Change change) {
        if (change.opening()) {
            // Another session has taken the store; it must never get into this one's file.
            stop();
            return;
        }
        Version version = new Version(change.after(), change.revision());
        synchronized (this) {
            latest = version;
        }
        journalWork.offer(version);
        tell();
    }

    // ---- the journal's thread -----------------------------------------------------------------------------------

    private void keep(Version version) throws ProblemException {
        if (journal == null) {
            journal = journals.begin(version.session(), fileNow());
        } else {
            journal.keep(version.session());
        }
    }

    private void kept(Version version, Optional<Problem> failure) {
        synchronized (this) {
            journalProblem = failure.orElse(null);
            if (failure.isEmpty()) {
                journaled = Math.max(journaled, version.revision());
            }
        }
        // The file gets only what the journal went through, so that after a crash it is known as this window's own; where
        // the journal fails, the file alone must do.
        fileWork.offer(failure.isEmpty() ? version : latestNow());
        tell();
    }

    private void noteFile(FileState now) {
        if (journal == null) {
            return;
        }
        try {
            journal.file(now);
        } catch (ProblemException e) {
            // Keeping the session once more begins the journal anew, and that names the file.
            journalWork.offer(latestNow());
        }
    }

    private void endJournal(boolean allSaved) {
        if (journal == null) {
            return;
        }
        if (allSaved) {
            journal.finish();
        } else {
            journal.leave();
        }
        journal = null;
    }

    // ---- the file's thread --------------------------------------------------------------------------------------

    private void save(Version version) throws ProblemException {
        FileState target = fileNow();
        if (target == null) {
            target = FileState.absent(newName.apply(version.session()));
        }
        SaveOutcome outcome = repository.save(target, version.session());
        setInUse(outcome instanceof SaveOutcome.InUse inUse ? inUse.by() : null);
        if (outcome instanceof SaveOutcome.Saved done) {
            moved(done.file());
        } else if (outcome instanceof SaveOutcome.Changed) {
            saveCopy(version, "was changed by somebody else");
        } else if (outcome instanceof SaveOutcome.InUse inUse) {
            throw problem(target.path(), "The file is in use by " + inUse.by() + ", so it is left alone. Close the "
                    + "session there, or save this one under another name.");
        } else {
            throw problem(target.path(), "The file is not there any more: it was moved or deleted, or its drive is "
                    + "gone. Connect the drive, or save the session under another name.");
        }
    }

    private void saved(Version version, Optional<Problem> failure) {
        synchronized (this) {
            fileProblem = failure.orElse(null);
            if (failure.isEmpty()) {
                saved = Math.max(saved, version.revision());
            }
        }
        tell();
    }

    private void saveCopyOnLeaving() throws ProblemException {
        Version version = latestNow();
        saveCopy(version, "is in use elsewhere");
        saved(version, Optional.empty());
    }

    private void saveCopy(Version version, String why) throws ProblemException {
        FileState original = fileNow();
        FileState copy = repository.saveBeside(original.path(), version.session(), "conflict");
        repository.release(original.path());
        synchronized (this) {
            notices.add(original.name() + " " + why + ". It was left as it is; this session goes on in " + copy.name()
                    + " beside it.");
        }
        moved(copy);
    }

    private void adopt(Path path) throws ProblemException {
        Version version = latestNow();
        FileState old = fileNow();
        SaveOutcome outcome = repository.save(repository.look(path), version.session());
        if (!(outcome instanceof SaveOutcome.Saved done)) {
            throw problem(path, outcome instanceof SaveOutcome.InUse inUse
                    ? "The file is in use by " + inUse.by() + "; choose another name. The session keeps its old file."
                    : "Somebody else is writing this file; choose another name. The session keeps its old file.");
        }
        if (old != null && !old.path().equals(done.file().path())) {
            repository.release(old.path());
        }
        setInUse(null);
        moved(done.file());
        saved(version, Optional.empty());
    }

    private void moved(FileState now) {
        synchronized (this) {
            file = now;
        }
        journalWork.execute(() -> noteFile(now));
    }

    private void beat() {
        FileState now = fileNow();
        if (now != null) {
            repository.beat(now.path());
        }
    }

    // ---- what both know -----------------------------------------------------------------------------------------

    private synchronized FileState fileNow() {
        return file;
    }

    private synchronized Version latestNow() {
        return latest;
    }

    private synchronized boolean isUnsaved() {
        return saved < latest.revision();
    }

    private synchronized boolean isInUse() {
        return inUseBy != null;
    }

    private synchronized void setInUse(String by) {
        inUseBy = by;
    }

    /** Each call tells the state of its own moment, so the last one told is the newest. */
    private void tell() {
        synchronized (telling) {
            listener.accept(status());
        }
    }

    private static ProblemException problem(Path path, String sentence) {
        return new ProblemException(new Problem(Problem.Severity.FATAL, String.valueOf(path.getFileName()), null, null,
                "", sentence));
    }
}
