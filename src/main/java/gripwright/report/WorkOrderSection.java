package gripwright.report;

import gripwright.comparison.Comparison;
import gripwright.model.ClubKind;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Diameter;
import gripwright.model.Session;
import gripwright.model.SetClub;
import gripwright.model.ShopSettings;
import gripwright.units.Dimension;
import gripwright.units.NumberText;
import gripwright.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The shop's page: what to do to each club of the set. Where hands hurt never stands on it. */
final class WorkOrderSection {

    private static final String NONE = "\u2013";
    private static final List<String> CAUTIONS = List.of(
            "Ventilate; gloves; no ignition source near solvent: its vapour can catch fire and explode. Occupational "
                    + "limits, local codes and the product\u2019s safety sheet come first.",
            "Cut old grips off away from the body, with a hooked blade, the shaft in a padded vice. Eye protection with "
                    + "compressed air.",
            "Let the adhesive dry as its maker says; check for twist and that grip and head are tight before the first "
                    + "swing.");

    private final Session session;
    private final List<Comparison> comparisons;
    private final ShopSettings shop;
    private final NumberText numbers;

    WorkOrderSection(Session session, List<Comparison> comparisons, ShopSettings shop) {
        this.session = session;
        this.comparisons = comparisons;
        this.shop = shop;
        this.numbers = NumberText.withDecimalMark(shop.decimalMark());
    }

    Map<String, Object> content() {
        List<String> columns = List.of("club", "length, " + unit().symbol(), "butt, " + unit().symbol(), "grip",
                "swingweight before", "target", "grip off, g");
        List<Map<String, Object>> rows = session.set().stream().map(this::row).toList();
        Map<String, Object> content = new LinkedHashMap<>();
        content.put("note", note());
        content.put("hasRows", !rows.isEmpty());
        content.put("columns", headings(columns));
        content.put("rows", rows);
        content.put("hasStock", false);
        content.put("stock", List.of());
        content.put("hasSentences", false);
        content.put("sentences", List.of());
        content.put("cautions", CAUTIONS);
        return content;
    }

    private static List<Map<String, Object>> headings(List<String> columns) {
        List<Map<String, Object>> headings = new ArrayList<>();
        for (String column : columns) {
            headings.add(cell(column, headings.isEmpty() || column.equals("grip")));
        }
        return headings;
    }

    private static Map<String, Object> cell(String text, boolean left) {
        Map<String, Object> cell = new LinkedHashMap<>();
        cell.put("text", text);
        cell.put("kind", left ? "text" : "number");
        return cell;
    }

    private String note() {
        String families = "The advice rests on the " + String.join(" and the ",
                session.tests().stream().map(test -> test.club().name()).toList()) + "; other families were not tested.";
        return session.set().isEmpty()
                ? "No club of the set is entered yet: add a row for each in Balance. " + families : families;
    }

    private Map<String, Object> row(SetClub club) {
        List<Map<String, Object>> cells = new ArrayList<>();
        cells.add(cell(club.name(), true));
        cells.add(cell(length(club.lengthMm(), 2), false));
        cells.add(cell(club.shaftDiameters().isEmpty() ? NONE : butt(club.shaftDiameters()), false));
        cells.add(cell(grip(club), true));
        cells.add(cell(club.presentSwingweight() == null ? NONE : club.presentSwingweight().text(), false));
        cells.add(cell(target(club), false));
        cells.add(cell(club.gripOffGrams() == null ? NONE : numbers.format(club.gripOffGrams(), 1), false));
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("cells", cells);
        return row;
    }

    private String butt(List<Diameter> diameters) {
        return length(diameters.get(0).diameterMm(), 3);
    }

    private String grip(SetClub club) {
        if (club.kind() == ClubKind.PUTTER) {
            return "stays; its grip follows other rules";
        }
        return advised(club.kind()).map(ConfigurationTable::description).orElse("not decided");
    }

    private java.util.Optional<Configuration> advised(ClubKind kind) {
        for (int at = 0; at < comparisons.size(); at++) {
            ClubTest test = session.tests().get(at);
            boolean last = at == comparisons.size() - 1;
            if (test.club().kind() == kind || last) {
                String id = session.advisedConfigurationId() != null ? session.advisedConfigurationId()
                        : comparisons.get(at).advice().configurationId();
                return id == null ? java.util.Optional.empty() : test.configuration(id);
            }
        }
        return java.util.Optional.empty();
    }

    private static String target(SetClub club) {
        return switch (club.target()) {
            case AS_NOW -> "as now";
            case VALUE -> club.targetSwingweight().text();
            case COMMON_INERTIA -> "by inertia";
        };
    }

    private String length(Double mm, int inchDecimals) {
        return mm == null ? NONE : numbers.format(unit().fromInternal(mm), unit() == Unit.INCH ? inchDecimals : 1);
    }

    private Unit unit() {
        return shop.units().of(Dimension.LENGTH);
    }
}
