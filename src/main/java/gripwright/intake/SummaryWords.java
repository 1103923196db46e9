package gripwright.intake;

import java.util.Locale;
import java.util.Set;

/** Knows the words that begin a line of averages or extremes below the shots. */
final class SummaryWords {

    private static final Set<String> WORDS = Set.of("average", "averages", "avg", "mean", "means", "median", "sd", "std",
            "std dev", "stddev", "stdev", "st dev", "standard deviation", "std deviation", "deviation", "min",
            "minimum", "max", "maximum", "total", "totals", "sum", "range", "count", "n", "cv", "variance", "spread",
            "s d", "overall", "summary", "\u00F8", "ave", "consistency", "best", "worst", "lowest", "highest");
    private static final Set<String> BEGINNINGS = Set.of("average", "avg", "mean", "median", "std", "stdev",
            "standard deviation", "minimum", "maximum", "sd");

    private SummaryWords() {
    }

    static boolean isSummary(String clean) {
        if (clean.isEmpty() || clean.length() > 40 || !Character.isLetter(clean.charAt(0))) {
            return false;
        }
        String words = clean.toLowerCase(Locale.ROOT).replaceAll("[(\\[].*", "").replaceAll("[.:_\\-=]+", " ").strip()
                .replaceAll("\\s+", " ");
        if (WORDS.contains(words)) {
            return true;
        }
        return BEGINNINGS.stream().anyMatch(beginning -> words.startsWith(beginning + " "));
    }
}
