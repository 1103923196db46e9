package gripwright.session;

import gripwright.model.ProblemException;
import gripwright.model.Session;
import java.nio.file.Path;

/** Names for the files of sessions that have none: by the date, no word about the player. */
final class NewNames {

    private final Path folder;
    private final SessionRepository repository;

    NewNames(Path folder, SessionRepository repository) {
        this.folder = folder;
        this.repository = repository;
    }

    /** A name that is free. */
    Path of(Session session) {
        String stem = session.date() + (session.invented() ? " demo" : " session");
        Path path = folder.resolve(stem + ".json");
        for (int number = 2; isTaken(path); number++) {
            path = folder.resolve(stem + " " + number + ".json");
        }
        return path;
    }

    private boolean isTaken(Path path) {
        try {
            return !repository.look(path).fingerprint().isEmpty() || repository.inUseBy(path).isPresent();
        } catch (ProblemException e) {
            return true;
        }
    }
}
