package gripwright.planning;

import gripwright.balance.BalanceCalculator;
import gripwright.balance.BallastPlan;
import gripwright.balance.BallastPlanner;
import gripwright.balance.ConfigurationBalance;
import gripwright.balance.GripShape;
import gripwright.balance.RulesCheck;
import gripwright.balance.ShaftProfile;
import gripwright.balance.TestBalance;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.ShopSettings;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a test matrix comes to before it is hit: each configuration's shape, balance and rules, and what is confounded.
 *
 * @param balance of all configurations
 * @param columns one a configuration, by its identity, in their order
 * @param sizeAndMass whether the two can be told apart
 * @param otherDifferences sentences on what else differs
 * @param cure ballast that makes all grips equal in mass; null where it can't be computed
 */
public record PlanCheck(TestBalance balance, Map<String, Column> columns, SizeAndMass sizeAndMass,
        List<String> otherDifferences, BallastPlan cure) {

    /**
     * One configuration.
     *
     * @param shape its grip as a shape; null where its diameters can't be, which {@code sentences} says
     * @param balance its balance; null where the whole test has none
     * @param rules beside the equipment rules; null without a shape
     * @param sentences what can't be, or is unusual
     */
    public record Column(GripShape shape, ConfigurationBalance balance, RulesCheck rules, List<String> sentences) {

        /** The mass of grip, wraps and ballast, g; null where the grip's is not known. */
        public Double gripMassGrams() {
            return balance == null ? null : balance.gripEnd().massGrams();
        }

        /** The diameter at the size position, mm; null where nothing is known. */
        public Double sizeMm() {
            return shape == null || shape.size() == null ? null : (Double) shape.size().diameterMm();
        }
    }

    /** Looks at a test with a shop's settings. */
    public static PlanCheck of(ClubTest test, ShopSettings settings) {
        TestBalance balance = BalanceCalculator.with(settings).of(test);
        Map<String, Column> columns = new LinkedHashMap<>();
        List<SizeAndMass.Point> points = new ArrayList<>();
        for (Configuration configuration : test.configurations()) {
            Column column = column(test, configuration, balance, settings);
            columns.put(configuration.id(), column);
            points.add(new SizeAndMass.Point(configuration.label(), column.sizeMm(), column.gripMassGrams()));
        }
        BallastPlan cure = BallastPlanner.with(settings).of(balance).stream()
                .filter(plan -> plan.goal() == BallastPlan.Goal.GRIP_MASS).findFirst().orElse(null);
        return new PlanCheck(balance, columns, SizeAndMass.of(points), OtherDifferences.of(test), cure);
    }

    private static Column column(ClubTest test, Configuration configuration, TestBalance balance,
            ShopSettings settings) {
        ConfigurationBalance own = balance.configuration(configuration.id()).orElse(null);
        List<String> sentences = new ArrayList<>();
        if (own != null) {
            sentences.addAll(own.warnings());
        }
        try {
            GripShape shape = GripShape.of(configuration, new ShaftProfile(test.club().shaftDiameters()), settings);
            return new Column(shape, own, RulesCheck.of(test.club().kind(), configuration, shape), sentences);
        } catch (IllegalArgumentException refused) {
            sentences.add(refused.getMessage());
            return new Column(null, own, null, sentences);
        }
    }

    /** The column of a configuration. */
    public Optional<Column> column(String configurationId) {
        return Optional.ofNullable(columns.get(configurationId));
    }
}
