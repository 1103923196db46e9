package gripwright.intake;

import gripwright.model.Metric;
import gripwright.units.Unit;
import java.util.List;

/**
 * One column of a file as it will be read.
 *
 * @param position from 0
 * @param heading its heading on one line; may be empty
 * @param meaning what it holds; null where it is not known or still open
 * @param unitText the unit given in the heading or under it; empty where none is
 * @param flipped whether its signs are the other way round
 * @param legend what the heading says about the sign
 * @param byHand whether the shop set it
 * @param letters the position of the column that holds its directions; −1 where they stand in its own cells
 */
record Column(int position, String heading, ColumnMeaning meaning, String unitText, boolean flipped, List<String> legend,
        boolean byHand, int letters) {

    /** A column with its directions in its own cells. */
    Column(int position, String heading, ColumnMeaning meaning, String unitText, boolean flipped, List<String> legend,
            boolean byHand) {
        this(position, heading, meaning, unitText, flipped, legend, byHand, -1);
    }

    boolean isMetric() {
        return meaning != null && meaning.metric() != null;
    }

    Metric metric() {
        return meaning.metric();
    }

    boolean is(ColumnRole role) {
        return meaning != null && meaning.role() == role;
    }

    boolean isRead() {
        return meaning != null && meaning.role() != ColumnRole.IGNORE;
    }

    Column withMeaning(ColumnMeaning meaning) {
        return new Column(position, heading, meaning, unitText, flipped, legend, byHand, letters);
    }

    Column withLetters(int letters) {
        return new Column(position, heading, meaning, unitText, flipped, legend, byHand, letters);
    }

    /** What stands in its cell of a row, with the direction from the column beside it. */
    String text(CsvRow row) {
        String cell = row.cell(position);
        String letter = letters < 0 ? "" : CellText.clean(row.cell(letters));
        return CellText.saysNothing(letter) || CellText.saysNothing(CellText.clean(cell)) ? cell : cell + " " + letter;
    }

    /** The unit given; null where none is, or where it is none of this reading. */
    Unit unit() {
        if (!isMetric() || unitText.isEmpty()) {
            return null;
        }
        return UnitWords.unit(unitText, metric().dimension()).orElse(null);
    }

    /** How people find it: its heading, else its place. */
    String name() {
        return heading.isEmpty() ? "column " + (position + 1) : "'" + heading + "'";
    }
}
