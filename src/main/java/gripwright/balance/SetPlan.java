package gripwright.balance;

import gripwright.model.SetClub;
import java.util.List;

/**
 * The whole set on its way over the bench: one row per club, what to take from stock, and what it costs.
 *
 * @param rows in the order of the set
 * @param stock what to take
 * @param cost the priced grips together, in the shop's currency; null where none has a price
 * @param sentences about the set as a whole
 */
public record SetPlan(List<Row> rows, List<StockLine> stock, Double cost, List<String> sentences) {

    public SetPlan {
        rows = List.copyOf(rows);
        stock = List.copyOf(stock);
        sentences = List.copyOf(sentences);
    }

    /**
     * One club.
     *
     * @param club the club as it was written down
     * @param testedWith the club that the advice was found with; empty where nothing was tested
     * @param configurationId the configuration it gets; null for a putter or without any
     * @param configurationLabel its label; empty where there is none
     * @param gripName the grip it gets; empty where there is none
     * @param balance its swingweight through the passes; null for a putter
     * @param build wraps and size; null for a putter or without a configuration
     * @param cost price of its grip; null where not priced
     * @param sentences what to measure, and what to know
     */
    public record Row(SetClub club, String testedWith, String configurationId, String configurationLabel,
            String gripName, SetBalance balance, SetBuild build, Double cost, List<String> sentences) {

        public Row {
            sentences = List.copyOf(sentences);
        }
    }

    /**
     * One thing to take from stock.
     *
     * @param item what
     * @param needed how much
     * @param unit 'pieces', 'wraps' or 'g'
     * @param inStock pieces there are; null where not counted
     */
    public record StockLine(String item, double needed, String unit, Integer inStock) {

        /** How many are missing; 0 where there are enough or nobody counted. */
        public double missing() {
            return inStock == null ? 0 : Math.max(0, needed - inStock);
        }
    }
}
