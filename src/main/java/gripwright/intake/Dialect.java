package gripwright.intake;

/**
 * How a file turned out to be written.
 *
 * @param encoding 'UTF-8', 'UTF-16', 'Windows-1252'
 * @param delimiter between cells
 * @param decimalMark '.' or ','; null where the file has none that decides
 */
public record Dialect(String encoding, char delimiter, Character decimalMark) {
}
