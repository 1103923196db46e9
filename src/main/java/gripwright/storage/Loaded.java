package gripwright.storage;

import gripwright.model.Problem;
import java.util.List;

/**
 * What was read of a file, and what was passed over.
 *
 * @param <T> what the file holds
 * @param value what was read
 * @param problems what could not be taken; empty where everything was
 */
public record Loaded<T>(T value, List<Problem> problems) {

    public Loaded {
        problems = List.copyOf(problems);
    }
}
