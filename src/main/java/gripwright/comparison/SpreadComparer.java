package gripwright.comparison;

import gripwright.model.Configuration;
import gripwright.model.PrimaryMetric;
import gripwright.statistics.EqualVariancesTest;
import gripwright.statistics.Figure;
import gripwright.statistics.GroupSpread;
import gripwright.statistics.SpreadRatio;
import gripwright.statistics.StudentizedRangeInterpolant;
import gripwright.units.NumberText;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Compares how repeatable the configurations are in one metric. */
final class SpreadComparer {

    private static final int FEW = 5;
    private static final int DRAWS = 1024;

    private final ComparisonTask task;
    private final FittedSpread spread;
    private final NumberText numbers;
    private final List<Configuration> configurations;

    SpreadComparer(ComparisonTask task, FittedSpread spread) {
        this.task = task;
        this.spread = spread;
        this.numbers = NumberText.withDecimalMark(task.shop().decimalMark());
        this.configurations = task.played().configurations();
    }

    SpreadComparison compare() {
        double[][] groups = new double[configurations.size()][];
        for (int k = 0; k < groups.length; k++) {
            groups[k] = spread.rows().values(k);
        }
        boolean primary = task.session().goal().primaries().stream().anyMatch(
                p -> p.metric() == spread.rows().metric() && p.aspect() == PrimaryMetric.Aspect.SPREAD);
        return new SpreadComparison(spread.rows().metric(), primary, spread.smallest(),
                spread.analysis().prior().degreesOfFreedom(), figures(), ratios(),
                ClassicalComparer.test(EqualVariancesTest.brownForsythe(groups)), sentences());
    }

    private List<SpreadComparison.SpreadFigures> figures() {
        double[] steadiest = probabilitySteadiest();
        List<SpreadComparison.SpreadFigures> figures = new ArrayList<>();
        for (GroupSpread one : spread.analysis().groups()) {
            if (spread.has(one.group())) {
                Configuration c = configurations.get(one.group());
                figures.add(new SpreadComparison.SpreadFigures(c.id(), c.label(),
                        spread.rows().readings(one.group()), one.degreesOfFreedom(),
                        one.standardDeviation().toOptional().orElse(null),
                        new Estimate(one.shrunkStandardDeviation().get(), interval(one.interval().get())),
                        steadiest[one.group()]));
            }
        }
        return figures;
    }

    private double[] probabilitySteadiest() {
        double[][] scores = Arrays.copyOf(task.points().of(configurations.size() + 3), DRAWS);
        double[][] drawn = spread.draws(scores);
        double[] wins = new double[configurations.size()];
        for (int i = 0; i < DRAWS; i++) {
            int least = -1;
            for (int k = 0; k < drawn.length; k++) {
                if (drawn[k] != null && (least < 0 || drawn[k][i] < drawn[least][i])) {
                    least = k;
                }
            }
            wins[least]++;
        }
        return Arrays.stream(wins).map(w -> w / DRAWS).toArray();
    }

    private List<SpreadComparison.SpreadRatio> ratios() {
        List<SpreadComparison.SpreadRatio> ratios = new ArrayList<>();
        List<int[]> pairs = task.pairs().stream().filter(p -> spread.has(p[0]) && spread.has(p[1])).toList();
        List<Figure<SpreadRatio>> figures = spread.analysis().ratios(pairs);
        for (int i = 0; i < pairs.size(); i++) {
            ratios.add(ratio(pairs.get(i)[0], pairs.get(i)[1], figures.get(i).get()));
        }
        return ratios;
    }

    private SpreadComparison.SpreadRatio ratio(int of, int against, SpreadRatio r) {
        StudentizedRangeInterpolant table = task.tables().normal(r.family());
        double less = 1 - FittedSpread.SMALLEST_SHARE;
        double matters = r.adjustedProbabilityBelow(less, table);
        double harms = 1 - r.adjustedProbabilityBelow(1 / less, table);
        double same = r.probabilityBelow(1 / less) - r.probabilityBelow(less);
        double steadier = r.probabilityBelow(1);
        VerdictRule.Ruling ruling = new VerdictRule(task.settings())
                .rule(FittedSpread.SMALLEST_SHARE, matters, harms, same, steadier);
        Configuration c = configurations.get(of);
        Configuration d = configurations.get(against);
        Interval interval = interval(r.interval());
        return new SpreadComparison.SpreadRatio(c.id(), c.label(), d.id(), d.label(), new Estimate(r.ratio(), interval),
                steadier, matters, harms, same, ruling.verdict(), ruling.leaning(),
                reasons(ruling, interval, of, against, matters, harms, same));
    }

    private List<String> reasons(VerdictRule.Ruling ruling, Interval ratio, int of, int against, double matters,
            double harms, double same) {
        List<String> reasons = new ArrayList<>();
        reasons.add(switch (ruling.verdict()) {
            case BETTER, PROBABLY_BETTER -> "Steadier by more than a fifth with a probability of " + percent(matters) + ".";
            case WORSE, PROBABLY_WORSE -> "Less steady by more than a quarter with a probability of " + percent(harms)
                    + ".";
            case SAME -> "Their spreads are within a fifth of each other with a probability of " + percent(same) + ".";
            case NOT_SETTLED -> "Its spread may be anywhere between " + numbers.format(ratio.low(), 1) + " and "
                    + numbers.format(ratio.high(), 1) + " times the other's.";
        });
        for (int side : new int[] {of, against}) {
            int shots = spread.rows().readings(side);
            if (shots <= FEW) {
                reasons.add("Only " + shots + " shots of " + configurations.get(side).label()
                        + ": its spread is drawn to what all share.");
            }
        }
        return reasons;
    }

    private String percent(double probability) {
        return ReasonWriter.percent(probability, task.shop().decimalMark());
    }

    private List<String> sentences() {
        List<String> without = new ArrayList<>();
        for (int k = 0; k < configurations.size(); k++) {
            if (!spread.has(k)) {
                without.add(configurations.get(k).label());
            }
        }
        return without.isEmpty() ? List.of() : List.of("Too few shots in any stint to tell the spread of "
                + String.join(", ", without) + ".");
    }

    private static Interval interval(gripwright.statistics.Interval interval) {
        return new Interval(interval.lower(), interval.upper());
    }
}
