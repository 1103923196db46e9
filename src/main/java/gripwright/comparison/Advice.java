package gripwright.comparison;

import java.util.List;

/**
 * What is advised today, which is another thing than what is proven.
 *
 * @param configurationId the choice; null where there is nothing to advise on
 * @param label its label; null likewise
 * @param keepsGamer whether the choice is to change nothing: what the player plays now, or the reference where no
 *     configuration is marked as that
 * @param proven whether some primary metric's verdict for the choice against the reference is 'better'
 * @param headline one sentence for the player
 * @param carriedBy the primary metric that carries the result, in words; empty where none does
 * @param conflict feel and numbers disagree: the sentence that says so; empty where they don't
 * @param against what speaks against a configuration whatever its numbers, a sentence each; also among the reasons
 * @param reasons why, in words
 */
public record Advice(String configurationId, String label, boolean keepsGamer, boolean proven, String headline,
        String carriedBy, String conflict, List<String> against, List<String> reasons) {

    public Advice {
        against = List.copyOf(against);
        reasons = List.copyOf(reasons);
    }
}
