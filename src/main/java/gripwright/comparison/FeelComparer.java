package gripwright.comparison;

import gripwright.model.Configuration;
import gripwright.model.Feel;
import gripwright.model.Note;
import gripwright.model.Stint;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Sums up what the player felt with each configuration. */
final class FeelComparer {

    /** A step away from 'right' on the scales of weight and size takes two points off the seven; our judgement. */
    private static final double POINTS_PER_STEP = 2;
    private static final double MOST = 7;
    private static final double LEAST = 1;

    private final PlayedTest played;

    FeelComparer(PlayedTest played) {
        this.played = played;
    }

    /** The player's answers for one configuration; null where there are none. */
    FeelFigures figures(int index) {
        List<Feel> answers = stints(index).stream().map(Stint::feel).filter(f -> !f.isUnanswered()).toList();
        if (answers.isEmpty()) {
            return null;
        }
        Double score = mean(answers, FeelComparer::points);
        return new FeelFigures(answers.size(), mean(answers, f -> real(f.comfort())),
                mean(answers, f -> real(f.control())), mean(answers, f -> real(f.confidence())),
                mean(answers, f -> real(f.headWeight())), mean(answers, f -> real(f.size())),
                count(answers, Feel.WouldPlay.YES), count(answers, Feel.WouldPlay.NO),
                score == null ? null : (score - LEAST) / (MOST - LEAST));
    }

    /** Whether pain was noted while it was hit. */
    boolean hurts(int index) {
        return stints(index).stream().flatMap(s -> s.notes().stream()).anyMatch(n -> n.kind() == Note.Kind.PAIN);
    }

    private List<Stint> stints(int index) {
        Configuration configuration = played.configurations().get(index);
        return played.test().stints().stream().filter(s -> s.configurationId().equals(configuration.id())).toList();
    }

    private static int count(List<Feel> answers, Feel.WouldPlay answer) {
        return (int) answers.stream().filter(f -> f.wouldPlay() == answer).count();
    }

    private static Double real(Integer answer) {
        return answer == null ? null : Double.valueOf(answer);
    }

    private static Double mean(List<Feel> answers, Function<Feel, Double> which) {
        List<Double> given = new ArrayList<>();
        for (Feel feel : answers) {
            Double value = which.apply(feel);
            if (value != null) {
                given.add(value);
            }
        }
        return given.isEmpty() ? null : given.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    /** All answers of one stint on the scale of one to seven, averaged; null where nothing that counts was answered. */
    private static Double points(Feel feel) {
        List<Double> points = new ArrayList<>();
        for (Integer answer : new Integer[] {feel.comfort(), feel.control(), feel.confidence()}) {
            if (answer != null) {
                points.add(answer.doubleValue());
            }
        }
        for (Integer answer : new Integer[] {feel.headWeight(), feel.size()}) {
            if (answer != null) {
                points.add(MOST - POINTS_PER_STEP * Math.abs(answer));
            }
        }
        if (feel.wouldPlay() != null) {
            points.add(switch (feel.wouldPlay()) {
                case YES -> MOST;
                case UNSURE -> (MOST + LEAST) / 2;
                case NO -> LEAST;
            });
        }
        return points.isEmpty() ? null : points.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    /** The score in points from 1 to 7; NaN where nothing was answered. */
    static double points(FeelFigures feel) {
        return feel == null || feel.score() == null ? Double.NaN : LEAST + feel.score() * (MOST - LEAST);
    }
}
