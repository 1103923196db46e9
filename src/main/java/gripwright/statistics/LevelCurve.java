package gripwright.statistics;

import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * A polynomial in the level through the means of several groups, with the covariance of its coefficients.
 *
 * <p>value = b0 + b1 (x - centre) + b2 (x - centre)^2, a covariate held at its mean. Immutable.
 */
public final class LevelCurve {

    private final double centre;
    private final int degree;
    private final RealVector coefficients; // powers first, then the covariate if there is one
    private final RealMatrix covariance;
    private final double lackOfFitVariance;
    private final double degreesOfFreedom;
    private final double critical;

    LevelCurve(double centre, int degree, RealVector coefficients, RealMatrix covariance, double lackOfFitVariance,
               double degreesOfFreedom, double confidence) {
        this.centre = centre;
        this.degree = degree;
        this.coefficients = coefficients.copy();
        this.covariance = covariance.copy();
        this.lackOfFitVariance = lackOfFitVariance;
        this.degreesOfFreedom = degreesOfFreedom;
        this.critical = degreesOfFreedom == Double.POSITIVE_INFINITY ? -StandardNormal.quantile((1 - confidence) / 2)
            : Distributions.tCentral(confidence, degreesOfFreedom);
    }

    /** The level that powers are taken from: the mean of the groups' levels. */
    public double centre() {
        return centre;
    }

    /** 1 for a line, 2 for a curve. */
    public int degree() {
        return degree;
    }

    /** The coefficient of a power, 0 to {@link #degree}, of (level - centre), in the unit of the means per level to that power. */
    public double coefficient(int power) {
        return coefficients.getEntry(power);
    }

    /** The covariance of the coefficients of two powers, 0 to {@link #degree}, lack of fit included. */
    public double covariance(int power, int otherPower) {
        return covariance.getEntry(power, otherPower);
    }

    /** The interval of a coefficient, estimate ∓ t se at the confidence of the fit; powers 0 to {@link #degree}. */
    public Interval coefficientInterval(int power) {
        double reach = critical * Math.sqrt(covariance(power, power));
        return new Interval(coefficient(power) - reach, coefficient(power) + reach);
    }

    /** Coefficient over its standard error. */
    public double statistic(int power) {
        return coefficient(power) / Math.sqrt(covariance(power, power));
    }

    /** Two-sided p-value of a coefficient being 0, by t on {@link #degreesOfFreedom} or the normal where that is infinite. */
    public double pValue(int power) {
        return degreesOfFreedom == Double.POSITIVE_INFINITY ? 2 * StandardNormal.upperTail(Math.abs(statistic(power)))
            : Distributions.tTwoSided(statistic(power), degreesOfFreedom);
    }

    /** Variance of the groups' true means about the curve, beyond their covariance; 0 where it can't be told. */
    public double lackOfFitVariance() {
        return lackOfFitVariance;
    }

    /** Degrees of freedom of the standard errors, perhaps infinite. */
    public double degreesOfFreedom() {
        return degreesOfFreedom;
    }

    /** The height of the curve at a level, also beyond the levels tried; NaN for NaN. */
    public double valueAt(double level) {
        double value = 0;
        for (int power = degree; power >= 0; power--) {
            value = value * (level - centre) + coefficient(power);
        }
        return value;
    }

    /** The interval of the curve's height at a level, for that level alone. */
    public Interval intervalAt(double level) {
        double variance = 0;
        for (int i = 0; i <= degree; i++) {
            for (int j = 0; j <= degree; j++) {
                variance += Math.pow(level - centre, i + j) * covariance(i, j);
            }
        }
        double reach = critical * Math.sqrt(Math.max(0, variance));
        return new Interval(valueAt(level) - reach, valueAt(level) + reach);
    }

    /** Where a curve turns, -b1/(2 b2) from the centre, with Fieller's set; only for a curve that bends. */
    TurningPoint turningPoint(double least, double greatest) {
        double b1 = coefficient(1);
        double b2 = coefficient(2);
        double level = centre - b1 / (2 * b2);
        FiellerSet set = FiellerSet.ofRatio(-b1, 2 * b2, covariance(1, 1), -2 * covariance(1, 2), 4 * covariance(2, 2),
            critical).shifted(centre);
        return new TurningPoint(level, valueAt(level), b2 < 0, level >= least && level <= greatest, set);
    }
}
