package gripwright.statistics;

/**
 * Reduction of a tall matrix to its triangular factor by Householder reflections, without pivoting.
 *
 * <p>G. H. Golub and C. F. Van Loan, Matrix Computations, section 5.2. The orthogonal factor is never formed.
 */
final class Householder {

    private Householder() {
    }

    /**
     * Reduces in place. A column that depends on those before it (its rest is below tolerance times its norm) uses up no
     * row, so that the result is in echelon form and its number of rows is the rank.
     *
     * @param a         rows x columns, by column: a[column * rows + row]; on return the factor, zeros below it
     * @param rows      number of rows
     * @param columns   number of columns
     * @param tolerance relative size below which the rest of a column counts as zero; 0 takes only an exact zero
     * @return the place of each pivot: pivotRow[column], or -1 for a dependent column
     */
    static int[] reduce(double[] a, int rows, int columns, double tolerance) {
        int[] pivotRow = new int[columns];
        int row = 0;
        for (int column = 0; column < columns; column++) {
            int start = column * rows;
            double above = squares(a, start, start + Math.min(row, rows));
            double rest = squares(a, start + Math.min(row, rows), start + rows);
            if (row >= rows || rest <= tolerance * tolerance * (above + rest) || rest == 0) {
                pivotRow[column] = -1;
                java.util.Arrays.fill(a, start + Math.min(row, rows), start + rows, 0);
                continue;
            }
            reflect(a, rows, columns, column, row, Math.sqrt(rest));
            pivotRow[column] = row++;
        }
        return pivotRow;
    }

    /** Maps the rest of the column to one number at its top, and treats the columns after it alike. */
    private static void reflect(double[] a, int rows, int columns, int column, int row, double norm) {
        int pivot = column * rows + row;
        int end = column * rows + rows;
        double target = a[pivot] > 0 ? -norm : norm;
        a[pivot] -= target; // the reflection's vector, kept in place for the while
        double factor = -1 / (target * a[pivot]); // 2 / |v|^2
        for (int other = column + 1; other < columns; other++) {
            int shift = (other - column) * rows;
            double product = 0;
            for (int i = pivot; i < end; i++) {
                product += a[i] * a[i + shift];
            }
            product *= factor;
            for (int i = pivot; i < end; i++) {
                a[i + shift] -= product * a[i];
            }
        }
        a[pivot] = target;
        java.util.Arrays.fill(a, pivot + 1, end, 0);
    }

    private static double squares(double[] a, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += a[i] * a[i];
        }
        return sum;
    }
}
