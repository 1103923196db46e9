package gripwright.report;

import gripwright.balance.HeadMass;
import gripwright.balance.SetPlan;
import gripwright.comparison.AdvisedSet;
import gripwright.comparison.Comparison;
import gripwright.model.Configuration;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import gripwright.units.NumberText;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The shop's page: what to do to each club of the set. Where hands hurt never stands on it. */
final class WorkOrderSection {

    private static final List<String> CAUTIONS = List.of(
            "Ventilate; gloves; no ignition source near solvent: its vapour can catch fire and explode. Occupational "
                    + "limits, local codes and the product\u2019s safety sheet come first.",
            "Cut old grips off away from the body, the shaft in a padded vice. Eye protection with compressed air.",
            "Let adhesive dry as its maker says. Check for twist, and that grip and head are tight, before the first "
                    + "swing. What is not a grip fitter\u2019s work (head off, bending) goes to a club maker.");

    /** A set of more clubs than this stands closer, so that fourteen are one page. */
    private static final int MANY = 10;

    private final Session session;
    private final List<Comparison> comparisons;
    private final ShopSettings shop;
    private final Stock stock;
    private final NumberText numbers;

    WorkOrderSection(Session session, List<Comparison> comparisons, ShopSettings shop, Stock stock) {
        this.session = session;
        this.comparisons = comparisons;
        this.shop = shop;
        this.stock = stock;
        this.numbers = NumberText.withDecimalMark(shop.decimalMark());
    }

    Map<String, Object> content() {
        SetPlan plan = plan();
        WorkOrderRow rows = new WorkOrderRow(session, shop);
        Map<String, Object> content = new LinkedHashMap<>();
        content.put("note", note());
        content.put("grips", rows.grips(plan.rows()));
        content.put("hasRows", !plan.rows().isEmpty());
        content.put("many", plan.rows().size() > MANY);
        content.put("columns", rows.headings());
        content.put("rows", plan.rows().stream().map(rows::of).toList());
        List<Map<String, Object>> stockLines = plan.stock().stream().map(this::stockLine).toList();
        content.put("hasStock", !stockLines.isEmpty());
        content.put("stock", stockLines);
        content.put("cost", plan.cost() == null ? "" : price(plan.cost()));
        List<String> sentences = sentences(plan);
        content.put("hasSentences", !sentences.isEmpty());
        content.put("sentences", sentences);
        content.put("cautions", CAUTIONS);
        return content;
    }

    private SetPlan plan() {
        return AdvisedSet.of(session, shop, stock).plan(comparisons);
    }

    private String note() {
        String tested = "Tested with the " + String.join(" and the ",
                session.tests().stream().map(test -> test.club().name()).toList()) + "; other families follow it.";
        if (session.set().isEmpty()) {
            return "No club of the set is written down yet: add a row for each in Balance. " + tested;
        }
        String advice = advised().map(c -> "Configuration " + c.label()
                + (session.advisedConfigurationId() == null ? ", as the numbers choose it; the fitter has not confirmed it. "
                        : ", as the fitter advises. ")).orElse("");
        return advice + tested;
    }

    private java.util.Optional<Configuration> advised() {
        String id = session.advisedConfigurationId() != null ? session.advisedConfigurationId()
                : comparisons.get(0).advice().configurationId();
        return id == null ? java.util.Optional.empty()
                : session.tests().stream().flatMap(test -> test.configuration(id).stream()).findFirst();
    }

    private Map<String, Object> stockLine(SetPlan.StockLine line) {
        Map<String, Object> content = new LinkedHashMap<>();
        content.put("what", line.item());
        content.put("count", numbers.format(line.needed(), line.needed() == Math.rint(line.needed()) ? 0 : 1) + " "
                + (line.needed() == 1 && line.unit().equals("pieces") ? "piece" : line.unit()));
        content.put("price", line.missing() > 0
                ? numbers.format(line.missing(), 0) + " missing" : line.inStock() == null ? "not counted" : "in stock");
        return content;
    }

    private String price(double cost) {
        return shop.currency() + numbers.format(cost, 2);
    }

    /** What to look at, each said once with the clubs that it is said of. */
    private List<String> sentences(SetPlan plan) {
        Map<String, Set<String>> clubs = new LinkedHashMap<>();
        for (SetPlan.Row row : plan.rows()) {
            row.sentences().forEach(sentence ->
                    clubs.computeIfAbsent(sentence, key -> new LinkedHashSet<>()).add(row.club().name()));
            HeadMass head = row.balance() == null ? null : row.balance().headMass();
            if (head != null && !head.feasible()) {
                clubs.computeIfAbsent(head.way().cure(), key -> new LinkedHashSet<>()).add(row.club().name());
            }
        }
        List<String> sentences = new ArrayList<>(plan.sentences());
        clubs.forEach((sentence, names) -> sentences.add(String.join(", ", names) + ": " + sentence));
        return sentences;
    }
}
