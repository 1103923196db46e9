package gripwright.session;

import gripwright.model.ProblemException;
import gripwright.model.Session;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Brings back what a crash left in the journals: the newest session to go on with, the others into their files. */
final class Recovery {

    private final SessionRepository repository;
    private final NewNames names;

    Recovery(SessionRepository repository, NewNames names) {
        this.repository = repository;
        this.names = names;
    }

    /**
     * The session to go on with, if one was not yet in its file; sentences of all others are added to the list.
     *
     * @param left newest first
     */
    Optional<Workspace.Opened> newest(List<JournalFolder.Found> left, List<String> sentences) {
        Workspace.Opened newest = null;
        List<Runnable> settled = new ArrayList<>();
        for (int at = 0; at < left.size(); at++) {
            JournalFolder.Found found = left.get(at);
            sentences.addAll(found.sentences());
            Optional<FileState> file = inItsFile(found);
            if (found.session().isEmpty() || isGoneOnFrom(found.session().get(), left.subList(0, at))) {
                settled.add(found.settled());
            } else if (file.isPresent()) {
                newest = newest == null ? new Workspace.Opened(found.session().get(), file, false, List.of(), List.of(),
                        () -> { }) : newest;
                settled.add(found.settled());
            } else if (newest == null) {
                newest = recovered(found);
            } else {
                saveAway(found, sentences);
            }
        }
        settled.forEach(Runnable::run);
        return Optional.ofNullable(newest);
    }

    /** A crash between a recovery's new journal and the removal of the old one leaves both; the newer has it all. */
    private static boolean isGoneOnFrom(Session session, List<JournalFolder.Found> newer) {
        return newer.stream().anyMatch(journal -> journal.wentThrough().test(session));
    }

    /** The file, where it holds just what the journal does. */
    private Optional<FileState> inItsFile(JournalFolder.Found found) {
        if (found.file().isEmpty() || found.session().isEmpty()) {
            return Optional.empty();
        }
        try {
            SessionRepository.Read read = repository.read(found.file().get().path());
            return read.session().equals(found.session().get()) ? Optional.of(read.file()) : Optional.empty();
        } catch (ProblemException e) {
            return Optional.empty();
        }
    }

    private Workspace.Opened recovered(JournalFolder.Found found) {
        List<String> sentences = new ArrayList<>();
        sentences.add("The program ended without saving last time. Everything that was kept is here again.");
        Optional<FileState> file = found.file().map(known -> freed(known, sentences));
        return new Workspace.Opened(found.session().orElseThrow(), file, true, sentences, List.of(), found.settled());
    }

    /** Where the file itself is damaged it is put aside, so that the recovered session can have its name. */
    private FileState freed(FileState file, List<String> sentences) {
        try {
            Optional<FileState> freed = repository.freeDamaged(file.path());
            freed.ifPresent(aside -> sentences.add("The file " + file.name()
                    + " was damaged and is kept as it is under the name '" + aside.name() + "'."));
            return freed.isPresent() ? FileState.absent(file.path()) : file;
        } catch (ProblemException e) {
            return file;
        }
    }

    private void saveAway(JournalFolder.Found found, List<String> sentences) {
        Session session = found.session().orElseThrow();
        try {
            FileState file = found.file().orElseGet(() -> FileState.absent(names.of(session)));
            SaveOutcome outcome = repository.save(freed(file, sentences), session);
            FileState at = outcome instanceof SaveOutcome.Saved saved ? saved.file()
                    : repository.saveBeside(file.path(), session, "recovered");
            repository.release(at.path());
            sentences.add("Another session that had not been saved was recovered into " + at.name() + ".");
            found.settled().run();
        } catch (ProblemException e) {
            // It stays in its journal, for the next start to try again.
            sentences.add("Another session that had not been saved waits in the journal. " + e.problem().text());
        }
    }
}
