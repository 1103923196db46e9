package gripwright.desktop.bay;

import gripwright.charts.Mark;
import java.util.List;
import java.util.function.Consumer;

/**
 * A question asked in the window's own line, never in a dialog: numbered answers, and a text where words are wanted.
 *
 * @param question what is asked
 * @param options the answers, chosen by their number from 1 or by their button
 * @param textLabel what may be typed instead; empty where nothing is
 * @param typed takes what was typed; null where nothing is
 * @param digitsAreTyped whether digits belong to the text, so that they choose no answer
 */
public record Prompt(String question, List<Option> options, String textLabel, Consumer<String> typed,
        boolean digitsAreTyped) {

    /**
     * One answer.
     *
     * @param text as it stands on the button
     * @param mark the mark of a configuration; null where it isn't one
     * @param chosen does it
     */
    public record Option(String text, Mark mark, Runnable chosen) {

        static Option of(String text, Runnable chosen) {
            return new Option(text, null, chosen);
        }
    }

    public Prompt {
        options = List.copyOf(options);
    }

    /** A question with numbered answers only. */
    static Prompt choice(String question, List<Option> options) {
        return new Prompt(question, options, "", null, false);
    }

    /** A question with numbered answers, or words. */
    static Prompt orWords(String question, List<Option> options, String textLabel, Consumer<String> typed) {
        return new Prompt(question, options, textLabel, typed, false);
    }

    /** A question with a first answer for Enter, or a number. */
    static Prompt orNumber(String question, List<Option> options, String textLabel, Consumer<String> typed) {
        return new Prompt(question, options, textLabel, typed, true);
    }

    public boolean takesText() {
        return typed != null;
    }
}
