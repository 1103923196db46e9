package gripwright.app;

import gripwright.model.ProblemException;
import gripwright.model.Session;
import gripwright.model.Stock;
import gripwright.storage.SessionFile;
import java.io.IOException;
import java.io.InputStream;

/** The invented session that travels with the program. */
final class DemoSession {

    /** Its file's name, in demo-data and in the program's resources. */
    static final String FILE = "left-handed-8-iron.json";

    private DemoSession() {
    }

    static Session read() throws IOException, ProblemException {
        try (InputStream stream = DemoSession.class.getResourceAsStream("/gripwright/demo/" + FILE)) {
            if (stream == null) {
                throw new IOException("the demo session is not part of this copy of the program");
            }
            return new SessionFile().parse(stream.readAllBytes(), FILE).value();
        }
    }

    /** The stock list that a shop begins with. */
    static Stock stock() throws IOException, ProblemException {
        return StartingStock.of(read());
    }
}
