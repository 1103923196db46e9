package gripwright.comparison;

/**
 * How often a configuration was mishit: shots that the fitter set aside out of those that would have been scored.
 *
 * @param configurationId which configuration
 * @param label its label
 * @param shots shots past the settling swings of scored stints, set aside or not
 * @param setAside how many of them were set aside
 * @param rate share set aside with its 95 % interval; null without a shot
 */
public record MishitRate(String configurationId, String label, int shots, int setAside, Estimate rate) {
}
