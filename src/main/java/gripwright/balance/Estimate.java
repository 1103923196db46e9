package gripwright.balance;

/**
 * A figure with its doubt.
 *
 * @param value the figure; finite
 * @param standardDeviation one standard deviation of its doubt, same unit; not negative
 */
public record Estimate(double value, double standardDeviation) {

    public Estimate {
        if (!Double.isFinite(value) || !(standardDeviation >= 0)) {
            throw new IllegalArgumentException(
                    "An estimate needs a finite figure and a doubt, not " + value + " ± " + standardDeviation + ".");
        }
    }

    /** The figure of an estimate that may be missing: null stays null. */
    static Double valueOrNull(Estimate estimate) {
        return estimate == null ? null : Double.valueOf(estimate.value);
    }

    /** This figure with an independent term added: values add, variances add. */
    Estimate plus(double more, double moreSd) {
        return new Estimate(value + more, Math.hypot(standardDeviation, moreSd));
    }
}
