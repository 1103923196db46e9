package gripwright.model;

import gripwright.units.UnitChoice;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What a shop sets once: its name, units, habits and judgements.
 *
 * @param shopName on the papers; may be empty
 * @param shopNote the shop's own note on the papers; may be empty
 * @param currency the symbol before prices; may be empty
 * @param units the units it reads and writes
 * @param decimalMark '.' or ','
 * @param paper 'A4' or 'Letter'
 * @param dark whether the dark look is chosen
 * @param smallestDifferences smallest differences that matter, internal units; missing: the catalogue's
 * @param verdicts thresholds and priors
 * @param entryColumns metrics typed in the bay, in order
 * @param rulerPositionsMm where the shop measures grip diameters, mm from the cap's edge
 * @param transferFactor share of tape and core mismatch that reaches the outside, 0 to 1
 * @param gripBalancePointMm where a grip balances unless it was measured, mm from the cap's face
 * @param scaleNoisePoints how far off a swingweight reading may be (one SD), points
 * @param headTapeLimitGrams the most that the shop adds to a head with tape, g
 * @param balance the swingweight scale and what else the balance of a club rests on; null for the usual
 */
public record ShopSettings(String shopName, String shopNote, String currency, UnitChoice units, char decimalMark,
        String paper, boolean dark, Map<Metric, Double> smallestDifferences, VerdictSettings verdicts,
        List<Metric> entryColumns, List<Double> rulerPositionsMm, double transferFactor, double gripBalancePointMm,
        double scaleNoisePoints, double headTapeLimitGrams, BalanceSettings balance) {

    /** Starting values: imperial speeds and distances, measured at 2, 3, 4, 5 and 6 in. */
    public static ShopSettings usual() {
        return new ShopSettings("", "", "", UnitChoice.imperial(), '.', "A4", false, Map.of(),
                VerdictSettings.usual(),
                List.of(Metric.CLUB_SPEED, Metric.FACE_ANGLE, Metric.CLUB_PATH, Metric.CLOSURE_RATE, Metric.CARRY,
                        Metric.OFFLINE),
                List.of(50.8, 76.2, 101.6, 127.0, 152.4), 1, 107.95, 0.5, 6, BalanceSettings.usual());
    }

    public ShopSettings {
        shopName = Check.orEmpty(shopName);
        shopNote = Check.orEmpty(shopNote);
        currency = Check.orEmpty(currency);
        Check.present(units, "units of the shop");
        if (decimalMark != '.' && decimalMark != ',') {
            throw new IllegalArgumentException("The decimal mark is '.' or ',', not '" + decimalMark + "'.");
        }
        if (!"A4".equals(paper) && !"Letter".equals(paper)) {
            throw new IllegalArgumentException("The paper is A4 or Letter, not '" + paper + "'.");
        }
        Map<Metric, Double> differences = new EnumMap<>(Metric.class);
        smallestDifferences.forEach((metric, difference) ->
                differences.put(metric, Check.notNegative(difference, "smallest difference of " + metric.text())));
        smallestDifferences = Collections.unmodifiableMap(differences);
        Check.present(verdicts, "verdict settings");
        entryColumns = Check.list(entryColumns);
        rulerPositionsMm = Check.list(rulerPositionsMm);
        rulerPositionsMm.forEach(position -> Check.notNegative(position, "measuring position"));
        if (!(transferFactor >= 0 && transferFactor <= 1)) {
            throw new IllegalArgumentException("The transfer factor runs from 0 to 1, but is " + transferFactor + ".");
        }
        Check.positive(gripBalancePointMm, "usual balance point of a grip");
        Check.positive(scaleNoisePoints, "noise of the swingweight scale");
        Check.notNegative(headTapeLimitGrams, "limit of tape at the head");
        balance = balance == null ? BalanceSettings.usual() : balance;
    }

    /** The smallest difference that matters, internal units: the shop's, else the catalogue's. */
    public double smallestDifference(Metric metric) {
        return smallestDifferences.getOrDefault(metric, metric.defaultSmallestDifference());
    }

    public ShopSettings withShopName(String shopName) {
        return new ShopSettings(shopName, shopNote, currency, units, decimalMark, paper, dark, smallestDifferences,
                verdicts, entryColumns, rulerPositionsMm, transferFactor, gripBalancePointMm, scaleNoisePoints,
                headTapeLimitGrams, balance);
    }

    public ShopSettings withShopNote(String shopNote) {
        return new ShopSettings(shopName, shopNote, currency, units, decimalMark, paper, dark, smallestDifferences,
                verdicts, entryColumns, rulerPositionsMm, transferFactor, gripBalancePointMm, scaleNoisePoints,
                headTapeLimitGrams, balance);
    }

    public ShopSettings withCurrency(String currency) {
        return new ShopSettings(shopName, shopNote, currency, units, decimalMark, paper, dark, smallestDifferences,
                verdicts, entryColumns, rulerPositionsMm, transferFactor, gripBalancePointMm, scaleNoisePoints,
                headTapeLimitGrams, balance);
    }

    public ShopSettings withUnits(UnitChoice units) {
        return new ShopSettings(shopName, shopNote, currency, units, decimalMark, paper, dark, smallestDifferences,
                verdicts, entryColumns, rulerPositionsMm, transferFactor, gripBalancePointMm, scaleNoisePoints,
                headTapeLimitGrams, balance);
    }

    public ShopSettings withDecimalMark(char decimalMark) {
        return new ShopSettings(shopName, shopNote, currency, units, decimalMark, paper, dark, smallestDifferences,
                verdicts, entryColumns, rulerPositionsMm, transferFactor, gripBalancePointMm, scaleNoisePoints,
                headTapeLimitGrams, balance);
    }

    public ShopSettings withPaper(String paper) {
        return new ShopSettings(shopName, shopNote, currency, units, decimalMark, paper, dark, smallestDifferences,
                verdicts, entryColumns, rulerPositionsMm, transferFactor, gripBalancePointMm, scaleNoisePoints,
                headTapeLimitGrams, balance);
    }

    public ShopSettings withDark(boolean dark) {
        return new ShopSettings(shopName, shopNote, currency, units, decimalMark, paper, dark, smallestDifferences,
                verdicts, entryColumns, rulerPositionsMm, transferFactor, gripBalancePointMm, scaleNoisePoints,
                headTapeLimitGrams, balance);
    }

    public ShopSettings withSmallestDifferences(Map<Metric, Double> smallestDifferences) {
        return new ShopSettings(shopName, shopNote, currency, units, decimalMark, paper, dark, smallestDifferences,
                verdicts, entryColumns, rulerPositionsMm, transferFactor, gripBalancePointMm, scaleNoisePoints,
                headTapeLimitGrams, balance);
    }

    public ShopSettings withVerdicts(VerdictSettings verdicts) {
        return new ShopSettings(shopName, shopNote, currency, units, decimalMark, paper, dark, smallestDifferences,
                verdicts, entryColumns, rulerPositionsMm, transferFactor, gripBalancePointMm, scaleNoisePoints,
                headTapeLimitGrams, balance);
    }

    public ShopSettings withEntryColumns(List<Metric> entryColumns) {
        return new ShopSettings(shopName, shopNote, currency, units, decimalMark, paper, dark, smallestDifferences,
                verdicts, entryColumns, rulerPositionsMm, transferFactor, gripBalancePointMm, scaleNoisePoints,
                headTapeLimitGrams, balance);
    }

    public ShopSettings withRulerPositionsMm(List<Double> rulerPositionsMm) {
        return new ShopSettings(shopName, shopNote, currency, units, decimalMark, paper, dark, smallestDifferences,
                verdicts, entryColumns, rulerPositionsMm, transferFactor, gripBalancePointMm, scaleNoisePoints,
                headTapeLimitGrams, balance);
    }

    public ShopSettings withTransferFactor(double transferFactor) {
        return new ShopSettings(shopName, shopNote, currency, units, decimalMark, paper, dark, smallestDifferences,
                verdicts, entryColumns, rulerPositionsMm, transferFactor, gripBalancePointMm, scaleNoisePoints,
                headTapeLimitGrams, balance);
    }

    public ShopSettings withGripBalancePointMm(double gripBalancePointMm) {
        return new ShopSettings(shopName, shopNote, currency, units, decimalMark, paper, dark, smallestDifferences,
                verdicts, entryColumns, rulerPositionsMm, transferFactor, gripBalancePointMm, scaleNoisePoints,
                headTapeLimitGrams, balance);
    }

    public ShopSettings withScaleNoisePoints(double scaleNoisePoints) {
        return new ShopSettings(shopName, shopNote, currency, units, decimalMark, paper, dark, smallestDifferences,
                verdicts, entryColumns, rulerPositionsMm, transferFactor, gripBalancePointMm, scaleNoisePoints,
                headTapeLimitGrams, balance);
    }

    public ShopSettings withHeadTapeLimitGrams(double headTapeLimitGrams) {
        return new ShopSettings(shopName, shopNote, currency, units, decimalMark, paper, dark, smallestDifferences,
                verdicts, entryColumns, rulerPositionsMm, transferFactor, gripBalancePointMm, scaleNoisePoints,
                headTapeLimitGrams, balance);
    }

    public ShopSettings withBalance(BalanceSettings balance) {
        return new ShopSettings(shopName, shopNote, currency, units, decimalMark, paper, dark, smallestDifferences,
                verdicts, entryColumns, rulerPositionsMm, transferFactor, gripBalancePointMm, scaleNoisePoints,
                headTapeLimitGrams, balance);
    }
}
