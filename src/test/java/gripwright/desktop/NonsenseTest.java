package gripwright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.desktop.support.DemoSessions;
import gripwright.desktop.support.InMemoryServices;
import gripwright.desktop.support.NumberEntry;
import gripwright.desktop.support.PlaceKey;
import gripwright.model.Session;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every field for a number refuses what is none, beside itself, changes nothing, and is as before when that is put back. */
class NonsenseTest {

    @ParameterizedTest
    @EnumSource(value = PlaceKey.class, names = {"SETUP", "PLAN"})
    void isRefusedWhereItWasTypedAndLeavesWhenCured(PlaceKey place) {
        try (TestWindow window = TestWindow.open(new InMemoryServices(DemoSessions.leftHanded(), DemoSessions.shop()))) {
            window.onWindow(() -> {
                window.workbench().place().set(place);
                return null;
            });
            window.waitForWork();
            Session before = window.workbench().session().get();
            List<NumberEntry> entries = window.onWindow(() -> entries(window));
            assertThat(entries).hasSizeGreaterThan(20);
            for (NumberEntry entry : entries) {
                String shown = entry.text().get();
                window.onWindow(() -> {
                    entry.text().set("12..5 nonsense");
                    assertThat(entry.commit()).as(entry.name()).isFalse();
                    assertThat(entry.problem().get()).as(entry.name()).contains("12..5 nonsense");
                    entry.restore();
                    assertThat(entry.problem().get()).as(entry.name()).isEmpty();
                    assertThat(entry.text().get()).as(entry.name()).isEqualTo(shown);
                    return null;
                });
            }
            assertThat(window.workbench().session().get()).isEqualTo(before);
            assertThat(window.workbench().undoLabel().get()).isEmpty();
        }
    }

    private static List<NumberEntry> entries(TestWindow window) {
        List<NumberEntry> entries = new ArrayList<>();
        Set<Node> fields = window.window().shown().node().lookupAll(".text-field");
        for (Node field : fields) {
            if (field instanceof TextField input && input.getUserData() instanceof NumberEntry entry) {
                entries.add(entry);
            }
        }
        return entries;
    }
}
