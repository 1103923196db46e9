package gripwright.comparison;

import gripwright.model.Metric;
import java.util.List;

/**
 * What would change if the session were read another way: set-aside shots back in, one stint left out, a more cautious
 * prior.
 *
 * @param variations each other way of reading it
 */
public record Sensitivity(List<Variation> variations) {

    /** What is read another way. */
    public enum Kind {
        SET_ASIDE_BACK,
        WITHOUT_STINT,
        CAUTIOUS_PRIOR
    }

    /**
     * One other way of reading the session.
     *
     * @param kind what is read another way
     * @param description in words, 'without the third stint (B)'
     * @param changes verdicts that come out otherwise; empty where all stand
     * @param adviceLabel label of the choice under it; null where there is none
     * @param adviceChanges whether the choice comes out otherwise
     * @param comparison all of it
     */
    public record Variation(Kind kind, String description, List<VerdictChange> changes, String adviceLabel,
            boolean adviceChanges, Comparison comparison) {

        public Variation {
            changes = List.copyOf(changes);
        }
    }

    /**
     * A verdict that comes out otherwise.
     *
     * @param metric which metric
     * @param of judged, by identity
     * @param ofLabel its label
     * @param against judged against, by identity
     * @param againstLabel its label
     * @param verdict as it stands
     * @param leaning as it stands
     * @param otherVerdict under the other reading
     * @param otherLeaning under the other reading
     */
    public record VerdictChange(Metric metric, String of, String ofLabel, String against, String againstLabel,
            Verdict verdict, Leaning leaning, Verdict otherVerdict, Leaning otherLeaning) {
    }

    public Sensitivity {
        variations = List.copyOf(variations);
    }
}
