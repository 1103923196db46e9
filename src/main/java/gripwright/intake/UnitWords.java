package gripwright.intake;

import gripwright.units.Dimension;
import gripwright.units.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The ways people write units, and which unit each means for a quantity. */
final class UnitWords {

    private static final Map<String, List<Unit>> BY_WORD = words();

    private UnitWords() {
    }

    private static Map<String, List<Unit>> words() {
        Map<String, List<Unit>> words = new HashMap<>();
        put(words, "m/s mps m/sec ms-1 m\u00B7s-1 metrespersecond meterspersecond", Unit.METRES_PER_SECOND);
        put(words, "km/h kph kmh km/hr kmph km/hour kilometresperhour kilometersperhour", Unit.KILOMETRES_PER_HOUR);
        put(words, "mph mi/h mi/hr m.p.h. milesperhour mileperhour", Unit.MILES_PER_HOUR);
        put(words, "m metre metres meter meters mtr", Unit.METRE, Unit.METRE_HIGH);
        put(words, "yd yds yard yards yrd yrds", Unit.YARD, Unit.YARD_HIGH);
        put(words, "ft foot feet '", Unit.FOOT, Unit.FOOT_HIGH);
        put(words, "mm millimetre millimetres millimeter millimeters", Unit.MILLIMETRE);
        put(words, "cm centimetre centimetres centimeter centimeters", Unit.CENTIMETRE);
        put(words, "in inch inches \"", Unit.INCH);
        put(words, "\u00B0 deg degs degree degrees", Unit.DEGREE);
        put(words, "\u00B0/s deg/s deg/sec degs/s \u00B0/sec dps degree/s degrees/s degrees/sec degreespersecond "
                + "degreepersecond degpersec degpers", Unit.DEGREE_PER_SECOND);
        put(words, "rad/s rad/sec rads/s radianspersecond radpersec", Unit.RADIAN_PER_SECOND);
        put(words, "rpm r.p.m. rev/min revs/min r/min u/min 1/min min-1 revolutionsperminute",
                Unit.REVOLUTION_PER_MINUTE);
        put(words, "g gram grams gramme grammes", Unit.GRAM);
        put(words, "oz ounce ounces", Unit.OUNCE);
        put(words, "s sec secs second seconds", Unit.SECOND);
        return Map.copyOf(words);
    }

    private static void put(Map<String, List<Unit>> words, String spellings, Unit... units) {
        for (String spelling : spellings.split(" ")) {
            words.computeIfAbsent(spelling, s -> new ArrayList<>()).addAll(List.of(units));
        }
    }

    private static String compact(String text) {
        String compact = CellText.clean(text).toLowerCase(Locale.ROOT).replace(" ", "");
        return compact.length() > 2 && compact.endsWith(".") && !compact.contains(".p.")
                ? compact.substring(0, compact.length() - 1) : compact;
    }

    /** Whether this is a unit of anything. */
    static boolean isUnit(String text) {
        return BY_WORD.containsKey(compact(text));
    }

    /** The unit this text means for a quantity of this dimension; empty where it means none. */
    static Optional<Unit> unit(String text, Dimension dimension) {
        return BY_WORD.getOrDefault(compact(text), List.of()).stream()
                .filter(unit -> unit.dimension() == dimension).findFirst();
    }

    /** The units a quantity can be written in, the internal one first. */
    static List<Unit> choices(Dimension dimension) {
        List<Unit> choices = new ArrayList<>();
        for (Unit unit : Unit.values()) {
            if (unit.dimension() == dimension) {
                choices.add(unit);
            }
        }
        return choices;
    }

    /** Whether numbers of this dimension are always written in the one unit. */
    static boolean hasOneUnit(Dimension dimension) {
        return choices(dimension).size() == 1;
    }
}
