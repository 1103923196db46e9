package gripwright.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.model.Direction;
import gripwright.model.Handedness;
import gripwright.model.Metric;
import java.util.List;
import org.junit.jupiter.api.Test;

class VerdictWordsTest {

    private static Difference difference(Verdict verdict, Leaning leaning, Change change) {
        return new Difference("b", "B", "a", "A", 1.0, null, null, null, null, null, null, null, null, null, verdict,
                leaning, change, List.of("reason"));
    }

    private final VerdictWords right = VerdictWords.forHand(Handedness.RIGHT);
    private final VerdictWords left = VerdictWords.forHand(Handedness.LEFT);

    @Test
    void aMetricThatServesOneWaySaysItByItsOwnWord() {
        assertThat(right.of(Metric.CLUB_SPEED, Direction.HIGHER,
                difference(Verdict.PROBABLY_BETTER, Leaning.NONE, Change.PROBABLY_HIGHER))).isEqualTo("probably faster");
        assertThat(right.of(Metric.SPIN_RATE, Direction.LOWER,
                difference(Verdict.BETTER, Leaning.NONE, Change.LOWER))).isEqualTo("less spin");
        assertThat(right.of(Metric.CARRY, Direction.HIGHER,
                difference(Verdict.NOT_SETTLED, Leaning.TOWARDS_WORSE, Change.LEANS_LOWER)))
                .isEqualTo("not settled, leans shorter");
        assertThat(right.of(Metric.CARRY, Direction.HIGHER, difference(Verdict.SAME, Leaning.NONE, Change.SAME)))
                .isEqualTo("no practical difference");
    }

    @Test
    void openAndClosedComeFromTheHand() {
        Difference leans = difference(Verdict.NOT_SETTLED, Leaning.NONE, Change.LEANS_HIGHER);
        assertThat(right.of(Metric.FACE_ANGLE, Direction.NEAR_TARGET, leans)).isEqualTo("not settled, leans open");
        assertThat(left.of(Metric.FACE_ANGLE, Direction.NEAR_TARGET, leans)).isEqualTo("not settled, leans closed");
        assertThat(left.change(Metric.SPIN_AXIS, difference(Verdict.NOT_SETTLED, Leaning.NONE, Change.HIGHER)))
                .isEqualTo("more draw");
        assertThat(left.change(Metric.OFFLINE, difference(Verdict.NOT_SETTLED, Leaning.NONE, Change.LOWER)))
                .isEqualTo("further left");
    }

    @Test
    void nearnessIsNotTheSameAsDifference() {
        assertThat(right.of(Metric.FACE_ANGLE, Direction.NEAR_TARGET,
                difference(Verdict.NOT_SETTLED, Leaning.NONE, Change.LOWER))).isEqualTo("not settled, but more closed");
        assertThat(right.of(Metric.FACE_ANGLE, Direction.NEAR_TARGET,
                difference(Verdict.BETTER, Leaning.NONE, Change.LOWER))).isEqualTo("nearer the target");
    }

    @Test
    void whatIsNotScoredIsNeverBetter() {
        assertThat(right.of(Metric.CLOSURE_RATE, Direction.NOT_SCORED,
                difference(Verdict.NOT_SETTLED, Leaning.NONE, Change.LOWER))).isEqualTo("closing slower");
    }

    @Test
    void everyMetricHasWordsForBothWaysAndBothHands() {
        for (Metric metric : Metric.values()) {
            for (VerdictWords words : List.of(right, left)) {
                assertThat(words.changeWord(metric, true)).isNotBlank().isNotEqualTo(words.changeWord(metric, false));
                assertThat(words.leaningWord(metric, true)).isNotBlank();
            }
        }
    }
}
