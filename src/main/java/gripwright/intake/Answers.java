package gripwright.intake;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Answers to the questions of an intake.
 *
 * @param choices the key of the choice taken, by the id of its question
 */
public record Answers(Map<String, String> choices) {

    /** Nothing answered yet. */
    public static Answers none() {
        return new Answers(Map.of());
    }

    public Answers {
        choices = Map.copyOf(choices);
    }

    /** These answers with one more, or another. */
    public Answers with(String questionId, String choiceKey) {
        Map<String, String> more = new TreeMap<>(choices);
        more.put(questionId, choiceKey);
        return new Answers(more);
    }

    /** These answers, and those of another set, which win. */
    public Answers and(Answers later) {
        Map<String, String> more = new TreeMap<>(choices);
        more.putAll(later.choices);
        return new Answers(more);
    }

    /** The key chosen for a question; empty where it is still open. */
    public Optional<String> to(String questionId) {
        return Optional.ofNullable(choices.get(questionId));
    }
}
