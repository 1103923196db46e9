package gripwright.statistics;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The values of one mixed model, checked, standardised and condensed to what depends on no variance: one row per block
 * and one triangular factor of the deviations within blocks.
 *
 * <table>
 * <caption>Symbols and shapes</caption>
 * <tr><th>symbol</th><th>shape</th><th>meaning</th></tr>
 * <tr><td>n, J, K</td><td></td><td>values used, blocks with values, groups with values ("present")</td></tr>
 * <tr><td>z</td><td>n</td><td>(response - offset) / scale: mean 0, standard deviation 1 (divisor n)</td></tr>
 * <tr><td>t</td><td>n</td><td>(covariate - centre) / range, over all rows given, with or without a value</td></tr>
 * <tr><td>c</td><td>K + 2</td><td>columns: one per present group, then t, then z</td></tr>
 * <tr><td>size</td><td>J</td><td>n_j, values per block</td></tr>
 * <tr><td>mean</td><td>J x (K + 2)</td><td>block means of the columns</td></tr>
 * <tr><td>within</td><td>m x (K + 2)</td><td>factor with within'within = cross products of the deviations from the
 * block means, by row; m at most K + 2</td></tr>
 * </table>
 */
final class BlockedData {

    /** A column whose rest is below this part of its norm is taken to depend on the columns before it. */
    private static final double DEPENDENT = 1e-10;
    /** Sums of squares below this part of the total are rounding. */
    private static final double ROUNDING = 1e-20;

    final int groups;
    final int[] present;
    final boolean covariateVaries;
    final boolean driftSeparable;
    final int n;
    final double offset;
    final double scale;
    final double covariateCentre;
    final double covariateRange;
    final double[] size;
    final double[][] mean;
    final double[][] within;
    final int[] groupOfBlock;
    /** Rank of the deviations within blocks, without and with the column t. */
    private final int rankWithinGroups;
    private final int rankWithin;

    private BlockedData(Rows rows, int groups) {
        this.groups = groups;
        this.present = rows.present;
        this.n = rows.response.length;
        this.offset = rows.offset;
        this.scale = rows.scale;
        this.covariateCentre = rows.centre;
        this.covariateRange = rows.range;
        this.size = new double[rows.blocks];
        int columns = present.length + 2;
        this.mean = new double[rows.blocks][columns];
        sumBlocks(rows);
        this.groupOfBlock = nestedGroups();
        double[] factor = deviations(rows);
        int[] pivotRow = Householder.reduce(factor, n, columns, DEPENDENT);
        this.within = copyRows(factor, n, columns);
        int groupRank = 0;
        for (int k = 0; k < present.length; k++) {
            groupRank += pivotRow[k] >= 0 ? 1 : 0;
        }
        this.rankWithinGroups = groupRank;
        this.rankWithin = groupRank + (pivotRow[present.length] >= 0 ? 1 : 0);
        this.covariateVaries = rows.range > 0;
        this.driftSeparable = covariateVaries && rows.driftSeparable();
    }

    /**
     * Drops the rows without a response and condenses the others.
     *
     * @param response  n numbers, NaN where there is no value
     * @param group     n numbers from 0 to groups - 1
     * @param covariate n finite numbers, or null
     * @param block     n labels; rows with the same label belong to one block
     * @param groups    number of groups
     * @return the condensed values
     * @throws IllegalArgumentException if lengths differ or a number is out of its range
     */
    static BlockedData of(double[] response, int[] group, double[] covariate, int[] block, int groups) {
        Rows rows = new Rows(response, group, covariate, block, groups);
        return new BlockedData(rows, groups);
    }

    int blocks() {
        return size.length;
    }

    boolean isNested() {
        return groupOfBlock != null;
    }

    /** Whether the response does not vary at all. */
    boolean allEqual() {
        return scale == 0;
    }

    /**
     * What is left within blocks of what group columns (and the drift) do not explain.
     *
     * @param driftPrecisionRoot 1/prior deviation of the drift; 0 for a flat prior
     */
    double residualWithin(boolean drift, double driftPrecisionRoot) {
        int t = present.length;
        double rest = 0;
        for (int r = rankWithinGroups; r < within.length; r++) {
            double entry = within[r][t + 1];
            boolean pivotOfDrift = r == rankWithinGroups && rankWithin > rankWithinGroups;
            double kept = 1;
            if (drift && pivotOfDrift) {
                double prior = driftPrecisionRoot * driftPrecisionRoot;
                kept = prior / (within[r][t] * within[r][t] + prior);
            }
            rest += kept * entry * entry;
        }
        return rest;
    }

    /** How many values within blocks are left over by group columns and, if it is free, by the drift. */
    int freeWithin(boolean freeDrift) {
        return n - blocks() - (freeDrift ? rankWithin : rankWithinGroups);
    }

    /** Sums of squares of standardised values that are no more than rounding. */
    double rounding() {
        double digits = 8 * Math.ulp(Math.abs(offset) + scale) / scale;
        return n * Math.max(ROUNDING, digits * digits);
    }

    /** Whether the likelihood depends on the ratio of block variance to noise. */
    boolean blockVarianceIdentified(boolean drift) {
        int rank = drift ? rankWithin : rankWithinGroups;
        int parameters = present.length + (drift ? 1 : 0);
        return blocks() + rank - parameters > 0 && n - blocks() - rank > 0;
    }

    private void sumBlocks(Rows rows) {
        int t = present.length;
        for (int i = 0; i < n; i++) {
            double[] sums = mean[rows.block[i]];
            size[rows.block[i]]++;
            sums[rows.column[i]]++;
            sums[t] += rows.t[i];
            sums[t + 1] += rows.z[i];
        }
        for (int j = 0; j < size.length; j++) {
            for (int c = 0; c < t + 2; c++) {
                mean[j][c] /= size[j];
            }
        }
    }

    /** The group of each block, or null where a block spans several groups. */
    private int[] nestedGroups() {
        int[] result = new int[size.length];
        for (int j = 0; j < size.length; j++) {
            for (int k = 0; k < present.length; k++) {
                if (mean[j][k] == 1) {
                    result[j] = k;
                } else if (mean[j][k] != 0) {
                    return null;
                }
            }
        }
        return result;
    }

    private double[] deviations(Rows rows) {
        int t = present.length;
        double[] factor = new double[n * (t + 2)];
        for (int i = 0; i < n; i++) {
            double[] centre = mean[rows.block[i]];
            if (groupOfBlock == null) {
                for (int k = 0; k < t; k++) {
                    factor[k * n + i] = (rows.column[i] == k ? 1 : 0) - centre[k];
                }
            }
            factor[t * n + i] = rows.t[i] - centre[t];
            factor[(t + 1) * n + i] = rows.z[i] - centre[t + 1];
        }
        return factor;
    }

    private static double[][] copyRows(double[] factor, int rows, int columns) {
        double[][] result = new double[Math.min(rows, columns)][columns];
        for (int r = 0; r < result.length; r++) {
            for (int c = 0; c < columns; c++) {
                result[r][c] = factor[c * rows + r];
            }
        }
        return result;
    }

    /** The rows with a response, standardised, with compact numbers for groups and blocks. */
    private static final class Rows {
        final double[] response;
        final int[] column;
        final int[] block;
        final int[] present;
        final int blocks;
        final double[] t;
        final double[] z;
        final double offset;
        final double scale;
        final double centre;
        final double range;

        Rows(double[] allResponses, int[] group, double[] covariate, int[] blockLabel, int groups) {
            requireValid(allResponses, group, covariate, blockLabel, groups);
            int[] used = IntStream.range(0, allResponses.length)
                .filter(i -> !Double.isNaN(allResponses[i])).toArray();
            response = new double[used.length];
            column = new int[used.length];
            block = new int[used.length];
            t = new double[used.length];
            z = new double[used.length];
            int[] columnOfGroup = new int[groups];
            Arrays.fill(columnOfGroup, -1);
            Arrays.stream(used).map(i -> group[i]).forEach(g -> columnOfGroup[g] = 0);
            present = IntStream.range(0, groups).filter(g -> columnOfGroup[g] == 0).toArray();
            for (int k = 0; k < present.length; k++) {
                columnOfGroup[present[k]] = k;
            }
            centre = covariate == null || covariate.length == 0 ? 0 : exactMean(covariate);
            range = covariate == null ? 0 : range(covariate);
            Map<Integer, Integer> numbers = new HashMap<>();
            for (int r = 0; r < used.length; r++) {
                int i = used[r];
                response[r] = allResponses[i];
                column[r] = columnOfGroup[group[i]];
                Integer next = numbers.size();
                Integer known = numbers.putIfAbsent(blockLabel[i], next);
                block[r] = known == null ? next : known;
                t[r] = range > 0 ? (covariate[i] - centre) / range : 0;
            }
            blocks = numbers.size();
            offset = response.length == 0 ? 0 : exactMean(response);
            scale = standardise();
        }

        private double standardise() {
            double squares = 0;
            for (double y : response) {
                squares += (y - offset) * (y - offset);
            }
            double deviation = range(response) > 0 ? Math.sqrt(squares / response.length) : 0;
            for (int i = 0; i < z.length; i++) {
                z[i] = deviation > 0 ? (response[i] - offset) / deviation : 0;
            }
            return deviation;
        }

        /** Whether t varies within groups, so that drift is not a sum of group effects. */
        boolean driftSeparable() {
            double[] sum = new double[present.length];
            double[] count = new double[present.length];
            double total = 0;
            for (int i = 0; i < t.length; i++) {
                sum[column[i]] += t[i];
                count[column[i]]++;
            }
            double rest = 0;
            for (int i = 0; i < t.length; i++) {
                double deviation = t[i] - sum[column[i]] / count[column[i]];
                rest += deviation * deviation;
                total += t[i] * t[i];
            }
            return rest > DEPENDENT * DEPENDENT * total;
        }

        private static double range(double[] values) {
            double least = Double.POSITIVE_INFINITY;
            double greatest = Double.NEGATIVE_INFINITY;
            for (double value : values) {
                least = Math.min(least, value);
                greatest = Math.max(greatest, value);
            }
            return values.length == 0 ? 0 : greatest - least;
        }

        /** Mean in two passes: the second takes up what rounding lost in the first. */
        private static double exactMean(double[] values) {
            double mean = 0;
            for (double value : values) {
                mean += value / values.length;
            }
            double rest = 0;
            for (double value : values) {
                rest += value - mean;
            }
            return mean + rest / values.length;
        }

        private static void requireValid(double[] response, int[] group, double[] covariate, int[] block, int groups) {
            int rows = response.length;
            if (group.length != rows || block.length != rows || covariate != null && covariate.length != rows) {
                throw new IllegalArgumentException("Response, group, covariate and block must be equally long: "
                    + rows + ", " + group.length + ", " + (covariate == null ? "none" : covariate.length) + ", "
                    + block.length);
            }
            for (int i = 0; i < rows; i++) {
                if (group[i] < 0 || group[i] >= groups) {
                    throw new IllegalArgumentException("Row " + i + " has group " + group[i] + " of " + groups);
                }
                if (Double.isInfinite(response[i])) {
                    throw new IllegalArgumentException("Row " + i + " has an infinite response");
                }
                if (covariate != null && !Double.isFinite(covariate[i])) {
                    throw new IllegalArgumentException("Row " + i + " has the covariate " + covariate[i]);
                }
            }
        }
    }
}
