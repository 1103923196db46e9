package gripwright.comparison;

import gripwright.statistics.AllPairs;
import gripwright.statistics.EqualMeansTest;
import gripwright.statistics.EqualVariancesTest;
import gripwright.statistics.Figure;
import gripwright.statistics.MeanDifference;
import gripwright.statistics.PairComparison;
import gripwright.statistics.RemlEstimate;
import gripwright.statistics.RemlFit;
import gripwright.statistics.VarianceTable;
import java.util.ArrayList;
import java.util.List;

/** Textbook figures of one metric, each shot taken for itself. */
final class ClassicalComparer {

    /** Below this the test of equal variances says that noise clearly differs. */
    private static final double CLEARLY = 0.05;

    private final ComparisonTask task;
    private final FittedMetric fitted;
    private final double[][] groups;
    private final List<Integer> present = new ArrayList<>();

    ClassicalComparer(ComparisonTask task, FittedMetric fitted) {
        this.task = task;
        this.fitted = fitted;
        this.groups = new double[fitted.rows().configurations()][];
        for (int k = 0; k < groups.length; k++) {
            groups[k] = fitted.rows().values(k);
            if (groups[k].length > 0) {
                present.add(k);
            }
        }
    }

    ClassicalFigures figures() {
        ClassicalFigures.FTest spread = test(EqualVariancesTest.brownForsythe(groups));
        return new ClassicalFigures(spread != null && spread.p() < CLEARLY, () -> new ClassicalFigures.All(
                test(EqualMeansTest.oneWay(groups).map(VarianceTable::test)), test(EqualMeansTest.welch(groups)), spread,
                welch(), turned(tukey()), turned(gamesHowell()), reml()));
    }

    static ClassicalFigures.FTest test(Figure<gripwright.statistics.FTest> figure) {
        return figure.toOptional().map(f -> new ClassicalFigures.FTest(f.statistic(), f.numerator(), f.denominator(),
                f.pValue())).orElse(null);
    }

    private List<ClassicalFigures.PairTest> welch() {
        List<ClassicalFigures.PairTest> tests = new ArrayList<>();
        for (int[] pair : task.pairs()) {
            MeanDifference.welch(groups[pair[0]], groups[pair[1]], FittedMetric.LEVEL).toOptional()
                    .ifPresent(t -> tests.add(new ClassicalFigures.PairTest(label(pair[0]), label(pair[1]),
                            t.difference(), interval(t.interval()), t.degreesOfFreedom(), t.pValue())));
        }
        return tests;
    }

    private List<PairComparison> tukey() {
        return AllPairs.tukeyKramer(groups, FittedMetric.LEVEL, task.tables().family(present.size())).toOptional()
                .orElse(List.of());
    }

    private List<PairComparison> gamesHowell() {
        return AllPairs.gamesHowell(groups, FittedMetric.LEVEL, task.tables().family(present.size())).stream()
                .flatMap(f -> f.toOptional().stream()).toList();
    }

    /** The pairs in our order and the way round that we keep. */
    private List<ClassicalFigures.PairTest> turned(List<PairComparison> comparisons) {
        List<ClassicalFigures.PairTest> tests = new ArrayList<>();
        for (int[] pair : task.pairs()) {
            for (PairComparison one : comparisons) {
                if (one.first() == pair[0] && one.second() == pair[1]) {
                    tests.add(new ClassicalFigures.PairTest(label(pair[0]), label(pair[1]), one.difference(),
                            interval(one.interval()), one.degreesOfFreedom(), one.pValue()));
                } else if (one.first() == pair[1] && one.second() == pair[0]) {
                    tests.add(new ClassicalFigures.PairTest(label(pair[0]), label(pair[1]), 0 - one.difference(),
                            interval(one.interval()).negated(), one.degreesOfFreedom(), one.pValue()));
                }
            }
        }
        return tests;
    }

    private ClassicalFigures.Reml reml() {
        RemlFit fit = fitted.fit().reml(fitted.fit().hasDrift());
        if (!fit.isAvailable() && fit.hasDrift()) {
            fit = fitted.fit().reml(false);
        }
        return fit.isAvailable() ? reml(fit) : null;
    }

    private ClassicalFigures.Reml reml(RemlFit fit) {
        List<ClassicalFigures.PairTest> satterthwaite = new ArrayList<>();
        List<ClassicalFigures.PairTest> kenwardRoger = new ArrayList<>();
        for (int[] pair : task.pairs()) {
            RemlEstimate e = fit.difference(pair[0], pair[1]);
            if (e.satterthwaiteDegrees() > 0 && Double.isFinite(e.satterthwaiteP())) {
                satterthwaite.add(new ClassicalFigures.PairTest(label(pair[0]), label(pair[1]), e.estimate(),
                        interval(e.satterthwaiteInterval(FittedMetric.LEVEL)), e.satterthwaiteDegrees(),
                        e.satterthwaiteP()));
            }
            if (e.kenwardRogerDegrees() > 0 && Double.isFinite(e.kenwardRogerP())) {
                kenwardRoger.add(new ClassicalFigures.PairTest(label(pair[0]), label(pair[1]), e.estimate(),
                        interval(e.kenwardRogerInterval(FittedMetric.LEVEL)), e.kenwardRogerDegrees(),
                        e.kenwardRogerP()));
            }
        }
        return new ClassicalFigures.Reml(fit.blockStandardDeviation(), fit.residualStandardDeviation(),
                fit.isBoundary(), fit.hasDrift(), satterthwaite, kenwardRoger);
    }

    private static Interval interval(gripwright.statistics.Interval interval) {
        return new Interval(interval.lower(), interval.upper());
    }

    private String label(int configuration) {
        return task.played().configurations().get(configuration).label();
    }
}
