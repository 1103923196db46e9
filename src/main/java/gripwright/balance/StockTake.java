package gripwright.balance;

import gripwright.model.Configuration;
import gripwright.model.Grip;
import gripwright.model.Stock;
import gripwright.model.Tape;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Counts what the rows of a set take from stock. */
final class StockTake {

    private final Stock stock;
    private final Map<String, SetPlan.StockLine> grips = new LinkedHashMap<>();
    private final Map<String, SetPlan.StockLine> tapes = new LinkedHashMap<>();
    private double headTapeGrams;
    private int putters;

    StockTake(Stock stock) {
        this.stock = stock;
    }

    /** Adds one row; the configuration is null for a putter. */
    void add(SetPlan.Row row, Configuration configuration, Tape tape) {
        if (configuration == null) {
            putters += row.balance() == null && row.testedWith().isEmpty() && row.cost() == null
                    && row.club().kind() == gripwright.model.ClubKind.PUTTER ? 1 : 0;
            return;
        }
        Grip grip = configuration.grip();
        count(grips, grip.name(), 1, "pieces", counted(grip));
        int wraps = row.build().fullWraps() + row.build().lowerWraps();
        if (tape != null && wraps > 0) {
            count(tapes, tape.name(), wraps, "wraps", null);
        }
        HeadMass head = row.balance() == null ? null : row.balance().headMass();
        if (head != null && head.way() == HeadMass.Way.TAPE) {
            headTapeGrams += head.grams();
        }
    }

    /** The stock list's own count where the grip is on it, else the one the grip was planned with. */
    private Integer counted(Grip grip) {
        Grip listed = stock.grips().stream().filter(item -> item.id().equals(grip.id())).findFirst().orElse(grip);
        return listed.inStock();
    }

    private static void count(Map<String, SetPlan.StockLine> lines, String item, double more, String unit,
            Integer inStock) {
        SetPlan.StockLine before = lines.get(item);
        double needed = before == null ? more : before.needed() + more;
        lines.put(item, new SetPlan.StockLine(item, needed, unit, inStock));
    }

    List<SetPlan.StockLine> lines() {
        List<SetPlan.StockLine> lines = new ArrayList<>(grips.values());
        lines.addAll(tapes.values());
        if (headTapeGrams > 0) {
            lines.add(new SetPlan.StockLine("tape for heads", headTapeGrams, "g", null));
        }
        if (putters > 0) {
            lines.add(new SetPlan.StockLine("putter grip, as the player chooses", putters, "pieces", null));
        }
        return lines;
    }
}
