package gripwright.statistics;

import java.util.Arrays;

/**
 * A family of numbers drawn together from one posterior, judged one by one and as a family by the draws' own
 * simultaneous quantile.
 *
 * <p>With mean m and standard deviation s of each member over the draws, T the largest |value − m|/s of a draw over all
 * members: P_adj(value &gt; d) = 1 − P(T ≥ (m − d)/s)/2 where m is above d and P(T ≥ (d − m)/s)/2 elsewhere. It is the
 * rule of the studentized range carried over to members without a closed form (simultaneous bands after J. Besag et al.,
 * Statistical Science 10 (1995) 3-41). With one member it is close to the plain probability where the draws are
 * symmetric. Immutable.
 */
public final class SimultaneousDraws {

    private static final int BINS = 512;
    private static final double REACH = 5;

    private final double[][] values;
    private final double[] mean;
    private final double[] deviation;
    private final double[] largest;

    /**
     * @param values members x draws, finite; taken over, not copied
     * @throws IllegalArgumentException without a draw or with members of different length
     */
    public SimultaneousDraws(double[][] values) {
        int draws = values.length == 0 ? 1 : values[0].length;
        for (double[] member : values) {
            if (member.length == 0 || member.length != draws) {
                throw new IllegalArgumentException("Every member of a family needs the same number of draws, at least "
                    + "one, not " + member.length);
            }
        }
        this.values = values;
        this.mean = new double[values.length];
        this.deviation = new double[values.length];
        this.largest = new double[draws];
        for (int m = 0; m < values.length; m++) {
            describe(m);
        }
        Arrays.sort(largest);
    }

    private void describe(int m) {
        double[] member = values[m];
        double sum = 0;
        for (double value : member) {
            sum += value;
        }
        double centre = sum / member.length;
        double squares = 0;
        for (double value : member) {
            squares += (value - centre) * (value - centre);
        }
        double width = Math.sqrt(squares / member.length);
        mean[m] = centre;
        deviation[m] = width;
        if (width > 0) {
            double scale = 1 / width;
            for (int i = 0; i < member.length; i++) {
                largest[i] = Math.max(largest[i], Math.abs(member[i] - centre) * scale);
            }
        }
    }

    /** The mean of a member (0 to the number of members - 1) over the draws. */
    public double estimate(int member) {
        return mean[member];
    }

    /**
     * The interval that leaves equal shares of the draws on either side, members taken alone: the order statistics next to
     * (1 - level)/2 and (1 + level)/2 of the draws.
     *
     * @param member 0 to the number of members - 1
     * @param level  the share inside, between 0 and 1
     * @return the interval; both ends at the mean for a member that does not vary
     */
    public Interval interval(int member, double level) {
        int last = values[member].length - 1;
        int below = (int) Math.round((1 - level) / 2 * last);
        if (deviation[member] == 0) {
            return new Interval(mean[member], mean[member]);
        }
        int[] bins = bins(member);
        int[] counts = new int[BINS];
        for (int bin : bins) {
            counts[bin]++;
        }
        return new Interval(ordered(member, bins, counts, below), ordered(member, bins, counts, last - below));
    }

    /** The bin of each value: equal bins within five standard deviations of the mean, the rest in the outermost. */
    private int[] bins(int member) {
        double[] drawn = values[member];
        double perUnit = BINS / (2 * REACH * deviation[member]);
        double shift = REACH * deviation[member] - mean[member];
        int[] bins = new int[drawn.length];
        for (int i = 0; i < bins.length; i++) {
            bins[i] = (int) Math.max(0, Math.min(BINS - 1, (drawn[i] + shift) * perUnit));
        }
        return bins;
    }

    /** The value with so many below it: only those in its bin are sorted, which is what makes it quick. */
    private double ordered(int member, int[] bins, int[] counts, int place) {
        int bin = 0;
        int before = 0;
        while (before + counts[bin] <= place) {
            before += counts[bin];
            bin++;
        }
        double[] inside = new double[counts[bin]];
        int found = 0;
        for (int i = 0; i < bins.length; i++) {
            if (bins[i] == bin) {
                inside[found++] = values[member][i];
            }
        }
        Arrays.sort(inside);
        return inside[place - before];
    }

    /** The share of draws in which a member is above a limit. */
    public double probabilityAbove(int member, double limit) {
        int count = 0;
        for (double value : values[member]) {
            count += value > limit ? 1 : 0;
        }
        return (double) count / values[member].length;
    }

    /** The share of draws in which a member is below a limit. */
    public double probabilityBelow(int member, double limit) {
        int count = 0;
        for (double value : values[member]) {
            count += value < limit ? 1 : 0;
        }
        return (double) count / values[member].length;
    }

    /** The probability that a member is above a limit, adjusted for the family; see the class. */
    public double familyProbabilityAbove(int member, double limit) {
        return adjusted(mean[member] - limit, deviation[member]);
    }

    /** The probability that a member is below a limit, adjusted for the family; see the class. */
    public double familyProbabilityBelow(int member, double limit) {
        return adjusted(limit - mean[member], deviation[member]);
    }

    private double adjusted(double beyond, double width) {
        if (width == 0) {
            return beyond > 0 ? 1 : 0;
        }
        double half = 0.5 * shareFrom(Math.abs(beyond) / width);
        return beyond > 0 ? 1 - half : half;
    }

    /** The share of draws whose largest deviation is at least z. */
    private double shareFrom(double z) {
        int at = Arrays.binarySearch(largest, z);
        int first = at >= 0 ? at : -at - 1;
        while (first > 0 && largest[first - 1] == z) {
            first--;
        }
        return (double) (largest.length - first) / largest.length;
    }
}
