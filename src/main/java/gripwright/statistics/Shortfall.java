package gripwright.statistics;

/**
 * Why a figure can't be given: the ordinary shortages of small data, which are results and not failures.
 */
public enum Shortfall {
    /** Fewer than two groups have a value. */
    TOO_FEW_GROUPS,
    /** A group, or all together, has fewer values than the figure needs. */
    TOO_FEW_VALUES,
    /** Values are all equal where the figure divides by their spread. */
    NO_VARIATION,
    /** Points lie on a line, or columns of a design are multiples of each other. */
    COLLINEAR,
    /** Fewer distinct levels than a curve needs. */
    TOO_FEW_LEVELS
}
