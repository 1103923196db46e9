package gripwright.storage;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.model.ProblemException;
import gripwright.model.Session;
import gripwright.model.SessionArbitraries;
import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

/** What holds for every session and for any bytes that claim to be one. */
class SessionFileProperties {

    private static final java.util.concurrent.atomic.AtomicReference<Path> FOLDER =
            new java.util.concurrent.atomic.AtomicReference<>();

    private final SessionFile files = new SessionFile();

    @BeforeContainer
    static void makeFolder() throws IOException {
        FOLDER.set(Files.createTempDirectory("sessions"));
    }

    @AfterContainer
    static void sweep() throws IOException {
        try (var left = Files.list(FOLDER.get())) {
            for (Path file : left.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(FOLDER.get());
    }

    @Provide
    Arbitrary<Session> sessions() {
        return SessionArbitraries.sessions();
    }

    @Provide
    Arbitrary<ShopSettings> settings() {
        return SessionArbitraries.settings();
    }

    @Provide
    Arbitrary<Stock> stocks() {
        return SessionArbitraries.stocks();
    }

    @Property(tries = 200)
    void anySessionSurvivesSaveAndLoadUnchanged(@ForAll("sessions") Session session) throws ProblemException {
        Path file = FOLDER.get().resolve("session.json");
        files.write(file, session);
        Loaded<Session> loaded = files.read(file);
        assertThat(loaded.value()).isEqualTo(session);
        assertThat(loaded.problems()).isEmpty();
    }

    @Property(tries = 100)
    void equalSessionsGiveEqualBytesOfValidUtf8(@ForAll("sessions") Session session) throws Exception {
        byte[] bytes = files.bytes(session);
        assertThat(files.bytes(files.parse(bytes, "").value())).isEqualTo(bytes);
        StandardCharsets.UTF_8.newDecoder().decode(java.nio.ByteBuffer.wrap(bytes));
    }

    @Property(tries = 200)
    void settingsSurvive(@ForAll("settings") ShopSettings settings) throws ProblemException {
        Path file = FOLDER.get().resolve("settings.json");
        new SettingsFile().write(file, settings);
        assertThat(new SettingsFile().read(file).value()).isEqualTo(settings);
    }

    @Property(tries = 200)
    void stockSurvives(@ForAll("stocks") Stock stock) throws ProblemException {
        Path file = FOLDER.get().resolve("stock.json");
        new StockFile().write(file, stock);
        assertThat(new StockFile().read(file).value()).isEqualTo(stock);
    }

    @Property(tries = 500)
    void randomBytesAlwaysGiveASentenceAndStayUntouched(@ForAll byte[] bytes) throws IOException {
        refusedWithASentence(bytes);
    }

    @Provide
    Arbitrary<String> jsonLike() {
        return Arbitraries.strings().withChars("{}[]\",:0123456789.eE-+truefalsn \n\\u").ofMaxLength(200);
    }

    @Property(tries = 500)
    void jsonLikeTextAlwaysGivesASentence(@ForAll("jsonLike") String text) throws IOException {
        refusedWithASentence(text.getBytes(StandardCharsets.UTF_8));
    }

    /** A session cut short, with a byte changed, or with a byte too many: opened if it still can be, else refused. */
    @Property(tries = 400)
    void damagedSessionsAreReadOrRefusedWithASentence(@ForAll("sessions") Session session, @ForAll int where,
            @ForAll byte what, @ForAll boolean cut) throws IOException {
        byte[] bytes = files.bytes(session);
        int place = Math.floorMod(where, bytes.length);
        byte[] damaged = cut ? Arrays.copyOf(bytes, place) : bytes.clone();
        if (!cut) {
            damaged[place] = what;
        }
        try {
            files.parse(damaged, "damaged.json").value().tests().forEach(test -> assertThat(test).isNotNull());
        } catch (ProblemException e) {
            assertThat(e.problem().sentence()).endsWith(".").hasSizeGreaterThan(30);
        }
    }

    private void refusedWithASentence(byte[] bytes) throws IOException {
        Path file = FOLDER.get().resolve("random.json");
        Files.write(file, bytes);
        try {
            files.read(file);
            Assume.that(false);
        } catch (ProblemException e) {
            assertThat(e.problem().sentence()).endsWith(".").hasSizeGreaterThan(30);
            assertThat(e.problem().where()).isEqualTo("random.json");
        }
        assertThat(Files.readAllBytes(file)).isEqualTo(bytes);
    }
}
