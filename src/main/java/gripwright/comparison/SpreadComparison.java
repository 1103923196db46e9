package gripwright.comparison;

import gripwright.model.Metric;
import java.util.List;
import java.util.Optional;

/**
 * How repeatable each configuration is in one metric, shrunk so that five lucky shots crown nobody.
 *
 * @param metric which
 * @param primary whether the goal names its spread
 * @param smallestDifference the smallest difference of two standard deviations that matters, internal units
 * @param priorDegreesOfFreedom the shots' worth of trust in what all configurations share; our judgement
 * @param configurations in the order of the test, those with a figure
 * @param ratios all pairs once, ordered as the differences are
 * @param brownForsythe Brown and Forsythe's test of equal variances by medians; null where it can't be had
 * @param sentences what can't be told, and why
 */
public record SpreadComparison(Metric metric, boolean primary, double smallestDifference, double priorDegreesOfFreedom,
        List<SpreadFigures> configurations, List<SpreadRatio> ratios, ClassicalFigures.FTest brownForsythe,
        List<String> sentences) {

    /**
     * The spread of one configuration.
     *
     * @param configurationId which configuration
     * @param label its label
     * @param shots scored shots with this reading
     * @param degreesOfFreedom shots less stints
     * @param sd standard deviation within its stints as read; null where it can't be had
     * @param shrunkSd the shrunk figure with its interval
     * @param probabilitySteadiest probability that it is the most repeatable; null where it can't be known
     */
    public record SpreadFigures(String configurationId, String label, int shots, int degreesOfFreedom, Double sd,
            Estimate shrunkSd, Double probabilitySteadiest) {
    }

    /**
     * The spread of one configuration against another's.
     *
     * @param of judged, by identity
     * @param ofLabel its label
     * @param against judged against, by identity
     * @param againstLabel its label
     * @param ratio SD of {@code of} over SD of {@code against}, shrunk, with its interval; below 1 is steadier
     * @param probabilitySteadier P(ratio < 1)
     * @param probabilityMattersAdjusted P(SD smaller by more than d), adjusted for all pairs
     * @param probabilityHarmsAdjusted P(SD larger by more than d), adjusted for all pairs
     * @param probabilitySame P(SDs apart by less than d)
     * @param verdict what may be said; 'better' is steadier
     * @param leaning which way a verdict that isn't settled leans
     * @param reasons why, in words
     */
    public record SpreadRatio(String of, String ofLabel, String against, String againstLabel, Estimate ratio,
            double probabilitySteadier, double probabilityMattersAdjusted, double probabilityHarmsAdjusted,
            double probabilitySame, Verdict verdict, Leaning leaning, List<String> reasons) {

        public SpreadRatio {
            reasons = List.copyOf(reasons);
        }

        /** The same with the two sides swapped. */
        public SpreadRatio reversed() {
            Interval r = ratio.interval();
            return new SpreadRatio(against, againstLabel, of, ofLabel,
                    new Estimate(1 / ratio.value(), new Interval(1 / r.high(), 1 / r.low())),
                    1 - probabilitySteadier, probabilityHarmsAdjusted, probabilityMattersAdjusted, probabilitySame,
                    verdict.reversed(), leaning.reversed(), reasons);
        }
    }

    public SpreadComparison {
        configurations = List.copyOf(configurations);
        ratios = List.copyOf(ratios);
        sentences = List.copyOf(sentences);
    }

    /** The ratio of these two, whichever way round it is kept. */
    public Optional<SpreadRatio> ratio(String of, String against) {
        for (SpreadRatio ratio : ratios) {
            if (ratio.of().equals(of) && ratio.against().equals(against)) {
                return Optional.of(ratio);
            }
            if (ratio.of().equals(against) && ratio.against().equals(of)) {
                return Optional.of(ratio.reversed());
            }
        }
        return Optional.empty();
    }
}
