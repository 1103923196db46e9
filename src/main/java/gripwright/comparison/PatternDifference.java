package gripwright.comparison;

/**
 * Whether the centres of two shot patterns differ (Hotelling's T², the two configurations' shots taken for themselves).
 *
 * @param of judged, by identity
 * @param ofLabel its label
 * @param against judged against, by identity
 * @param againstLabel its label
 * @param carry difference of the centres in carry, m
 * @param offline difference of the centres in offline, m
 * @param tSquared Hotelling's T²
 * @param p its p value, not adjusted
 */
public record PatternDifference(String of, String ofLabel, String against, String againstLabel, double carry,
        double offline, double tSquared, double p) {
}
