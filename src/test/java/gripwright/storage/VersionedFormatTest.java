package gripwright.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.node.ObjectNode;
import gripwright.model.ProblemException;
import gripwright.model.Session;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Older versions are brought up step by step, and every released version stays readable. */
class VersionedFormatTest {

    record Box(String label, double lengthMm) {
    }

    private final VersionedFormat<Box> boxes = new VersionedFormat<>("box", 3, Box.class, List.of(
            new Migration(2, document -> {
                ObjectNode box = (ObjectNode) document.get("box");
                box.put("lengthMm", box.remove("lengthInches").doubleValue() * 25.4);
            }),
            new Migration(1, document -> {
                ObjectNode box = (ObjectNode) document.get("box");
                box.set("label", box.remove("name"));
            })));

    @Test
    void eachStepIsTakenInTurn() throws ProblemException {
        String first = "{\"kind\": \"box\", \"formatVersion\": 1, \"box\": {\"name\": \"a\", \"lengthInches\": 10}}";
        String second = "{\"kind\": \"box\", \"formatVersion\": 2, \"box\": {\"label\": \"a\", \"lengthInches\": 10}}";
        assertThat(read(first)).isEqualTo(new Box("a", 254)).isEqualTo(read(second));
        assertThat(read(new String(boxes.write(read(first)), StandardCharsets.UTF_8))).isEqualTo(new Box("a", 254));
    }

    @Test
    void whatIsWrongInAnOlderVersionIsSaid() {
        assertThatThrownBy(() -> read("{\"kind\": \"box\", \"formatVersion\": 2, \"box\": "
                + "{\"label\": [], \"lengthInches\": 10}}"))
                .isInstanceOf(ProblemException.class).hasMessageContaining("'label' must be a text");
        assertThatThrownBy(() -> read("{\"kind\": \"box\", \"formatVersion\": 2, \"box\": 3}"))
                .isInstanceOf(ProblemException.class).hasMessageContaining("damaged");
        assertThatThrownBy(() -> read("{\"kind\": \"box\", \"formatVersion\": 1}"))
                .isInstanceOf(ProblemException.class).hasMessageContaining("damaged");
    }

    /** A file of every released format; a new format adds a file here and never changes an old one. */
    @ParameterizedTest
    @ValueSource(ints = {1})
    void filesOfEveryReleasedVersionStayReadable(int version) throws IOException, ProblemException {
        try (InputStream in = getClass().getResourceAsStream("/gripwright/storage/session-v" + version + ".json")) {
            Loaded<Session> loaded = new SessionFile().parse(in.readAllBytes(), "fixture");
            Session session = loaded.value();
            assertThat(loaded.problems()).isEmpty();
            assertThat(session.player().label()).isEqualTo("Invented player");
            assertThat(session.tests()).singleElement().satisfies(test -> {
                assertThat(test.configurations()).hasSize(2);
                assertThat(test.reference().orElseThrow().label()).isEqualTo("A");
                assertThat(test.stints()).hasSize(3);
                assertThat(test.stints().get(0).scoredShots()).hasSize(2);
                assertThat(test.stints().get(0).shots().get(2).setAsideReason()).isEqualTo("thin");
                assertThat(test.stints().get(0).swingweightRead().points()).isEqualTo(31.5);
            });
        }
    }

    private Box read(String text) throws ProblemException {
        return boxes.read(text.getBytes(StandardCharsets.UTF_8), "box.json").value();
    }
}
