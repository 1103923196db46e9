package gripwright.desktop.take;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.desktop.LabelFit;
import gripwright.desktop.TestWindow;
import gripwright.desktop.support.DemoSessions;
import gripwright.desktop.support.InMemoryServices;
import gripwright.intake.ColumnMapping;
import gripwright.intake.ColumnRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Parent;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Goes through the states of the sheet that takes a file, a picture of each in target/screenshots; fails where a text is
 * cut off.
 *
 * <p>{@code mvn test -Dtest=TakeTour}
 */
class TakeTour {

    private static final Path FOLDER = Path.of("target", "screenshots");
    private static final String RECOGNISED = "Bay two\n\nshot;time;club speed;ball speed;face angle;club path;carry;offline;"
            + "player's word\n;;[mph];[mph];[deg];[deg];[yd];[yd];\n1;14:02:11;86,1;118,4;0,5 O;1,2;148,2;3,1 R;thin\n"
            + "2;14:02:48;85,9;117,0;1,1 C;0,8;146,9;2,0 L;\n3;14:03:20;86,6;119,2;0,2 O;2,0;150,3;0,4 R;good\n"
            + "Average;;86,2;118,2;;;148,5;;\n";

    @TempDir
    private Path folder;

    private final List<String> faults = new ArrayList<>();
    private TestWindow window;
    private String suffix;

    @ParameterizedTest
    @CsvSource({"1366,768,false", "1920,1080,true"})
    void everyStateOfTheSheetIsWholeAtThisSize(int width, int height, boolean dark) throws IOException {
        Files.createDirectories(FOLDER);
        suffix = (dark ? "-dark-" : "-light-") + width + "x" + height;
        InMemoryServices services = new InMemoryServices(DemoSessions.leftHanded(), DemoSessions.shop());
        try (TestWindow open = TestWindow.open(services)) {
            window = open;
            open.dress(width, height, dark);
            show("recognised", RECOGNISED);
            show("ambiguous", "date,speed,club speed,face angle (deg),distance\n03/04/2026,118,86.1,0.5,150\n"
                    + "03/04/2026,117,85.9,0.2,149\n");
            show("left-out", "shot,club speed (mph),face angle (deg)\n1,86.1,0.5\n2,85.9,abc\n3,fast,1.0\n4,86.0,2.1,7\n"
                    + "5,586.4,0.1\n");
            show("nothing", "alpha,beta,gamma\n1,2,3\n4,5,6\n");
            show("no-headings", "86.1,0.5,150\n85.9,0.2,149\n");
            show("thirty", thirty());
            services.keepMapping(ColumnMapping.none().with(ColumnRule.of("player's word", "note")).withName("bay two")
                    .withFiles(List.of(), "mapping*.csv"));
            show("mapping", RECOGNISED);
            show("failed", "");
        }
        assertThat(faults).isEmpty();
    }

    private static String thirty() {
        StringBuilder headings = new StringBuilder("shot,club speed (mph),carry (yd)");
        StringBuilder cells = new StringBuilder("1,86.1,148");
        for (int n = 1; n <= 27; n++) {
            headings.append(",another reading of this source no. ").append(n);
            cells.append(',').append(n * 1.5);
        }
        return headings.append('\n').append(cells).append('\n').toString();
    }

    private void show(String name, String text) throws IOException {
        Path file = Files.writeString(folder.resolve(name + ".csv"), text);
        TakeViewModel model = window.onWindow(() -> {
            window.window().takeShots(file);
            return ((TakeOverlay) window.window().scene().lookup("#take-overlay")).model();
        });
        window.waitUntil(name + " to be read", () -> model.result().get() != null && !model.reading().get());
        window.settle();
        window.photograph(FOLDER.resolve("take-" + name + suffix + ".png"));
        Parent overlay = (Parent) window.window().scene().lookup("#take-overlay");
        window.onWindow(() -> LabelFit.faults(overlay)).forEach(fault -> faults.add(name + ": " + fault));
    }
}
