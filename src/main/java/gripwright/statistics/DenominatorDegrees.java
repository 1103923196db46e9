package gripwright.statistics;

/**
 * Degrees of freedom for contrasts after restricted maximum likelihood, in closed form for one variance of blocks.
 *
 * <p>Satterthwaite: F. G. Giesbrecht and J. C. Burns, Biometrics 41 (1985), with the observed information in (tau,
 * sigma). Kenward-Roger: M. G. Kenward and J. H. Roger, Biometrics 53 (1997), with the expected information in (block
 * variance, residual variance); for one contrast their scale factor of F is exactly 1. With v(theta) the variance of the
 * contrast, gradient g and asymptotic covariance W of theta, both are df = 2 v^2/(g' W g).
 *
 * <p>Symbols as in {@link BlockSums}; s^2 is the residual variance S/nu, Phi = s^2 A^-1. P_1, P_2 are the derivatives of
 * Phi^-1 by the two variances; Q_ij = X' V^-1 V_i V^-1 V_j V^-1 X.
 */
final class DenominatorDegrees {

    private final BlockSums sums;
    private final int p;
    private final double variance;
    private final double[] phi;

    // Satterthwaite: covariance of (tau, sigma), and A^-1 G A^-1
    private final double[] observed = new double[3];
    private final double[] slope;

    // Kenward-Roger: covariance of the variances, adjusted Phi, Phi P_i Phi
    private final double[] expected = new double[3];
    private final double[] adjusted;
    private final double[][] change = new double[2][];

    DenominatorDegrees(BlockSums sums) {
        this.sums = sums;
        this.p = sums.system.p;
        this.variance = sums.solution.residualSquares() / sums.system.nu;
        this.phi = sums.inverse.clone();
        for (int i = 0; i < phi.length; i++) {
            phi[i] *= variance;
        }
        double[] g = sums.products(j -> sums.d[j] * sums.d[j]);
        double[] inverseG = SquareMatrices.product(sums.inverse, g, p);
        this.slope = SquareMatrices.product(inverseG, sums.inverse, p);
        fillObserved(g, inverseG);
        this.adjusted = phi.clone();
        fillExpected();
    }

    /** Twice the inverse of the Hessian of the deviance in (tau, sigma). */
    private void fillObserved(double[] g, double[] inverseG) {
        double[] d = sums.d;
        double[] rest = sums.residual;
        double first = -sums.sum(j -> d[j] * d[j] * rest[j] * rest[j]);
        double[] u = sums.totals(j -> d[j] * d[j] * rest[j]);
        double second = 2 * sums.sum(j -> sums.size(j) * d[j] * d[j] * d[j] * rest[j] * rest[j])
            - 2 * SquareMatrices.form(sums.inverse, u);
        double[] g3 = sums.products(j -> sums.size(j) * d[j] * d[j] * d[j]);
        double byRho = sums.sum(j -> sums.size(j) * d[j]) - SquareMatrices.traceOfProduct(sums.inverse, g, p)
            + first / variance;
        double byRhoTwice = -sums.sum(j -> sums.size(j) * sums.size(j) * d[j] * d[j])
            - SquareMatrices.traceOfProduct(inverseG, inverseG, p)
            + 2 * SquareMatrices.traceOfProduct(sums.inverse, g3, p) + second / variance;
        double tau = Math.sqrt(sums.rho);
        double sigma = Math.sqrt(variance);
        double tauTau = 2 * byRho + 4 * sums.rho * byRhoTwice;
        double tauSigma = -4 * tau * first / (variance * sigma);
        double sigmaSigma = -2 * sums.system.nu / variance
            + 6 * sums.solution.residualSquares() / (variance * variance);
        if (tau == 0) {
            observed[2] = 2 / sigmaSigma; // on the boundary nothing depends on tau
        } else {
            invert(tauTau / 2, tauSigma / 2, sigmaSigma / 2, observed);
        }
    }

    private void fillExpected() {
        double[] d = sums.d;
        double v2 = variance * variance;
        double[] within = sums.withinProducts();
        double[][] rawP = {sums.products(j -> d[j] * d[j]), sums.products(j -> d[j] * d[j] / sums.size(j))};
        SquareMatrices.add(rawP[1], 1, within);
        double[][] phiP = new double[2][];
        for (int i = 0; i < 2; i++) {
            phiP[i] = SquareMatrices.product(phi, rawP[i], p);
            scale(phiP[i], -1 / v2);
            change[i] = SquareMatrices.product(phiP[i], phi, p);
        }
        double[] lastQ = sums.products(j -> d[j] * d[j] * d[j] / sums.size(j));
        SquareMatrices.add(lastQ, 1, within);
        double[][] q = {sums.products(j -> sums.size(j) * d[j] * d[j] * d[j]),
            sums.products(j -> d[j] * d[j] * d[j]), lastQ};
        double[] trace = {sums.sum(j -> sums.size(j) * sums.size(j) * d[j] * d[j]),
            sums.sum(j -> sums.size(j) * d[j] * d[j]),
            sums.system.data.n - d.length + sums.sum(j -> d[j] * d[j])};
        double[] information = new double[3];
        double[][] bias = new double[3][]; // Phi (Q_ij - P_i Phi P_j) Phi
        for (int m = 0; m < 3; m++) {
            int i = m == 2 ? 1 : 0;
            int j = m == 0 ? 0 : 1;
            scale(q[m], 1 / (v2 * variance));
            information[m] = 0.5 * (trace[m] / v2 - 2 * SquareMatrices.traceOfProduct(phi, q[m], p)
                + SquareMatrices.traceOfProduct(phiP[i], phiP[j], p));
            bias[m] = SquareMatrices.product(SquareMatrices.product(phi, q[m], p), phi, p);
            SquareMatrices.add(bias[m], -0.5, SquareMatrices.product(phiP[i], change[j], p));
            SquareMatrices.add(bias[m], -0.5, SquareMatrices.product(phiP[j], change[i], p));
        }
        invert(information[0], information[1], information[2], expected);
        for (int m = 0; m < 3; m++) {
            SquareMatrices.add(adjusted, 2 * expected[m] * (m == 1 ? 2 : 1), bias[m]);
        }
    }

    private static void scale(double[] matrix, double factor) {
        for (int i = 0; i < matrix.length; i++) {
            matrix[i] *= factor;
        }
    }

    /** The inverse of a symmetric 2 x 2 matrix as (first, mixed, second); NaN if it is singular. */
    private static void invert(double first, double mixed, double second, double[] result) {
        double determinant = first * second - mixed * mixed;
        double safe = Math.abs(determinant) > 1e-14 * Math.abs(first * second) ? determinant : Double.NaN;
        result[0] = second / safe;
        result[1] = -mixed / safe;
        result[2] = first / safe;
    }

    private static double degrees(double variance, double first, double second, double[] covariance) {
        double spread = first * first * covariance[0] + 2 * first * second * covariance[1]
            + second * second * covariance[2];
        return 2 * variance * variance / spread;
    }

    /** The plain variance of a contrast. */
    double variance(double[] c) {
        return SquareMatrices.form(phi, c);
    }

    double satterthwaite(double[] c) {
        double v = variance(c);
        double byTau = 2 * Math.sqrt(sums.rho) * variance * SquareMatrices.form(slope, c);
        return degrees(v, byTau, 2 * v / Math.sqrt(variance), observed);
    }

    /** The variance of a contrast with the small-sample adjustment; NaN where the variances cannot be told apart. */
    double adjustedVariance(double[] c) {
        return SquareMatrices.form(adjusted, c);
    }

    double kenwardRoger(double[] c) {
        return degrees(variance(c), SquareMatrices.form(change[0], c), SquareMatrices.form(change[1], c), expected);
    }
}
