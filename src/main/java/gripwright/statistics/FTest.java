package gripwright.statistics;

/**
 * An F statistic with its degrees of freedom and upper tail probability.
 *
 * @param statistic   the value of F
 * @param numerator   its first degrees of freedom
 * @param denominator its second degrees of freedom, perhaps not whole
 * @param pValue      P(F &gt; statistic)
 */
public record FTest(double statistic, double numerator, double denominator, double pValue) {

    static FTest of(double statistic, double numerator, double denominator) {
        return new FTest(statistic, numerator, denominator, Distributions.fUpper(statistic, numerator, denominator));
    }
}
