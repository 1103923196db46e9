package gripwright.intake;

import gripwright.model.Metric;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The terms of the trade that a column's heading can be, with their synonyms and abbreviations; a term that can mean
 * several things has several meanings, and is asked about.
 *
 * <p>A term is a set of words: 'carry side' is 'side carry'. Small words that change nothing are left out.
 */
final class Vocabulary {

    private static final Set<String> SMALL_WORDS = Set.of("the", "of", "to", "at", "for", "and", "&", "a", "measured",
            "calculated", "calc", "est", "estimated", "modelled", "modeled", "reading", "value", "#");

    /** Abbreviations, heeded where another word stands beside them: 'Desc' alone may be a description. */
    private static final Map<String, String> ABBREVIATIONS = Map.ofEntries(Map.entry("spd", "speed"),
            Map.entry("vel", "velocity"), Map.entry("dist", "distance"), Map.entry("ang", "angle"),
            Map.entry("ht", "height"), Map.entry("dir", "direction"), Map.entry("tgt", "target"),
            Map.entry("dev", "deviation"), Map.entry("att", "attack"), Map.entry("dyn", "dynamic"),
            Map.entry("tot", "total"), Map.entry("desc", "descent"), Map.entry("rel", "relative"),
            Map.entry("horiz", "horizontal"), Map.entry("vert", "vertical"), Map.entry("diff", "difference"),
            Map.entry("clubhead", "club head"), Map.entry("clubface", "club face"));

    private static final Map<String, Set<ColumnMeaning>> TERMS = terms();

    private Vocabulary() {
    }

    private static Map<String, Set<ColumnMeaning>> terms() {
        Map<String, Set<ColumnMeaning>> terms = new HashMap<>();
        for (Metric metric : Metric.values()) {
            put(terms, metric, metric.key(), metric.text());
        }
        delivery(terms);
        flight(terms);
        others(terms);
        unclear(terms);
        return Map.copyOf(terms);
    }

    private static void delivery(Map<String, Set<ColumnMeaning>> terms) {
        put(terms, Metric.CLUB_SPEED, "clubhead speed", "club head speed", "head speed", "swing speed", "club velocity",
                "clubhead velocity", "club spd", "chs", "club speed impact",
                "club head velocity", "v club");
        put(terms, Metric.CLUB_PATH, "path", "swing path", "path angle", "club path angle", "clubhead path",
                "club head path", "head path", "horizontal path", "path in out", "club path in out", "path impact");
        put(terms, Metric.FACE_ANGLE, "face", "club face", "clubface", "club face angle", "clubface angle",
                "face to target", "face target angle", "face angle to target", "face direction",
                "face impact", "club face impact", "face angle impact");
        put(terms, Metric.FACE_TO_PATH, "face path", "ftp", "f2p", "face to path angle", "face path angle",
                "face angle to path", "club face to path", "clubface to path",
                "face relative path", "face angle relative path", "face path difference", "face angle minus path",
                "face minus path");
        put(terms, Metric.ATTACK_ANGLE, "angle of attack", "aoa", "attack", "club attack angle", "vertical path");
        put(terms, Metric.DYNAMIC_LOFT, "delivered loft", "loft at impact", "impact loft", "dyn loft", "dynamic loft angle", "effective loft");
        put(terms, Metric.DYNAMIC_LIE, "delivered lie", "lie at impact", "impact lie", "dyn lie", "dynamic lie angle", "toe up down");
        put(terms, Metric.CLOSURE_RATE, "rate of closure", "roc", "face closure rate", "closing rate", "closure",
                "face closing rate", "face rotation rate", "closure speed");
        put(terms, Metric.STRIKE_SIDEWAYS, "strike heel toe", "heel toe", "strike horizontal", "horizontal strike",
                "strike x", "impact x", "horizontal impact", "impact horizontal", "horizontal impact location",
                "horizontal impact position", "impact heel toe", "strike point heel toe", "impact toe heel",
                "strike sideways", "lateral impact", "horizontal strike point", "strike point sideways",
                "horizontal face impact", "strike toe", "strike lateral", "impact offset heel toe");
        put(terms, Metric.STRIKE_UP, "strike low high", "low high", "strike vertical", "vertical strike", "strike y",
                "impact y", "vertical impact", "impact vertical", "vertical impact location",
                "vertical impact position", "impact low high", "strike point low high", "strike height",
                "impact height", "vertical strike point", "strike point up", "vertical face impact", "strike up");
    }

    private static void flight(Map<String, Set<ColumnMeaning>> terms) {
        put(terms, Metric.BALL_SPEED, "ball velocity", "ball spd", "initial ball speed", "ball launch speed",
                "launch speed", "launch velocity", "initial velocity ball", "v ball");
        put(terms, Metric.SPEED_RATIO, "ball club speed ratio", "ball to club ratio", "ball club ratio",
                "smash factor", "smash", "speed ratio ball club");
        put(terms, Metric.START_DIRECTION, "launch direction", "horizontal launch", "horizontal launch angle",
                "launch angle horizontal", "launch horizontal", "azimuth", "launch azimuth", "start line",
                "starting direction", "ball direction", "ball start direction", "initial direction", "hla",
                "side angle", "launch h", "start angle", "start dir", "launch dir", "start line l r", "start direction l r");
        put(terms, Metric.LAUNCH_ANGLE, "launch", "vertical launch", "vertical launch angle", "launch angle vertical",
                "launch vertical", "vla", "launch v", "ball launch angle", "launch elevation",
                "take off angle", "takeoff angle");
        put(terms, Metric.APEX, "apex height", "peak height", "max height", "maximum height", "height", "ball height",
                "peak", "height apex", "max ball height");
        put(terms, Metric.DESCENT_ANGLE, "angle of descent", "descent", "landing angle", "land angle", "descending angle");
        put(terms, Metric.SPIN_RATE, "spin", "total spin", "ball spin", "ball spin rate", "total spin rate");
        put(terms, Metric.SPIN_AXIS, "axis tilt", "spin tilt", "axis", "spin axis angle", "spin axis tilt",
                "tilt of spin axis", "tilt axis", "ball spin axis");
        put(terms, Metric.CARRY, "carry distance", "carry dist", "carry length", "distance carry", "ball carry", "carry flat");
        put(terms, Metric.OFFLINE, "off line", "side", "side carry", "lateral", "lateral deviation", "deviation",
                "side distance", "carry offline", "offline distance", "lateral carry", "carry side distance",
                "carry deviation", "side dist", "offline carry", "side deviation", "lateral offset",
                "offline l r", "side l r", "deviation from line", "deviation from target line", "distance from target line");
        put(terms, Metric.TOTAL, "total distance", "total dist", "total length", "distance total", "carry and roll");
    }

    private static void others(Map<String, Set<ColumnMeaning>> terms) {
        put(terms, ColumnRole.SHOT_ID, "shot", "shot id", "shot no", "shot no.", "shot nr", "shot number", "shot num", "#",
                "no", "no.", "nr", "id", "shot index", "index", "swing", "swing no", "swing number", "ball no", "stroke");
        put(terms, ColumnRole.TIME, "time", "timestamp", "time stamp", "date time", "datetime", "clock",
                "time of day", "shot time", "date/time", "date and time", "recorded", "recorded at");
        put(terms, ColumnRole.DATE, "date", "day", "shot date");
        put(terms, ColumnRole.STINT, "stint", "stint no", "stint number", "block", "series");
        put(terms, ColumnRole.CONFIGURATION, "configuration", "config", "grip", "grip configuration", "grip label",
                "configuration label", "grip name", "build");
        put(terms, ColumnRole.KIND, "kind", "stint kind", "kind of stint", "stint type", "shot kind", "shot type",
                "phase");
        put(terms, ColumnRole.SET_ASIDE, "set aside", "aside", "excluded", "exclude", "left out", "set aside reason",
                "reason set aside", "reason for setting aside", "why set aside");
        put(terms, ColumnRole.CHANGED, "grip changed", "changed", "regripped", "changed before", "grip off",
                "grip changed before");
        put(terms, ColumnRole.NOTE, "note", "notes", "comment", "comments", "remark", "remarks");
        put(terms, ColumnRole.CLUB, "club", "club name", "club type", "club used");
        put(terms, ColumnRole.PLAYER, "player", "golfer", "player name", "name");
    }

    /** Terms that the trade uses for more than one thing. */
    private static void unclear(Map<String, Set<ColumnMeaning>> terms) {
        for (String speed : List.of("speed", "velocity", "impact speed")) {
            put(terms, Metric.CLUB_SPEED, speed);
            put(terms, Metric.BALL_SPEED, speed);
        }
        for (String distance : List.of("distance", "dist", "length", "range")) {
            put(terms, Metric.CARRY, distance);
            put(terms, Metric.TOTAL, distance);
        }
        put(terms, Metric.FACE_ANGLE, "direction", "angle");
        put(terms, Metric.START_DIRECTION, "direction", "angle");
        put(terms, Metric.LAUNCH_ANGLE, "angle");
        putUnsure(terms, Metric.SPIN_RATE, "backspin", "back spin", "back spin rate", "backspin rate");
        putUnsure(terms, Metric.DYNAMIC_LOFT, "loft", "loft angle");
        putUnsure(terms, Metric.DYNAMIC_LIE, "lie", "lie angle");
        putUnsure(terms, Metric.OFFLINE, "total side", "side total", "total offline", "offline total");
        putUnsure(terms, Metric.CLUB_PATH, "swing direction");
        putUnsure(terms, Metric.CLOSURE_RATE, "face rotation");
    }

    private static void put(Map<String, Set<ColumnMeaning>> terms, Metric metric, String... names) {
        put(terms, ColumnMeaning.of(metric), names);
    }

    private static void put(Map<String, Set<ColumnMeaning>> terms, ColumnRole role, String... names) {
        put(terms, ColumnMeaning.of(role), names);
    }

    /** A term that may well be something the catalogue does not have. */
    private static void putUnsure(Map<String, Set<ColumnMeaning>> terms, Metric metric, String... names) {
        put(terms, metric, names);
        put(terms, ColumnRole.IGNORE, names);
    }

    private static void put(Map<String, Set<ColumnMeaning>> terms, ColumnMeaning meaning, String... names) {
        for (String name : names) {
            terms.computeIfAbsent(key(HeaderText.words(name)), k -> new LinkedHashSet<>()).add(meaning);
        }
    }

    private static String key(String words) {
        Set<String> sorted = new TreeSet<>();
        String[] all = words.split("[ ,;]+");
        for (String word : all) {
            if (!word.isEmpty() && !SMALL_WORDS.contains(word)) {
                String whole = all.length > 1 ? ABBREVIATIONS.getOrDefault(word, word) : word;
                sorted.addAll(Arrays.asList(whole.split(" ")));
            }
        }
        return sorted.isEmpty() ? String.join(" ", Arrays.asList(all)) : String.join(" ", sorted);
    }

    /** What these words can mean, in order of likelihood of being asked for; empty for an unknown term. */
    static Set<ColumnMeaning> meanings(String words) {
        return TERMS.getOrDefault(key(words), Set.of());
    }
}
