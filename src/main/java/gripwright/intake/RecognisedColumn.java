package gripwright.intake;

/**
 * A column that is read.
 *
 * @param position from 1
 * @param heading as written
 * @param meaning what it holds
 * @param unit symbol of its unit; empty where it has none or where the cells carry it
 * @param byHand whether the shop set it
 */
public record RecognisedColumn(int position, String heading, ColumnMeaning meaning, String unit, boolean byHand) {
}
