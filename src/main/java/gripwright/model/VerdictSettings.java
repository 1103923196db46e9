package gripwright.model;

/**
 * The thresholds and priors that verdicts rest on; shown and adjustable, with our judgement as defaults.
 *
 * @param claim probability from which 'better' or 'worse' is claimed
 * @param claimWithoutDifference the same where the smallest difference is 0
 * @param probable probability from which 'probably' is said
 * @param same probability from which 'no practical difference' is said
 * @param lean unadjusted probability from which 'not settled' names a side
 * @param leastDifferenceInNoise the least share of the noise SD that a smallest difference is taken as
 * @param stintToNoisePriorScale scale of the half-normal prior on the stint-to-noise ratio
 * @param driftPriorSd SD of the prior on the drift over the whole session, in noise SDs
 * @param configurationPriorScale scale of the half-normal prior on the spread of configurations, for choosing only
 */
public record VerdictSettings(double claim, double claimWithoutDifference, double probable, double same, double lean,
        double leastDifferenceInNoise, double stintToNoisePriorScale, double driftPriorSd,
        double configurationPriorScale) {

    private static final double CAUTIOUS_SCALE = 1;

    public static VerdictSettings usual() {
        return new VerdictSettings(0.95, 0.975, 0.80, 0.90, 0.80, 0.25, 0.5, 1, 1);
    }

    public VerdictSettings {
        for (double probability : new double[] {claim, claimWithoutDifference, probable, same, lean}) {
            if (!(probability > 0.5 && probability < 1)) {
                throw new IllegalArgumentException(
                        "A threshold of the verdicts lies between 0.5 and 1, but is " + probability + ".");
            }
        }
        Check.notNegative(leastDifferenceInNoise, "least smallest difference");
        Check.positive(stintToNoisePriorScale, "scale of the prior on the stint effect");
        Check.positive(driftPriorSd, "SD of the prior on the drift");
        Check.positive(configurationPriorScale, "scale of the prior on the configurations");
    }

    /** The same with the cautious prior on the stint effect. */
    public VerdictSettings cautious() {
        return withStintToNoisePriorScale(CAUTIOUS_SCALE);
    }

    public VerdictSettings withClaim(double claim) {
        return new VerdictSettings(claim, claimWithoutDifference, probable, same, lean, leastDifferenceInNoise,
                stintToNoisePriorScale, driftPriorSd, configurationPriorScale);
    }

    public VerdictSettings withClaimWithoutDifference(double claimWithoutDifference) {
        return new VerdictSettings(claim, claimWithoutDifference, probable, same, lean, leastDifferenceInNoise,
                stintToNoisePriorScale, driftPriorSd, configurationPriorScale);
    }

    public VerdictSettings withProbable(double probable) {
        return new VerdictSettings(claim, claimWithoutDifference, probable, same, lean, leastDifferenceInNoise,
                stintToNoisePriorScale, driftPriorSd, configurationPriorScale);
    }

    public VerdictSettings withSame(double same) {
        return new VerdictSettings(claim, claimWithoutDifference, probable, same, lean, leastDifferenceInNoise,
                stintToNoisePriorScale, driftPriorSd, configurationPriorScale);
    }

    public VerdictSettings withLean(double lean) {
        return new VerdictSettings(claim, claimWithoutDifference, probable, same, lean, leastDifferenceInNoise,
                stintToNoisePriorScale, driftPriorSd, configurationPriorScale);
    }

    public VerdictSettings withLeastDifferenceInNoise(double leastDifferenceInNoise) {
        return new VerdictSettings(claim, claimWithoutDifference, probable, same, lean, leastDifferenceInNoise,
                stintToNoisePriorScale, driftPriorSd, configurationPriorScale);
    }

    public VerdictSettings withStintToNoisePriorScale(double stintToNoisePriorScale) {
        return new VerdictSettings(claim, claimWithoutDifference, probable, same, lean, leastDifferenceInNoise,
                stintToNoisePriorScale, driftPriorSd, configurationPriorScale);
    }

    public VerdictSettings withDriftPriorSd(double driftPriorSd) {
        return new VerdictSettings(claim, claimWithoutDifference, probable, same, lean, leastDifferenceInNoise,
                stintToNoisePriorScale, driftPriorSd, configurationPriorScale);
    }

    public VerdictSettings withConfigurationPriorScale(double configurationPriorScale) {
        return new VerdictSettings(claim, claimWithoutDifference, probable, same, lean, leastDifferenceInNoise,
                stintToNoisePriorScale, driftPriorSd, configurationPriorScale);
    }
}
