package gripwright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.desktop.support.DemoSessions;
import gripwright.desktop.support.InMemoryServices;
import gripwright.desktop.support.PlaceKey;
import gripwright.desktop.support.WorkbenchServices;
import gripwright.model.ProblemException;
import gripwright.storage.SessionFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Opens all seven places, light and dark, small and large, empty and full, and leaves a picture of each in
 * target/screenshots; fails where a text is cut off or siblings lie over one another.
 *
 * <p>{@code mvn test -Dtest=ScreenshotTour} makes the tour; {@code -Dtour.only=plan} keeps to one place.
 */
class ScreenshotTour {

    private static final Path FOLDER = Path.of("target", "screenshots");

    /** One stop of the tour. */
    record Stop(String session, Supplier<WorkbenchServices> services, boolean dark, int width, int height) {

        @Override
        public String toString() {
            return session + "-" + (dark ? "dark" : "light") + "-" + width + "x" + height;
        }
    }

    static Stream<Stop> stops() {
        List<Stop> stops = new ArrayList<>();
        for (boolean dark : new boolean[] {false, true}) {
            for (int[] size : new int[][] {{1366, 768}, {1920, 1080}}) {
                stops.add(new Stop("empty", InMemoryServices::blank, dark, size[0], size[1]));
                stops.add(new Stop("demo", ScreenshotTour::demo, dark, size[0], size[1]));
            }
        }
        for (boolean dark : new boolean[] {false, true}) {
            stops.add(new Stop("shipped", ScreenshotTour::shipped, dark, 1366, 768));
        }
        stops.add(new Stop("eight", ScreenshotTour::eight, false, 1366, 768));
        return stops.stream();
    }

    private static WorkbenchServices demo() {
        return new InMemoryServices(DemoSessions.leftHanded(), DemoSessions.shop());
    }

    /** The demo session that ships with the program: every metric was read, the closure rate among them. */
    private static WorkbenchServices shipped() {
        try {
            return new InMemoryServices(new SessionFile().read(Path.of("demo-data", "left-handed-8-iron.json")).value(),
                    DemoSessions.shop());
        } catch (ProblemException e) {
            throw new IllegalStateException(e);
        }
    }

    private static WorkbenchServices eight() {
        return new InMemoryServices(DemoSessions.eightGrips(), DemoSessions.shop());
    }

    @ParameterizedTest
    @MethodSource("stops")
    void nothingIsCutOffAndNothingOverlaps(Stop stop) throws IOException {
        Files.createDirectories(FOLDER);
        List<String> faults = new ArrayList<>();
        try (TestWindow window = TestWindow.open(stop.services().get())) {
            window.dress(stop.width(), stop.height(), stop.dark());
            for (PlaceKey place : PlaceKey.values()) {
                String only = System.getProperty("tour.only");
                if (only == null || only.equalsIgnoreCase(place.name())) {
                    visit(window, place, stop, faults);
                }
            }
            keysOverlay(window, stop, faults);
        }
        assertThat(faults).as("%s", stop).isEmpty();
    }

    private static void keysOverlay(TestWindow window, Stop stop, List<String> faults) throws IOException {
        window.robot().push(KeyCode.F1);
        window.settle();
        keep(window, "keys-" + stop);
        window.onWindow(() -> LabelFit.faults(window.window().scene().getRoot()))
                .forEach(fault -> faults.add("Keys: " + fault));
    }

    private static void visit(TestWindow window, PlaceKey place, Stop stop, List<String> faults) throws IOException {
        window.onWindow(() -> {
            window.workbench().place().set(place);
            return null;
        });
        window.waitUntil("the comparison of " + stop, () -> !window.workbench().comparison().computing().get());
        window.waitForWork();
        String name = place.name().toLowerCase(Locale.ROOT) + "-" + stop;
        keep(window, name);
        int part = 2;
        while (window.onWindow(() -> scrolledDown(window))) {
            keep(window, name + "-" + part);
            part++;
        }
        window.onWindow(() -> LabelFit.faults(window.window().scene().getRoot()))
                .forEach(fault -> faults.add(place.title() + ": " + fault));
    }

    private static void keep(TestWindow window, String name) throws IOException {
        window.photograph(FOLDER.resolve(name + ".png"));
    }

    /** Scrolls the page down by what is in view, where there is more below. */
    private static boolean scrolledDown(TestWindow window) {
        if (!(window.window().shown().node() instanceof ScrollPane page)) {
            return false;
        }
        double view = page.getViewportBounds().getHeight();
        double hidden = page.getContent().getLayoutBounds().getHeight() - view;
        if (hidden <= 0 || page.getVvalue() >= page.getVmax()) {
            return false;
        }
        page.setVvalue(Math.min(page.getVmax(), page.getVvalue() + view / hidden));
        return true;
    }
}
