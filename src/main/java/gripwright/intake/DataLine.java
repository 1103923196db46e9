package gripwright.intake;

/**
 * A line of data with the headings it stands under.
 *
 * @param row the line
 * @param header which headings of the file, from 0
 */
record DataLine(CsvRow row, int header) {
}
