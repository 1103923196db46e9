package gripwright.app;

import gripwright.model.Problem;
import gripwright.model.ProblemException;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import gripwright.storage.Loaded;
import gripwright.storage.SessionFile;
import gripwright.storage.SettingsFile;
import gripwright.storage.StockFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Reads what a command works on: a session file, and the shop's settings where there are any. */
final class SessionInput {

    private final Gripwright.Output output;

    SessionInput(Gripwright.Output output) {
        this.output = output;
    }

    /** The session of a file; what is only worth a look goes to standard error. */
    Session session(Path file) throws ProblemException {
        Loaded<Session> loaded = new SessionFile().read(file);
        loaded.problems().stream().map(Problem::text).forEach(output.err()::println);
        return loaded.value();
    }

    /** The shop's settings, from a file named or from the program's own folder; the usual ones where there is none. */
    ShopSettings settings(Path file) throws ProblemException {
        Path path = file != null ? file : ApplicationFolders.ofProcess().settings();
        if (file == null && !Files.exists(path)) {
            return ShopSettings.usual();
        }
        if (!Files.exists(path)) {
            throw new IllegalArgumentException("There is no settings file " + path + "; check the name and the folder.");
        }
        Loaded<ShopSettings> loaded;
        try {
            loaded = new SettingsFile().read(path);
        } catch (ProblemException refused) {
            throw placed(refused, path);
        }
        loaded.problems().stream().map(Problem::text).forEach(output.err()::println);
        return loaded.value();
    }

    /** The shop's stock list; empty where there is none. */
    Stock stock() throws ProblemException {
        Path path = ApplicationFolders.ofProcess().stock();
        if (!Files.exists(path)) {
            return new Stock(List.of(), List.of());
        }
        Loaded<Stock> loaded;
        try {
            loaded = new StockFile().read(path);
        } catch (ProblemException refused) {
            throw placed(refused, path);
        }
        loaded.problems().stream().map(Problem::text).forEach(output.err()::println);
        return loaded.value();
    }

    /** The program's own files were not named by the person at the terminal: where they lie is part of the sentence. */
    static ProblemException placed(ProblemException refused, Path path) {
        Problem problem = refused.problem();
        return new ProblemException(new Problem(problem.severity(), path.toString(), problem.line(), problem.column(),
                problem.found(), problem.sentence()), refused);
    }
}
