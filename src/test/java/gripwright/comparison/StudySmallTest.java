package gripwright.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.model.VerdictSettings;
import gripwright.statistics.MixedModelFitter;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * A small simulation study with fixed seed; its bounds are those of the whole study, widened by three standard errors.
 * The whole one is docs/simulation.md.
 */
class StudySmallTest {

    private static final int SESSIONS = 300;
    /** Limits for stint effects of up to .3 of the noise: 5 % false 'better', 25 % false 'probably', 93 % coverage. */
    private static final double CLAIM = 0.05 + 3 * Math.sqrt(0.05 * 0.95 / SESSIONS);
    private static final double PROBABLY = 0.25 + 3 * Math.sqrt(0.25 * 0.75 / SESSIONS);

    private final MixedModelFitter fitter = MixedModelFitter.withDefaults();
    private final ScorePoints points = new ScorePoints();

    private StudyTally run(StudyCell cell, int choices) {
        StudyTally tally = new StudyTally(StudyTally.HIGHER, VerdictSettings.usual(), fitter, points);
        Random random = new Random(11);
        for (int i = 0; i < SESSIONS; i++) {
            tally.add(StudySession.of(cell, random), i < choices);
        }
        return tally;
    }

    @Test
    void equalGripsAreRarelyClaimedDifferent() {
        for (StudyOrder order : StudyOrder.usual()) {
            for (double tau : new double[] {0, 0.3}) {
                StudyTally tally = run(new StudyCell(order, 4, tau, 1, 0), 0);
                assertThat(tally.share(tally.claimedWrongly)).as(order + " " + tau).isLessThan(CLAIM);
                assertThat(tally.share(tally.probably)).as(order + " " + tau).isLessThan(PROBABLY);
                assertThat(tally.coverage()).as(order + " " + tau).isGreaterThan(0.92);
            }
            StudyTally tally = run(new StudyCell(order, 4, 0.6, 1, 0), 0);
            assertThat(tally.share(tally.claimedWrongly)).as(order + " 0.6")
                    .isLessThan(0.10 + 3 * Math.sqrt(0.10 * 0.90 / SESSIONS));
        }
    }

    @Test
    void theBetterOneIsNamedAsOftenAsByAverages() {
        for (StudyOrder order : StudyOrder.usual()) {
            StudyTally tally = run(new StudyCell(order, 4, 0.3, 1, 1), SESSIONS);
            // Both name from the same sessions, so that they differ by far less than either's standard error.
            assertThat(tally.shareOfChoices(tally.picked)).as(order.text())
                    .isGreaterThan(tally.shareOfChoices(tally.pickedByAverage) - 0.03);
            assertThat(tally.shareOfChoices(tally.picked)).isGreaterThan(0.65);
        }
    }

    @Test
    void textbookTestsClaimFarTooMuchUnderDrift() {
        StudyTally tally = run(new StudyCell(StudyOrder.IN_TURN, 4, 0.3, 1, 0), 0);
        TextbookStudy books = new TextbookStudy(new gripwright.statistics.StudentizedRangeFamily(4));
        tally.takeTextbook(books);
        Random random = new Random(12);
        for (int i = 0; i < 100; i++) {
            tally.addTextbook(StudySession.of(new StudyCell(StudyOrder.IN_TURN, 4, 0.3, 1, 0), random));
        }
        assertThat(books.tTests).isBetween(35, 68);
        assertThat(books.tukey).isBetween(14, 43);
        assertThat(books.remlSessions).isZero();
    }

    @Test
    void probabilityBestIsWhatItSays() {
        SimulationStudy.Calibration calibration = new SimulationStudy.Calibration();
        calibration.add(StudyOrder.MIRRORED_3, 600, fitter, points);
        for (int bin = 1; bin < 10; bin++) {
            double error = Math.sqrt(0.1 * bin * (1 - 0.1 * bin) / calibration.said(bin));
            assertThat(calibration.right(bin)).as("said ." + bin).isBetween(0.1 * bin - 0.02 - 3 * error,
                    0.1 * bin + 0.02 + 3 * error);
        }
    }
}
