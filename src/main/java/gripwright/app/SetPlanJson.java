package gripwright.app;

import static gripwright.app.BalanceJson.map;

import gripwright.balance.HeadMass;
import gripwright.balance.SetBalance;
import gripwright.balance.SetBuild;
import gripwright.balance.SetPlan;
import java.util.Map;

/** The plan of a whole set as a tree for JSON, in internal units; its schema is docs/json.md. */
final class SetPlanJson {

    private SetPlanJson() {
    }

    static Map<String, Object> of(SetPlan plan) {
        return map("clubs", JsonTree.list(plan.rows(), SetPlanJson::row),
                "stock", JsonTree.list(plan.stock(), line -> map("item", line.item(), "needed", line.needed(),
                        "unit", line.unit(), "inStock", line.inStock(), "missing", line.missing())),
                "cost", JsonTree.number(plan.cost()), "sentences", plan.sentences());
    }

    private static Map<String, Object> row(SetPlan.Row row) {
        return map("club", row.club().name(), "family", row.club().kind().text(),
                "testedWith", row.testedWith().isEmpty() ? null : row.testedWith(),
                "configuration", row.configurationLabel().isEmpty() ? null : row.configurationLabel(),
                "grip", row.gripName().isEmpty() ? null : row.gripName(),
                "presentSwingweight", BalanceJson.text(row.club().presentSwingweight()),
                "bareSwingweightRead", BalanceJson.text(row.club().bareSwingweight()),
                "finalSwingweightRead", BalanceJson.text(row.club().finalSwingweight()),
                "balance", balance(row.balance()), "build", build(row.build()), "cost", JsonTree.number(row.cost()),
                "sentences", row.sentences());
    }

    private static Map<String, Object> balance(SetBalance balance) {
        return balance == null ? null : map("pass", BalanceJson.wire(balance.pass()),
                "barePredictedPoints", BalanceJson.estimate(balance.barePredicted()),
                "barePoints", BalanceJson.estimate(balance.bare()),
                "regrippedPoints", BalanceJson.estimate(balance.regripped()),
                "target", balance.wanted() == null ? null : balance.wanted().text(),
                "headMass", headMass(balance.headMass()), "headPlaceMm", JsonTree.number(balance.headPlaceMm()),
                "after", BalanceJson.figures(balance.after()),
                "bareOffPoints", JsonTree.number(balance.bareOffPoints()),
                "finalOffPoints", JsonTree.number(balance.finalOffPoints()),
                "offTargetPoints", JsonTree.number(balance.offTargetPoints()));
    }

    private static Map<String, Object> headMass(HeadMass mass) {
        return mass == null ? null : map("grams", mass.grams(), "way", BalanceJson.wire(mass.way()),
                "feasible", mass.feasible(), "sentence", mass.sentence());
    }

    private static Map<String, Object> build(SetBuild build) {
        return build == null ? null : map("fullWraps", build.fullWraps(), "lowerWraps", build.lowerWraps(),
                "size", BalanceJson.size(build.size()), "offMm", JsonTree.number(build.offMm()),
                "lowerHandOffMm", JsonTree.number(build.lowerHandOffMm()));
    }
}
