package gripwright.statistics;

/**
 * The spread of one group within its blocks, raw and drawn towards the common spread.
 *
 * @param group                       index of the group
 * @param degreesOfFreedom            f: values less blocks
 * @param standardDeviation           root of the sum of squares within blocks over f; from f = 1 on
 * @param shrunkStandardDeviation     root of (f0 s0^2 + f s^2)/(f0 + f); from f = 1 on
 * @param posteriorDegreesOfFreedom   f0 + f, or f where there is nothing to be drawn to
 * @param interval                    of the standard deviation, central, by chi squared; from f = 1 on
 */
public record GroupSpread(int group, int degreesOfFreedom, Figure<Double> standardDeviation,
                          Figure<Double> shrunkStandardDeviation, double posteriorDegreesOfFreedom,
                          Figure<Interval> interval) {

    /**
     * Draws of the standard deviation from its posterior, one for each score: shrunk root(f' / chi2), chi2 on f' degrees
     * of freedom at the probability that the score leaves above it, so that the draw rises with the score.
     *
     * @param scores standard normal
     * @return the draws; good to 1e-6 for scores within 5
     * @throws java.util.NoSuchElementException if there is no shrunk standard deviation
     */
    public double[] draws(double[] scores) {
        double scale = shrunkStandardDeviation.get() * Math.sqrt(posteriorDegreesOfFreedom);
        ChiScores chi = new ChiScores(posteriorDegreesOfFreedom);
        double[] draws = new double[scores.length];
        for (int i = 0; i < scores.length; i++) {
            draws[i] = scale * chi.inverseChi(scores[i]);
        }
        return draws;
    }
}
