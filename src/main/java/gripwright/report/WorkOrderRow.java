package gripwright.report;

import gripwright.balance.Estimate;
import gripwright.balance.HeadMass;
import gripwright.balance.SetBalance;
import gripwright.balance.SetBuild;
import gripwright.balance.SetPlan;
import gripwright.model.BuildUp;
import gripwright.model.ClubKind;
import gripwright.model.Configuration;
import gripwright.model.Grip;
import gripwright.model.Session;
import gripwright.model.SetClub;
import gripwright.model.ShopSettings;
import gripwright.units.Dimension;
import gripwright.units.NumberText;
import gripwright.units.Swingweight;
import gripwright.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Sets one club of the work order as cells: what goes on, how it is built up, what the scale shall read. */
final class WorkOrderRow {

    private static final String NONE = "\u2013";
    /** Inches nearer than this to a whole number are said without decimals. */
    private static final double WHOLE = 0.005;
    /** A cell to write into at the bench. */
    private static final String BLANK = "";

    private final Session session;
    private final NumberText numbers;
    private final Unit unit;
    private final String at;

    WorkOrderRow(Session session, ShopSettings shop) {
        this.session = session;
        this.numbers = NumberText.withDecimalMark(shop.decimalMark());
        this.unit = shop.units().of(Dimension.LENGTH);
        double position = unit.fromInternal(shop.balance().sizePositionMm());
        boolean whole = unit != Unit.INCH || Math.abs(position - Math.rint(position)) < WHOLE;
        this.at = numbers.format(position, whole ? 0 : 2);
    }

    List<Map<String, Object>> headings() {
        List<Map<String, Object>> headings = new ArrayList<>();
        headings.add(cell("club", "text"));
        headings.add(cell("length, " + unit.symbol(), "number"));
        headings.add(cell("butt, " + unit.symbol(), "number"));
        headings.add(cell("grip", "words"));
        headings.add(cell("wraps", "words"));
        headings.add(cell("size at " + at + " " + unit.symbol(), "number"));
        headings.add(cell("now", "number"));
        headings.add(cell("bare", "number"));
        headings.add(cell("target", "number"));
        headings.add(cell("add at the head", "words"));
        headings.add(cell("bare", "write"));
        headings.add(cell("final", "write"));
        headings.add(cell("size", "write"));
        headings.add(cell("twist", "write"));
        return headings;
    }

    Map<String, Object> of(SetPlan.Row row) {
        SetClub club = row.club();
        List<Map<String, Object>> cells = new ArrayList<>();
        cells.add(cell(club.name(), "text"));
        cells.add(cell(length(club.lengthMm(), 2), "number"));
        cells.add(cell(club.shaftDiameters().isEmpty() ? NONE : length(club.shaftDiameters().get(0).diameterMm(), 3),
                "number"));
        if (club.kind() == ClubKind.PUTTER) {
            cells.add(cell("as the player chooses", "words"));
        } else {
            cells.add(cell(grip(row), "words"));
        }
        cells.add(cell(wraps(row), "words"));
        cells.add(cell(row.build() == null || row.build().size() == null ? NONE
                : length(row.build().size().diameterMm(), 3) + off(row.build()), "number"));
        SetBalance balance = row.balance();
        cells.add(cell(club.presentSwingweight() == null ? NONE : club.presentSwingweight().text(), "number"));
        cells.add(cell(balance == null ? NONE : points(balance.bare()), "number"));
        cells.add(cell(target(club, balance), "number"));
        cells.add(cell(balance == null || balance.headMass() == null ? NONE : head(balance.headMass()), "words"));
        cells.add(cell(club.bareSwingweight() == null ? BLANK : club.bareSwingweight().text(), "write"));
        cells.add(cell(club.finalSwingweight() == null ? BLANK : club.finalSwingweight().text(), "write"));
        cells.add(cell(BLANK, "write"));
        cells.add(cell(BLANK, "write"));
        Map<String, Object> content = new LinkedHashMap<>();
        content.put("cells", cells);
        return content;
    }

    private static Map<String, Object> cell(String text, String kind) {
        Map<String, Object> cell = new LinkedHashMap<>();
        cell.put("text", text);
        cell.put("kind", kind);
        return cell;
    }

    private Configuration configuration(SetPlan.Row row) {
        return row.configurationId() == null ? null : session.tests().stream()
                .flatMap(test -> test.configuration(row.configurationId()).stream()).findFirst().orElse(null);
    }

    private String grip(SetPlan.Row row) {
        Configuration configuration = configuration(row);
        if (configuration == null) {
            return "not decided";
        }
        return configuration.label();
    }

    /** Each configuration that goes on, once, with how it goes on; the rows name it by its label. */
    List<Map<String, Object>> grips(List<SetPlan.Row> rows) {
        Map<String, Map<String, Object>> grips = new LinkedHashMap<>();
        for (SetPlan.Row row : rows) {
            Configuration configuration = row.club().kind() == ClubKind.PUTTER ? null : configuration(row);
            if (configuration != null) {
                grips.putIfAbsent(configuration.id(), Map.of("label", configuration.label(),
                        "name", configuration.grip().name(), "how", how(configuration)));
            }
        }
        return List.copyOf(grips.values());
    }

    /** Core, where the rib or the pattern stands, where lower wraps begin and end, ballast, stretch. */
    private String how(Configuration configuration) {
        Grip grip = configuration.grip();
        List<String> how = new ArrayList<>();
        how.add(grip.coreMm() == null ? "core not measured: look at the mouth of the grip"
                : "core " + withUnit(grip.coreMm(), 3));
        how.add(grip.ribbed() ? "ribbed, rib at the back, square to the face" : "round, pattern square to the face");
        BuildUp tested = configuration.buildUp();
        if (tested.lowerWraps() > 0) {
            how.add("lower wraps" + (tested.lowerFromMm() == null ? "" : " from " + withUnit(tested.lowerFromMm(), 2))
                    + (tested.lowerToMm() == null ? " to the end" : " to " + withUnit(tested.lowerToMm(), 2)));
        }
        if (tested.ballastGrams() > 0) {
            how.add(numbers.format(tested.ballastGrams(), 1) + "\u00A0g of ballast at "
                    + withUnit(tested.ballastPositionMm(), 2));
        }
        if (tested.stretchMm() > 0) {
            how.add("stretched by " + withUnit(tested.stretchMm(), 2));
        }
        return String.join("; ", how);
    }

    private String withUnit(Double mm, int inchDecimals) {
        return mm == null ? NONE : length(mm, inchDecimals) + "\u00A0" + unit.symbol();
    }

    private String wraps(SetPlan.Row row) {
        Configuration configuration = configuration(row);
        SetBuild build = row.build();
        if (configuration == null || build == null) {
            return NONE;
        }
        String full = build.fullWraps() == 0 ? "" : build.fullWraps() + " full";
        String lower = build.lowerWraps() == 0 ? "" : build.lowerWraps() + " lower";
        String both = full + (full.isEmpty() || lower.isEmpty() ? "" : ", ") + lower;
        return both.isEmpty() ? "none" : both;
    }

    /** How far whole wraps stay off the size that was tested, where that shows on a caliper. */
    private String off(SetBuild build) {
        if (build.offMm() == null) {
            return "";
        }
        int decimals = unit == Unit.INCH ? 3 : 1;
        String off = numbers.formatSigned(unit.fromInternal(build.offMm()), decimals);
        boolean shows = off.chars().anyMatch(c -> c >= '1' && c <= '9');
        return shows ? " (" + off + ")" : "";
    }

    private static String points(Estimate points) {
        return points == null ? NONE : new Swingweight(points.value()).text();
    }

    private String target(SetClub club, SetBalance balance) {
        return switch (club.target()) {
            case AS_NOW -> club.presentSwingweight() == null ? "as now" : club.presentSwingweight().text();
            case VALUE -> club.targetSwingweight().text();
            case COMMON_INERTIA -> balance == null || balance.wanted() == null ? "inertia"
                    : balance.wanted().text();
        };
    }

    private String head(HeadMass mass) {
        if (mass.way() == HeadMass.Way.NOTHING) {
            return "nothing";
        }
        return numbers.formatSigned(mass.grams(), 1) + " g, " + mass.way().text();
    }

    private String length(Double mm, int inchDecimals) {
        return mm == null ? NONE : numbers.format(unit.fromInternal(mm), unit == Unit.INCH ? inchDecimals : 1);
    }
}
