package gripwright.comparison;

import gripwright.units.NumberText;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** What speaks against a configuration whatever its numbers: pain, the player's refusal, comfort first, a guardrail. */
final class Objections {

    /** Below this probability a guardrail is likelier broken than kept. */
    private static final double KEPT = 0.5;
    /** With comfort first, this far below the most comfortable is out; our judgement. */
    private static final double COMFORT_BELOW = 0.5;

    private final ComparisonTask task;
    private final Chooser chooser;
    private final List<Standing> standings;
    private final int home;

    /** @param home what the others are held against, which nothing speaks against */
    Objections(ComparisonTask task, Chooser chooser, List<Standing> standings, int home) {
        this.task = task;
        this.chooser = chooser;
        this.standings = standings;
        this.home = home;
    }

    /** Whether something speaks against this configuration. */
    boolean against(int k) {
        return k != home && (hurts(k) || refused(k) || uncomfortable(k) || broken(k) != null);
    }

    /** A sentence for each, the gravest first; those that the player refuses share one. */
    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        others().filter(this::hurts).mapToObj(k -> "Pain was noted with " + label(k)
                + ": comfort decides. Where pain stays, see a clinician.").forEach(sentences::add);
        List<String> refused = others().filter(k -> refused(k) && !hurts(k)).mapToObj(this::label).toList();
        if (!refused.isEmpty()) {
            sentences.add("The player would not play " + either(refused) + ".");
        }
        others().filter(k -> !hurts(k) && !refused(k)).forEach(k -> {
            if (uncomfortable(k)) {
                sentences.add("Comfort comes first, and " + label(k) + " is less comfortable (" + points(comfort(k))
                        + " of 7) than another (" + points(mostComfort()) + ").");
            } else if (broken(k) != null) {
                sentences.add(label(k) + " likely breaks a guardrail: " + broken(k).sentence()
                        + " (kept with a probability of " + ReasonWriter.percent(broken(k).probabilityKept(),
                        task.shop().decimalMark()) + ").");
            }
        });
        return sentences;
    }

    private IntStream others() {
        return IntStream.range(0, standings.size()).filter(k -> k != home);
    }

    private boolean hurts(int k) {
        FeelComparer feel = new FeelComparer(task.played());
        return feel.hurts(k) && !feel.hurts(home);
    }

    private boolean refused(int k) {
        FeelFigures feel = chooser.feel(k);
        return feel != null && feel.wouldNotPlay() > feel.wouldPlay();
    }

    private boolean uncomfortable(int k) {
        return task.session().goal().comfortFirst() && comfort(k) != null && comfort(k) < mostComfort() - COMFORT_BELOW;
    }

    private Double comfort(int k) {
        return chooser.feel(k) == null ? null : chooser.feel(k).comfort();
    }

    private double mostComfort() {
        return IntStream.range(0, standings.size()).filter(k -> comfort(k) != null).mapToDouble(this::comfort).max()
                .orElse(0);
    }

    /** The first guardrail that is likelier broken than kept; null where there is none. */
    private Standing.GuardrailCheck broken(int k) {
        return standings.get(k).guardrails().stream().filter(check -> check.probabilityKept() < KEPT).findFirst()
                .orElse(null);
    }

    private String label(int k) {
        return standings.get(k).label();
    }

    private String points(double value) {
        return NumberText.withDecimalMark(task.shop().decimalMark()).format(value, 1);
    }

    /** 'B', 'B or E', 'B, D or E'. */
    private static String either(List<String> labels) {
        String last = labels.get(labels.size() - 1);
        return labels.size() == 1 ? last : String.join(", ", labels.subList(0, labels.size() - 1)) + " or " + last;
    }
}
