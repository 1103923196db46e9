package gripwright.statistics;

import java.util.Arrays;

/**
 * Fits line and curve to group means with their covariance matrix: generalised least squares with a lack-of-fit variance.
 *
 * <p>means = X b + u + e, e ~ N(0, C) with C known up to the degrees of freedom nu of its scale, u ~ N(0, lambda^2 I) the
 * lack of fit. lambda^2 makes the weighted residual sum of squares equal to its degrees of freedom K - p, 0 where it is
 * smaller already (R. C. Paule and J. Mandel, Journal of Research of the National Bureau of Standards 87 (1982)
 * 377-385). Standard errors from (X' V^-1 X)^-1 with V = C + lambda^2 I; their degrees of freedom by Satterthwaite's rule
 * (c + l)^2/(c^2/nu + l^2/(K - p)), c the mean variance in C and l = lambda^2. With few groups lambda^2 is poorly known
 * and often 0; a curve through four groups leaves it one degree of freedom.
 *
 * @param confidence of intervals and of the finding
 * @param lackOfFit  whether lambda^2 is estimated; otherwise 0
 */
public record LevelResponseFitter(double confidence, boolean lackOfFit) {

    /** A curve can always be laid through three levels. */
    public static final int LEVELS_FOR_CURVE = 4;

    /** Checks the confidence. */
    public LevelResponseFitter {
        Distributions.requireConfidence(confidence);
    }

    /** 95 % and lack of fit. */
    public static LevelResponseFitter withDefaults() {
        return new LevelResponseFitter(0.95, true);
    }

    /** The same at another confidence. */
    public LevelResponseFitter withConfidence(double other) {
        return new LevelResponseFitter(other, lackOfFit);
    }

    /** The same with the lack-of-fit variance held at 0. */
    public LevelResponseFitter withoutLackOfFit() {
        return new LevelResponseFitter(confidence, false);
    }

    /**
     * Fits without a covariate.
     *
     * @param levels           K levels
     * @param means            K means
     * @param covariance       K x K, of the means; symmetric, positive definite
     * @param degreesOfFreedom of the covariance's scale, positive, may be infinite
     * @return the response
     * @throws IllegalArgumentException if shapes differ, a number is not finite or the covariance not positive definite
     */
    public LevelResponse fit(double[] levels, double[] means, double[][] covariance, double degreesOfFreedom) {
        return fit(levels, means, covariance, degreesOfFreedom, null);
    }

    /**
     * Fits with a covariate, which enters linearly where it is not collinear with the powers of the level.
     *
     * @param levels           K levels
     * @param means            K means
     * @param covariance       K x K, of the means; symmetric, positive definite
     * @param degreesOfFreedom of the covariance's scale, positive, may be infinite
     * @param covariate        K values, or null for none
     * @return the response
     * @throws IllegalArgumentException as above
     */
    public LevelResponse fit(double[] levels, double[] means, double[][] covariance, double degreesOfFreedom,
                             double[] covariate) {
        requireShapes(levels, means, covariance, covariate);
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("The degrees of freedom must be positive, not " + degreesOfFreedom);
        }
        int distinct = (int) Arrays.stream(levels).distinct().count();
        LevelResponse.CovariateUse use = LevelDesign.covariateUse(levels, covariate, distinct >= LEVELS_FOR_CURVE ? 2 : 1);
        double[] used = use == LevelResponse.CovariateUse.USED ? covariate : null;
        if (distinct < 2) {
            return new LevelResponse(distinct, Figure.none(Shortfall.TOO_FEW_LEVELS),
                Figure.none(Shortfall.TOO_FEW_LEVELS), Figure.none(Shortfall.TOO_FEW_LEVELS), use,
                LevelResponse.Finding.TOO_FEW_LEVELS);
        }
        LevelCurve line = new LevelDesign(levels, used, 1).fit(means, covariance, degreesOfFreedom, this);
        if (distinct < LEVELS_FOR_CURVE) {
            return new LevelResponse(distinct, Figure.of(line), Figure.none(Shortfall.TOO_FEW_LEVELS),
                Figure.none(Shortfall.TOO_FEW_LEVELS), use, slope(line));
        }
        LevelCurve curve = new LevelDesign(levels, used, 2).fit(means, covariance, degreesOfFreedom, this);
        Figure<TurningPoint> turning = curve.coefficient(2) == 0 ? Figure.none(Shortfall.NO_VARIATION)
            : Figure.of(curve.turningPoint(Arrays.stream(levels).min().getAsDouble(),
                Arrays.stream(levels).max().getAsDouble()));
        return new LevelResponse(distinct, Figure.of(line), Figure.of(curve), turning, use, finding(line, curve, turning));
    }

    private LevelResponse.Finding finding(LevelCurve line, LevelCurve curve, Figure<TurningPoint> turning) {
        if (curve.pValue(2) < 1 - confidence && turning.isAvailable()) {
            if (turning.get().withinLevels()) {
                return turning.get().highest() ? LevelResponse.Finding.PEAK_WITHIN : LevelResponse.Finding.VALLEY_WITHIN;
            }
            // A sure bend that turns outside: within the levels the curve goes one way, as its slope at the centre.
            return curve.coefficient(1) > 0 ? LevelResponse.Finding.RISING : LevelResponse.Finding.FALLING;
        }
        return slope(line);
    }

    private LevelResponse.Finding slope(LevelCurve line) {
        if (!(line.pValue(1) < 1 - confidence)) {
            return LevelResponse.Finding.CANNOT_TELL;
        }
        return line.coefficient(1) > 0 ? LevelResponse.Finding.RISING : LevelResponse.Finding.FALLING;
    }

    private static void requireShapes(double[] levels, double[] means, double[][] covariance, double[] covariate) {
        int groups = levels.length;
        if (means.length != groups || covariance.length != groups || covariate != null && covariate.length != groups
            || Arrays.stream(covariance).anyMatch(row -> row.length != groups)) {
            throw new IllegalArgumentException("Levels, means, covariance and covariate differ in size");
        }
        requireFinite(levels, "A level");
        requireFinite(means, "A mean");
        for (double[] row : covariance) {
            requireFinite(row, "A covariance");
        }
        if (covariate != null) {
            requireFinite(covariate, "A value of the covariate");
        }
    }

    private static void requireFinite(double[] values, String what) {
        for (double value : values) {
            if (Double.isNaN(value) || Double.isInfinite(value)) {
                throw new IllegalArgumentException(what + " is not a finite number; leave such groups out");
            }
        }
    }
}
