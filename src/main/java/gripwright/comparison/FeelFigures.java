package gripwright.comparison;

/**
 * The player's feel for one configuration over its stints.
 *
 * @param answers how many stints were answered
 * @param comfort mean, 1 to 7; null where not answered
 * @param control mean, 1 to 7; null where not answered
 * @param confidence mean, 1 to 7; null where not answered
 * @param headWeight mean, −3 to 3; null where not answered
 * @param size mean, −3 to 3; null where not answered
 * @param wouldPlay stints after which the player would play it
 * @param wouldNotPlay stints after which the player would not
 * @param score all in one figure from 0 to 1; null where nothing that counts was answered
 */
public record FeelFigures(int answers, Double comfort, Double control, Double confidence, Double headWeight,
        Double size, int wouldPlay, int wouldNotPlay, Double score) {
}
