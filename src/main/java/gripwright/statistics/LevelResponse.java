package gripwright.statistics;

/**
 * How group means respond to a level: straight line against curve, and what of it can be told.
 *
 * @param distinctLevels how many different levels there are
 * @param line           the straight line; from two distinct levels on
 * @param curve          the curve; from four distinct levels on
 * @param turningPoint   of the curve; no variation where it does not bend at all
 * @param covariateUse   what became of the covariate
 * @param finding        what can be told
 */
public record LevelResponse(int distinctLevels, Figure<LevelCurve> line, Figure<LevelCurve> curve,
                            Figure<TurningPoint> turningPoint, CovariateUse covariateUse, Finding finding) {

    /** What can be told of the response. */
    public enum Finding {
        /** Fewer than two different levels: there is no response to speak of. */
        TOO_FEW_LEVELS,
        /** Neither slope nor bend differs from nothing: these levels can't tell. Not the same as 'no effect'. */
        CANNOT_TELL,
        /** Higher levels go with higher means; no bend can be told that turns within the levels tried. */
        RISING,
        /** Higher levels go with lower means; no bend can be told that turns within the levels tried. */
        FALLING,
        /** A highest point within the levels tried. */
        PEAK_WITHIN,
        /** A lowest point within the levels tried. */
        VALLEY_WITHIN
    }

    /** What became of a second quantity that may move with the level. */
    public enum CovariateUse {
        /** There was none. */
        NOT_GIVEN,
        /** It is in the model. */
        USED,
        /** Level and curve explain more than nine tenths of it: the two can't be told apart. */
        LEFT_OUT_COLLINEAR,
        /** Fewer groups than coefficients and one more. */
        LEFT_OUT_TOO_FEW_GROUPS
    }
}
