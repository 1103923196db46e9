package gripwright.charts;

import java.util.List;

/**
 * What a picture of the order of play shows: shots from left to right as they were hit, stints as grounds, the drift
 * as a thin line. Values in the unit shown.
 *
 * @param title the metric with its unit
 * @param lowWord what lower values are called; may be empty
 * @param highWord what higher values are called; may be empty
 * @param scale the upright axis
 * @param stints in order of play
 * @param driftFrom the drift line at the first shot; null where drift was not estimated
 * @param driftTo the drift line at the last shot
 * @param decimalMark '.' or ','
 */
public record PlayOrder(String title, String lowWord, String highWord, Scale scale, List<Run> stints,
        Double driftFrom, Double driftTo, char decimalMark) {

    /** One stint: its configuration's mark, its shots in order (NaN where the reading is missing) and their mean. */
    public record Run(Mark mark, List<Strip.Dot> shots, Double mean) {

        public Run {
            shots = List.copyOf(shots);
        }
    }

    public PlayOrder {
        stints = List.copyOf(stints);
    }
}
