package gripwright.intake;

/**
 * One possible answer to a question.
 *
 * @param key what an answer holds
 * @param text what people read
 */
public record Choice(String key, String text) {
}
