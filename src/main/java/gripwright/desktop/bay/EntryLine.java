package gripwright.desktop.bay;

import gripwright.model.Metric;
import gripwright.model.ReadingText;
import gripwright.model.Readings;
import gripwright.model.ShopSettings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The line that shots are typed into: the shop's chosen columns from left to right.
 *
 * @param columns in the shop's order
 */
public record EntryLine(List<EntryColumn> columns) {

    /** What became of a whole line. */
    public sealed interface Outcome {

        /** A shot; {@code unusual} has a sentence for each unusual reading. */
        record Shot(Readings readings, List<String> unusual) implements Outcome {
        }

        /** Nothing was typed. */
        record Empty() implements Outcome {
        }

        /** The first cell that can't be read, by its place from 0, and why. */
        record Refused(int cell, String sentence) implements Outcome {
        }
    }

    public EntryLine {
        columns = List.copyOf(columns);
    }

    /** The line of this shop for a player of this hand. */
    public static EntryLine of(ShopSettings shop, ReadingText text) {
        return new EntryLine(shop.entryColumns().stream().map(metric -> new EntryColumn(metric, text)).toList());
    }

    /** The metrics from left to right. */
    public List<Metric> metrics() {
        return columns.stream().map(EntryColumn::metric).toList();
    }

    /** Reads a line; missing cells at its end are blank, cells beyond the columns are refused. */
    public Outcome read(List<String> cells) {
        Readings readings = Readings.none();
        List<String> unusual = new ArrayList<>();
        for (int cell = 0; cell < cells.size(); cell++) {
            if (cell >= columns.size()) {
                if (cells.get(cell).isBlank()) {
                    continue;
                }
                return new Outcome.Refused(cell, "The line has more cells than the " + columns.size()
                        + " columns; the shop's columns are chosen in Setup.");
            }
            EntryCell read = columns.get(cell).read(cells.get(cell));
            if (read instanceof EntryCell.Wrong wrong) {
                return new Outcome.Refused(cell, wrong.sentence());
            }
            if (read instanceof EntryCell.Reading reading) {
                readings = readings.with(columns.get(cell).metric(), reading.internal());
                if (reading.isUnusual()) {
                    unusual.add(reading.unusual());
                }
            }
        }
        return readings.isEmpty() ? new Outcome.Empty() : new Outcome.Shot(readings, List.copyOf(unusual));
    }

    /**
     * Cells of one pasted line: split at tabs, else at semicolons, else at commas where the decimal mark is a dot;
     * a line without any of them is one cell.
     */
    public List<String> cells(String line, char decimalMark) {
        return separator(line, decimalMark).map(mark -> List.of(line.split(mark, -1))).orElse(List.of(line)).stream()
                .map(String::strip).toList();
    }

    private static Optional<String> separator(String line, char decimalMark) {
        if (line.indexOf('\t') >= 0) {
            return Optional.of("\t");
        }
        if (line.indexOf(';') >= 0) {
            return Optional.of(";");
        }
        return line.indexOf(',') >= 0 && decimalMark == '.' ? Optional.of(",") : Optional.empty();
    }
}
