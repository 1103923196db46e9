package gripwright.comparison;

import gripwright.model.Direction;
import gripwright.model.VerdictSettings;
import gripwright.statistics.BlockPrior;
import gripwright.statistics.DriftPrior;
import gripwright.statistics.GroupPrior;
import gripwright.statistics.MixedModelFit;
import gripwright.statistics.MixedModelFitter;
import org.apache.commons.math3.stat.StatUtils;

/** Counts what the verdicts, and the figures they replace, say of simulated sessions. */
final class StudyTally {

    /** The smallest difference that matters, in SDs of the noise. */
    static final double SMALLEST = 0.25;
    private static final Aim HIGHER = new Aim(Direction.HIGHER, null, true, false);

    private final VerdictSettings settings;
    private final MixedModelFitter fitter;
    private final GroupPrior choosing;
    private final ScorePoints points;
    private final ClassicalStudy classical;

    int sessions;
    int claimed;
    int claimedWrongly;
    int probably;
    int eachPair;
    int family;
    int covered;
    int pairs;
    int same;
    int sameWrongly;
    int pickedByAverage;
    int picked;
    int advised; int adv2; int adv3;
    int strained;
    final int[] classicalClaims = new int[4];
    final int[] classicalRuns = new int[4];

    StudyTally(VerdictSettings settings, MixedModelFitter fitter, ScorePoints points, ClassicalStudy classical) {
        this.settings = settings;
        this.fitter = fitter.with(new BlockPrior(settings.stintToNoisePriorScale()))
                .with(new DriftPrior(settings.driftPriorSd()));
        this.choosing = new GroupPrior(settings.configurationPriorScale());
        this.points = points;
        this.classical = classical;
    }

    /** Probabilities of being best as the program says them. */
    double[] add(StudySession session) {
        MetricRows rows = session.rows();
        MixedModelFit fit = fitter.fit(rows.values(), rows.configurationOfRow(), rows.swingOfRow(), rows.runOfRow(),
                rows.configurations());
        FittedMetric fitted = new FittedMetric(rows, HIGHER, fit, SMALLEST, settings, points);
        sessions++;
        countVerdicts(fitted, session.truth());
        double[] best = fitted.probabilityBest(choosing);
        countChoice(session, best, fit);
        strained += fit.blockRatio().estimate() > 1.645 * settings.stintToNoisePriorScale() ? 1 : 0;
        if (classical != null) {
            classical.count(rows, classicalClaims, classicalRuns);
        }
        return best;
    }

    private void countVerdicts(FittedMetric fitted, double[] truth) {
        VerdictRule rule = new VerdictRule(settings);
        boolean anyClaim = false;
        boolean anyWrong = false;
        boolean anyProbably = false;
        boolean anyPair = false;
        boolean anyFamily = false;
        for (int of = 1; of < truth.length; of++) {
            for (int against = 0; against < of; against++) {
                PairFigures f = fitted.pair(of, against);
                double true_ = truth[of] - truth[against];
                Verdict verdict = rule.ofGain(HIGHER, fitted.smallest(), f).verdict();
                boolean claim = verdict == Verdict.BETTER || verdict == Verdict.WORSE;
                anyClaim |= claim;
                anyWrong |= verdict == Verdict.BETTER && true_ <= 0 || verdict == Verdict.WORSE && true_ >= 0;
                anyProbably |= verdict.takesSides();
                anyPair |= !f.interval().contains(0);
                anyFamily |= fitted.fit().difference(of, against).familyTwoSidedP() < 0.05;
                covered += f.interval().contains(true_) ? 1 : 0;
                same += verdict == Verdict.SAME ? 1 : 0;
                sameWrongly += verdict == Verdict.SAME && Math.abs(true_) > fitted.smallest() ? 1 : 0;
                pairs++;
            }
        }
        claimed += anyClaim ? 1 : 0;
        claimedWrongly += anyWrong ? 1 : 0;
        probably += anyProbably ? 1 : 0;
        eachPair += anyPair ? 1 : 0;
        family += anyFamily ? 1 : 0;
    }

    private void countChoice(StudySession session, double[] best, MixedModelFit fit) {
        double[] averages = new double[best.length];
        for (int k = 0; k < averages.length; k++) {
            averages[k] = StatUtils.mean(session.rows().values(k));
        }
        int truth = largest(session.truth());
        pickedByAverage += largest(averages) == truth ? 1 : 0;
        int choice = largest(best);
        picked += choice == truth ? 1 : 0;
        // The first configuration stands for what the player plays now.
        double worth = choice == 0 ? 0 : fit.with(choosing).difference(choice, 0).probabilityAbove(SMALLEST);
        advised += worth > 0.5 ? 1 : 0; adv2 += worth > 0.6667 ? 1 : 0; adv3 += worth > 0.8 ? 1 : 0;
    }

    static int largest(double[] values) {
        int best = 0;
        for (int k = 1; k < values.length; k++) {
            best = values[k] > values[best] ? k : best;
        }
        return best;
    }

    double share(int count) {
        return (double) count / sessions;
    }

    double coverage() {
        return (double) covered / pairs;
    }

    double sameShare() {
        return (double) same / pairs;
    }
}
