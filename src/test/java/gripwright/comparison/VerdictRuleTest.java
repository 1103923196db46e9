package gripwright.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.model.VerdictSettings;
import org.junit.jupiter.api.Test;

class VerdictRuleTest {

    private final VerdictRule rule = new VerdictRule(VerdictSettings.usual());

    private void expect(double d, double matters, double harms, double same, double positive, Verdict verdict,
            Leaning leaning) {
        assertThat(rule.rule(d, matters, harms, same, positive)).isEqualTo(new VerdictRule.Ruling(verdict, leaning));
        assertThat(rule.rule(d, harms, matters, same, 1 - positive))
                .isEqualTo(new VerdictRule.Ruling(verdict.reversed(), leaning.reversed()));
    }

    @Test
    void thresholdsAreThoseOfTheSettings() {
        expect(1, 0.95, 0, 0.05, 0.99, Verdict.BETTER, Leaning.NONE);
        expect(1, 0.949, 0, 0.05, 0.99, Verdict.PROBABLY_BETTER, Leaning.NONE);
        expect(1, 0.80, 0, 0.2, 0.99, Verdict.PROBABLY_BETTER, Leaning.NONE);
        expect(1, 0.799, 0, 0.2, 0.80, Verdict.NOT_SETTLED, Leaning.TOWARDS_BETTER);
        expect(1, 0.4, 0.1, 0.5, 0.79, Verdict.NOT_SETTLED, Leaning.NONE);
        expect(1, 0.05, 0.05, 0.90, 0.5, Verdict.SAME, Leaning.NONE);
        expect(1, 0.05, 0.05, 0.899, 0.5, Verdict.NOT_SETTLED, Leaning.NONE);
    }

    @Test
    void withoutASmallestDifferenceTheClaimIsStricter() {
        expect(0, 0.974, 0.026, 0, 0.99, Verdict.PROBABLY_BETTER, Leaning.NONE);
        expect(0, 0.975, 0.025, 0, 0.99, Verdict.BETTER, Leaning.NONE);
    }

    @Test
    void nothingKnownSettlesNothing() {
        double none = Double.NaN;
        assertThat(rule.rule(1, none, none, none, none))
                .isEqualTo(new VerdictRule.Ruling(Verdict.NOT_SETTLED, Leaning.NONE));
    }

    @Test
    void wireSpellings() {
        assertThat(Verdict.values()).extracting(Verdict::wire).containsExactly("better", "probably-better", "same",
                "probably-worse", "worse", "not-settled");
        assertThat(Verdict.ofWire("probably-worse")).contains(Verdict.PROBABLY_WORSE);
        assertThat(Verdict.ofWire("winner")).isEmpty();
    }
}
