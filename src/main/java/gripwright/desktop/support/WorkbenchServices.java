package gripwright.desktop.support;

import gripwright.intake.ColumnMapping;
import gripwright.model.Problem;
import gripwright.model.Session;
import gripwright.session.SessionStore;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What the window asks of the world outside it: sessions and the shop's own files. The program's entry point implements
 * it, since the window may not know how things are stored.
 *
 * <p>Methods that throw {@link IOException} are called off the window's thread; the message of the exception is a sentence
 * for people that says what happened, what to do and that nothing is lost.
 */
public interface WorkbenchServices {

    /**
     * A session that was opened.
     *
     * @param session as read
     * @param file where it lives; null for one that has no file of the user's choosing yet
     * @param problems what could not be taken as it was
     */
    record Opened(Session session, Path file, List<Problem> problems) {

        public Opened {
            problems = List.copyOf(problems);
        }

        /** A session that has no file yet and no problem. */
        public static Opened fresh(Session session) {
            return new Opened(session, null, List.of());
        }

        public Optional<Path> place() {
            return Optional.ofNullable(file);
        }
    }

    /** A session that was in use lately; {@code player} may be empty. */
    record Recent(Path file, String player, LocalDate date, boolean invented) {
    }

    /** The shop's settings and stock list as they were kept, or the usual ones. */
    Shop shop();

    /** Keeps the shop's settings and stock list; returns at once. */
    void keep(Shop shop);

    /** Calls the listener, on any thread, with a sentence whenever the shop's settings or stock list could not be kept. */
    default void listenToKeeping(Consumer<String> listener) {
    }

    /** What the window shows first: the session that was open last or that has to be recovered, else a new one. */
    Opened first();

    /** A new, empty session of today. */
    Opened fresh();

    /** The session in this file. */
    Opened open(Path file) throws IOException;

    /** A copy of the invented demo session. */
    Opened demo() throws IOException;

    /** Writes the session to another file, which is its own from then on. */
    void saveAs(Session session, Path file) throws IOException;

    /** The column mappings for CSV files that the shop has saved, in the order of their names; none to begin with. */
    default List<ColumnMapping> mappings() throws IOException {
        return List.of();
    }

    /** Keeps a column mapping under its name, in place of an earlier one; returns when it is kept. */
    default void keepMapping(ColumnMapping mapping) throws IOException {
        throw new IOException("Column mappings are not kept here.");
    }

    /** Forgets the column mapping with this name; returns when it is gone. */
    default void forgetMapping(String name) throws IOException {
        throw new IOException("Column mappings are not kept here.");
    }

    /** Sessions in use lately, newest first. */
    List<Recent> recent();

    /**
     * Keeps the store's session from now on with each change; called on the window's thread after the store holds what was
     * opened. The listener may be called on any thread.
     */
    void follow(SessionStore store, Opened opened, Consumer<SavingStatus> listener);

    /** Waits until everything is on disk and lets go of all files; called when the window has closed. */
    void close();
}
