package gripwright.comparison;

import gripwright.model.Configuration;
import gripwright.model.Note;
import gripwright.model.PhysicalClub;
import gripwright.model.Stint;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/** What happened around the shots that a reader of a difference must know: changes of ball, glove or mat, other clubs. */
final class Circumstances {

    private static final Map<Note.Kind, String> CHANGED = Map.of(Note.Kind.BALL_CHANGED, "ball",
            Note.Kind.GLOVE_CHANGED, "glove", Note.Kind.MAT_CHANGED, "mat");

    /** A change of something after so many swings. */
    private record Break(String what, int afterSwing) {
    }

    private final PlayedTest played;
    private final List<Break> breaks = new ArrayList<>();

    Circumstances(PlayedTest played) {
        this.played = played;
        int swing = 0;
        for (Stint stint : played.test().stints()) {
            for (Note note : stint.notes()) {
                String what = CHANGED.get(note.kind());
                if (what != null) {
                    breaks.add(new Break(what, swing + shotsBefore(stint, note)));
                }
            }
            swing += stint.shots().size();
        }
    }

    private static int shotsBefore(Stint stint, Note note) {
        for (int i = 0; i < stint.shots().size(); i++) {
            if (stint.shots().get(i).id().equals(note.afterShotId())) {
                return i + 1;
            }
        }
        return 0;
    }

    /** Sentences about this pair; empty where all was alike. */
    List<String> of(int of, int against) {
        List<String> sentences = new ArrayList<>();
        for (Break change : breaks) {
            double first = shareAfter(of, change.afterSwing());
            double second = shareAfter(against, change.afterSwing());
            if (first != second) {
                sentences.add("The " + change.what() + " was changed after swing " + change.afterSwing()
                        + "; part of the difference may be the " + change.what() + "'s.");
            }
        }
        String first = clubs(of);
        String second = clubs(against);
        if (!first.isEmpty() && !second.isEmpty() && !first.equals(second)) {
            sentences.add(label(of) + " was hit on " + first + " and " + label(against) + " on " + second
                    + "; two clubs differ a little in themselves.");
        }
        return sentences;
    }

    private String label(int configuration) {
        return played.configurations().get(configuration).label();
    }

    private double shareAfter(int configuration, int swing) {
        List<PlayedShot> scored = played.scored(configuration);
        return scored.isEmpty() ? 0
                : (double) scored.stream().filter(s -> s.swing() > swing).count() / scored.size();
    }

    /** The clubs a configuration was hit on, in words; empty where nobody said. */
    private String clubs(int index) {
        Configuration configuration = played.configurations().get(index);
        return played.scored(index).stream()
                .map(s -> s.stint().physicalClubId() != null ? s.stint().physicalClubId()
                        : configuration.physicalClubId())
                .filter(Objects::nonNull).distinct()
                .map(id -> played.test().physicalClubs().stream().filter(c -> c.id().equals(id)).findFirst()
                        .map(PhysicalClub::name).orElse(id))
                .sorted().collect(Collectors.joining(" and "));
    }
}
