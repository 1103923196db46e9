package gripwright.comparison;

import gripwright.model.Direction;
import gripwright.model.VerdictSettings;
import gripwright.statistics.MixedModelFitter;
import gripwright.statistics.StudentizedRangeFamily;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The simulation study: sessions with known truth through the verdicts and the choice as the program makes them. Run by
 * {@code mvn -P study test}; writes docs/simulation.md. Seeded, so that the same numbers come out again.
 */
class SimulationStudy {

    private static final double[] TAUS = {0, 0.3, 0.6, 1.0};
    private static final double[] DRIFTS = {0, 1};
    private static final Aim NEAR_NOUGHT = new Aim(Direction.NEAR_TARGET, 0.0, true, false);

    private final int sessions = Integer.getInteger("study.sessions", 4000);
    private final int choiceSessions = Integer.getInteger("study.choices", 1000);
    private final int textbookSessions = Integer.getInteger("study.textbook", 300);
    private final MixedModelFitter fitter = MixedModelFitter.withDefaults();
    private final ScorePoints points = new ScorePoints();
    private final StringBuilder report = new StringBuilder();

    @Test
    void writeTheTables() throws IOException {
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        heading();
        equalGrips();
        oneBetter();
        otherNumbersOfGrips();
        cautious();
        nearTarget();
        same();
        calibration();
        line("");
        long nanos = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start;
        line("All tables took %.1f minutes of one core.", nanos / 6e10);
        Files.writeString(Path.of("docs", "simulation-tables.md"), report);
    }

    private void line(String format, Object... values) {
        report.append(values.length == 0 ? format : String.format(Locale.ROOT, format, values)).append('\n');
    }

    private void heading() {
        line("<!-- Written by the simulation study: mvn -P study test -->");
        line("Sessions per cell: %d (eight grips: half of them; the choice: the first %d; textbook procedures: the first "
                + "%d). Standard error of a share of .05: %.3f, of .25: %.3f; of a textbook share of .10: %.3f; of a share "
                + "of right choices of .85: %.3f.", sessions, choiceSessions, textbookSessions,
                Math.sqrt(0.05 * 0.95 / sessions), Math.sqrt(0.25 * 0.75 / sessions),
                Math.sqrt(0.1 * 0.9 / textbookSessions), Math.sqrt(0.85 * 0.15 / choiceSessions));
    }

    private StudyTally run(StudyCell cell, Aim aim, VerdictSettings settings, boolean textbook, int count) {
        StudyTally tally = new StudyTally(aim, settings, fitter, points);
        TextbookStudy books = textbook ? new TextbookStudy(new StudentizedRangeFamily(cell.configurations())) : null;
        tally.takeTextbook(books);
        Random random = new Random(7_919L * cell.order().ordinal() + 1_009L * Math.round(10 * cell.tau())
                + 97L * Math.round(cell.drift()) + cell.configurations());
        for (int i = 0; i < count; i++) {
            StudySession session = StudySession.of(cell, random);
            tally.add(session, i < choiceSessions);
            if (textbook && i < textbookSessions) {
                tally.addTextbook(session);
            }
        }
        return tally;
    }

    private void equalGrips() {
        line("\n## Four equal grips: how often a session claims what is not\n");
        line("| order | stint SD | drift | t-tests | Tukey | REML, Satterthwaite | REML, Kenward-Roger | ours: each pair "
                + "at 95 %% | ours: two-sided, all pairs | 'better' | 'probably' or more | coverage | change advised |"
                .replace("%%", "%"));
        line("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        for (StudyOrder order : StudyOrder.usual()) {
            for (double tau : TAUS) {
                for (double drift : DRIFTS) {
                    StudyTally t = run(new StudyCell(order, 4, tau, drift, 0), StudyTally.HIGHER,
                            VerdictSettings.usual(), true, sessions);
                    TextbookStudy b = t.textbook();
                    int n = Math.min(sessions, textbookSessions);
                    line("| %s | %.1f | %.0f | %s | %s | %s | %s | %.3f | %.3f | %.3f | %.3f | %.3f | %.3f |",
                            order.text(), tau, drift, share(b.tTests, n), share(b.tukey, n),
                            share(b.satterthwaite, b.remlSessions), share(b.kenwardRoger, b.remlSessions),
                            t.share(t.eachPair), t.share(t.family), t.share(t.claimedWrongly), t.share(t.probably),
                            t.coverage(), t.shareOfChoices(t.advised));
                }
            }
        }
    }

    private static String share(int count, int of) {
        return of == 0 ? "not estimable" : String.format(Locale.ROOT, "%.3f", (double) count / of);
    }

    private void oneBetter() {
        line("\n## One of four better by one SD: how often the right one is named and claimed\n");
        line("| order | stint SD | drift | right one by averages | right one by P(best) | 'better' said rightly | 'better' "
                + "said wrongly | t-tests claim | Tukey claims | Satterthwaite claims | Kenward-Roger claims | coverage |");
        line("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        for (StudyOrder order : StudyOrder.usual()) {
            for (double tau : TAUS) {
                for (double drift : DRIFTS) {
                    StudyTally t = run(new StudyCell(order, 4, tau, drift, 1), StudyTally.HIGHER,
                            VerdictSettings.usual(), true, sessions);
                    TextbookStudy b = t.textbook();
                    int n = Math.min(sessions, textbookSessions);
                    line("| %s | %.1f | %.0f | %.3f | %.3f | %.3f | %.3f | %s | %s | %s | %s | %.3f |", order.text(),
                            tau, drift, t.shareOfChoices(t.pickedByAverage), t.shareOfChoices(t.picked), t.share(t.claimedRightly),
                            t.share(t.claimedWrongly), share(b.tTests, n), share(b.tukey, n),
                            share(b.satterthwaite, b.remlSessions), share(b.kenwardRoger, b.remlSessions),
                            t.coverage());
                }
            }
        }
    }

    private void otherNumbersOfGrips() {
        line("\n## Two and eight equal grips, drift of one SD\n");
        line("| grips | order | stint SD | 'better' | 'probably' or more | coverage | change advised |");
        line("| --- | --- | --- | --- | --- | --- | --- |");
        for (int grips : new int[] {2, 8}) {
            for (StudyOrder order : StudyOrder.usual()) {
                for (double tau : TAUS) {
                    StudyTally t = run(new StudyCell(order, grips, tau, 1, 0), StudyTally.HIGHER,
                            VerdictSettings.usual(), false, grips == 8 ? sessions / 2 : sessions);
                    line("| %d | %s | %.1f | %.3f | %.3f | %.3f | %.3f |", grips, order.text(), tau,
                            t.share(t.claimedWrongly), t.share(t.probably), t.coverage(), t.shareOfChoices(t.advised));
                }
            }
        }
    }

    private void cautious() {
        line("\n## The cautious prior, equal grips, drift of one SD\n");
        line("| grips | order | stint SD | 'better' | 'probably' or more | coverage | prior strained (usual prior) |");
        line("| --- | --- | --- | --- | --- | --- | --- |");
        for (int grips : new int[] {2, 4, 8}) {
            for (StudyOrder order : StudyOrder.usual()) {
                for (double tau : new double[] {0.6, 1.0}) {
                    int count = grips == 8 ? sessions / 2 : sessions;
                    StudyCell cell = new StudyCell(order, grips, tau, 1, 0);
                    StudyTally t = run(cell, StudyTally.HIGHER, VerdictSettings.usual().cautious(), false, count);
                    StudyTally usual = run(cell, StudyTally.HIGHER, VerdictSettings.usual(), false, count / 4);
                    line("| %d | %s | %.1f | %.3f | %.3f | %.3f | %.3f |", grips, order.text(), tau,
                            t.share(t.claimedWrongly), t.share(t.probably), t.coverage(), usual.share(usual.strained));
                }
            }
        }
    }

    private void nearTarget() {
        line("\n## Near a target, four grips worth the same\n");
        line("| truth | order | stint SD | 'better' | 'probably' or more |");
        line("| --- | --- | --- | --- | --- |");
        double[][] truths = {{0, 0, 0, 0}, {1, 1, 1, 1}, {1, -1, 1, -1}};
        String[] texts = {"all at the target", "all 1 SD off to one side", "two 1 SD off on either side"};
        for (int which = 0; which < truths.length; which++) {
            for (StudyOrder order : List.of(StudyOrder.IN_TURN, StudyOrder.MIRRORED_3, StudyOrder.MIRRORED_6)) {
                for (double tau : new double[] {0, 0.3, 0.6}) {
                    StudyTally t = new StudyTally(NEAR_NOUGHT, VerdictSettings.usual(), fitter, points);
                    Random random = new Random(which + 31);
                    for (int i = 0; i < sessions / 4; i++) {
                        t.addVerdicts(StudySession.of(new StudyCell(order, 4, tau, 1, 0), truths[which], random));
                    }
                    line("| %s | %s | %.1f | %.3f | %.3f |", texts[which], order.text(), tau,
                            t.share(t.claimedWrongly), t.share(t.probably));
                }
            }
        }
    }

    private void same() {
        line("\n## How often 'no practical difference' is said of a pair\n");
        line("| order | stint SD | all equal, so that it is true | one better by one SD: said wrongly |");
        line("| --- | --- | --- | --- |");
        for (StudyOrder order : StudyOrder.values()) {
            for (double tau : new double[] {0, 0.3}) {
                int count = Math.max(100, sessions / 16);
                StudyTally equal = run(new StudyCell(order, 4, tau, 0, 0), StudyTally.HIGHER, VerdictSettings.usual(),
                        false, count);
                StudyTally better = run(new StudyCell(order, 4, tau, 0, 1), StudyTally.HIGHER,
                        VerdictSettings.usual(), false, count);
                line("| %s | %.1f | %.3f | %.4f |", order.text(), tau, equal.sameShare(),
                        (double) better.sameWrongly / better.pairs);
            }
        }
    }

    private void calibration() {
        line("\n## Is P(best) what it says, when truths are drawn from the prior for choosing?\n");
        line("| P(best) said | how often | right |");
        line("| --- | --- | --- |");
        Calibration calibration = new Calibration();
        for (StudyOrder order : StudyOrder.usual()) {
            calibration.add(order, sessions, fitter, points);
        }
        for (int bin = 0; bin < Calibration.BINS; bin++) {
            line("| %.2f to %.2f | %d | %.3f |", bin / 10.0 - 0.05, bin / 10.0 + 0.05, calibration.said(bin),
                    calibration.right(bin));
        }
    }

    /** How often a configuration is best, by the probability that was said of it. */
    static final class Calibration {

        static final int BINS = 11;
        private final List<int[]> counts = new ArrayList<>();

        Calibration() {
            for (int bin = 0; bin < BINS; bin++) {
                counts.add(new int[2]);
            }
        }

        /** Sessions whose stint effect, drift and means come from the priors. */
        void add(StudyOrder order, int sessions, MixedModelFitter fitter, ScorePoints points) {
            VerdictSettings settings = VerdictSettings.usual();
            StudyTally tally = new StudyTally(StudyTally.HIGHER, settings, fitter, points);
            Random random = new Random(order.ordinal() + 4_711);
            for (int i = 0; i < sessions; i++) {
                double tau = Math.abs(random.nextGaussian()) * settings.stintToNoisePriorScale();
                double omega = Math.abs(random.nextGaussian()) * settings.configurationPriorScale();
                double[] truth = random.doubles(4).map(u -> omega * random.nextGaussian()).toArray();
                StudyCell cell = new StudyCell(order, 4, tau, settings.driftPriorSd() * random.nextGaussian(), 0);
                double[] best = tally.probabilityBest(StudySession.of(cell, truth, random));
                int right = StudyTally.largest(truth);
                for (int k = 0; k < best.length; k++) {
                    int[] bin = counts.get((int) Math.round(10 * best[k]));
                    bin[0]++;
                    bin[1] += k == right ? 1 : 0;
                }
            }
        }

        int said(int bin) {
            return counts.get(bin)[0];
        }

        double right(int bin) {
            return (double) counts.get(bin)[1] / counts.get(bin)[0];
        }
    }
}
