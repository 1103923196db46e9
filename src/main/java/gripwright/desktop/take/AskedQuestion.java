package gripwright.desktop.take;

import gripwright.intake.Choice;
import gripwright.intake.Question;
import java.util.List;

/**
 * A question on the sheet with the answer given so far, which can be changed.
 *
 * @param id what the answer is kept under
 * @param sentence the question
 * @param choices the possible answers
 * @param chosen key of the answer; empty while it is open
 */
record AskedQuestion(String id, String sentence, List<Choice> choices, String chosen) {

    /** Which of several mappings of the shop's a file is read with. */
    static final String WHICH_MAPPING = "mapping";

    static AskedQuestion of(Question question, String chosen) {
        return new AskedQuestion(question.id(), question.sentence(), question.choices(), chosen);
    }

    boolean isOpen() {
        return chosen.isEmpty();
    }
}
