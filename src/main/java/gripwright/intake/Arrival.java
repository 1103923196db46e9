package gripwright.intake;

import gripwright.model.Problem;
import java.util.List;

/**
 * What a live source brings at once.
 *
 * @param added new shots, in their order
 * @param replaced shots that were brought before and read differently now: a provisional line that has grown or ended, or
 *     a question that was answered; each carries the id of the shot it replaces, whose place and reason for setting aside
 *     stay
 * @param withdrawn ids of provisional shots whose line turned out to hold none
 * @param problems what was rejected or is worth a look
 * @param questions the questions that are open now; the shots lack what they are about until they are answered
 */
public record Arrival(List<IntakeRow> added, List<IntakeRow> replaced, List<String> withdrawn, List<Problem> problems,
        List<Question> questions) {

    /** Nothing came. */
    public static Arrival nothing() {
        return new Arrival(List.of(), List.of(), List.of(), List.of(), List.of());
    }

    public Arrival {
        added = List.copyOf(added);
        replaced = List.copyOf(replaced);
        withdrawn = List.copyOf(withdrawn);
        problems = List.copyOf(problems);
        questions = List.copyOf(questions);
    }

    /** Whether nobody needs to hear of it. */
    public boolean isNothing() {
        return added.isEmpty() && replaced.isEmpty() && withdrawn.isEmpty() && problems.isEmpty() && questions.isEmpty();
    }

    /** Whether it has shots. */
    public boolean hasShots() {
        return !added.isEmpty() || !replaced.isEmpty() || !withdrawn.isEmpty();
    }
}
