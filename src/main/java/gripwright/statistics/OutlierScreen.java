package gripwright.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Looks for rows of readings that stand out from their groups, one reading at a time and all together. It flags; what
 * becomes of a flagged row is for somebody who saw it happen.
 *
 * <p>One reading: its pooled modified z beyond a limit ({@link ModifiedZ#pooled}). Together: the squared distance
 * z' R^-1 z of the row's own modified z-scores, R their robust correlation ({@link RobustCorrelation}), over the readings
 * that the row has; beyond the chi-squared quantile for their number, stretched by the median over rows of distance
 * against chi-squared median where that is above 1 (after Maronna and Zamar 2002). Pairs of readings suffice for R, so a
 * missing reading costs no row; a minimum covariance determinant would need many complete rows.
 *
 * @param limit               of the modified z, positive
 * @param distanceProbability of a good row to stay within the limit of the distance, between 0 and 1
 */
public record OutlierScreen(double limit, double distanceProbability) {

    /** Modified z beyond 3.5, distance beyond the chi-squared quantile for 99.9 %. */
    public static final OutlierScreen USUAL = new OutlierScreen(ModifiedZ.USUAL_LIMIT, 0.999);

    /** Checks both. */
    public OutlierScreen {
        if (!(limit > 0)) {
            throw new IllegalArgumentException("The limit of the modified z must be positive, not " + limit);
        }
        Distributions.requireConfidence(distanceProbability);
    }

    private record Distance(double squared, int readings, int told, double toldScore) {
    }

    /**
     * Screens rows.
     *
     * @param readings rows x columns, NaN missing
     * @param group    the group of each row, any numbers
     * @param sides    for each column, on which side a reading far out counts
     * @return the flags in order of rows, at most one for each: a reading by itself comes before readings together.
     *     Nothing is flagged in a column in which fewer than four readings tell the spread
     * @throws IllegalArgumentException if the shape is uneven or a reading infinite
     */
    public List<OutlierFlag> flags(double[][] readings, int[] group, List<OutlierSide> sides) {
        double[][] scores = scores(readings, group, sides.size());
        Distance[] distances = distances(scores, sides.size());
        double stretch = stretch(distances);
        List<OutlierFlag> flags = new ArrayList<>();
        for (int row = 0; row < readings.length; row++) {
            int worst = worst(scores[row], sides);
            Distance distance = distances[row];
            if (worst >= 0 && Math.abs(scores[row][worst]) > limit) {
                flags.add(new OutlierFlag(row, OutlierFlag.Cause.ONE_READING, worst, scores[row][worst], limit));
            } else if (distance != null && sides.get(distance.told()).counts(distance.toldScore())) {
                double cut = stretch * Distributions.chiSquareQuantile(distanceProbability, distance.readings());
                if (distance.squared() > cut) {
                    flags.add(new OutlierFlag(row, OutlierFlag.Cause.READINGS_TOGETHER, distance.told(),
                        Math.sqrt(distance.squared()), Math.sqrt(cut)));
                }
            }
        }
        return List.copyOf(flags);
    }

    private static double[][] scores(double[][] readings, int[] group, int columns) {
        double[][] scores = new double[readings.length][columns];
        for (double[] row : readings) {
            if (row.length != columns) {
                throw new IllegalArgumentException("A row has " + row.length + " readings instead of " + columns);
            }
        }
        for (int c = 0; c < columns; c++) {
            int column = c;
            Figure<double[]> pooled =
                ModifiedZ.pooled(Arrays.stream(readings).mapToDouble(row -> row[column]).toArray(), group);
            for (int i = 0; i < readings.length; i++) {
                scores[i][c] = pooled.isAvailable() ? pooled.get()[i] : Double.NaN;
            }
        }
        return scores;
    }

    private static int worst(double[] scores, List<OutlierSide> sides) {
        int worst = -1;
        for (int c = 0; c < scores.length; c++) {
            if (!Double.isNaN(scores[c]) && sides.get(c).counts(scores[c])
                && (worst < 0 || Math.abs(scores[c]) > Math.abs(scores[worst]))) {
                worst = c;
            }
        }
        return worst;
    }

    /** Null for a row with fewer than two readings. */
    private static Distance[] distances(double[][] scores, int columns) {
        Distance[] distances = new Distance[scores.length];
        if (columns < 2) {
            return distances;
        }
        RobustCorrelation correlation = new RobustCorrelation(scores, columns);
        for (int i = 0; i < scores.length; i++) {
            double[] row = scores[i];
            int[] present = IntStream.range(0, columns).filter(c -> !Double.isNaN(row[c])).toArray();
            if (present.length >= 2) {
                distances[i] = distance(correlation.inverseFor(present), row, present);
            }
        }
        return distances;
    }

    /** Taking reading j out of the row lowers the squared distance by (R^-1 z)_j^2 / (R^-1)_jj. */
    private static Distance distance(RealMatrix inverse, double[] row, int[] present) {
        double[] z = IntStream.of(present).mapToDouble(c -> row[c]).toArray();
        double[] solved = inverse.operate(z);
        double squared = 0;
        int told = 0;
        double most = -1;
        for (int j = 0; j < z.length; j++) {
            squared += z[j] * solved[j];
            double share = solved[j] * solved[j] / inverse.getEntry(j, j);
            if (share > most) {
                most = share;
                told = j;
            }
        }
        return new Distance(squared, z.length, present[told], z[told]);
    }

    private static double stretch(Distance[] distances) {
        double[] ratios = Arrays.stream(distances).filter(d -> d != null)
            .mapToDouble(d -> d.squared() / Distributions.chiSquareQuantile(0.5, d.readings())).toArray();
        return ratios.length == 0 ? 1 : Math.max(1, Sample.median(ratios));
    }
}
