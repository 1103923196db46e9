package gripwright.statistics;

/**
 * Eigenvalues and eigenvectors of a small symmetric matrix by cyclic Jacobi rotations: slower than tridiagonal methods
 * for large matrices, not for ten rows, and more accurate in small eigenvalues.
 *
 * <p>Golub and Van Loan, Matrix Computations, section 8.5.
 *
 * @param values  p eigenvalues, none below 0, in no order
 * @param vectors p x p, by row: vectors[r * p + l] is entry r of eigenvector l
 */
record SymmetricEigen(double[] values, double[] vectors) {

    private static final int MOST_SWEEPS = 30;
    private static final double CONVERGED = 1e-30; // of the squared size of the matrix

    /** The eigensystem of M'M for a matrix of rows x p, by row. */
    static SymmetricEigen ofCrossProduct(double[] matrix, int rows, int p) {
        double[] a = new double[p * p];
        for (int r = 0; r < rows; r++) {
            for (int i = 0; i < p; i++) {
                double entry = matrix[r * p + i];
                for (int j = i; j < p && entry != 0; j++) {
                    a[i * p + j] += entry * matrix[r * p + j];
                }
            }
        }
        for (int i = 0; i < p; i++) {
            for (int j = 0; j < i; j++) {
                a[i * p + j] = a[j * p + i];
            }
        }
        double[] u = new double[p * p];
        for (int i = 0; i < p; i++) {
            u[i * p + i] = 1;
        }
        for (int sweep = 0; sweep < MOST_SWEEPS && !sweep(a, u, p); sweep++) {
            continue;
        }
        double[] values = new double[p];
        for (int i = 0; i < p; i++) {
            values[i] = Math.max(0, a[i * p + i]);
        }
        return new SymmetricEigen(values, u);
    }

    /** One rotation for each pair of rows; returns whether nothing was left to do. */
    private static boolean sweep(double[] a, double[] u, int p) {
        double off = 0;
        double diagonal = 0;
        for (int i = 0; i < p; i++) {
            diagonal += a[i * p + i] * a[i * p + i];
            for (int j = i + 1; j < p; j++) {
                off += a[i * p + j] * a[i * p + j];
            }
        }
        if (off <= CONVERGED * diagonal) {
            return true;
        }
        for (int i = 0; i < p; i++) {
            for (int j = i + 1; j < p; j++) {
                if (a[i * p + j] != 0) {
                    rotate(a, u, p, i, j);
                }
            }
        }
        return false;
    }

    private static void rotate(double[] a, double[] u, int p, int i, int j) {
        double theta = (a[j * p + j] - a[i * p + i]) / (2 * a[i * p + j]);
        double tangent = Math.copySign(1, theta) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
        double cosine = 1 / Math.sqrt(tangent * tangent + 1);
        double sine = tangent * cosine;
        for (int m = 0; m < p; m++) {
            double first = a[m * p + i];
            double second = a[m * p + j];
            a[m * p + i] = cosine * first - sine * second;
            a[m * p + j] = sine * first + cosine * second;
        }
        for (int m = 0; m < p; m++) {
            double first = a[i * p + m];
            double second = a[j * p + m];
            a[i * p + m] = cosine * first - sine * second;
            a[j * p + m] = sine * first + cosine * second;
        }
        for (int m = 0; m < p; m++) {
            double first = u[m * p + i];
            double second = u[m * p + j];
            u[m * p + i] = cosine * first - sine * second;
            u[m * p + j] = sine * first + cosine * second;
        }
    }
}
