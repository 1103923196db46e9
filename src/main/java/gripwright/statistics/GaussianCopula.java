package gripwright.statistics;

/**
 * Ties draws of several responses by the correlation of their deviations within blocks: a Gaussian copula.
 *
 * <p>Responses that repeat each other would count twice if their draws were independent. The correlation of each pair is
 * taken over the rows where both have a value, from deviations from the means of the blocks, and shrunk towards zero by
 * n/(n + 10), n such rows, since a dozen values tell little of a correlation. Where the pairs together make no
 * correlation matrix (different rows are missing), all are shrunk by tenths until they do.
 */
public final class GaussianCopula {

    private static final double PRIOR_ROWS = 10;
    private static final double STEP = 0.9;
    private static final double LEAST_PIVOT = 1e-8;

    private final double[][] correlation;
    private final double[][] factor;

    private GaussianCopula(double[][] correlation) {
        double[][] matrix = correlation;
        double[][] triangle = cholesky(matrix);
        while (triangle == null) {
            matrix = shrink(matrix);
            triangle = cholesky(matrix);
        }
        this.correlation = matrix;
        this.factor = triangle;
    }

    /**
     * From the values themselves.
     *
     * @param responses responses x rows, NaN where there is no value
     * @param block     a label per row
     * @return the copula; responses without common variation are independent
     * @throws IllegalArgumentException if lengths differ
     */
    public static GaussianCopula ofValues(double[][] responses, int[] block) {
        int count = responses.length;
        double[][] correlation = new double[count][count];
        for (int a = 0; a < count; a++) {
            if (responses[a].length != block.length) {
                throw new IllegalArgumentException("Response " + a + " has " + responses[a].length + " rows of "
                    + block.length);
            }
            correlation[a][a] = 1;
            for (int b = 0; b < a; b++) {
                correlation[a][b] = shrunkCorrelation(responses[a], responses[b], block);
                correlation[b][a] = correlation[a][b];
            }
        }
        return new GaussianCopula(correlation);
    }

    private static double shrunkCorrelation(double[] first, double[] second, int[] block) {
        java.util.Map<Integer, double[]> sums = new java.util.HashMap<>();
        int n = 0;
        for (int i = 0; i < block.length; i++) {
            if (!Double.isNaN(first[i]) && !Double.isNaN(second[i])) {
                double[] sum = sums.computeIfAbsent(block[i], j -> new double[3]);
                sum[0]++;
                sum[1] += first[i];
                sum[2] += second[i];
                n++;
            }
        }
        double xx = 0;
        double yy = 0;
        double xy = 0;
        for (int i = 0; i < block.length; i++) {
            if (!Double.isNaN(first[i]) && !Double.isNaN(second[i])) {
                double[] sum = sums.get(block[i]);
                double x = first[i] - sum[1] / sum[0];
                double y = second[i] - sum[2] / sum[0];
                xx += x * x;
                yy += y * y;
                xy += x * y;
            }
        }
        double product = Math.sqrt(xx) * Math.sqrt(yy);
        return product > 0 ? Math.max(-1, Math.min(1, xy / product)) * n / (n + PRIOR_ROWS) : 0;
    }

    private static double[][] shrink(double[][] matrix) {
        double[][] result = new double[matrix.length][matrix.length];
        for (int a = 0; a < matrix.length; a++) {
            for (int b = 0; b < matrix.length; b++) {
                result[a][b] = a == b ? 1 : STEP * matrix[a][b];
            }
        }
        return result;
    }

    /** The lower triangle L with L L' = matrix, or null where there is none. */
    private static double[][] cholesky(double[][] matrix) {
        int size = matrix.length;
        double[][] lower = new double[size][size];
        for (int r = 0; r < size; r++) {
            for (int c = 0; c <= r; c++) {
                double sum = matrix[r][c];
                for (int k = 0; k < c; k++) {
                    sum -= lower[r][k] * lower[c][k];
                }
                if (r == c) {
                    if (sum < LEAST_PIVOT) {
                        return null;
                    }
                    lower[r][r] = Math.sqrt(sum);
                } else {
                    lower[r][c] = sum / lower[c][c];
                }
            }
        }
        return lower;
    }

    /** The shrunk correlation of two responses, each 0 to their number - 1; 1 with itself, 0 where nothing could be told. */
    public double correlation(int first, int second) {
        return correlation[first][second];
    }

    /**
     * Scores for each response out of independent ones.
     *
     * @param points   draws x (at least responses times perResponse) independent standard normal scores
     * @param perResponse how many scores a response takes per draw
     * @param tiedFrom the scores of a response before this one stay independent, the others are tied between responses
     *                 place by place
     * @return responses x draws x perResponse scores, standard normal each
     */
    public double[][][] tie(double[][] points, int perResponse, int tiedFrom) {
        int count = factor.length;
        double[][][] tied = new double[count][points.length][perResponse];
        for (int i = 0; i < points.length; i++) {
            double[] point = points[i];
            for (int a = 0; a < count; a++) {
                double[] scores = tied[a][i];
                System.arraycopy(point, a * perResponse, scores, 0, tiedFrom);
                for (int c = tiedFrom; c < perResponse; c++) {
                    double sum = 0;
                    for (int b = 0; b <= a; b++) {
                        sum += factor[a][b] * point[b * perResponse + c];
                    }
                    scores[c] = sum;
                }
            }
        }
        return tied;
    }
}
