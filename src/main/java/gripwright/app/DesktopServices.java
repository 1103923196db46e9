package gripwright.app;

import gripwright.desktop.support.SavingStatus;
import gripwright.desktop.support.Shop;
import gripwright.desktop.support.WorkbenchServices;
import gripwright.intake.ColumnMapping;
import gripwright.model.Problem;
import gripwright.model.ProblemException;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import gripwright.session.FileState;
import gripwright.session.SavingPace;
import gripwright.session.SessionStore;
import gripwright.session.Workspace;
import gripwright.storage.JournalShelf;
import gripwright.storage.RecentFiles;
import gripwright.storage.SessionFile;
import gripwright.storage.SessionFiles;
import gripwright.storage.SettingsFile;
import gripwright.storage.StockFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;

/** What the window asks of the world outside it, on this computer's disk: sessions through the workspace, the shop's own files. */
final class DesktopServices implements WorkbenchServices {

    private static final Logger LOG = Logger.getLogger(DesktopServices.class.getName());
    private static final int RECENT_SHOWN = 10;
    private static final long FAREWELL_SECONDS = 5;

    private final ApplicationFolders folders;
    private final Workspace workspace;
    private final boolean demoFirst;
    private final ExecutorService shopWriter = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "shop files");
        thread.setDaemon(true);
        return thread;
    });
    private final Map<Opened, Workspace.Opened> underWay = new IdentityHashMap<>();
    private volatile Consumer<String> keepingProblems = sentence -> { };
    private final List<Problem> startProblems = new ArrayList<>();

    /** @param demoFirst whether the window opens on a copy of the demo session whatever was open last */
    DesktopServices(ApplicationFolders folders, boolean demoFirst) {
        this.folders = folders;
        this.demoFirst = demoFirst;
        this.workspace = new Workspace(new SessionFiles(folders.versions()),
                new JournalShelf(folders.home().resolve("journals")),
                new RecentFiles(folders.home().resolve("recent.json")), folders.sessions(), SavingPace.usual(),
                Clock.systemDefaultZone());
    }

    @Override
    public Shop shop() {
        return new Shop(settings(), stock());
    }

    private ShopSettings settings() {
        if (!Files.exists(folders.settings())) {
            return ShopSettings.usual();
        }
        try {
            return new SettingsFile().read(folders.settings()).value();
        } catch (ProblemException unreadable) {
            startProblems.add(unreadable.problem());
            return ShopSettings.usual();
        }
    }

    private Stock stock() {
        try {
            return Files.exists(folders.stock()) ? new StockFile().read(folders.stock()).value() : DemoSession.stock();
        } catch (ProblemException | IOException unreadable) {
            startProblems.add(new Problem(Problem.Severity.NOTE, folders.stock().toString(), null, null, "",
                    Failures.sentence(unreadable)));
            return new Stock(List.of(), List.of());
        }
    }

    @Override
    public void keep(Shop shop) {
        shopWriter.execute(() -> {
            try {
                Files.createDirectories(folders.home());
                new SettingsFile().write(folders.settings(), shop.settings());
                new StockFile().write(folders.stock(), shop.stock());
            } catch (IOException | ProblemException failure) {
                LOG.log(Level.WARNING, "The shop's settings or stock list could not be written", failure);
                keepingProblems.accept("The shop's settings are not kept yet: " + Failures.sentence(failure)
                        + " They hold in this window, and are written with the next change.");
            }
        });
    }

    @Override
    public void listenToKeeping(Consumer<String> listener) {
        keepingProblems = listener;
    }

    @Override
    public Opened first() {
        Workspace.Opened first = workspace.first();
        boolean nothingThere = first.file().isEmpty() && !first.unsaved();
        if (!first.unsaved() && (demoFirst || nothingThere)) {
            try {
                return demo();
            } catch (IOException missing) {
                startProblems.add(new Problem(Problem.Severity.NOTE, "", null, null, "", missing.getMessage()));
            }
        }
        return shown(first);
    }

    @Override
    public Opened fresh() {
        return shown(workspace.fresh());
    }

    @Override
    public Opened open(Path file) throws IOException {
        try {
            return shown(workspace.open(file));
        } catch (ProblemException refused) {
            throw new IOException(refused.problem().text(), refused);
        }
    }

    @Override
    public Opened demo() throws IOException {
        try {
            return shown(workspace.copyOf(DemoSession.read()));
        } catch (ProblemException refused) {
            throw new IOException(refused.problem().text(), refused);
        }
    }

    @Override
    public void saveAs(Session session, Path file) throws IOException {
        try {
            workspace.saveAs(file);
        } catch (ProblemException refused) {
            throw new IOException(refused.problem().text(), refused);
        }
    }

    @Override
    public List<ColumnMapping> mappings() throws IOException {
        try {
            return new SavedMappings(folders.mappings()).all();
        } catch (ProblemException unreadable) {
            throw new IOException(unreadable.problem().text(), unreadable);
        }
    }

    @Override
    public void keepMapping(ColumnMapping mapping) throws IOException {
        try {
            Files.createDirectories(folders.home());
            new SavedMappings(folders.mappings()).keep(mapping);
        } catch (ProblemException refused) {
            throw new IOException(refused.problem().text(), refused);
        }
    }

    @Override
    public void forgetMapping(String name) throws IOException {
        try {
            new SavedMappings(folders.mappings()).forget(name);
        } catch (ProblemException refused) {
            throw new IOException(refused.problem().text(), refused);
        }
    }

    @Override
    public List<Recent> recent() {
        List<Recent> recent = new ArrayList<>();
        for (Path file : workspace.recent()) {
            if (recent.size() == RECENT_SHOWN) {
                break;
            }
            try {
                Session session = new SessionFile().read(file).value();
                recent.add(new Recent(file, session.player().label(), session.date(), session.invented()));
            } catch (ProblemException gone) {
                LOG.log(Level.FINE, "A recent session can't be read and is not offered", gone);
            }
        }
        return recent;
    }

    @Override
    public void follow(SessionStore store, Opened opened, Consumer<SavingStatus> listener) {
        Workspace.Opened source;
        synchronized (underWay) {
            source = underWay.remove(opened);
            underWay.clear();
        }
        if (source == null) {
            throw new IllegalStateException("Only a session that was opened here can be followed.");
        }
        workspace.follow(store, source, status -> listener.accept(shown(status)));
    }

    private static SavingStatus shown(gripwright.session.SavingStatus status) {
        String sentence = status.notices().isEmpty() ? status.sentence()
                : status.sentence() + " " + String.join(" ", status.notices());
        return switch (status.state()) {
            case KEPT -> new SavingStatus(SavingStatus.State.KEPT, sentence);
            case NOT_SAVED_TO_FILE -> new SavingStatus(SavingStatus.State.FAILED, sentence);
            case NOT_ON_DISK_YET -> new SavingStatus(
                    status.isTrouble() ? SavingStatus.State.FAILED : SavingStatus.State.KEEPING, sentence);
        };
    }

    private Opened shown(Workspace.Opened source) {
        List<Problem> problems = new ArrayList<>();
        source.sentences().forEach(sentence ->
                problems.add(new Problem(Problem.Severity.NOTE, "", null, null, "", sentence)));
        problems.addAll(source.problems());
        problems.addAll(startProblems);
        startProblems.clear();
        Opened opened = new Opened(source.session(), source.file().map(FileState::path).orElse(null), problems);
        synchronized (underWay) {
            underWay.put(opened, source);
        }
        return opened;
    }

    @Override
    public void close() {
        workspace.close().forEach(sentence -> LOG.log(Level.WARNING, sentence));
        shopWriter.shutdown();
        try {
            if (!shopWriter.awaitTermination(FAREWELL_SECONDS, TimeUnit.SECONDS)) {
                LOG.log(Level.WARNING, "The shop's settings may not have been written: the disk does not answer.");
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
