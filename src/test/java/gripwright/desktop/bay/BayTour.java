package gripwright.desktop.bay;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.desktop.LabelFit;
import gripwright.desktop.TestWindow;
import gripwright.desktop.support.InMemoryServices;
import gripwright.desktop.support.PlaceKey;
import gripwright.desktop.support.Shop;
import gripwright.model.ClubTest;
import gripwright.model.PhysicalClub;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Goes through the states of the bay, a picture of each in target/screenshots; fails where a text is cut off.
 *
 * <p>{@code mvn test -Dtest=BayTour}
 */
class BayTour {

    private static final Path FOLDER = Path.of("target", "screenshots");

    private final List<String> faults = new ArrayList<>();
    private TestWindow window;
    private String suffix;

    @ParameterizedTest
    @CsvSource({"1366,768,false", "1920,1080,true"})
    void everyStateOfTheBayIsWholeAtThisSize(int width, int height, boolean dark) throws IOException {
        Files.createDirectories(FOLDER);
        suffix = (dark ? "-dark-" : "-light-") + width + "x" + height;
        Session session = BaySessions.hit("ABCDEFGH", "ABCDEFGHHGFEDCBA", 5, 3);
        try (TestWindow open = TestWindow.open(new InMemoryServices(half(session), new Shop(ShopSettings.usual(),
                new Stock(List.of(), List.of()))))) {
            window = open;
            open.dress(width, height, dark);
            open.onWindow(() -> {
                open.workbench().place().set(PlaceKey.BAY);
                return null;
            });
            type(KeyCode.N);
            hit(4);
            picture("in-hand");
            assertThat(open.onWindow(() -> open.window().scene().lookup(".bay").getPseudoClassStates().stream()
                    .anyMatch(state -> state.getPseudoClassName().equals("roomy")))).isEqualTo(width == 1920);
            type(KeyCode.E);
            open.robot().write("815\t2.1 c\tx1");
            picture("typing");
            type(KeyCode.ESCAPE, KeyCode.X);
            picture("set-aside");
            type(KeyCode.DIGIT1, KeyCode.C);
            picture("switch");
            type(KeyCode.DIGIT2);
            picture("from-where");
            type(KeyCode.ESCAPE, KeyCode.S, KeyCode.DIGIT6, KeyCode.DIGIT5);
            picture("feel");
            type(KeyCode.ESCAPE);
            hit(2);
            type(KeyCode.P);
            picture("tray");
            type(KeyCode.ESCAPE, KeyCode.H);
            picture("hidden");
            type(KeyCode.H, KeyCode.H, KeyCode.H, KeyCode.W);
            picture("source");
            type(KeyCode.DIGIT3, KeyCode.DIGIT1, KeyCode.N, KeyCode.F1);
            picture("keys");
            type(KeyCode.ESCAPE);
            hit(5);
            type(KeyCode.S, KeyCode.ESCAPE);
            picture("between");
            type(KeyCode.C);
            picture("choose");
        }
        assertThat(faults).isEmpty();
    }

    /** The second half of the stints is still planned, and grips are blown on. */
    private static Session half(Session session) {
        ClubTest test = session.tests().get(0);
        List<gripwright.model.Stint> stints = new ArrayList<>(test.stints());
        for (int n = 9; n < stints.size(); n++) {
            stints.set(n, stints.get(n).withShots(List.of()).withState(gripwright.model.Stint.State.PLANNED));
        }
        return session.withTest(test.withStints(stints)
                .withPhysicalClubs(List.of(new PhysicalClub("p", "the one club", PhysicalClub.Mounting.BLOWN_ON)))
                .withConfigurations(test.configurations().stream().map(c -> c.withPhysicalClubId("p")).toList()));
    }

    private void hit(int shots) {
        Random random = new Random(5);
        for (int n = 0; n < shots; n++) {
            String id = "tour-" + System.identityHashCode(this) + "-" + random.nextInt() + "-" + faults.size() + n;
            window.onWindow(() -> {
                window.workbench().applyOrSay(gripwright.session.edits.PlayEdits.of("test-1").takeIn(List.of(
                        gripwright.model.Shot.of(id + window.workbench().revision().get(),
                                BaySessions.readings(random, 6)))));
                return null;
            });
        }
    }

    private void type(KeyCode... keys) {
        for (KeyCode key : keys) {
            window.robot().type(key);
            window.settle();
        }
    }

    private void picture(String name) throws IOException {
        window.waitUntil("the comparison", () -> !window.workbench().comparison().computing().get());
        window.settle();
        window.photograph(FOLDER.resolve("baystate-" + name + suffix + ".png"));
        window.onWindow(() -> LabelFit.faults(window.window().scene().getRoot()))
                .forEach(fault -> faults.add(name + ": " + fault));
    }
}
