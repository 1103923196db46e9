package gripwright.statistics;

/** Arithmetic on small square matrices held by row in one array, for kernels that form a handful of products. */
final class SquareMatrices {

    private SquareMatrices() {
    }

    /** The product a b. */
    static double[] product(double[] a, double[] b, int p) {
        double[] result = new double[p * p];
        for (int r = 0; r < p; r++) {
            for (int m = 0; m < p; m++) {
                double entry = a[r * p + m];
                for (int c = 0; c < p && entry != 0; c++) {
                    result[r * p + c] += entry * b[m * p + c];
                }
            }
        }
        return result;
    }

    /** The product a a'. */
    static double[] timesTranspose(double[] a, int p) {
        double[] result = new double[p * p];
        for (int r = 0; r < p; r++) {
            for (int c = 0; c < p; c++) {
                double sum = 0;
                for (int m = 0; m < p; m++) {
                    sum += a[r * p + m] * a[c * p + m];
                }
                result[r * p + c] = sum;
            }
        }
        return result;
    }

    /** The trace of a b. */
    static double traceOfProduct(double[] a, double[] b, int p) {
        double sum = 0;
        for (int r = 0; r < p; r++) {
            for (int m = 0; m < p; m++) {
                sum += a[r * p + m] * b[m * p + r];
            }
        }
        return sum;
    }

    /** The product a v. */
    static double[] times(double[] a, double[] v) {
        int p = v.length;
        double[] result = new double[p];
        for (int r = 0; r < p; r++) {
            for (int c = 0; c < p; c++) {
                result[r] += a[r * p + c] * v[c];
            }
        }
        return result;
    }

    /** The inner product of two vectors. */
    static double inner(double[] u, double[] v) {
        double sum = 0;
        for (int i = 0; i < u.length; i++) {
            sum += u[i] * v[i];
        }
        return sum;
    }

    /** Adds factor a to sum, in place. */
    static void add(double[] sum, double factor, double[] a) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += factor * a[i];
        }
    }

    /** v' a v. */
    static double form(double[] a, double[] v) {
        return inner(v, times(a, v));
    }
}
