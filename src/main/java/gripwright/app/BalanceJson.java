package gripwright.app;

import gripwright.balance.BallastPlan;
import gripwright.balance.Body;
import gripwright.balance.ClubBalance;
import gripwright.balance.ConfigurationBalance;
import gripwright.balance.Estimate;
import gripwright.balance.GripShape;
import gripwright.balance.LeverFigures;
import gripwright.balance.ReadingFit;
import gripwright.balance.Remedy;
import gripwright.balance.RulesCheck;
import gripwright.balance.SessionBalance;
import gripwright.balance.SizeReading;
import gripwright.balance.SwingweightScale;
import gripwright.balance.TestBalance;
import gripwright.comparison.AdvisedSet;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import gripwright.units.Swingweight;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The balance of a session as a tree for JSON, in internal units; its schema is docs/json.md. */
final class BalanceJson {

    private BalanceJson() {
    }

    /** The balance without a stock list. */
    static Map<String, Object> of(Session session, ShopSettings settings) {
        return of(session, settings, new Stock(List.of(), List.of()));
    }

    /** All tests under {@code tests}, the first one's content also at the top, the set under {@code set}. */
    static Map<String, Object> of(Session session, ShopSettings settings, Stock stock) {
        SessionBalance balance = AdvisedSet.of(session, settings, stock).balance();
        List<Object> tests = JsonTree.list(balance.tests(), BalanceJson::test);
        Map<String, Object> tree = map("format", "gripwright-balance", "formatVersion", 1,
                "scale", scale(SwingweightScale.of(settings.balance())));
        if (!balance.tests().isEmpty()) {
            tree.putAll(test(balance.tests().get(0)));
        }
        tree.put("tests", tests);
        tree.put("set", SetPlanJson.of(balance.set()));
        return tree;
    }

    private static Map<String, Object> scale(SwingweightScale scale) {
        return map("fulcrumMm", scale.fulcrumMm(), "pointInchOunces", scale.pointInchOunces(),
                "pointGramInches", scale.pointGramInches(), "zeroInchOunces", scale.zeroInchOunces());
    }

    private static Map<String, Object> test(SessionBalance.Tested tested) {
        TestBalance balance = tested.balance();
        Map<String, Object> tree = map("test", balance.testId(), "club", balance.clubName(),
                "reference", tested.referenceLabel().isEmpty() ? null : tested.referenceLabel());
        tree.put("configurations", JsonTree.list(balance.configurations(), BalanceJson::configuration));
        tree.put("readings", readings(balance.readings()));
        tree.put("scaleOffsetPoints", JsonTree.number(balance.scaleOffsetPoints()));
        tree.put("backwards", tested.wanted() == null ? null : map("wanted", tested.wanted().text(),
                "configurations", JsonTree.list(tested.backwards(), row -> map("label", row.label(),
                        "ways", JsonTree.list(row.remedies(), BalanceJson::remedy)))));
        tree.put("ballast", JsonTree.list(tested.ballast(), BalanceJson::ballast));
        tree.put("sentences", balance.sentences());
        tree.put("warnings", balance.warnings());
        return tree;
    }

    private static Map<String, Object> configuration(ConfigurationBalance balance) {
        Map<String, Object> tree = map("label", balance.label(), "gamer", balance.gamer(),
                "totalMassGrams", balance.totalMassGrams(), "balancePointMm", balance.balancePointMm(),
                "swingweight", text(balance.swingweight()), "swingweightPoints", points(balance.swingweight()),
                "momentGramInches", balance.momentGramInches(),
                "moment12GramInches", balance.moment12GramInches(), "inertiaKgCm2", balance.inertiaKgCm2(),
                "inertiaAboutBalancePointKgCm2", balance.inertiaAboutBalancePointKgCm2());
        tree.put("standardDeviations", map("totalMassGrams", sd(balance.totalMass()),
                "balancePointMm", sd(balance.balancePoint()), "swingweightPoints", sd(balance.swingweightPoints()),
                "momentGramInches", sd(balance.moment()), "inertiaKgCm2", sd(balance.inertia())));
        tree.put("swingweightRead", text(balance.swingweightRead()));
        tree.put("misfitPoints", JsonTree.number(balance.misfitPoints()));
        tree.put("totalMassReadGrams", balance.totalMassReadGrams());
        tree.put("gripMassGrams", balance.gripEnd().massGrams());
        tree.put("tapeGrams", balance.gripEnd().tapeGrams());
        tree.put("parts", JsonTree.list(balance.shares(), BalanceJson::share));
        tree.put("shape", shape(balance.shape()));
        tree.put("rules", rules(balance.rules()));
        tree.put("sentences", balance.sentences());
        tree.put("warnings", balance.warnings());
        return tree;
    }

    private static Map<String, Object> share(ClubBalance.Share share) {
        Body body = share.body();
        return map("part", wire(body.role()), "name", body.name(), "massGrams", body.massGrams(),
                "positionMm", body.positionMm(), "massShare", share.massShare(),
                "momentGramInches", share.momentGramInches(), "points", share.points(),
                "inertiaKgCm2", share.inertiaKgCm2(), "inertiaShare", share.inertiaShare());
    }

    private static Map<String, Object> shape(GripShape shape) {
        if (shape == null) {
            return null;
        }
        return map("lengthMm", shape.profile().lengthMm(),
                "diameters", JsonTree.list(shape.atRuler(), at -> map("positionMm", at.positionMm(),
                        "diameterMm", at.diameterMm(), "source", wire(at.source()))),
                "size", size(shape.size()), "taperMmPerMm", JsonTree.number(shape.taper()),
                "tapeGrams", shape.tapeGrams(), "underButtMm", shape.underButtMm());
    }

    static Map<String, Object> size(SizeReading size) {
        return size == null ? null : map("diameterMm", size.diameterMm(), "thousandths", size.thousandths(),
                "name", size.name(), "offNameMm", size.offNameMm(), "sixtyFourths", size.sixtyFourths(),
                "text", size.text());
    }

    private static Map<String, Object> rules(RulesCheck rules) {
        return rules == null ? null : map("section", RulesCheck.SECTION, "outcome", wire(rules.outcome()),
                "findings", JsonTree.list(rules.findings(), finding -> map("point", finding.point(),
                        "outcome", wire(finding.outcome()), "measuredMm", JsonTree.number(finding.measuredMm()),
                        "sentence", finding.sentence())));
    }

    private static Map<String, Object> readings(ReadingFit fit) {
        if (fit == null) {
            return null;
        }
        return map("bareSwingweightPoints", estimate(fit.bareSwingweight()),
                "gripBalancePointMm", estimate(fit.gripBalancePointMm()),
                "readings", JsonTree.list(fit.residuals(), residual -> map("source", residual.reading().source(),
                        "swingweight", text(residual.reading().read()),
                        "fitted", text(residual.fittedSwingweight()), "misfitPoints", residual.misfitPoints(),
                        "flagged", residual.flagged(), "fromTheRestPoints", estimate(residual.fromTheRest()),
                        "sentence", residual.sentence())));
    }

    private static Map<String, Object> remedy(Remedy remedy) {
        return map("means", wire(remedy.means()), "amount", JsonTree.number(remedy.amount()),
                "unit", remedy.means().unit(), "positionMm", JsonTree.number(remedy.positionMm()),
                "feasible", remedy.feasible(), "after", figures(remedy.after()), "sentence", remedy.sentence());
    }

    private static Map<String, Object> ballast(BallastPlan plan) {
        return map("equal", wire(plan.goal()), "feasible", plan.feasible(),
                "rows", JsonTree.list(plan.rows(), row -> map("label", row.label(), "grams", row.grams(),
                        "positionMm", row.positionMm(), "feasible", row.feasible(),
                        "gripMassAfterGrams", row.gripMassAfterGrams(), "after", figures(row.after()))),
                "gripMassSpreadGrams", plan.gripMassSpreadGrams(),
                "swingweightSpreadPoints", JsonTree.number(plan.swingweightSpreadPoints()),
                "inertiaSpreadKgCm2", JsonTree.number(plan.inertiaSpreadKgCm2()), "sentence", plan.sentence());
    }

    static Map<String, Object> figures(LeverFigures figures) {
        return figures == null ? null : map("totalMassGrams", figures.massGrams(),
                "balancePointMm", figures.balancePointMm(), "swingweight", text(figures.swingweight()),
                "swingweightPoints", points(figures.swingweight()), "momentGramInches", figures.momentGramInches(),
                "inertiaKgCm2", figures.inertiaKgCm2());
    }

    static Map<String, Object> estimate(Estimate estimate) {
        return estimate == null ? null : map("value", estimate.value(), "sd", estimate.standardDeviation());
    }

    private static Double sd(Estimate estimate) {
        return estimate == null ? null : Double.valueOf(estimate.standardDeviation());
    }

    static String text(Swingweight swingweight) {
        return swingweight == null ? null : swingweight.text();
    }

    static Double points(Swingweight swingweight) {
        return swingweight == null ? null : Double.valueOf(swingweight.points());
    }

    static String wire(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Map<String, Object> map(Object... pairs) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int at = 0; at < pairs.length; at += 2) {
            map.put((String) pairs[at], pairs[at + 1]);
        }
        return map;
    }
}
