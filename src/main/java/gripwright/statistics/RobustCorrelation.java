package gripwright.statistics;

import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * A correlation matrix of robustly standardised readings that outliers can't bend and missing readings can't break.
 *
 * <p>Pair by pair, over the rows that have both, r = (s+^2 - s-^2)/(s+^2 + s-^2) with s+ and s- the median absolute sums
 * and differences (R. Gnanadesikan and J. R. Kettenring, Biometrics 28 (1972) 81-124); drawn to 0 by n/(n + 10); then
 * made positive definite by lifting eigenvalues below 0.05 (R. A. Maronna and R. H. Zamar, Technometrics 44 (2002)
 * 307-317, begin with the same pairs).
 */
final class RobustCorrelation {

    private static final double LEAST_EIGENVALUE = 0.05;
    private static final double SHRINKAGE_ROWS = 10;

    private final RealMatrix matrix;

    /** @param scores rows x columns, standardised, NaN missing */
    RobustCorrelation(double[][] scores, int columns) {
        RealMatrix raw = new Array2DRowRealMatrix(columns, columns);
        for (int a = 0; a < columns; a++) {
            raw.setEntry(a, a, 1);
            for (int b = 0; b < a; b++) {
                double r = pair(scores, a, b);
                raw.setEntry(a, b, r);
                raw.setEntry(b, a, r);
            }
        }
        this.matrix = positiveDefinite(raw);
    }

    private static double pair(double[][] scores, int a, int b) {
        // Two exact zeros are medians of their groups and tell nothing about the pair.
        int[] rows = IntStream.range(0, scores.length).filter(i -> !Double.isNaN(scores[i][a] + scores[i][b])
            && (scores[i][a] != 0 || scores[i][b] != 0)).toArray();
        if (rows.length < 2) {
            return 0;
        }
        double sums = Sample.median(IntStream.of(rows).mapToDouble(i -> Math.abs(scores[i][a] + scores[i][b])).toArray());
        double differences =
            Sample.median(IntStream.of(rows).mapToDouble(i -> Math.abs(scores[i][a] - scores[i][b])).toArray());
        double total = sums * sums + differences * differences;
        double r = total == 0 ? 0 : (sums * sums - differences * differences) / total;
        return r * rows.length / (rows.length + SHRINKAGE_ROWS);
    }

    private static RealMatrix positiveDefinite(RealMatrix raw) {
        EigenDecomposition eigen = new EigenDecomposition(raw);
        RealMatrix lifted = new Array2DRowRealMatrix(raw.getRowDimension(), raw.getRowDimension());
        for (int i = 0; i < raw.getRowDimension(); i++) {
            double value = Math.max(LEAST_EIGENVALUE, eigen.getRealEigenvalue(i));
            lifted = lifted.add(eigen.getEigenvector(i).outerProduct(eigen.getEigenvector(i)).scalarMultiply(value));
        }
        RealMatrix result = lifted.copy();
        for (int i = 0; i < raw.getRowDimension(); i++) {
            for (int j = 0; j < raw.getRowDimension(); j++) {
                result.setEntry(i, j, lifted.getEntry(i, j) / Math.sqrt(lifted.getEntry(i, i) * lifted.getEntry(j, j)));
            }
        }
        return result;
    }

    /** The inverse of the part that belongs to these columns. */
    RealMatrix inverseFor(int[] columns) {
        return new LUDecomposition(matrix.getSubMatrix(columns, columns)).getSolver().getInverse();
    }
}
