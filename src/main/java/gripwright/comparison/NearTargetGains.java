package gripwright.comparison;

import gripwright.statistics.PosteriorDraws;
import gripwright.statistics.SimultaneousDraws;

/**
 * Gains near a target on simultaneous draws: |against − target| − |of − target|. Two configurations that differ surely
 * can be worth the same, on either side of the target, so that signed tests must not stand in.
 */
final class NearTargetGains {

    private final int[] present;
    private final SimultaneousDraws family;

    NearTargetGains(PosteriorDraws draws, int[] present, double target) {
        this.present = present;
        double[][] distance = new double[present.length][draws.size()];
        for (int k = 0; k < present.length; k++) {
            for (int i = 0; i < draws.size(); i++) {
                distance[k][i] = Math.abs(draws.mean(i, present[k]) - target);
            }
        }
        double[][] gains = new double[present.length * (present.length - 1) / 2][draws.size()];
        for (int of = 1; of < present.length; of++) {
            for (int against = 0; against < of; against++) {
                double[] gain = gains[member(of, against)];
                for (int i = 0; i < gain.length; i++) {
                    gain[i] = distance[against][i] - distance[of][i];
                }
            }
        }
        this.family = new SimultaneousDraws(gains);
    }

    private static int member(int of, int against) {
        return of * (of - 1) / 2 + against;
    }

    /** The figures of the difference, with those of the gain put in their place. */
    PairFigures figures(int of, int against, PairFigures difference, double d) {
        int first = java.util.Arrays.binarySearch(present, of);
        int second = java.util.Arrays.binarySearch(present, against);
        boolean kept = first > second;
        int member = kept ? member(first, second) : member(second, first);
        gripwright.statistics.Interval interval = family.interval(member, FittedMetric.LEVEL);
        Estimate gain = new Estimate(family.estimate(member), new Interval(interval.lower(), interval.upper()));
        double above = family.probabilityAbove(member, d);
        double below = family.probabilityBelow(member, -d);
        double aboveAdjusted = family.familyProbabilityAbove(member, d);
        double belowAdjusted = family.familyProbabilityBelow(member, -d);
        double positive = family.probabilityAbove(member, 0);
        double same = 1 - above - below;
        return kept
                ? with(difference, gain, positive, above, aboveAdjusted, below, belowAdjusted, same)
                : with(difference, gain.negated(), 1 - positive, below, belowAdjusted, above, aboveAdjusted, same);
    }

    private static PairFigures with(PairFigures f, Estimate gain, double positive, double matters,
            double mattersAdjusted, double harms, double harmsAdjusted, double same) {
        return new PairFigures(f.estimate(), f.interval(), gain, f.higher(), positive, matters, mattersAdjusted, harms,
                harmsAdjusted, same, f.up(), f.down(), f.level());
    }
}
