package gripwright.report;

import gripwright.balance.BalanceCalculator;
import gripwright.balance.ConfigurationBalance;
import gripwright.balance.TestBalance;
import gripwright.comparison.ComparedConfiguration;
import gripwright.comparison.Comparison;
import gripwright.model.BuildUp;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Diameter;
import gripwright.model.ShopSettings;
import gripwright.units.Dimension;
import gripwright.units.NumberText;
import gripwright.units.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What each configuration is: grip and build-up, how much was hit with it, and its balance. */
final class ConfigurationTable {

    private static final String NONE = "\u2013";

    private final ClubTest test;
    private final Comparison comparison;
    private final ShopSettings shop;
    private final NumberText numbers;

    ConfigurationTable(ClubTest test, Comparison comparison, ShopSettings shop) {
        this.test = test;
        this.comparison = comparison;
        this.shop = shop;
        this.numbers = NumberText.withDecimalMark(shop.decimalMark());
    }

    Map<String, Object> content() {
        TestBalance balance = BalanceCalculator.with(shop).of(test);
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Configuration configuration : test.configurations()) {
            rows.add(row(configuration, balance));
        }
        Map<String, Object> content = new LinkedHashMap<>();
        content.put("massUnit", unit(Dimension.MASS).symbol());
        content.put("lengthUnit", unit(Dimension.LENGTH).symbol());
        content.put("configurations", rows);
        return content;
    }

    private Map<String, Object> row(Configuration configuration, TestBalance balance) {
        ConfigurationBalance figures = balance.configurations().stream()
                .filter(c -> c.configurationId().equals(configuration.id())).findFirst().orElse(null);
        ComparedConfiguration counts = comparison.configurations().stream()
                .filter(c -> c.configurationId().equals(configuration.id())).findFirst().orElse(null);
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("label", configuration.label());
        row.put("mark", mark(configuration));
        row.put("grip", description(configuration));
        row.put("shots", counts == null ? NONE : counts.scored());
        row.put("stints", counts == null ? NONE : counts.stints());
        row.put("setAside", counts == null ? NONE : counts.setAside());
        row.put("mass", quantity(Dimension.MASS, configuration.grip().massGrams()));
        row.put("size", size(configuration));
        row.put("predicted", figures == null || figures.swingweight() == null ? NONE : figures.swingweight().text());
        row.put("read", configuration.swingweightRead() == null ? NONE : configuration.swingweightRead().text());
        row.put("balance", figures == null ? NONE : quantity(Dimension.LENGTH, figures.balancePointMm()));
        row.put("inertia", figures == null || figures.inertiaKgCm2() == null ? NONE
                : numbers.format(figures.inertiaKgCm2(), 0));
        return row;
    }

    private String mark(Configuration configuration) {
        String gamer = configuration.gamer() ? ", gamer" : "";
        return configuration.id().equals(comparison.referenceId()) ? gamer + ", reference" : gamer;
    }

    /** The grip with its build-up in words. */
    static String description(Configuration configuration) {
        BuildUp build = configuration.buildUp();
        StringBuilder text = new StringBuilder(configuration.grip().name());
        if (build.fullWraps() > 0) {
            text.append(", ").append(wraps(build.fullWraps())).append(" full length");
        }
        if (build.lowerWraps() > 0) {
            text.append(", ").append(wraps(build.lowerWraps())).append(" under the lower hand");
        }
        if (build.ballastGrams() > 0) {
            text.append(", ").append(Math.round(build.ballastGrams() * 10) / 10.0).append(" g ballast");
        }
        if (configuration.headMassAddedGrams() > 0) {
            text.append(", ").append(Math.round(configuration.headMassAddedGrams() * 10) / 10.0)
                    .append(" g at the head");
        }
        return text.toString();
    }

    private static String wraps(int count) {
        return count == 1 ? "1 wrap" : count + " wraps";
    }

    /** The measured diameter nearest to where sizes are named: as fitted before as moulded; else the label's size. */
    private String size(Configuration configuration) {
        List<Diameter> diameters = configuration.fittedDiameters().isEmpty() ? configuration.grip().diameters()
                : configuration.fittedDiameters();
        double at = shop.balance().sizePositionMm();
        return diameters.stream().min(Comparator.comparingDouble(d -> Math.abs(d.positionMm() - at)))
                .map(d -> length(d.diameterMm()))
                .orElse(configuration.grip().sizeName().isEmpty() ? NONE : configuration.grip().sizeName());
    }

    private String length(double mm) {
        return numbers.format(unit(Dimension.LENGTH).fromInternal(mm), unit(Dimension.LENGTH) == Unit.INCH ? 3 : 1);
    }

    private String quantity(Dimension dimension, Double internal) {
        if (internal == null) {
            return NONE;
        }
        Unit unit = unit(dimension);
        int decimals = unit == Unit.INCH || unit == Unit.OUNCE ? 2 : 1;
        return numbers.format(unit.fromInternal(internal), unit == Unit.MILLIMETRE ? 0 : decimals);
    }

    private Unit unit(Dimension dimension) {
        return shop.units().of(dimension);
    }
}
