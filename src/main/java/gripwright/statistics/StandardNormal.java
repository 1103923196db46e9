package gripwright.statistics;

import org.apache.commons.math3.special.Erf;

/**
 * The standard normal distribution, fast enough for quadratures that ask for it hundreds of thousands of times.
 *
 * <p>The distribution function uses the rational Chebyshev approximations of W. J. Cody, 'Rational Chebyshev
 * approximations for the error function', Mathematics of Computation 23 (1969), in the arrangement for the normal
 * distribution of Cody, 'Algorithm 715', ACM Transactions on Mathematical Software 19 (1993). Relative error is below
 * 2e-15 in either tail down to the smallest normal double (the tests compare it with an independent incomplete gamma
 * function).
 */
public final class StandardNormal {

    /** The logarithm of the square root of two pi. */
    static final double LOG_SQRT_TWO_PI = 0.918938533204672741780329736406;

    private static final double INVERSE_SQRT_TWO_PI = 0.398942280401432677939946059934;
    private static final double SQRT_32 = 5.656854249492380195206754896838;
    private static final double CENTRE_END = 0.67448975;

    private static final double[] CENTRE_NUMERATOR = {2.2352520354606839287, 161.02823106855587881,
        1067.6894854603709582, 18154.981253343561249, .065682337918207449113};
    private static final double[] CENTRE_DENOMINATOR = {47.20258190468824187, 976.09855173777669322,
        10260.932208618978205, 45507.789335026729956};
    private static final double[] SHOULDER_NUMERATOR = {.39894151208813466764, 8.8831497943883759412,
        93.506656132177855979, 597.27027639480026226, 2494.5375852903726711, 6848.1904505362823326,
        11602.651437647350124, 9842.7148383839780218, 1.0765576773720192317e-8};
    private static final double[] SHOULDER_DENOMINATOR = {22.266688044328115691, 235.38790178262499861,
        1519.377599407554805, 6485.558298266760755, 18615.571640885098091, 34900.952721145977266,
        38912.003286093271411, 19685.429676859990727};
    private static final double[] TAIL_NUMERATOR = {.21589853405795699, .1274011611602473639,
        .022235277870649807, .001421619193227893466, 2.9112874951168792e-5, .02307344176494017303};
    private static final double[] TAIL_DENOMINATOR = {1.28426009614491121, .468238212480865118,
        .0659881378689285515, .00378239633202758244, 7.29751555083966205e-5};

    private StandardNormal() {
    }

    /**
     * The density exp(-x^2/2)/sqrt(2 pi).
     *
     * @param x any value; NaN gives NaN
     * @return the density, 0 for infinite x
     */
    public static double density(double x) {
        return INVERSE_SQRT_TWO_PI * Math.exp(-0.5 * x * x);
    }

    /**
     * The probability of a value of at most x.
     *
     * @param x any value; NaN gives NaN
     * @return the probability, with full relative precision in the lower tail too
     */
    public static double cumulative(double x) {
        double magnitude = Math.abs(x);
        if (magnitude <= CENTRE_END) {
            return 0.5 + centre(x);
        }
        if (Double.isNaN(x)) {
            return Double.NaN;
        }
        double tail = tail(magnitude);
        return x < 0 ? tail : 1 - tail;
    }

    /**
     * The probability of a value above x.
     *
     * @param x any value; NaN gives NaN
     * @return the probability, with full relative precision in the upper tail too
     */
    public static double upperTail(double x) {
        return cumulative(-x);
    }

    /**
     * The value that a standard normal variable stays below with the given probability.
     *
     * <p>The library's inverse error function, then Newton's steps on the logarithm of {@link #cumulative}, which hold
     * full precision in the lower tail.
     *
     * @param probability 0 gives negative infinity, 1 positive infinity; NaN or outside 0 to 1 gives NaN
     * @return the quantile
     */
    public static double quantile(double probability) {
        if (!(probability > 0 && probability < 1)) {
            return probability == 0 ? Double.NEGATIVE_INFINITY
                : probability == 1 ? Double.POSITIVE_INFINITY : Double.NaN;
        }
        if (probability > 0.5) {
            return -quantile(1 - probability); // exact: 1 - p loses nothing for p of one half and more
        }
        double x = probability > 1e-14 ? Math.sqrt(2) * Erf.erfInv(2 * probability - 1)
            : -Math.sqrt(-2 * Math.log(probability));
        for (int step = 0; step < 6; step++) {
            double below = cumulative(x);
            double change = Math.log(below / probability) * below / density(x);
            x -= change;
            if (Math.abs(change) < 1e-15 * Math.abs(x)) {
                break;
            }
        }
        return x;
    }

    private static double centre(double x) {
        double square = x * x;
        double numerator = CENTRE_NUMERATOR[4] * square;
        double denominator = square;
        for (int i = 0; i < 3; i++) {
            numerator = (numerator + CENTRE_NUMERATOR[i]) * square;
            denominator = (denominator + CENTRE_DENOMINATOR[i]) * square;
        }
        return x * (numerator + CENTRE_NUMERATOR[3]) / (denominator + CENTRE_DENOMINATOR[3]);
    }

    /** The probability above a positive x beyond the centre. */
    private static double tail(double x) {
        if (x > 38.6) {
            return 0; // below the smallest double
        }
        double factor = x <= SQRT_32 ? shoulderFactor(x) : tailFactor(x);
        // The square of x is split so that the exponential keeps its relative precision for large x.
        double rounded = (int) (x * 16) / 16.0;
        double rest = (x - rounded) * (x + rounded);
        return Math.exp(-0.5 * rounded * rounded) * Math.exp(-0.5 * rest) * factor;
    }

    private static double shoulderFactor(double x) {
        double numerator = SHOULDER_NUMERATOR[8] * x;
        double denominator = x;
        for (int i = 0; i < 7; i++) {
            numerator = (numerator + SHOULDER_NUMERATOR[i]) * x;
            denominator = (denominator + SHOULDER_DENOMINATOR[i]) * x;
        }
        return (numerator + SHOULDER_NUMERATOR[7]) / (denominator + SHOULDER_DENOMINATOR[7]);
    }

    private static double tailFactor(double x) {
        double inverseSquare = 1 / (x * x);
        double numerator = TAIL_NUMERATOR[5] * inverseSquare;
        double denominator = inverseSquare;
        for (int i = 0; i < 4; i++) {
            numerator = (numerator + TAIL_NUMERATOR[i]) * inverseSquare;
            denominator = (denominator + TAIL_DENOMINATOR[i]) * inverseSquare;
        }
        double fraction = inverseSquare * (numerator + TAIL_NUMERATOR[4]) / (denominator + TAIL_DENOMINATOR[4]);
        return (INVERSE_SQRT_TWO_PI - fraction) / x;
    }
}
