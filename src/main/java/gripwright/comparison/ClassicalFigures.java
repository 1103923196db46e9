package gripwright.comparison;

import java.util.List;

/**
 * Textbook figures of one metric, each shot taken for itself: shown beside the model for readers who ask.
 *
 * @param anova one-way analysis of variance; null where it can't be had
 * @param welchAnova Welch's analysis of variance for unequal noise; null where it can't be had
 * @param brownForsythe Brown and Forsythe's test of equal variances by medians; null where it can't be had
 * @param noiseDiffers whether noise clearly differs between configurations, so that the Welch figures are the ones
 * @param welch Welch's t of all pairs
 * @param tukeyKramer Tukey and Kramer's simultaneous differences of all pairs
 * @param gamesHowell Games and Howell's simultaneous differences of all pairs
 * @param reml restricted maximum likelihood of the same model; null where it can't be had
 */
public record ClassicalFigures(FTest anova, FTest welchAnova, FTest brownForsythe, boolean noiseDiffers,
        List<PairTest> welch, List<PairTest> tukeyKramer, List<PairTest> gamesHowell, Reml reml) {

    /**
     * An F test.
     *
     * @param f its statistic
     * @param df1 degrees of freedom above
     * @param df2 degrees of freedom below
     * @param p its p value
     */
    public record FTest(double f, double df1, double df2, double p) {
    }

    /**
     * One pair of configurations.
     *
     * @param of judged, by label
     * @param against judged against, by label
     * @param estimate difference of the plain means, internal units
     * @param interval its 95 % interval, simultaneous for Tukey-Kramer and Games-Howell
     * @param df degrees of freedom
     * @param p p value, adjusted for Tukey-Kramer and Games-Howell
     */
    public record PairTest(String of, String against, double estimate, Interval interval, double df, double p) {
    }

    /**
     * Restricted maximum likelihood of the same model without any prior; where drift is in the model it is estimated
     * freely.
     *
     * @param stintSd stint-to-stint standard deviation; exactly 0 at the boundary
     * @param residualSd shot-to-shot standard deviation
     * @param atBoundary whether the stint variation came out as exactly 0
     * @param driftIncluded whether drift is in it; left out where it can't be told without a prior
     * @param satterthwaite all pairs with Satterthwaite's degrees of freedom
     * @param kenwardRoger all pairs with Kenward and Roger's
     */
    public record Reml(double stintSd, double residualSd, boolean atBoundary, boolean driftIncluded,
            List<PairTest> satterthwaite, List<PairTest> kenwardRoger) {

        public Reml {
            satterthwaite = List.copyOf(satterthwaite);
            kenwardRoger = List.copyOf(kenwardRoger);
        }
    }

    public ClassicalFigures {
        welch = List.copyOf(welch);
        tukeyKramer = List.copyOf(tukeyKramer);
        gamesHowell = List.copyOf(gamesHowell);
    }

    static ClassicalFigures none() {
        return new ClassicalFigures(null, null, null, false, List.of(), List.of(), List.of(), null);
    }
}
