package gripwright.balance;

import gripwright.model.BalanceSettings;
import gripwright.model.GripSize;
import gripwright.units.Unit;
import java.util.Comparator;
import java.util.Locale;

/**
 * The size of a grip as the trade would say it, beside the decimals.
 *
 * @param diameterMm at the size position, mm
 * @param name the nearest size of the shop's table; empty where the table is
 * @param offNameMm how much thicker than that size, mm
 * @param sixtyFourths exact 1/64 in above the men's standard of 0.900 in
 */
public record SizeReading(double diameterMm, String name, double offNameMm, double sixtyFourths) {

    private static final double STANDARD_INCHES = 0.900;
    private static final double PER_INCH = 64;

    /** The size of a diameter, mm, by the nearest of the shop's names; the first of two that are equally near. */
    public static SizeReading of(double diameterMm, BalanceSettings settings) {
        double inches = Unit.INCH.fromInternal(diameterMm);
        GripSize nearest = settings.sizes().stream()
                .min(Comparator.comparingDouble(size -> Math.abs(size.diameterMm() - diameterMm))).orElse(null);
        return new SizeReading(diameterMm, nearest == null ? "" : nearest.name(),
                nearest == null ? 0 : diameterMm - nearest.diameterMm(), (inches - STANDARD_INCHES) * PER_INCH);
    }

    /** Diameter in thousandths of an inch, rounded: 932. */
    public long thousandths() {
        return Math.round(Unit.INCH.fromInternal(diameterMm) * 1000);
    }

    /** Thousandths and trade name: '0.932 in, +1/32 and 2 thousandths'. */
    public String text() {
        String inches = String.format(Locale.ROOT, "%.3f in", Unit.INCH.fromInternal(diameterMm));
        long off = Math.round(Unit.INCH.fromInternal(offNameMm) * 1000);
        if (name.isEmpty()) {
            return inches;
        }
        if (off == 0) {
            return inches + ", " + name;
        }
        return inches + ", " + name + (off > 0 ? " and " : " less ") + Math.abs(off)
                + (Math.abs(off) == 1 ? " thousandth" : " thousandths");
    }
}
