package gripwright.desktop.balance;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.desktop.LabelFit;
import gripwright.desktop.TestWindow;
import gripwright.desktop.support.InMemoryServices;
import gripwright.desktop.support.PlaceKey;
import gripwright.desktop.support.Shop;
import gripwright.model.ProblemException;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import gripwright.storage.SessionFile;
import gripwright.units.UnitChoice;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Goes through the sheets of Balance on the demo session, a picture of each in target/screenshots; fails where a text is cut
 * off or siblings lie over one another.
 *
 * <p>{@code mvn test -Dtest=BalanceTour}
 */
class BalanceTour {

    private static final Path FOLDER = Path.of("target", "screenshots");

    private final List<String> faults = new ArrayList<>();

    @ParameterizedTest
    @CsvSource({"1366,768,false,false", "1920,1080,true,true"})
    void everySheetIsWholeAtThisSize(int width, int height, boolean dark, boolean metric)
            throws IOException, ProblemException {
        Files.createDirectories(FOLDER);
        Session session = new SessionFile().read(Path.of("demo-data", "left-handed-8-iron.json")).value();
        ShopSettings settings = metric ? ShopSettings.usual().withUnits(UnitChoice.metric()).withDecimalMark(',')
                : ShopSettings.usual();
        try (TestWindow window = TestWindow.open(new InMemoryServices(session,
                new Shop(settings, new Stock(List.of(), List.of()))))) {
            window.dress(width, height, dark);
            window.onWindow(() -> {
                window.workbench().lessMotion().set(true);
                window.workbench().place().set(PlaceKey.BALANCE);
                return null;
            });
            for (Topic topic : Topic.values()) {
                visit(window, topic, (dark ? "-dark-" : "-light-") + width + "x" + height);
            }
        }
        assertThat(faults).isEmpty();
    }

    private void visit(TestWindow window, Topic topic, String suffix) throws IOException {
        window.onWindow(() -> {
            ListView<?> list = (ListView<?>) window.window().shown().node().lookup(".gw-topics");
            list.getSelectionModel().select(topic.ordinal());
            return null;
        });
        window.waitUntil("the figures", () -> window.window().scene().getRoot().lookupAll(".label").stream()
                .noneMatch(label -> ((javafx.scene.control.Labeled) label).getText().startsWith("working it out")));
        window.settle();
        String name = "balance-" + topic.name().toLowerCase(Locale.ROOT) + suffix;
        keep(window, name);
        window.onWindow(() -> {
            ScrollPane scroll = (ScrollPane) window.window().shown().node().lookup(".gw-scroll");
            scroll.setVvalue(1);
            return null;
        });
        keep(window, name + "-below");
        window.onWindow(() -> LabelFit.faults(window.window().scene().getRoot()))
                .forEach(fault -> faults.add(topic.title() + ": " + fault));
    }

    private static void keep(TestWindow window, String name) throws IOException {
        window.photograph(FOLDER.resolve(name + ".png"));
    }
}
