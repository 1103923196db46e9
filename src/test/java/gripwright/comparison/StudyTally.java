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
    static final Aim HIGHER = new Aim(Direction.HIGHER, null, true, false);

    private final Aim aim;
    private final VerdictSettings settings;
    private final MixedModelFitter fitter;
    private final GroupPrior choosing;
    private final ScorePoints points;
    private TextbookStudy textbook;

    int sessions;
    int choices;
    int claimed;
    int claimedWrongly;
    int claimedRightly;
    int probably;
    int eachPair;
    int family;
    int covered;
    int pairs;
    int same;
    int sameWrongly;
    int pickedByAverage;
    int picked;
    int advised;
    int strained;

    StudyTally(Aim aim, VerdictSettings settings, MixedModelFitter fitter, ScorePoints points) {
        this.aim = aim;
        this.settings = settings;
        this.fitter = fitter.with(new BlockPrior(settings.stintToNoisePriorScale()))
                .with(new DriftPrior(settings.driftPriorSd()));
        this.choosing = new GroupPrior(settings.configurationPriorScale());
        this.points = points;
    }

    /** Counts one session; the choice only where it is asked for. */
    void add(StudySession session, boolean choose) {
        FittedMetric fitted = fit(session);
        sessions++;
        countVerdicts(fitted, session.truth());
        if (choose) {
            choices++;
            countChoice(session, fitted.probabilityBest(choosing), fitted.fit());
        }
        strained += fitted.fit().blockRatio().estimate() > MetricComparer.STRAINED * settings.stintToNoisePriorScale()
                ? 1 : 0;
    }

    /** Counts the verdicts of one session only. */
    void addVerdicts(StudySession session) {
        sessions++;
        countVerdicts(fit(session), session.truth());
    }

    /** Counts what the textbook procedures say of one session. */
    void addTextbook(StudySession session) {
        textbook.add(session.rows(), fit(session).fit());
    }

    void takeTextbook(TextbookStudy counted) {
        textbook = counted;
    }

    TextbookStudy textbook() {
        return textbook;
    }

    /** Probabilities of being best as the program says them. */
    double[] probabilityBest(StudySession session) {
        return fit(session).probabilityBest(choosing);
    }

    private FittedMetric fit(StudySession session) {
        MetricRows rows = session.rows();
        MixedModelFit fit = fitter.fit(rows.values(), rows.configurationOfRow(), rows.swingOfRow(), rows.runOfRow(),
                rows.configurations());
        return new FittedMetric(rows, aim, fit, SMALLEST, settings, points);
    }

    private void countVerdicts(FittedMetric fitted, double[] truth) {
        VerdictRule rule = new VerdictRule(settings);
        boolean anyClaim = false;
        boolean anyWrong = false;
        boolean anyRight = false;
        boolean anyProbably = false;
        boolean anyPair = false;
        boolean anyFamily = false;
        for (int of = 1; of < truth.length; of++) {
            for (int against = 0; against < of; against++) {
                PairFigures f = fitted.pair(of, against);
                double difference = truth[of] - truth[against];
                double gain = aim.gain(truth[of], truth[against]);
                Verdict verdict = rule.ofGain(aim, fitted.smallest(), f).verdict();
                boolean claim = verdict == Verdict.BETTER || verdict == Verdict.WORSE;
                anyClaim |= claim;
                anyWrong |= verdict == Verdict.BETTER && gain <= 0 || verdict == Verdict.WORSE && gain >= 0;
                anyRight |= verdict == Verdict.BETTER && gain > 0 || verdict == Verdict.WORSE && gain < 0;
                anyProbably |= verdict.takesSides();
                anyPair |= !f.interval().contains(0);
                anyFamily |= fitted.fit().difference(of, against).familyTwoSidedP() < 0.05;
                covered += f.interval().contains(difference) ? 1 : 0;
                same += verdict == Verdict.SAME ? 1 : 0;
                sameWrongly += verdict == Verdict.SAME && Math.abs(gain) > fitted.smallest() ? 1 : 0;
                pairs++;
            }
        }
        claimed += anyClaim ? 1 : 0;
        claimedWrongly += anyWrong ? 1 : 0;
        claimedRightly += anyRight ? 1 : 0;
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
        advised += worth > Adviser.WORTH_IT ? 1 : 0;
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

    double shareOfChoices(int count) {
        return (double) count / choices;
    }

    double coverage() {
        return (double) covered / pairs;
    }

    double sameShare() {
        return (double) same / pairs;
    }
}
