package gripwright.statistics;

/**
 * One node of a grid posterior, in units of the response: given it, the coefficients are multivariate t.
 *
 * @param weight          posterior weight
 * @param tau             ratio of block to residual standard deviation
 * @param omega           spread of the group means over the residual standard deviation, infinite under a flat prior
 * @param coefficients    location b: one mean per group with values in order, then the drift where it is in the model
 * @param unscaledCovariance C, p x p; the scale matrix is residualSquares/degreesOfFreedom times C
 * @param residualSquares S
 * @param degreesOfFreedom nu
 */
public record PosteriorNode(double weight, double tau, double omega, double[] coefficients,
                            double[][] unscaledCovariance, double residualSquares, int degreesOfFreedom) {
}
