package gripwright.planning;

import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Grip;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What else the grips of a test differ in beside size and mass: firmness, texture, wear, rib, club; in sentences. */
public final class OtherDifferences {

    private OtherDifferences() {
    }

    /** One sentence for each property that differs or is known of some only; none with fewer than two configurations. */
    public static List<String> of(ClubTest test) {
        List<String> sentences = new ArrayList<>();
        if (test.configurations().size() < 2) {
            return sentences;
        }
        look(test, "firmness", grip -> word(grip.firmness()), sentences);
        look(test, "texture", grip -> word(grip.texture()), sentences);
        look(test, "rib", grip -> grip.ribbed() ? "ribbed" : "round", sentences);
        wear(test, sentences);
        clubs(test, sentences);
        return List.copyOf(sentences);
    }

    private static String word(Enum<?> value) {
        return value == null ? null : value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static void look(ClubTest test, String property, Function<Grip, String> of, List<String> sentences) {
        Map<String, List<String>> groups = new LinkedHashMap<>();
        for (Configuration configuration : test.configurations()) {
            String value = of.apply(configuration.grip());
            if (value != null) {
                groups.computeIfAbsent(value, key -> new ArrayList<>()).add(configuration.label());
            }
        }
        if (groups.size() > 1) {
            sentences.add("They differ in " + property + " too: " + described(groups)
                    + ". What that does can't be told from the rest.");
        }
    }

    private static String described(Map<String, List<String>> groups) {
        return groups.entrySet().stream().map(group -> FairTest.listed(group.getValue()) + " " + group.getKey())
                .collect(Collectors.joining(", "));
    }

    /** A worn gamer is slick and thinner: a fresh copy of it is the fair reference. */
    private static void wear(ClubTest test, List<String> sentences) {
        Map<String, List<String>> groups = new LinkedHashMap<>();
        for (Configuration configuration : test.configurations()) {
            groups.computeIfAbsent(word(configuration.grip().condition()), key -> new ArrayList<>())
                    .add(configuration.label());
        }
        if (groups.size() > 1) {
            sentences.add("They are not equally worn: " + described(groups)
                    + ". A worn grip is slick and thinner than its label; a fresh copy of it is the fair reference.");
        }
    }

    private static void clubs(ClubTest test, List<String> sentences) {
        long clubs = test.configurations().stream().map(Configuration::physicalClubId).distinct().count();
        if (clubs > 1 && test.physicalClubs().size() > 1) {
            sentences.add("They are on different clubs, whose builds differ a little: weigh each and read its "
                    + "swingweight.");
        }
    }
}
