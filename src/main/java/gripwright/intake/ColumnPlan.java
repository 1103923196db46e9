package gripwright.intake;

import gripwright.model.Metric;
import gripwright.units.Unit;

/**
 * How the numbers of one column become readings.
 *
 * @param column the column
 * @param unit the unit of numbers that carry none; null while it is open
 * @param sign +1, or −1 where the column's signs are the other way round; 0 while it is open
 */
record ColumnPlan(Column column, Unit unit, int sign) {

    Metric metric() {
        return column.metric();
    }
}
