package gripwright.app;

import gripwright.intake.Answers;
import gripwright.intake.ColumnRule;
import java.util.List;
import java.util.Locale;

/** Reads what was typed behind {@code --column} and {@code --answer}. */
final class IntakeWords {

    private IntakeWords() {
    }

    /**
     * A rule such as 'Vee=ballSpeed', 'Vee=ballSpeed,mph' or 'Face=faceAngle,+closed': after the meaning may stand the
     * unit of its numbers and, after a plus, the side that a number without a minus means. A heading may hold '=' itself.
     *
     * @throws IllegalArgumentException with a sentence
     */
    static ColumnRule rule(String typed) {
        int at = typed.lastIndexOf('=');
        if (at < 1) {
            throw new IllegalArgumentException("Write the column as HEADING=MEANING, such as 'Head v=clubSpeed', not '"
                    + typed + "'.");
        }
        List<String> parts = List.of(typed.substring(at + 1).split(","));
        ColumnRule rule = ColumnRule.of(typed.substring(0, at), parts.get(0).strip());
        for (String part : parts.subList(1, parts.size())) {
            String word = part.strip();
            if (word.startsWith("+")) {
                rule = rule.withPlus(word.substring(1).strip());
            } else if (rule.unit().isEmpty()) {
                rule = rule.withUnit(word);
            } else {
                throw new IllegalArgumentException("The column '" + rule.heading() + "' can't be in " + rule.unit()
                        + " and in " + word + "; name one unit.");
            }
        }
        return rule;
    }

    /**
     * The answers with one more, typed as QUESTION=CHOICE.
     *
     * @throws IllegalArgumentException with a sentence, where it is no question's
     */
    static Answers answered(Answers answers, String typed) {
        // The heading in the name of a question may hold '='; what a heading can mean holds none.
        boolean named = typed.startsWith("meaning:") || typed.startsWith("signs:");
        int at = named ? typed.lastIndexOf('=') : typed.indexOf('=');
        if (at < 1) {
            throw new IllegalArgumentException("Write the answer as QUESTION=CHOICE, as the question prints it, not '"
                    + typed + "'.");
        }
        String question = typed.substring(0, at);
        String kind = question.replaceFirst(":.*", "").toLowerCase(Locale.ROOT);
        if (!List.of("unit", "meaning", "which", "decimalmark", "dateorder", "hand", "rows", "signs").contains(kind)) {
            throw new IllegalArgumentException("'" + question + "' is no question that a file can leave open; copy the "
                    + "answer as the question prints it.");
        }
        return answers.with(question, typed.substring(at + 1));
    }
}
