package gripwright.statistics;

/** On which side of the middle a reading far out is worth a flag. */
public enum OutlierSide {
    /** Both sides. */
    EITHER,
    /** Only readings that are too low. */
    LOW,
    /** Only readings that are too high. */
    HIGH;

    boolean counts(double score) {
        return this == EITHER || (this == LOW ? score < 0 : score > 0);
    }
}
