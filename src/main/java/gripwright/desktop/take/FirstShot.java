package gripwright.desktop.take;

import gripwright.intake.IntakeResult;
import gripwright.model.Metric;
import gripwright.model.ReadingText;
import java.util.OptionalDouble;

/** The first shot of a file as the shop reads it, so that a wrong unit or sign is seen before the shots are taken. */
final class FirstShot {

    private FirstShot() {
    }

    /** The first reading of a metric: '0.5\u00B0 closed', '86.1 mph'; empty where no shot has one. */
    static String reading(IntakeResult result, Metric metric, ReadingText text) {
        return result.rows().stream().map(row -> row.shot().readings().given(metric)).filter(OptionalDouble::isPresent)
                .findFirst().map(value -> withUnit(text, metric, value.getAsDouble())).orElse("");
    }

    private static String withUnit(ReadingText text, Metric metric, double value) {
        String symbol = text.unit(metric).symbol();
        String unit = symbol.isEmpty() || symbol.equals("\u00B0") ? symbol : " " + symbol;
        String word = text.word(metric, value);
        return word.isEmpty() ? text.number(metric, value) + unit
                : text.number(metric, Math.abs(value)) + unit + " " + word;
    }
}
