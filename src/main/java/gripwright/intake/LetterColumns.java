package gripwright.intake;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds columns that hold nothing but the directions of the column to their left: 'L' and 'R' beside numbers without a
 * sign, which would all be read as pointing one way without them.
 */
final class LetterColumns {

    private LetterColumns() {
    }

    /** The headings with such columns joined to the one they belong to. */
    static FileHeader joined(FileHeader header, List<CsvRow> rows) {
        List<Column> columns = new ArrayList<>(header.columns());
        for (int i = 0; i + 1 < columns.size(); i++) {
            if (isPair(columns.get(i), columns.get(i + 1), rows)) {
                columns.set(i, columns.get(i).withLetters(i + 1));
            }
        }
        return header.withColumns(columns);
    }

    private static boolean isPair(Column numbers, Column letters, List<CsvRow> rows) {
        boolean unknown = letters.meaning() == null && !HeaderText.of(letters.heading()).isKnown();
        if (!numbers.isMetric() || numbers.byHand() || !unknown) {
            return false;
        }
        boolean any = false;
        for (CsvRow row : rows) {
            String number = CellText.clean(row.cell(numbers.position()));
            String letter = CellText.clean(row.cell(letters.position()));
            boolean blank = CellText.saysNothing(letter);
            if (!blank && DirectionWords.of(numbers.metric(), letter) == null || !fits(number, blank)) {
                return false;
            }
            any |= !blank;
        }
        return any;
    }

    /** Whether a cell holds a bare number whose direction is given beside it, or needs none. */
    private static boolean fits(String number, boolean noLetter) {
        if (CellText.saysNothing(number)) {
            return true;
        }
        NumberShape shape = NumberShape.of(number);
        return shape.isNumber() && number.charAt(0) != '-' && number.charAt(0) != '+'
                && (!noLetter || shape.withDot() == 0);
    }
}
