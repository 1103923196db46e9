package gripwright.intake;

import java.util.Locale;
import java.util.Set;

/** Knows the words that begin a line of averages or extremes below the shots. */
final class SummaryWords {

    private static final Set<String> WORDS = Set.of("average", "averages", "avg", "mean", "means", "median", "sd", "std",
            "std dev", "stddev", "stdev", "st dev", "standard deviation", "std deviation", "deviation", "min",
            "minimum", "max", "maximum", "total", "totals", "sum", "range", "count", "n", "cv", "variance", "spread",
            "s d", "overall", "summary", "\u00F8", "ave", "consistency", "best", "worst", "lowest", "highest",
            "mittelwert", "durchschnitt", "schnitt", "standardabweichung", "stdabw", "std abw", "moyenne", "\u00E9cart type",
            "ecart type", "promedio", "media", "desviaci\u00F3n est\u00E1ndar", "desviacion estandar", "medelv\u00E4rde",
            "medel", "snitt", "standardavvikelse", "\u5E73\u5747", "\u6A19\u6E96\u504F\u5DEE", "\u03C3");
    /** What can stand for nothing else, not even as a note or a label. */
    private static final Set<String> CLEAR = Set.of("average", "averages", "avg", "mean", "median", "std dev", "stddev",
            "stdev", "st dev", "standard deviation", "std deviation", "\u00F8", "mittelwert", "durchschnitt",
            "standardabweichung", "moyenne", "\u00E9cart type", "promedio", "medelv\u00E4rde", "standardavvikelse");
    private static final Set<String> BEGINNINGS = Set.of("average", "avg", "mean", "median", "std", "stdev",
            "standard deviation", "minimum", "maximum", "sd");

    private SummaryWords() {
    }

    static boolean isSummary(String clean) {
        if (clean.isEmpty() || clean.length() > 40 || !Character.isLetter(clean.charAt(0))) {
            return false;
        }
        String words = words(clean);
        if (WORDS.contains(words)) {
            return true;
        }
        return BEGINNINGS.stream().anyMatch(beginning -> words.startsWith(beginning + " "));
    }

    /** Whether a text is nothing but a word for an average or a deviation. */
    static boolean isClear(String clean) {
        return CLEAR.contains(words(clean));
    }

    /** Whether it ends with one: 'A mean', '2 shots average'. */
    static boolean endsClear(String clean) {
        String words = words(clean);
        return CLEAR.stream().anyMatch(clear -> words.equals(clear) || words.endsWith(" " + clear));
    }

    private static String words(String clean) {
        return clean.toLowerCase(Locale.ROOT).replaceAll("[(\\[].*", "").replaceAll("[.:_\\-=]+", " ").strip()
                .replaceAll("\\s+", " ");
    }
}
