package gripwright.app;

import gripwright.balance.BallastPlan;
import gripwright.balance.ConfigurationBalance;
import gripwright.balance.GripShape;
import gripwright.balance.LeverFigures;
import gripwright.balance.ReadingFit;
import gripwright.balance.Remedy;
import gripwright.balance.RulesCheck;
import gripwright.balance.SessionBalance;
import gripwright.balance.SetBalance;
import gripwright.balance.SetPlan;
import gripwright.comparison.AdvisedSet;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import gripwright.units.Dimension;
import gripwright.units.NumberText;
import gripwright.units.Swingweight;
import gripwright.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The balance of a session as text for a terminal, in the shop's units. */
final class BalanceText {

    private static final String NONE = "\u2013";

    private final ShopSettings shop;
    private final NumberText numbers;

    BalanceText(ShopSettings shop) {
        this.shop = shop;
        this.numbers = NumberText.withDecimalMark(shop.decimalMark());
    }

    /** The balance of a session without a stock list. */
    String of(Session session) {
        return of(session, new Stock(List.of(), List.of()));
    }

    /** All tests, then the set. */
    String of(Session session, Stock stock) {
        SessionBalance balance = AdvisedSet.of(session, shop, stock).balance();
        StringBuilder out = new StringBuilder();
        if (session.invented()) {
            out.append("Invented demo data.\n");
        }
        balance.tests().forEach(tested -> append(out, tested));
        append(out, balance.set());
        return out.toString();
    }

    private void append(StringBuilder out, SessionBalance.Tested tested) {
        out.append(out.length() > 0 ? "\n" : "").append(tested.balance().clubName()).append("\n\n");
        out.append(lever(tested));
        String shapes = shapes(tested);
        if (!shapes.isEmpty()) {
            out.append("\nThe grip as a shape (outside diameters, ").append(unit(Dimension.LENGTH).symbol())
                    .append(")\n").append(shapes);
        }
        append(out, tested.balance().readings());
        if (!tested.backwards().isEmpty()) {
            out.append("\nBack to ").append(tested.wanted().text()).append(" (").append(tested.referenceLabel())
                    .append(")\n");
            tested.backwards().forEach(row -> row.remedies().forEach(
                    remedy -> out.append("  ").append(row.label()).append("  ").append(line(remedy)).append('\n')));
        }
        tested.ballast().forEach(plan -> out.append(ballast(plan)));
        know(out, tested);
    }

    private String lever(SessionBalance.Tested tested) {
        TextTable table = new TextTable("", "mass, " + unit(Dimension.MASS).symbol(),
                "balance, " + unit(Dimension.LENGTH).symbol(), "moment, g·in", "swingweight", "SD", "read", "misfit",
                "inertia, kg·cm²", "SD", "rules");
        for (ConfigurationBalance balance : tested.balance().configurations()) {
            table.row(balance.label() + (balance.gamer() ? " (gamer)" : ""), mass(balance.totalMassGrams()),
                    length(balance.balancePointMm(), 2), number(balance.momentGramInches(), 0),
                    text(balance.swingweight()), number(balance.swingweightSdPoints(), 1),
                    text(balance.swingweightRead()), signed(balance.misfitPoints()),
                    number(balance.inertiaKgCm2(), 0),
                    balance.inertia() == null ? NONE : number(balance.inertia().standardDeviation(), 0),
                    balance.rules() == null ? NONE : balance.rules().outcome().text());
        }
        return table.text("  ");
    }

    private String shapes(SessionBalance.Tested tested) {
        List<ConfigurationBalance> shaped = tested.balance().configurations().stream()
                .filter(c -> c.shape() != null && c.shape().size() != null).toList();
        if (shaped.isEmpty()) {
            return "";
        }
        List<String> heading = new ArrayList<>(List.of(""));
        shaped.get(0).shape().atRuler().forEach(at -> heading.add("at " + length(at.positionMm(), 0)));
        heading.addAll(List.of("taper, %", "tape, g", "size"));
        TextTable table = new TextTable(heading.toArray(String[]::new));
        for (ConfigurationBalance balance : shaped) {
            GripShape shape = balance.shape();
            List<String> cells = new ArrayList<>(List.of(balance.label()));
            shape.atRuler().forEach(at -> cells.add(length(at.diameterMm(), 3)));
            while (cells.size() < heading.size() - 3) {
                cells.add(NONE);
            }
            cells.add(number(shape.taper() == null ? null : Double.valueOf(shape.taper() * 100), 1));
            cells.add(number(shape.tapeGrams(), 1));
            cells.add(shape.size().text());
            table.row(cells.subList(0, heading.size()).toArray(String[]::new));
        }
        return table.text("  ");
    }

    private void append(StringBuilder out, ReadingFit fit) {
        if (fit == null) {
            return;
        }
        out.append("\nReadings (bare club ").append(text(new Swingweight(fit.bareSwingweight().value())))
                .append(", grips balance at ").append(length(fit.gripBalancePointMm().value(), 2)).append(" \u00B1 ")
                .append(length(fit.gripBalancePointMm().standardDeviation(), 2)).append(' ')
                .append(unit(Dimension.LENGTH).symbol()).append(")\n");
        TextTable table = new TextTable("", "read", "fitted", "misfit", "");
        for (ReadingFit.Residual residual : fit.residuals()) {
            table.row(residual.reading().source(), text(residual.reading().read()), text(residual.fittedSwingweight()),
                    signed(residual.misfitPoints()), residual.flagged() ? "can't be right" : "");
        }
        out.append(table.text("  "));
    }

    private String line(Remedy remedy) {
        LeverFigures after = remedy.after();
        StringBuilder line = new StringBuilder(remedy.means().text()).append(": ").append(remedy.sentence());
        if (after != null && after.inertiaKgCm2() != null && remedy.feasible()) {
            line.append(" Then ").append(mass(after.massGrams())).append(' ').append(unit(Dimension.MASS).symbol())
                    .append(", inertia ").append(number(after.inertiaKgCm2(), 0)).append('.');
        }
        return line.toString();
    }

    private String ballast(BallastPlan plan) {
        StringBuilder out = new StringBuilder("\nBallast for equal ").append(plan.goal().text()).append('\n');
        TextTable table = new TextTable("", "g", "at, " + unit(Dimension.LENGTH).symbol(), "grip mass, g",
                "swingweight", "inertia", "");
        for (BallastPlan.Row row : plan.rows()) {
            table.row(row.label(), number(row.grams(), 1), row.grams() == 0 ? NONE : length(row.positionMm(), 2),
                    number(row.gripMassAfterGrams(), 1), text(row.after().swingweight()),
                    number(row.after().inertiaKgCm2(), 0), row.feasible() ? "" : "can't be done");
        }
        return out.append(table.text("  ")).append("  ").append(plan.sentence()).append('\n').toString();
    }

    private static void know(StringBuilder out, SessionBalance.Tested tested) {
        Set<String> sentences = new LinkedHashSet<>(tested.balance().sentences());
        sentences.addAll(tested.balance().warnings());
        for (ConfigurationBalance balance : tested.balance().configurations()) {
            sentences.addAll(balance.sentences());
            sentences.addAll(balance.warnings());
            if (balance.rules() != null && balance.rules().outcome().compareTo(RulesCheck.Outcome.LOOK) >= 0) {
                balance.rules().findings().stream()
                        .filter(finding -> finding.outcome().compareTo(RulesCheck.Outcome.LOOK) >= 0)
                        .forEach(finding -> sentences.add(balance.label() + ", " + RulesCheck.SECTION + ": "
                                + finding.sentence() + " A warning, not a ruling."));
            }
        }
        if (!sentences.isEmpty()) {
            out.append("\nWhat to know\n");
            sentences.forEach(sentence -> out.append("  ").append(sentence).append('\n'));
        }
    }

    private void append(StringBuilder out, SetPlan plan) {
        if (plan.rows().isEmpty()) {
            return;
        }
        out.append("\nThe set\n\n");
        TextTable table = new TextTable("", "grip", "now", "stripped", "regripped", "target", "head, g", "then", "wraps",
                "off size", "read", "");
        for (SetPlan.Row row : plan.rows()) {
            table.row(cells(row));
        }
        out.append(table.text("  "));
        plan.rows().forEach(row -> know(row)
                .forEach(s -> out.append("  ").append(row.club().name()).append(": ").append(s).append('\n')));
        out.append("\nStock to take\n");
        TextTable stock = new TextTable("", "needed", "in stock", "missing", "");
        plan.stock().forEach(line -> stock.row(line.item(), number(line.needed(), line.unit().equals("g") ? 1 : 0),
                line.inStock() == null ? NONE : line.inStock().toString(),
                line.missing() > 0 ? number(line.missing(), 0) : "", line.unit()));
        out.append(stock.text("  "));
        if (plan.cost() != null) {
            out.append("  Grips together: ").append(shop.currency()).append(number(plan.cost(), 2)).append('\n');
        }
        plan.sentences().forEach(sentence -> out.append("  ").append(sentence).append('\n'));
    }

    private String[] cells(SetPlan.Row row) {
        SetBalance balance = row.balance();
        if (balance == null) {
            return new String[] {row.club().name(), NONE, NONE, NONE, NONE, NONE, NONE, NONE, NONE, NONE, NONE, ""};
        }
        return new String[] {row.club().name(), row.configurationLabel(), text(row.club().presentSwingweight()),
            balance.bare() == null ? NONE : text(new Swingweight(balance.bare().value())),
            balance.regripped() == null ? NONE : text(new Swingweight(balance.regripped().value())),
            balance.wanted() == null ? NONE : balance.wanted().text().replace("swingweight ", ""),
            balance.headMass() == null ? NONE : numbers.formatSigned(balance.headMass().grams(), 1),
            text(balance.after().swingweight()), wraps(row), row.build().offMm() == null ? NONE
                    : numbers.formatSigned(unit(Dimension.LENGTH).fromInternal(row.build().offMm()),
                            unit(Dimension.LENGTH) == Unit.INCH ? 3 : 2),
            text(row.club().finalSwingweight()), balance.pass().text()};
    }

    private static String wraps(SetPlan.Row row) {
        return row.build().fullWraps() + (row.build().lowerWraps() > 0 ? " + " + row.build().lowerWraps() : "");
    }

    private Unit unit(Dimension dimension) {
        return shop.units().of(dimension);
    }

    private String mass(Double grams) {
        Unit unit = unit(Dimension.MASS);
        return number(grams == null ? null : Double.valueOf(unit.fromInternal(grams)), unit == Unit.OUNCE ? 2 : 0);
    }

    /** Inches with this many decimals, millimetres with one fewer, none below. */
    private String length(Double mm, int inchDecimals) {
        Unit unit = unit(Dimension.LENGTH);
        int decimals = unit == Unit.INCH ? inchDecimals : Math.max(0, inchDecimals - 1);
        return number(mm == null ? null : Double.valueOf(unit.fromInternal(mm)), decimals);
    }

    private String number(Double value, int decimals) {
        return value == null ? NONE : numbers.format(value, decimals);
    }

    private String signed(Double value) {
        return value == null ? NONE : numbers.formatSigned(value, 1);
    }

    private static String text(Swingweight swingweight) {
        return swingweight == null ? NONE : swingweight.text();
    }

    /** What is to be known of a club, and why its target can't be reached where it can't. */
    private static List<String> know(SetPlan.Row row) {
        List<String> sentences = new ArrayList<>(row.sentences());
        if (row.balance() != null && row.balance().headMass() != null && !row.balance().headMass().feasible()) {
            sentences.add(row.balance().headMass().sentence());
        }
        return sentences;
    }
}
