package gripwright.desktop.bay;

import gripwright.comparison.Comparison;
import gripwright.comparison.MishitFlag;
import gripwright.model.Metric;
import gripwright.model.ReadingText;
import gripwright.model.Shot;
import gripwright.model.Stint;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A shot in the list of the stint.
 *
 * @param shotId which shot
 * @param number its number in the stint, 'S' for a settling swing's
 * @param cells the chosen readings, short
 * @param mark what stands behind it: 'aside: mishit', 'looks like a mishit', 'may still grow'; may be empty
 * @param setAside whether it is set aside
 * @param flagged whether it looks like a mishit
 * @param settling whether it is a settling swing, or of a stint that isn't scored
 */
public record ShotRow(String shotId, String number, List<String> cells, String mark, boolean setAside, boolean flagged,
        boolean settling) {

    public ShotRow {
        cells = List.copyOf(cells);
    }

    /** The shots of a stint, newest first. */
    static List<ShotRow> of(Stint stint, List<Metric> chosen, ReadingText text, Comparison comparison) {
        List<ShotRow> rows = new ArrayList<>();
        for (int index = stint.shots().size() - 1; index >= 0; index--) {
            Shot shot = stint.shots().get(index);
            String flag = comparison == null ? "" : comparison.flag(shot.id()).map(MishitFlag::sentence).orElse("");
            rows.add(new ShotRow(shot.id(), String.valueOf(index + 1),
                    chosen.stream().map(metric -> cell(shot, metric, text)).toList(),
                    mark(shot, stint.isScoredAt(index), flag), shot.isSetAside(), !flag.isEmpty(),
                    !stint.isScoredAt(index)));
        }
        return rows;
    }

    private static String cell(Shot shot, Metric metric, ReadingText text) {
        OptionalDouble value = shot.readings().value(metric);
        if (value.isEmpty()) {
            return "\u2013";
        }
        String word = text.word(metric, value.getAsDouble());
        return word.isEmpty() ? text.number(metric, value.getAsDouble())
                : text.number(metric, Math.abs(value.getAsDouble())) + " " + word.charAt(0);
    }

    private static String mark(Shot shot, boolean scored, String flag) {
        if (shot.isSetAside()) {
            return "aside: " + shot.setAsideReason();
        }
        if (shot.provisional()) {
            return "line may still grow";
        }
        if (!scored) {
            return "settles";
        }
        return flag.isEmpty() ? "" : "looks like a mishit";
    }
}
