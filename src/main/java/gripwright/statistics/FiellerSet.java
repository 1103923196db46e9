package gripwright.statistics;

/**
 * The confidence set of a ratio by Fieller's method, which may be an interval, everything outside one, or everything.
 *
 * <p>All rho with (a - rho b)^2 &lt;= t^2 (vaa - 2 rho vab + rho^2 vbb). It is bounded exactly when the denominator b
 * differs from 0 at the same confidence. E. C. Fieller, Journal of the Royal Statistical Society B 16 (1954) 175-185.
 *
 * @param shape    what the set is
 * @param interval the set itself where bounded or a ray; what is left out where it is two rays; the whole line otherwise
 */
public record FiellerSet(Shape shape, Interval interval) {

    /** What the set is. */
    public enum Shape {
        /** An interval. */
        BOUNDED,
        /** All values but those inside an interval. */
        OUTSIDE_INTERVAL,
        /** All values up to one, or from one on; happens only where the denominator is exactly at its limit. */
        RAY,
        /** All values: the data say nothing. */
        WHOLE_LINE
    }

    private static final Interval LINE = new Interval(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    /**
     * The set for a / b.
     *
     * @param a   numerator
     * @param b   denominator
     * @param vaa variance of a
     * @param vab their covariance
     * @param vbb variance of b
     * @param t   two-sided critical value
     * @return the set
     */
    static FiellerSet ofRatio(double a, double b, double vaa, double vab, double vbb, double t) {
        double square = b * b - t * t * vbb;
        double linear = -2 * (a * b - t * t * vab);
        double constant = a * a - t * t * vaa;
        if (square == 0) {
            return linear == 0 ? new FiellerSet(Shape.WHOLE_LINE, LINE) : new FiellerSet(Shape.RAY, linear > 0
                ? new Interval(Double.NEGATIVE_INFINITY, -constant / linear)
                : new Interval(-constant / linear, Double.POSITIVE_INFINITY));
        }
        double discriminant = linear * linear - 4 * square * constant;
        if (square < 0 && discriminant <= 0) {
            return new FiellerSet(Shape.WHOLE_LINE, LINE);
        }
        // The root with the larger numerator first: no cancellation.
        double q = -(linear + Math.copySign(Math.sqrt(Math.max(0, discriminant)), linear)) / 2;
        double one = q / square;
        double other = q == 0 ? 0 : constant / q;
        return new FiellerSet(square > 0 ? Shape.BOUNDED : Shape.OUTSIDE_INTERVAL,
            new Interval(Math.min(one, other), Math.max(one, other)));
    }

    FiellerSet shifted(double by) {
        return new FiellerSet(shape, new Interval(interval.lower() + by, interval.upper() + by));
    }

    /** Whether the set holds a value. */
    public boolean contains(double value) {
        return shape == Shape.OUTSIDE_INTERVAL ? value <= interval.lower() || value >= interval.upper()
            : interval.contains(value);
    }

    /** Whether it is an interval of finite ends. */
    public boolean isBounded() {
        return shape == Shape.BOUNDED;
    }
}
