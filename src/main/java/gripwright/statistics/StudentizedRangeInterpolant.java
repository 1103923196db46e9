package gripwright.statistics;

/**
 * The studentized range of one number of groups and degrees of freedom, tabulated for quick calls.
 *
 * <p>A monotone quintic in asinh q through 161 values with their first two derivatives, all by quadrature; beyond the
 * table the tail is carried on as the power q^-nu. Falling everywhere (to rounding) and within 1e-8 of
 * {@link StudentizedRange#upperTail}; the error measured over 2 to 20 groups and 1 to infinite degrees of freedom is
 * below 1e-9. For a p-value far below that use the quadrature. Immutable.
 */
public final class StudentizedRangeInterpolant {

    private final int groups;
    private final double degreesOfFreedom;
    private final double end;
    private final double endProbability;
    private final MonotoneQuintic table;
    private final NormalRange normalRange;

    StudentizedRangeInterpolant(int groups, double degreesOfFreedom, double end, MonotoneQuintic table) {
        this.groups = groups;
        this.degreesOfFreedom = degreesOfFreedom;
        this.end = end;
        this.endProbability = table.value(Double.MAX_VALUE);
        this.table = table;
        this.normalRange = null;
    }

    StudentizedRangeInterpolant(int groups, NormalRange normalRange) {
        this.groups = groups;
        this.degreesOfFreedom = Double.POSITIVE_INFINITY;
        this.end = Double.POSITIVE_INFINITY;
        this.endProbability = 0;
        this.table = null;
        this.normalRange = normalRange;
    }

    /** The number of groups. */
    public int groups() {
        return groups;
    }

    /** The degrees of freedom, perhaps infinite. */
    public double degreesOfFreedom() {
        return degreesOfFreedom;
    }

    /**
     * The probability that the studentized range exceeds q.
     *
     * @param q any value; 0 or less gives 1, positive infinity gives 0, NaN gives NaN
     * @return the upper tail probability, within 1e-8
     */
    public double upperTail(double q) {
        if (q <= 0) {
            return 1;
        }
        if (Double.isNaN(q)) {
            return Double.NaN;
        }
        if (normalRange != null) {
            return normalRange.interpolatedUpperTail(q);
        }
        if (q >= end) {
            return endProbability == 0 ? 0 : endProbability * Math.pow(end / q, degreesOfFreedom);
        }
        return table.value(Math.log(q + Math.sqrt(1 + q * q)));
    }

    /**
     * The value that the studentized range stays below with the given probability.
     *
     * @param probability 0 to 0.999999, where the interpolant is still worth six digits
     * @return the quantile
     * @throws IllegalArgumentException if the probability is out of range
     */
    public double quantile(double probability) {
        if (!(probability >= 0 && probability <= 0.999999)) {
            throw new IllegalArgumentException("The probability must be from 0 to 0.999999, but is " + probability);
        }
        return probability == 0 ? 0 : StudentizedRange.quantileOf(this::upperTail, 1 - probability);
    }
}
