package gripwright.intake;

import gripwright.model.Metric;
import gripwright.model.SignConvention;
import gripwright.units.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;

/** Writes a table of readings as a CSV file in any dialect, for export and for tests. */
public final class CsvWriter {

    private static final int GROUP = 3;

    private final CsvFormat format;

    private CsvWriter(CsvFormat format) {
        this.format = format;
    }

    /** Writes in this format. */
    public static CsvWriter with(CsvFormat format) {
        return new CsvWriter(format);
    }

    /** The bytes of the file; characters that the encoding lacks become '?'. */
    public byte[] write(CsvTable table) {
        String text = text(table);
        Charset charset = format.charset();
        String marked = format.byteOrderMark() && !charset.equals(StandardCharsets.UTF_16) ? "\uFEFF" + text : text;
        return marked.getBytes(charset);
    }

    /** The characters of the file. */
    public String text(CsvTable table) {
        StringBuilder text = new StringBuilder();
        format.titles().forEach(title -> text.append(title).append(format.lineEnd()));
        line(text, table.columns().stream().map(this::heading).toList());
        if (format.unitPlace() == CsvFormat.UnitPlace.LINE_BELOW) {
            line(text, table.columns().stream().map(c -> c.metric() == null ? "" : unit(c.metric()).symbol()).toList());
        }
        for (CsvTable.Row row : table.rows()) {
            List<String> cells = new ArrayList<>();
            for (ColumnMeaning column : table.columns()) {
                cells.add(column.metric() == null ? row.texts().getOrDefault(column.role(), "")
                        : cell(column.metric(), row.readings().given(column.metric())));
            }
            line(text, cells);
        }
        if (format.summaries()) {
            summary(text, table, "Average", values -> values.average().orElseThrow());
            summary(text, table, "Min", values -> values.min().orElseThrow());
            summary(text, table, "Max", values -> values.max().orElseThrow());
        }
        return text.toString();
    }

    private void summary(StringBuilder text, CsvTable table, String label, ToDoubleFunction<DoubleStream> of) {
        List<String> cells = new ArrayList<>();
        for (ColumnMeaning column : table.columns()) {
            double[] values = column.metric() == null ? new double[0] : table.rows().stream()
                    .map(row -> row.readings().given(column.metric())).filter(OptionalDouble::isPresent)
                    .mapToDouble(OptionalDouble::getAsDouble).toArray();
            cells.add(values.length == 0 ? ""
                    : cell(column.metric(), OptionalDouble.of(of.applyAsDouble(DoubleStream.of(values)))));
        }
        cells.set(0, label);
        line(text, cells);
    }

    private void line(StringBuilder text, List<String> cells) {
        for (int i = 0; i < cells.size(); i++) {
            text.append(i == 0 ? "" : String.valueOf(format.delimiter())).append(quoted(cells.get(i)));
        }
        text.append(format.lineEnd());
    }

    private String quoted(String cell) {
        boolean special = cell.indexOf(format.delimiter()) >= 0 || cell.indexOf('"') >= 0 || cell.indexOf('\n') >= 0
                || cell.indexOf('\r') >= 0 || cell.startsWith(" ");
        return special ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
    }

    private String heading(ColumnMeaning column) {
        if (column.metric() == null) {
            return capitalised(switch (column.role()) {
                case SHOT_ID -> "shot";
                case KIND -> "kind";
                case SET_ASIDE -> "set aside";
                case CHANGED -> "grip changed";
                default -> column.role().text();
            });
        }
        String name = format.headings().getOrDefault(column.metric(), capitalised(column.metric().text()));
        String symbol = unit(column.metric()).symbol();
        if (symbol.isEmpty()) {
            return name;
        }
        return switch (format.unitPlace()) {
            case BRACKETS -> name + " [" + symbol + "]";
            case PARENTHESES -> name + " (" + symbol + ")";
            case LINE_BELOW, CELLS -> name;
        };
    }

    private static String capitalised(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private Unit unit(Metric metric) {
        return format.units().of(metric.dimension());
    }

    private String cell(Metric metric, OptionalDouble reading) {
        if (reading.isEmpty()) {
            return format.blank();
        }
        Unit unit = unit(metric);
        double value = unit.fromInternal(reading.getAsDouble());
        String symbol = format.unitPlace() == CsvFormat.UnitPlace.CELLS && !unit.symbol().isEmpty()
                ? " " + unit.symbol() : "";
        String size = number(Math.abs(value), format.decimals(metric.dimension()));
        boolean zero = size.chars().noneMatch(c -> c >= '1' && c <= '9');
        boolean worded = format.signs() != CsvFormat.Signs.PLAIN && metric.sign() != SignConvention.UNSIGNED;
        if (!worded || zero) {
            return (value < 0 && !zero ? format.minus() : "") + size + symbol;
        }
        String word = word(metric, value);
        return format.signs() == CsvFormat.Signs.LETTER_BEFORE ? word + " " + size + symbol : size + symbol + " " + word;
    }

    private String word(Metric metric, double value) {
        String word = format.hand() == null ? spatialWord(metric, value) : metric.sign().word(value, format.hand());
        if (format.signs() == CsvFormat.Signs.WORD_AFTER) {
            return word;
        }
        return switch (metric.sign()) {
            case FACE, PATH, FACE_TO_PATH, SPIN_AXIS, RIGHT -> value > 0 ? "R" : "L";
            case TOE_UP -> value > 0 ? "TU" : "TD";
            case TOWARDS_TOE -> value > 0 ? "T" : "H";
            case UP -> value > 0 ? "U" : "D";
            case CLOSING -> value > 0 ? "C" : "O";
            case UNSIGNED -> "";
        };
    }

    private static String spatialWord(Metric metric, double value) {
        return switch (metric.sign()) {
            case FACE, PATH, FACE_TO_PATH, SPIN_AXIS -> value > 0 ? "right" : "left";
            default -> metric.sign().word(value, gripwright.model.Handedness.RIGHT);
        };
    }

    private String number(double size, int decimals) {
        String plain = BigDecimal.valueOf(size).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString();
        int point = plain.indexOf('.');
        String whole = point < 0 ? plain : plain.substring(0, point);
        String fraction = point < 0 ? "" : format.decimalMark() + plain.substring(point + 1);
        if (format.thousands() == null || whole.length() <= GROUP) {
            return whole + fraction;
        }
        StringBuilder grouped = new StringBuilder(whole);
        for (int at = whole.length() - GROUP; at > 0; at -= GROUP) {
            grouped.insert(at, format.thousands());
        }
        return grouped + fraction;
    }
}
