package gripwright.statistics;

/**
 * Simultaneous draws of all group means, the drift, the residual standard deviation and tau from one posterior.
 *
 * <p>In units of the response. Groups without values have NaN in every draw. The arrays are copied on the way out.
 */
public final class PosteriorDraws {

    private final int groups;
    private final double[] means;
    private final double[] drift;
    private final double[] residual;
    private final double[] tau;

    PosteriorDraws(int groups, double[] means, double[] drift, double[] residual, double[] tau) {
        this.groups = groups;
        this.means = means;
        this.drift = drift;
        this.residual = residual;
        this.tau = tau;
    }

    static PosteriorDraws undefined(int groups, int draws) {
        double[] nothing = new double[draws];
        java.util.Arrays.fill(nothing, Double.NaN);
        double[] means = new double[draws * groups];
        java.util.Arrays.fill(means, Double.NaN);
        return new PosteriorDraws(groups, means, nothing, nothing, nothing);
    }

    /** How many draws there are. */
    public int size() {
        return residual.length;
    }

    /** How many groups there are, with or without values. */
    public int groups() {
        return groups;
    }

    /**
     * The mean of a group in one draw, in the unit of the response; NaN for a group without values.
     *
     * @param draw  0 to size - 1, not checked
     * @param group 0 to groups - 1, not checked: this is read millions of times
     */
    public double mean(int draw, int group) {
        return means[draw * groups + group];
    }

    /** All draws of the mean of one group, {@link #size} of them; NaN throughout for a group without values. */
    public double[] means(int group) {
        double[] result = new double[size()];
        for (int i = 0; i < result.length; i++) {
            result[i] = means[i * groups + group];
        }
        return result;
    }

    /** The change over the whole range of the covariate in one draw; 0 where drift is not in the model. */
    public double drift(int draw) {
        return drift[draw];
    }

    /** The residual standard deviation in one draw. */
    public double residualStandardDeviation(int draw) {
        return residual[draw];
    }

    /** The ratio of the standard deviation between blocks to the residual one in one draw. */
    public double tau(int draw) {
        return tau[draw];
    }

    /**
     * The share of draws in which each group has the best mean.
     *
     * @param largerIsBetter whether the largest mean is the best, otherwise the smallest
     * @return one probability per group, sum 1; NaN for groups without values, all NaN without draws
     */
    public double[] probabilityBest(boolean largerIsBetter) {
        double[] wins = new double[groups];
        for (int i = 0; i < size(); i++) {
            int best = -1;
            for (int g = 0; g < groups; g++) {
                double mean = means[i * groups + g];
                if (!Double.isNaN(mean)
                    && (best < 0 || (mean > means[i * groups + best]) == largerIsBetter)) {
                    best = g;
                }
            }
            if (best >= 0) {
                wins[best]++;
            }
        }
        for (int g = 0; g < groups; g++) {
            wins[g] = size() == 0 || Double.isNaN(means[g]) ? Double.NaN : wins[g] / size();
        }
        return wins;
    }
}
