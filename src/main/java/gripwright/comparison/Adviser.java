package gripwright.comparison;

import gripwright.model.Configuration;
import gripwright.units.NumberText;
import java.util.ArrayList;
import java.util.List;

/**
 * Advises what to play: the configuration with the highest expected gain among those that nothing speaks against, if it
 * is likelier than not worth more than one smallest difference; else what the player plays now.
 */
final class Adviser {

    /**
     * Choosing is not claiming: three to two is enough to advise a change of grip. In the simulation study it advises
     * one in about one session of eight where all grips are equal.
     */
    static final double WORTH_IT = 0.6;
    /** Feel this many points apart, of seven, is a disagreement worth a sentence; our judgement. */
    private static final double FEEL_APART = 1;

    private final ComparisonTask task;
    private final Chooser chooser;
    private final List<Standing> standings;
    private final List<MetricComparison> metrics;
    private final List<Configuration> configurations;
    private final int home;
    private final Objections objections;
    private final List<String> reasons = new ArrayList<>();

    Adviser(ComparisonTask task, Chooser chooser, List<Standing> standings, List<MetricComparison> metrics) {
        this.task = task;
        this.chooser = chooser;
        this.standings = standings;
        this.metrics = metrics;
        this.configurations = task.played().configurations();
        this.home = home();
        this.objections = new Objections(task, chooser, standings, home);
    }

    /** What the player plays now, else the reference. */
    private int home() {
        for (int k = 0; k < configurations.size(); k++) {
            if (configurations.get(k).gamer()) {
                return k;
            }
        }
        return task.referenceIndex();
    }

    Advice advice() {
        if (configurations.isEmpty()) {
            return new Advice(null, null, false, false, "There is nothing to advise on yet: the test has no configuration.",
                    "", "", List.of(), List.of("Add what the player plays now, and what to try against it."));
        }
        if (configurations.size() == 1) {
            return keep("There is nothing to choose between: the test has one configuration.", "");
        }
        if (!chooser.scores()) {
            return keep(task.session().goal().primaries().isEmpty()
                    ? "No choice yet: the goal names nothing to choose by."
                    : "No choice yet: too little was hit of what the goal names.", conflict(-1));
        }
        reasons.addAll(chooser.draws().leftOut());
        int choice = choice();
        double worth = choice == home ? 0 : chooser.probabilityWorthIt(choice, home);
        if (choice == home || !(worth > WORTH_IT)) {
            return stay(choice, worth);
        }
        return change(choice, worth);
    }

    private Advice keep(String headline, String conflict) {
        reasons.addAll(chooser.draws().leftOut());
        if (reasons.isEmpty()) {
            reasons.add(headline);
        }
        return new Advice(id(home), label(home), true, false, headline, "", conflict, List.of(), reasons);
    }

    /** The eligible configuration with the highest expected gain; what the player plays now where none is better. */
    private int choice() {
        int best = home;
        double most = Double.isNaN(chooser.expectedGain(home)) ? Double.NEGATIVE_INFINITY : chooser.expectedGain(home);
        for (int k = 0; k < configurations.size(); k++) {
            if (k == home) {
                continue;
            }
            double gain = chooser.expectedGain(k);
            if (Double.isNaN(gain)) {
                reasons.add(label(k) + " has no reading of all that the goal names and can't be chosen.");
                continue;
            }
            if (gain > most && !objections.against(k)) {
                most = gain;
                best = k;
            }
        }
        reasons.addAll(objections.sentences());
        return best;
    }

    private Advice stay(int candidate, double worth) {
        if (candidate != home) {
            reasons.add(0, label(candidate) + " stands first, but is worth more than the smallest difference that matters "
                    + "with a probability of " + percent(worth) + " only.");
        } else {
            reasons.add(0, "None of the others is expected to serve better than " + label(home) + ".");
        }
        feelShare();
        String headline = (configurations.get(home).gamer() ? "Stay with " + label(home) + ", what you play now"
                : "Stay with " + label(home)) + ": nothing tried here is likely worth a change.";
        return new Advice(id(home), label(home), true, false, headline, "", conflict(candidate == home ? home : -1),
                objections.sentences(), reasons);
    }

    private Advice change(int choice, double worth) {
        boolean proven = isProven(choice);
        reasons.add(0, "Expected gain of " + NumberText.withDecimalMark(task.shop().decimalMark())
                .formatSigned(chooser.expectedGain(choice) - gainOfHome(), 1) + " smallest differences over "
                + label(home) + "; worth more than one with a probability of " + percent(worth) + ", best of all with "
                + percent(standings.get(choice).probabilityBest()) + ".");
        reasons.add(1, proven ? "The numbers carry a claim: in a primary metric the verdict is 'better'."
                : "This is a choice and no proof: no verdict in a primary metric is 'better' yet.");
        feelShare();
        String carried = carriedBy(choice);
        return new Advice(id(choice), label(choice), false, proven, "Choose " + label(choice) + ": "
                + (proven ? "it serves better" : "the best bet, not proven") + ".", carried, conflict(choice),
                objections.sentences(), reasons);
    }

    private double gainOfHome() {
        double gain = chooser.expectedGain(home);
        return Double.isNaN(gain) ? 0 : gain;
    }

    private void feelShare() {
        double share = chooser.feelShare();
        if (share > 0) {
            reasons.add("Feel counts for " + percent(share) + " of the result: one point on its scale of seven is taken as "
                    + NumberText.withDecimalMark(task.shop().decimalMark()).format(chooser.weightOfFeel(), 1)
                    + " smallest differences.");
        } else if (task.session().goal().feelWeight() > 0) {
            reasons.add("Feel does not count: it wasn't asked for " + label(task.referenceIndex()) + " and another.");
        }
    }

    private boolean isProven(int choice) {
        return metrics.stream().filter(MetricComparison::primary)
                .flatMap(m -> m.difference(id(choice), id(home)).stream())
                .anyMatch(d -> d.verdict() == Verdict.BETTER);
    }

    /** The metric that contributes most to the gain of the choice, and whether the choice would fall without it. */
    private String carriedBy(int choice) {
        Standing.Part most = null;
        int index = 0;
        for (int p = 0; p < standings.get(choice).parts().size(); p++) {
            Standing.Part part = standings.get(choice).parts().get(p);
            if (most == null || part.weight() * part.expectedGain() > most.weight() * most.expectedGain()) {
                most = part;
                index = p;
            }
        }
        if (most == null || most.expectedGain() <= 0) {
            return "";
        }
        if (standings.get(choice).parts().size() == 1) {
            return most.name();
        }
        double[] without = chooser.expectedWithout(chooser.draws().parts().get(index));
        int other = home;
        for (int k = 0; k < without.length; k++) {
            if (without[k] > (Double.isNaN(without[other]) ? Double.NEGATIVE_INFINITY : without[other])) {
                other = k;
            }
        }
        reasons.add(other == choice ? "The result is carried by " + most.name() + "; without it " + label(choice)
                + " would still stand first." : "The result is carried by " + most.name() + "; without it "
                + label(other) + " would stand first.");
        return most.name();
    }

    /**
     * The sentence on feel against numbers; empty where they agree or nothing was asked.
     *
     * @param choice what is advised for what it gains, so that one of the two decides; −1 where neither does
     */
    private String conflict(int choice) {
        int felt = -1;
        int counted = -1;
        for (int k = 0; k < configurations.size(); k++) {
            double points = FeelComparer.points(chooser.feel(k));
            if (!Double.isNaN(points) && (felt < 0 || points > FeelComparer.points(chooser.feel(felt)))) {
                felt = k;
            }
            double numbers = chooser.expectedNumbers(k);
            if (!Double.isNaN(numbers) && (counted < 0 || numbers > chooser.expectedNumbers(counted))) {
                counted = k;
            }
        }
        if (felt < 0 || counted < 0 || felt == counted) {
            return "";
        }
        double own = FeelComparer.points(chooser.feel(counted));
        double best = FeelComparer.points(chooser.feel(felt));
        if (Double.isNaN(own) || best - own < FEEL_APART) {
            return "";
        }
        FeelFigures feel = chooser.feel(counted);
        String wouldNot = feel.wouldNotPlay() > feel.wouldPlay() ? ", and would not play " + label(counted) : "";
        String outcome = choice == felt ? " Here feel decides." : choice == counted ? " Here the numbers decide." : "";
        return "Numbers and feel disagree: the numbers lean to " + label(counted) + ", the player prefers "
                + label(felt) + " (" + points(best) + " of 7 against " + points(own) + ")" + wouldNot + "." + outcome;
    }

    private String points(double value) {
        return NumberText.withDecimalMark(task.shop().decimalMark()).format(value, 1);
    }

    private String percent(double probability) {
        return ReasonWriter.percent(probability, task.shop().decimalMark());
    }

    private String id(int k) {
        return configurations.get(k).id();
    }

    private String label(int k) {
        return configurations.get(k).label();
    }
}
