package gripwright.intake;

import gripwright.model.Metric;
import gripwright.model.SignConvention;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** The letters and words that say which way a reading points: L and R, heel and toe, open, in to out, draw, up. */
final class DirectionWords {

    private static final Map<SignConvention, Map<String, Way>> BY_CONVENTION = words();
    private static final Map<String, Way> STRIKE_HEIGHT = table("u up h hi high t top", "d down dn l lo low b bottom", "",
            "");

    private DirectionWords() {
    }

    /**
     * Which way a word points.
     *
     * @param sign +1 or −1 as a right-handed player's word
     * @param byHand whether a left-handed player means the other side by it
     */
    record Way(int sign, boolean byHand) {
    }

    private static Map<SignConvention, Map<String, Way>> words() {
        String right = "r right rt rgt";
        String left = "l left lt lft";
        String inOut = "in-out in-to-out inout intoout io i-o in/out i/o inside-out i2o in2out inside-to-out";
        String outIn = "out-in out-to-in outin outtoin oi o-i out/in o/i outside-in o2i out2in outside-to-in";
        String open = "o open op opn";
        String closed = "c closed cl cls shut close";
        Map<SignConvention, Map<String, Way>> words = new HashMap<>();
        words.put(SignConvention.FACE, table(right, left, open, closed));
        words.put(SignConvention.FACE_TO_PATH, table(right, left, open + " open-to-path", closed + " closed-to-path"));
        words.put(SignConvention.PATH, table(right, left, inOut, outIn));
        words.put(SignConvention.RIGHT, table(right, left, "push", "pull"));
        words.put(SignConvention.SPIN_AXIS, table(right, left, "f fade fd slice", "d draw dr hook"));
        words.put(SignConvention.UP, table("u up a ascending", "d down dn descending", "", ""));
        words.put(SignConvention.TOE_UP, table("up u toe-up tu toeup upright", "down d dn toe-down td toedown flat", "",
                ""));
        words.put(SignConvention.TOWARDS_TOE, table("t toe", "h heel hl", "", ""));
        words.put(SignConvention.CLOSING, table("c closing closed", "o opening open", "", ""));
        words.put(SignConvention.UNSIGNED, Map.of());
        return Map.copyOf(words);
    }

    private static Map<String, Way> table(String plus, String minus, String plusByHand, String minusByHand) {
        Map<String, Way> table = new HashMap<>();
        put(table, plus, new Way(1, false));
        put(table, minus, new Way(-1, false));
        put(table, plusByHand, new Way(1, true));
        put(table, minusByHand, new Way(-1, true));
        return Map.copyOf(table);
    }

    private static void put(Map<String, Way> table, String words, Way way) {
        for (String word : words.split(" ")) {
            if (!word.isEmpty()) {
                table.put(word, way);
            }
        }
    }

    /** The way a word points for a metric; null where it is no word for one. */
    static Way of(Metric metric, String text) {
        String word = text.strip().toLowerCase(Locale.ROOT).replaceAll("[.:()\\[\\]]", "").strip().replace(' ', '-')
                .replaceAll("-{2,}", "-");
        if (metric == Metric.STRIKE_UP) {
            return STRIKE_HEIGHT.get(word);
        }
        return BY_CONVENTION.get(metric.sign()).get(word);
    }
}
