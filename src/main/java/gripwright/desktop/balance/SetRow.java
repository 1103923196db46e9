package gripwright.desktop.balance;

import gripwright.balance.SetBalance;
import gripwright.balance.SetPlan;
import gripwright.model.ShopSettings;
import gripwright.units.Swingweight;
import java.util.List;

/** One club's line in the table of the set, as it is read and as it goes into a spreadsheet. */
record SetRow(String club, String gets, String stripped, String regripped, String target, String headMass, String how,
        String after, String wraps, String size, String off, String readOff, String cost, String restsOn) {

    static List<SetRow> of(SetPlan plan, ShopSettings settings) {
        Figures figures = new Figures(settings);
        return plan.rows().stream().map(row -> of(row, settings, figures)).toList();
    }

    private static SetRow of(SetPlan.Row row, ShopSettings settings, Figures figures) {
        SetBalance balance = row.balance();
        if (balance == null) {
            String none = Figures.NONE;
            return new SetRow(row.club().name(), none, none, none, none, none, "", none, none, none, none, none, none, "");
        }
        Double readOff = balance.finalOffPoints() != null ? balance.finalOffPoints() : balance.bareOffPoints();
        return new SetRow(row.club().name(), row.configurationLabel(),
                points(balance.bare() == null ? null : Double.valueOf(balance.bare().value())),
                points(balance.regripped() == null ? null : Double.valueOf(balance.regripped().value())),
                balance.wanted() == null ? Figures.NONE : balance.wanted().text().replace("swingweight ", ""),
                balance.headMass() == null ? Figures.NONE : figures.signed(balance.headMass().grams(), 1),
                balance.headMass() == null ? "" : balance.headMass().way().text(),
                Figures.swingweight(balance.after().swingweight()),
                row.build().fullWraps() + (row.build().lowerWraps() > 0 ? " + " + row.build().lowerWraps() : ""),
                row.build().size() == null ? Figures.NONE : figures.diameter(row.build().size().diameterMm()),
                figures.diameterOff(row.build().offMm()), figures.signed(readOff, 1),
                row.cost() == null ? Figures.NONE : settings.currency() + figures.number(row.cost(), 2),
                balance.pass().text());
    }

    private static String points(Double points) {
        return points == null ? Figures.NONE : new Swingweight(points).text();
    }

    /** The headings, with the shop's units. */
    static List<String> headings(ShopSettings settings) {
        String length = new Figures(settings).length().symbol();
        return List.of("Club", "Gets", "Stripped", "Regripped", "Target", "Head, g", "How", "Then", "Wraps",
                "Size, " + length, "Off, " + length, "Misread", "Cost", "Rests on");
    }

    List<String> cells() {
        return List.of(club, gets, stripped, regripped, target, headMass, how, after, wraps, size, off, readOff, cost,
                restsOn);
    }
}
