package gripwright.comparison;

import gripwright.model.Configuration;
import gripwright.model.Goal;
import gripwright.model.Guardrail;
import gripwright.model.ReadingText;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Weighs the configurations by the goal on simultaneous draws: primary metrics in units of their smallest differences,
 * guardrails, and the player's feel. With even shares one point of feel on its scale of seven weighs as much as one
 * smallest difference, and an answer repeats to about one point: both are our judgement.
 */
final class Chooser {

    private static final double FEEL_NOISE_POINTS = 1;
    /** A share of feel beyond this leaves nothing to compare it with. */
    private static final double MOST_FEEL = 0.95;

    private final ComparisonTask task;
    private final GoalDraws draws;
    private final FeelFigures[] feel;
    private final int reference;
    private final double[][] numbers;
    private final double[][] total;
    private final boolean[][] allowed;

    Chooser(ComparisonTask task, GoalDraws draws) {
        this.task = task;
        this.draws = draws;
        this.reference = task.referenceIndex();
        int configurations = task.played().configurations().size();
        FeelComparer comparer = new FeelComparer(task.played());
        this.feel = new FeelFigures[configurations];
        for (int k = 0; k < configurations; k++) {
            feel[k] = comparer.figures(k);
        }
        this.numbers = draws.parts().isEmpty() ? null : numbers(null);
        this.total = numbers == null ? null : total();
        this.allowed = numbers == null ? null : allowed();
    }

    /** Whether anything could be scored. */
    boolean scores() {
        return numbers != null;
    }

    /** The share of feel in the total: the goal's, or 0 where nobody answered for the reference and another. */
    double feelShare() {
        boolean asked = !Double.isNaN(FeelComparer.points(feel[reference]));
        long answered = Arrays.stream(feel).filter(f -> !Double.isNaN(FeelComparer.points(f))).count();
        return asked && answered > 1 ? goal().feelWeight() : 0;
    }

    private Goal goal() {
        return task.session().goal();
    }

    /**
     * Weighted gains in the primary metrics, added up: configurations x draws; null without readings. The weightiest
     * metric counts in full, so that the sum stays in smallest differences; one part may be left out.
     */
    private double[][] numbers(GoalDraws.Part without) {
        double[][] sum = new double[task.played().configurations().size()][];
        for (int k = 0; k < sum.length; k++) {
            int index = k;
            if (draws.parts().stream().filter(p -> p != without).anyMatch(p -> p.gains()[index] == null)) {
                continue;
            }
            sum[k] = new double[ScorePoints.DRAWS];
            for (GoalDraws.Part part : draws.parts()) {
                double weight = part == without ? 0 : weight(part);
                for (int i = 0; weight > 0 && i < sum[k].length; i++) {
                    sum[k][i] += weight * part.gains()[k][i];
                }
            }
        }
        return sum;
    }

    private double weight(GoalDraws.Part part) {
        return part.primary().weight()
                / draws.parts().stream().mapToDouble(p -> p.primary().weight()).max().orElse(1);
    }

    /** What one point of feel weighs, in smallest differences: the share of feel against that of the numbers. */
    double weightOfFeel() {
        double share = Math.min(MOST_FEEL, feelShare());
        return share / (1 - share);
    }

    private double[][] total() {
        double weight = weightOfFeel();
        double[][] scores = draws.feelScores();
        int configurations = numbers.length;
        int from = scores[0].length - configurations;
        double base = FeelComparer.points(feel[reference]);
        double[][] sum = new double[configurations][];
        for (int k = 0; k < configurations; k++) {
            if (numbers[k] == null) {
                continue;
            }
            double points = FeelComparer.points(feel[k]);
            boolean felt = weight > 0 && k != reference && !Double.isNaN(points);
            double noise = felt ? FEEL_NOISE_POINTS / Math.sqrt(feel[k].answers()) : 0;
            double referenceNoise = felt ? FEEL_NOISE_POINTS / Math.sqrt(feel[reference].answers()) : 0;
            sum[k] = new double[numbers[k].length];
            for (int i = 0; i < sum[k].length; i++) {
                double gain = felt ? points - base + noise * scores[i][from + k]
                        - referenceNoise * scores[i][from + reference] : 0;
                sum[k][i] = numbers[k][i] + weight * gain;
            }
        }
        return sum;
    }

    private boolean[][] allowed() {
        boolean[][] all = new boolean[numbers.length][ScorePoints.DRAWS];
        for (int k = 0; k < all.length; k++) {
            for (int i = 0; i < all[k].length; i++) {
                boolean kept = true;
                for (GoalDraws.Rail rail : draws.rails()) {
                    kept &= rail.kept()[k] == null || rail.kept()[k][i];
                }
                all[k][i] = kept;
            }
        }
        return all;
    }

    /** How every configuration stands, in the order of the test. */
    List<Standing> standings() {
        List<Standing> standings = new ArrayList<>();
        double[] best = scores() ? probabilityBest() : null;
        for (int k = 0; k < feel.length; k++) {
            Configuration configuration = task.played().configurations().get(k);
            boolean known = scores() && total[k] != null;
            standings.add(new Standing(configuration.id(), configuration.label(), known ? best[k] : null,
                    known ? mean(total[k]) : null, known && k != reference ? probabilityWorthIt(k, reference) : null,
                    known ? parts(k) : List.of(), known ? rails(k) : List.of(), feel[k]));
        }
        return standings;
    }

    private double[] probabilityBest() {
        double[] wins = new double[total.length];
        for (int i = 0; i < ScorePoints.DRAWS; i++) {
            int best = reference;
            double most = Double.NEGATIVE_INFINITY;
            for (int k = 0; k < total.length; k++) {
                if (total[k] != null && allowed[k][i] && total[k][i] > most) {
                    most = total[k][i];
                    best = k;
                }
            }
            wins[best]++;
        }
        return Arrays.stream(wins).map(w -> w / ScorePoints.DRAWS).toArray();
    }

    /** The probability that one gains over another by more than one smallest difference, guardrails kept. */
    double probabilityWorthIt(int of, int against) {
        int count = 0;
        for (int i = 0; i < ScorePoints.DRAWS; i++) {
            count += allowed[of][i] && total[of][i] - total[against][i] > 1 ? 1 : 0;
        }
        return (double) count / ScorePoints.DRAWS;
    }

    private List<Standing.Part> parts(int k) {
        List<Standing.Part> parts = new ArrayList<>();
        for (GoalDraws.Part part : draws.parts()) {
            int wins = 0;
            for (int i = 0; i < ScorePoints.DRAWS; i++) {
                boolean best = true;
                for (int l = 0; l < part.gains().length && best; l++) {
                    best = l == k || part.gains()[l] == null || part.gains()[l][i] < part.gains()[k][i];
                }
                wins += best ? 1 : 0;
            }
            parts.add(new Standing.Part(part.name(), part.primary().metric().key(),
                    part.primary().aspect() == gripwright.model.PrimaryMetric.Aspect.SPREAD,
                    weight(part), mean(part.gains()[k]), (double) wins / ScorePoints.DRAWS));
        }
        return parts;
    }

    private List<Standing.GuardrailCheck> rails(int k) {
        ReadingText text = ReadingText.of(task.shop(), task.session().player().hand());
        List<Standing.GuardrailCheck> checks = new ArrayList<>();
        for (GoalDraws.Rail rail : draws.rails()) {
            if (rail.kept()[k] != null) {
                int kept = 0;
                for (boolean one : rail.kept()[k]) {
                    kept += one ? 1 : 0;
                }
                checks.add(new Standing.GuardrailCheck(sentence(rail.guardrail(), text), rail.guardrail().metric().key(),
                        rail.guardrail().isOnSpread(), (double) kept / ScorePoints.DRAWS));
            }
        }
        return checks;
    }

    private static String sentence(Guardrail guardrail, ReadingText text) {
        String symbol = text.unit(guardrail.metric()).symbol();
        String most = text.mean(guardrail.metric(), guardrail.mostLoss())
                + (symbol.equals("°") || symbol.isEmpty() ? symbol : "\u00a0" + symbol);
        return guardrail.isOnSpread() ? "let the spread of " + guardrail.metric().text() + " grow by no more than " + most
                : "lose no more than " + most + " of " + guardrail.metric().text();
    }

    /** Expected total gain over the reference; NaN where it can't be known. */
    double expectedGain(int k) {
        return total == null || total[k] == null ? Double.NaN : mean(total[k]);
    }

    /** Expected gain of the numbers alone; NaN where it can't be known. */
    double expectedNumbers(int k) {
        return numbers == null || numbers[k] == null ? Double.NaN : mean(numbers[k]);
    }

    /** Expected gain of the numbers without one part; NaN where it can't be known. */
    double[] expectedWithout(GoalDraws.Part part) {
        return Arrays.stream(numbers(part)).mapToDouble(n -> n == null ? Double.NaN : mean(n)).toArray();
    }

    GoalDraws draws() {
        return draws;
    }

    FeelFigures feel(int k) {
        return feel[k];
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }
}
