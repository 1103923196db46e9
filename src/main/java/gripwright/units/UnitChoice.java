package gripwright.units;

import java.util.EnumMap;
import java.util.Map;

/** The units a shop reads and writes, chosen for each quantity by itself. */
public record UnitChoice(Map<Dimension, Unit> units) {

    /** Miles per hour, yards, inches and grams: what most imperial shops weigh and measure in. */
    public static UnitChoice imperial() {
        return metric()
                .with(Unit.MILES_PER_HOUR)
                .with(Unit.YARD)
                .with(Unit.FOOT_HIGH)
                .with(Unit.INCH);
    }

    /** Kilometres per hour, metres, millimetres and grams. */
    public static UnitChoice metric() {
        Map<Dimension, Unit> units = new EnumMap<>(Dimension.class);
        for (Dimension dimension : Dimension.values()) {
            units.put(dimension, dimension.internalUnit());
        }
        units.put(Dimension.SPEED, Unit.KILOMETRES_PER_HOUR);
        return new UnitChoice(units);
    }

    public UnitChoice {
        Map<Dimension, Unit> complete = new EnumMap<>(Dimension.class);
        for (Dimension dimension : Dimension.values()) {
            Unit unit = units.getOrDefault(dimension, dimension.internalUnit());
            if (unit.dimension() != dimension) {
                throw new IllegalArgumentException(
                        unit + " is no unit of " + dimension + "; choose one of that dimension.");
            }
            complete.put(dimension, unit);
        }
        units = java.util.Collections.unmodifiableMap(complete);
    }

    /** The unit chosen for a dimension; never null. */
    public Unit of(Dimension dimension) {
        return units.get(dimension);
    }

    /** This choice with one unit replaced. */
    public UnitChoice with(Unit unit) {
        Map<Dimension, Unit> changed = new EnumMap<>(units);
        changed.put(unit.dimension(), unit);
        return new UnitChoice(changed);
    }
}
