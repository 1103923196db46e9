package gripwright.comparison;

import java.util.List;
import java.util.function.Supplier;

/**
 * Textbook figures of one metric, each shot taken for itself: shown beside the model for readers who ask, and worked out
 * when somebody first does. Immutable to the outside; safe on any thread.
 */
public final class ClassicalFigures {

    private final boolean noiseDiffers;
    private final Supplier<All> source;
    private All all;

    /** All figures once they are worked out; any of the tests may be null where it can't be had. */
    record All(FTest anova, FTest welchAnova, FTest brownForsythe, List<PairTest> welch, List<PairTest> tukeyKramer,
            List<PairTest> gamesHowell, Reml reml) {

        All {
            welch = List.copyOf(welch);
            tukeyKramer = List.copyOf(tukeyKramer);
            gamesHowell = List.copyOf(gamesHowell);
        }
    }

    /** @param source works the figures out; the same ones whenever it is asked */
    ClassicalFigures(boolean noiseDiffers, Supplier<All> source) {
        this.noiseDiffers = noiseDiffers;
        this.source = source;
    }

    private synchronized All all() {
        if (all == null) {
            all = source.get();
        }
        return all;
    }

    /** One-way analysis of variance; null where it can't be had. */
    public FTest anova() {
        return all().anova();
    }

    /** Welch's analysis of variance for unequal noise; null where it can't be had. */
    public FTest welchAnova() {
        return all().welchAnova();
    }

    /** Brown and Forsythe's test of equal variances by medians; null where it can't be had. */
    public FTest brownForsythe() {
        return all().brownForsythe();
    }

    /** Whether noise clearly differs between configurations, so that the Welch figures are the ones to read. */
    public boolean noiseDiffers() {
        return noiseDiffers;
    }

    /** Welch's t of all pairs. */
    public List<PairTest> welch() {
        return all().welch();
    }

    /** Tukey and Kramer's simultaneous differences of all pairs. */
    public List<PairTest> tukeyKramer() {
        return all().tukeyKramer();
    }

    /** Games and Howell's simultaneous differences of all pairs. */
    public List<PairTest> gamesHowell() {
        return all().gamesHowell();
    }

    /** Restricted maximum likelihood of the same model; null where it can't be had. */
    public Reml reml() {
        return all().reml();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ClassicalFigures figures && noiseDiffers == figures.noiseDiffers
                && all().equals(figures.all());
    }

    @Override
    public int hashCode() {
        return all().hashCode();
    }

    @Override
    public String toString() {
        return "ClassicalFigures" + all();
    }

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
}
