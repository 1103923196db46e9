package gripwright.model;

import java.util.List;

/**
 * What this player wants, in a sentence, and what that makes primary.
 *
 * @param sentence chosen or written; may be empty
 * @param primaries at most three, named before the test
 * @param guardrails what must not be lost
 * @param feelWeight share of feel in the overall result, 0 to 1
 * @param comfortFirst whether comfort decides before numbers, as it does where hands hurt
 */
public record Goal(String sentence, List<PrimaryMetric> primaries, List<Guardrail> guardrails, double feelWeight,
        boolean comfortFirst) {

    /** More than three primary metrics would each find something by chance. */
    public static final int MOST_PRIMARIES = 3;

    /** Nothing chosen yet: described, nothing scored. */
    public static Goal open() {
        return new Goal("", List.of(), List.of(), 0.25, false);
    }

    public Goal {
        sentence = Check.orEmpty(sentence);
        primaries = Check.list(primaries);
        if (primaries.size() > MOST_PRIMARIES) {
            throw new IllegalArgumentException("A goal has at most three primary metrics, but this one has "
                    + primaries.size() + "; the others stay on the screen as description.");
        }
        guardrails = Check.list(guardrails);
        if (!(feelWeight >= 0 && feelWeight <= 1)) {
            throw new IllegalArgumentException("The weight of feel runs from 0 to 1, but is " + feelWeight + ".");
        }
    }

    public Goal withSentence(String sentence) {
        return new Goal(sentence, primaries, guardrails, feelWeight, comfortFirst);
    }

    public Goal withPrimaries(List<PrimaryMetric> primaries) {
        return new Goal(sentence, primaries, guardrails, feelWeight, comfortFirst);
    }

    public Goal withGuardrails(List<Guardrail> guardrails) {
        return new Goal(sentence, primaries, guardrails, feelWeight, comfortFirst);
    }

    public Goal withFeelWeight(double feelWeight) {
        return new Goal(sentence, primaries, guardrails, feelWeight, comfortFirst);
    }

    public Goal withComfortFirst(boolean comfortFirst) {
        return new Goal(sentence, primaries, guardrails, feelWeight, comfortFirst);
    }
}
