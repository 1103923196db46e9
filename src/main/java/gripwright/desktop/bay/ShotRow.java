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
 * @param number its number in the stint
 * @param cells the chosen readings, short
 * @param mark what stands behind it: 'aside', 'mishit?', 'growing'; may be empty
 * @param reason why it is set aside or flagged; may be empty
 * @param setAside whether it is set aside
 * @param flagged whether it looks like a mishit
 * @param settling whether it is a settling swing, or of a stint that isn't scored
 */
public record ShotRow(String shotId, String number, List<String> cells, String mark, String reason, boolean setAside, boolean flagged,
        boolean settling) {

    /** Cells that fit beside the mark. */
    static final int MOST_CELLS = 3;

    private static final int MOST_ROWS = 60;

    public ShotRow {
        cells = List.copyOf(cells);
    }

    /** The shots of a stint, newest first; of a very long one the newest sixty. */
    static List<ShotRow> of(Stint stint, List<Metric> chosen, ReadingText text, Comparison comparison) {
        List<ShotRow> rows = new ArrayList<>();
        for (int index = stint.shots().size() - 1; index >= Math.max(0, stint.shots().size() - MOST_ROWS); index--) {
            Shot shot = stint.shots().get(index);
            String flag = comparison == null ? "" : comparison.flag(shot.id()).map(MishitFlag::sentence).orElse("");
            rows.add(new ShotRow(shot.id(), String.valueOf(index + 1),
                    chosen.stream().limit(MOST_CELLS).map(metric -> cell(shot, metric, text)).toList(),
                    mark(shot, stint.isScoredAt(index), flag),
                    shot.isSetAside() ? shot.setAsideReason() : flag, shot.isSetAside(), !flag.isEmpty(),
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
            return "aside";
        }
        if (shot.provisional()) {
            return "growing";
        }
        if (!scored) {
            return "settles";
        }
        return flag.isEmpty() ? "" : "mishit?";
    }
}
