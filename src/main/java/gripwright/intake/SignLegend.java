package gripwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Reads what a heading says about its signs: 'R+ L-', '+ = open', 'left positive', 'minus means heel'.
 *
 * <p>A legend is a '+' or '-' followed by the words that it stands for, in lower case: '+r', '-heel'.
 */
final class SignLegend {

    private static final String PLUS = "+";
    private static final String MINUS = "-";
    private static final Set<String> PLUS_WORDS = Set.of("+", "positive", "pos", "plus");
    private static final Set<String> MINUS_WORDS = Set.of("-", "negative", "neg", "minus");
    /** Words between a sign and its side; taken off at both ends, since 'in to out' has one inside. */
    private static final Set<String> BETWEEN = Set.of("is", "are", "means", "for", "to", "towards", "toward", "when", "the",
            "if", "values", "numbers", "=", ":");

    private SignLegend() {
    }

    /** The legends in a piece of a heading; empty where it says nothing about signs. */
    static List<String> of(String piece) {
        if (CellText.hasDigit(piece)) {
            return List.of();
        }
        List<String> tokens = tokens(piece.toLowerCase(Locale.ROOT));
        List<Integer> signs = new ArrayList<>();
        for (int i = 0; i < tokens.size(); i++) {
            if (isSign(tokens.get(i))) {
                signs.add(i);
            }
        }
        if (signs.size() == 1) {
            return legend(tokens);
        }
        if (signs.size() != 2) {
            return List.of();
        }
        // 'R+ L-' parts after its first sign, '+R -L' before its second.
        int part = signs.get(0) == 0 ? signs.get(1) : signs.get(0) + 1;
        List<String> both = new ArrayList<>(legend(tokens.subList(0, part)));
        both.addAll(legend(tokens.subList(part, tokens.size())));
        return both;
    }

    private static List<String> legend(List<String> tokens) {
        String sign = tokens.stream().filter(SignLegend::isSign).findFirst().orElse("");
        List<String> words = new ArrayList<>(tokens.stream().filter(token -> !isSign(token)).toList());
        while (!words.isEmpty() && BETWEEN.contains(words.get(0))) {
            words.remove(0);
        }
        while (!words.isEmpty() && BETWEEN.contains(words.get(words.size() - 1))) {
            words.remove(words.size() - 1);
        }
        String side = String.join(" ", words);
        return side.chars().anyMatch(Character::isLetter) ? List.of(sign + side) : List.of();
    }

    private static boolean isSign(String token) {
        return token.equals(PLUS) || token.equals(MINUS);
    }

    /** The words, with a sign at a word's end as a word of its own; the dash inside 'in-out' is none. */
    private static List<String> tokens(String piece) {
        List<String> tokens = new ArrayList<>();
        String spaced = piece.replaceAll("(?<=[+-])/|/(?=[+-])", " ").replace("=", " = ").replace(":", " : ");
        for (String word : spaced.strip().split("\\s+")) {
            String core = word;
            if (core.length() > 1 && isSign(core.substring(0, 1))) {
                tokens.add(core.substring(0, 1));
                core = core.substring(1);
            }
            boolean signed = core.length() > 1 && isSign(core.substring(core.length() - 1));
            tokens.add(asSign(signed ? core.substring(0, core.length() - 1) : core));
            if (signed) {
                tokens.add(core.substring(core.length() - 1));
            }
        }
        return tokens;
    }

    private static String asSign(String word) {
        return PLUS_WORDS.contains(word) ? PLUS : MINUS_WORDS.contains(word) ? MINUS : word;
    }
}
