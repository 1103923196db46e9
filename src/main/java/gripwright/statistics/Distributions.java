package gripwright.statistics;

import org.apache.commons.math3.distribution.FDistribution;
import org.apache.commons.math3.distribution.GammaDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.special.Beta;
import org.apache.commons.math3.special.Gamma;

/**
 * Tails and quantiles of the classical distributions, with relative precision in the tails that p-values come from.
 *
 * <p>Upper tails go straight to the regularized incomplete beta and gamma functions instead of 1 minus a lower tail.
 */
final class Distributions {

    /** The solver of the library's quantiles stops at an absolute 1e-9 unless told otherwise. */
    private static final double QUANTILE_ACCURACY = 1e-14;

    private Distributions() {
    }

    /** P(|T| &gt; |t|) for Student's t. */
    static double tTwoSided(double t, double degreesOfFreedom) {
        if (t == 0) {
            return 1;
        }
        return Beta.regularizedBeta(degreesOfFreedom / (degreesOfFreedom + t * t), degreesOfFreedom / 2, 0.5);
    }

    /** P(T &gt; t) for Student's t. */
    static double tUpper(double t, double degreesOfFreedom) {
        double half = tTwoSided(t, degreesOfFreedom) / 2;
        return t >= 0 ? half : 1 - half;
    }

    /** The value that Student's t stays below with the given probability. */
    static double tQuantile(double probability, double degreesOfFreedom) {
        return new TDistribution(null, degreesOfFreedom, QUANTILE_ACCURACY).inverseCumulativeProbability(probability);
    }

    /** Half the width of a central interval in standard errors. */
    static double tCentral(double confidence, double degreesOfFreedom) {
        return -tQuantile((1 - confidence) / 2, degreesOfFreedom);
    }

    /** P(F &gt; f). */
    static double fUpper(double f, double numerator, double denominator) {
        if (f <= 0) {
            return 1;
        }
        return Beta.regularizedBeta(denominator / (denominator + numerator * f), denominator / 2, numerator / 2);
    }

    /** The value that F stays below with the given probability. */
    static double fQuantile(double probability, double numerator, double denominator) {
        return new FDistribution(null, numerator, denominator, QUANTILE_ACCURACY)
            .inverseCumulativeProbability(probability);
    }

    /** The same for two numerator degrees of freedom, in closed form. */
    static double fQuantileTwo(double probability, double denominator) {
        return denominator / 2 * Math.expm1(-2 / denominator * Math.log1p(-probability));
    }

    /** P(chi2 &gt; x). */
    static double chiSquareUpper(double x, double degreesOfFreedom) {
        return x <= 0 ? 1 : Gamma.regularizedGammaQ(degreesOfFreedom / 2, x / 2);
    }

    /** The value that chi squared stays below with the given probability. */
    static double chiSquareQuantile(double probability, double degreesOfFreedom) {
        // The library's chi squared makes itself a random generator, which takes longer than the quantile.
        return new GammaDistribution(null, degreesOfFreedom / 2, 2,
            QUANTILE_ACCURACY).inverseCumulativeProbability(probability);
    }

    static void requireConfidence(double confidence) {
        if (!(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException("The confidence must lie between 0 and 1, but is " + confidence);
        }
    }
}
