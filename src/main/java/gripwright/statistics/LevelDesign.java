package gripwright.statistics;

import java.util.Arrays;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException;
import org.apache.commons.math3.linear.NonSymmetricMatrixException;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * The columns of a polynomial in the level, and generalised least squares on them.
 *
 * <p>Levels are centred on their mean and divided by their greatest distance from it, which keeps the columns within
 * -1 to 1; the coefficients are turned back before they leave.
 */
final class LevelDesign {

    private static final double MOST_EXPLAINED = 0.9; // of the covariate: its variance is inflated tenfold from there
    private static final double SYMMETRY = 1e-9;

    private final double centre;
    private final double unit;
    private final int degree;
    private final RealMatrix columns;

    LevelDesign(double[] levels, double[] covariate, int degree) {
        this.centre = Sample.of(levels).mean();
        this.unit = Arrays.stream(levels).map(x -> Math.abs(x - centre)).max().orElse(1);
        this.degree = degree;
        int width = degree + 1 + (covariate == null ? 0 : 1);
        this.columns = new Array2DRowRealMatrix(levels.length, width);
        double middle = covariate == null ? 0 : Sample.of(covariate).mean();
        for (int i = 0; i < levels.length; i++) {
            for (int power = 0; power <= degree; power++) {
                columns.setEntry(i, power, Math.pow((levels[i] - centre) / unit, power));
            }
            if (covariate != null) {
                columns.setEntry(i, width - 1, covariate[i] - middle);
            }
        }
    }

    static LevelResponse.CovariateUse covariateUse(double[] levels, double[] covariate, int degree) {
        if (covariate == null) {
            return LevelResponse.CovariateUse.NOT_GIVEN;
        }
        if (levels.length < degree + 3) {
            return LevelResponse.CovariateUse.LEFT_OUT_TOO_FEW_GROUPS;
        }
        double total = Sample.of(covariate).sumOfSquares();
        if (Arrays.stream(levels).distinct().count() < 2 || total == 0) {
            return LevelResponse.CovariateUse.LEFT_OUT_COLLINEAR;
        }
        RealMatrix powers = new LevelDesign(levels, null, degree).columns;
        RealVector values = new ArrayRealVector(covariate);
        RealVector fitted = powers.operate(new QRDecomposition(powers).getSolver().solve(values));
        double rest = values.subtract(fitted).getNorm();
        return rest * rest < (1 - MOST_EXPLAINED) * total ? LevelResponse.CovariateUse.LEFT_OUT_COLLINEAR
            : LevelResponse.CovariateUse.USED;
    }

    LevelCurve fit(double[] means, double[][] covariance, double degreesOfFreedom, LevelResponseFitter options) {
        RealMatrix known = new Array2DRowRealMatrix(covariance);
        RealVector values = new ArrayRealVector(means);
        int rest = means.length - columns.getColumnDimension();
        double extra = options.lackOfFit() && rest > 0 ? lackOfFit(known, values, rest) : 0;
        Weighted weighted = new Weighted(known, values, extra);
        double mean = known.getTrace() / means.length;
        double freedom = extra == 0 ? degreesOfFreedom
            : (mean + extra) * (mean + extra) / (mean * mean / degreesOfFreedom + extra * extra / rest);
        RealVector coefficients = weighted.coefficients;
        RealMatrix variances = weighted.covariance();
        for (int i = 1; i <= degree; i++) {
            double factor = Math.pow(unit, -i);
            coefficients.setEntry(i, coefficients.getEntry(i) * factor);
            for (int j = 0; j < variances.getColumnDimension(); j++) {
                variances.setEntry(i, j, variances.getEntry(i, j) * factor);
                variances.setEntry(j, i, variances.getEntry(j, i) * factor);
            }
        }
        return new LevelCurve(centre, degree, coefficients, variances, extra, freedom, options.confidence());
    }

    private double lackOfFit(RealMatrix known, RealVector values, int rest) {
        if (new Weighted(known, values, 0).residualSquares() <= rest) {
            return 0;
        }
        double high = known.getTrace() / values.getDimension();
        while (new Weighted(known, values, high).residualSquares() > rest) {
            high *= 4;
        }
        return new BrentSolver(1e-13, 1e-300)
            .solve(500, extra -> new Weighted(known, values, extra).residualSquares() - rest, 0, high);
    }

    /** The least squares problem after both sides are multiplied by the inverse Cholesky factor of V. */
    private final class Weighted {

        private final RealMatrix design;
        private final RealVector target;
        private final RealVector coefficients;

        Weighted(RealMatrix known, RealVector values, double extra) {
            RealMatrix factor = cholesky(known.add(
                MatrixUtils.createRealIdentityMatrix(values.getDimension()).scalarMultiply(extra)));
            design = columns.copy();
            target = values.copy();
            MatrixUtils.solveLowerTriangularSystem(factor, target);
            for (int j = 0; j < design.getColumnDimension(); j++) {
                RealVector column = design.getColumnVector(j);
                MatrixUtils.solveLowerTriangularSystem(factor, column);
                design.setColumnVector(j, column);
            }
            coefficients = new QRDecomposition(design).getSolver().solve(target);
        }

        private RealMatrix cholesky(RealMatrix matrix) {
            try {
                return new CholeskyDecomposition(matrix, SYMMETRY, 0).getL();
            } catch (NonPositiveDefiniteMatrixException | NonSymmetricMatrixException e) {
                throw new IllegalArgumentException("The covariance of the means is not symmetric and positive definite", e);
            }
        }

        double residualSquares() {
            double norm = target.subtract(design.operate(coefficients)).getNorm();
            return norm * norm;
        }

        /** R^-1 R^-T. */
        RealMatrix covariance() {
            int p = design.getColumnDimension();
            RealMatrix r = new QRDecomposition(design).getR().getSubMatrix(0, p - 1, 0, p - 1);
            RealMatrix inverse = MatrixUtils.createRealIdentityMatrix(p);
            for (int j = 0; j < p; j++) {
                RealVector column = inverse.getColumnVector(j);
                MatrixUtils.solveUpperTriangularSystem(r, column);
                inverse.setColumnVector(j, column);
            }
            return inverse.multiply(inverse.transpose());
        }
    }
}
