package gripwright.comparison;

import gripwright.model.VerdictSettings;

/**
 * Turns probabilities into verdicts.
 *
 * <p>Better or worse: the family-adjusted probability of a gain beyond d reaches the claim threshold (a stricter one
 * where d is 0); probably: it reaches the lower one; no practical difference: P(|gain| &lt; d) is high; else not settled,
 * leaning to a side by the plain probability of a gain.
 *
 * @param settings the thresholds
 */
record VerdictRule(VerdictSettings settings) {

    /** A verdict with its leaning. */
    record Ruling(Verdict verdict, Leaning leaning) {
    }

    /**
     * Rules on one pair; NaN in any probability gives 'not settled' without a leaning.
     *
     * @param d the smallest difference that matters
     * @param matters family-adjusted P(gain > d)
     * @param harms family-adjusted P(gain < −d)
     * @param same P(|gain| < d)
     * @param positive plain P(gain > 0)
     */
    Ruling rule(double d, double matters, double harms, double same, double positive) {
        double claim = d > 0 ? settings.claim() : settings.claimWithoutDifference();
        if (matters >= claim) {
            return new Ruling(Verdict.BETTER, Leaning.NONE);
        }
        if (harms >= claim) {
            return new Ruling(Verdict.WORSE, Leaning.NONE);
        }
        if (same >= settings.same()) {
            return new Ruling(Verdict.SAME, Leaning.NONE);
        }
        if (matters >= settings.probable()) {
            return new Ruling(Verdict.PROBABLY_BETTER, Leaning.NONE);
        }
        if (harms >= settings.probable()) {
            return new Ruling(Verdict.PROBABLY_WORSE, Leaning.NONE);
        }
        if (positive >= settings.lean()) {
            return new Ruling(Verdict.NOT_SETTLED, Leaning.TOWARDS_BETTER);
        }
        if (positive <= 1 - settings.lean()) {
            return new Ruling(Verdict.NOT_SETTLED, Leaning.TOWARDS_WORSE);
        }
        return new Ruling(Verdict.NOT_SETTLED, Leaning.NONE);
    }

    /** The ruling on the gain; without a direction no side is taken. */
    Ruling ofGain(Aim aim, double d, PairFigures figures) {
        if (aim.isScored()) {
            return rule(d, figures.mattersAdjusted(), figures.harmsAdjusted(), figures.same(), figures.positive());
        }
        return new Ruling(figures.level() >= settings.same() ? Verdict.SAME : Verdict.NOT_SETTLED, Leaning.NONE);
    }

    /** The same rules on the signed difference. */
    Change ofDifference(double d, PairFigures figures) {
        Ruling ruling = rule(d, figures.up(), figures.down(), figures.level(), figures.higher());
        return switch (ruling.verdict()) {
            case BETTER -> Change.HIGHER;
            case PROBABLY_BETTER -> Change.PROBABLY_HIGHER;
            case SAME -> Change.SAME;
            case PROBABLY_WORSE -> Change.PROBABLY_LOWER;
            case WORSE -> Change.LOWER;
            case NOT_SETTLED -> switch (ruling.leaning()) {
                case TOWARDS_BETTER -> Change.LEANS_HIGHER;
                case TOWARDS_WORSE -> Change.LEANS_LOWER;
                case NONE -> Change.NOT_SETTLED;
            };
        };
    }
}
