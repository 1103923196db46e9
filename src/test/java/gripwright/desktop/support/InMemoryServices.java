package gripwright.desktop.support;

import gripwright.intake.ColumnMapping;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import gripwright.session.SessionStore;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.function.Consumer;

/** The world outside the window, for tests: everything lives in memory and is gone afterwards. */
public class InMemoryServices implements WorkbenchServices {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 14);

    private final Map<Path, Session> files = new ConcurrentHashMap<>();
    private final Session first;
    private final Map<String, ColumnMapping> mappings = new ConcurrentSkipListMap<>();
    private volatile Shop shop;

    public InMemoryServices(Session first, Shop shop) {
        this.first = first;
        this.shop = shop;
    }

    /** A blank session of a fixed day in a shop with an empty stock list. */
    public static InMemoryServices blank() {
        return new InMemoryServices(Session.blank("session-1", DAY),
                new Shop(ShopSettings.usual(), new Stock(List.of(), List.of())));
    }

    public Map<Path, Session> files() {
        return files;
    }

    @Override
    public Shop shop() {
        return shop;
    }

    @Override
    public void keep(Shop changed) {
        shop = changed;
    }

    @Override
    public Opened first() {
        return Opened.fresh(first);
    }

    @Override
    public Opened fresh() {
        return Opened.fresh(Session.blank("session-2", DAY));
    }

    @Override
    public Opened open(Path file) throws IOException {
        Session session = files.get(file);
        if (session == null) {
            throw new IOException("There is no file " + file + ". Choose another; nothing has changed.");
        }
        return new Opened(session, file, List.of());
    }

    @Override
    public Opened demo() {
        return Opened.fresh(DemoSessions.leftHanded());
    }

    @Override
    public void saveAs(Session session, Path file) {
        files.put(file, session);
    }

    @Override
    public List<ColumnMapping> mappings() throws IOException {
        return List.copyOf(mappings.values());
    }

    @Override
    public void keepMapping(ColumnMapping mapping) throws IOException {
        mappings.put(mapping.name(), mapping);
    }

    @Override
    public void forgetMapping(String name) throws IOException {
        mappings.remove(name);
    }

    @Override
    public List<Recent> recent() {
        return files.entrySet().stream().map(file -> new Recent(file.getKey(), file.getValue().player().label(),
                file.getValue().date(), file.getValue().invented())).toList();
    }

    @Override
    public void follow(SessionStore store, Opened opened, Consumer<SavingStatus> listener) {
        listener.accept(SavingStatus.inMemory());
    }

    @Override
    public void close() {
        // Nothing is held.
    }
}
