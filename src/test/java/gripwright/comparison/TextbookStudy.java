package gripwright.comparison;

import gripwright.statistics.AllPairs;
import gripwright.statistics.MeanDifference;
import gripwright.statistics.MixedModelFit;
import gripwright.statistics.RemlEstimate;
import gripwright.statistics.RemlFit;
import gripwright.statistics.StudentizedRangeFamily;

/** Counts how often the textbook procedures call some pair different at 5 %, to hold ours against them. */
final class TextbookStudy {

    private static final double ALPHA = 0.05;

    private final StudentizedRangeFamily ranges;
    private final int configurations;

    int tTests;
    int tukey;
    int remlSessions;
    int satterthwaite;
    int kenwardRoger;
    int boundary;

    TextbookStudy(StudentizedRangeFamily ranges) {
        this.ranges = ranges;
        this.configurations = ranges.groups();
    }

    /** Adds one session with the fit that was made of it. */
    void add(MetricRows rows, MixedModelFit fit) {
        double[][] groups = new double[configurations][];
        for (int k = 0; k < configurations; k++) {
            groups[k] = rows.values(k);
        }
        tTests += anyTTest(groups) ? 1 : 0;
        tukey += AllPairs.tukeyKramer(groups, 1 - ALPHA, ranges).get().stream()
                .anyMatch(p -> p.pValue() < ALPHA) ? 1 : 0;
        // With one retest a free slope leaves nothing to tell the stints from; most would leave it out then.
        RemlFit reml = fit.reml(true);
        reml = reml.isAvailable() ? reml : fit.reml(false);
        if (reml.isAvailable()) {
            addReml(reml);
        }
    }

    private boolean anyTTest(double[][] groups) {
        for (int of = 1; of < configurations; of++) {
            for (int against = 0; against < of; against++) {
                if (MeanDifference.welch(groups[of], groups[against], 1 - ALPHA).get().pValue() < ALPHA) {
                    return true;
                }
            }
        }
        return false;
    }

    private void addReml(RemlFit reml) {
        remlSessions++;
        boundary += reml.isBoundary() ? 1 : 0;
        boolean plain = false;
        boolean adjusted = false;
        for (int of = 1; of < configurations; of++) {
            for (int against = 0; against < of; against++) {
                RemlEstimate e = reml.difference(of, against);
                plain |= range(e.estimate() / e.standardError(), e.satterthwaiteDegrees()) < ALPHA;
                adjusted |= range(e.estimate() / e.kenwardRogerStandardError(), e.kenwardRogerDegrees()) < ALPHA;
            }
        }
        satterthwaite += plain ? 1 : 0;
        kenwardRoger += adjusted ? 1 : 0;
    }

    /** Adjusted for all pairs; no claim where there are no degrees of freedom. */
    private double range(double t, double degrees) {
        return degrees >= 1 && Double.isFinite(t) ? ranges.upperTail(Math.sqrt(2) * Math.abs(t), degrees) : 1;
    }
}
