package gripwright.intake;

import gripwright.model.ClubTest;
import gripwright.model.Metric;
import gripwright.model.Readings;
import gripwright.model.Shot;
import gripwright.model.Stint;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A table of readings, to be written as a CSV file.
 *
 * @param columns what the columns hold, in order
 * @param rows the rows
 */
public record CsvTable(List<ColumnMeaning> columns, List<Row> rows) {

    /**
     * One row.
     *
     * @param texts what it says besides its readings
     * @param readings its readings
     */
    public record Row(Map<ColumnRole, String> texts, Readings readings) {

        public Row {
            texts = Map.copyOf(texts);
        }
    }

    public CsvTable {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** The same table with its columns in another order. */
    public CsvTable withColumns(List<ColumnMeaning> columns) {
        return new CsvTable(columns, rows);
    }

    /**
     * All shots of a test, with stint, configuration, kind and what was set aside, so that the file fills a test again.
     *
     * @param zone the time zone of the times written
     */
    public static CsvTable ofTest(ClubTest test, ZoneId zone) {
        List<Row> rows = new ArrayList<>();
        EnumMap<Metric, Boolean> read = new EnumMap<>(Metric.class);
        int number = 0;
        for (int s = 0; s < test.stints().size(); s++) {
            Stint stint = test.stints().get(s);
            String label = test.configuration(stint.configurationId()).orElseThrow().label();
            for (int i = 0; i < stint.shots().size(); i++) {
                Shot shot = stint.shots().get(i);
                number++;
                Map<ColumnRole, String> texts = new EnumMap<>(ColumnRole.class);
                texts.put(ColumnRole.SHOT_ID, String.valueOf(number));
                texts.put(ColumnRole.TIME, shot.at() == null ? "" : DateTimeFormatter.ISO_LOCAL_DATE_TIME.format(
                        shot.at().truncatedTo(ChronoUnit.SECONDS).atZone(zone).toLocalDateTime()).replace('T', ' '));
                texts.put(ColumnRole.STINT, String.valueOf(s + 1));
                texts.put(ColumnRole.CONFIGURATION, label);
                texts.put(ColumnRole.KIND, kind(stint, i));
                texts.put(ColumnRole.CHANGED, stint.changedBefore() ? "yes" : "no");
                texts.put(ColumnRole.SET_ASIDE, shot.isSetAside() ? shot.setAsideReason() : "");
                texts.put(ColumnRole.NOTE, shot.note());
                rows.add(new Row(texts, shot.readings()));
                shot.readings().values().keySet().forEach(metric -> read.put(metric, true));
            }
        }
        List<ColumnMeaning> columns = new ArrayList<>();
        List.of(ColumnRole.SHOT_ID, ColumnRole.TIME, ColumnRole.STINT, ColumnRole.CONFIGURATION, ColumnRole.KIND,
                ColumnRole.CHANGED).forEach(role -> columns.add(ColumnMeaning.of(role)));
        read.keySet().forEach(metric -> columns.add(ColumnMeaning.of(metric)));
        columns.add(ColumnMeaning.of(ColumnRole.SET_ASIDE));
        columns.add(ColumnMeaning.of(ColumnRole.NOTE));
        return new CsvTable(columns, rows);
    }

    private static String kind(Stint stint, int index) {
        return switch (stint.kind()) {
            case WARM_UP -> "warm-up";
            case SETTLING -> "settling";
            case SCORED -> index < stint.settlingSwings() ? "settling" : "scored";
        };
    }
}
